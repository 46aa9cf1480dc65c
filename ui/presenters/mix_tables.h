#pragma once

#include "core/mix/mix_sheet.h"
#include "ui/text/style.h"

#include <QString>
#include <QStringList>
#include <vector>

/// The mix page's tables as plain texts, built from sheets by pure functions.
namespace ui::presenters {

struct TextTable {
    QStringList heads;
    std::vector<QStringList> rows;
    int numbers_from = 1; ///< columns from here on are set to the right
};

/// What to put on the scale: all at once, then a column a piece when there are several.
TextTable weigh_table(const core::mix::MixSheet& sheet,
                      const std::optional<core::units::Mass>& step, const text::Style& style);

/// What the meat gets: fully and, with liquids, half taken up; then the same of `other`.
TextTable dose_table(const core::mix::MixSheet& sheet, const core::mix::MixSheet* other,
                     const QString& other_name, const text::Style& style);

/// The limits of the chosen set against the dose; each with its source and how sure that is.
TextTable limit_table(const core::mix::MixSheet& sheet, const text::Style& style);

/// What a too coarse scale can do: a sentence a line, empty where it is good enough.
QStringList scale_words(const core::mix::MixSheet& sheet,
                        const std::optional<core::units::Mass>& step, const text::Style& style);

/// "2.72 %" or "2.72 % (2.66 to 2.9)".
QString range_words(const core::mix::ShareInterval& share, const text::Style& style);
QString ppm_range_words(const core::mix::ShareInterval& share, const text::Style& style);

/// The words of a method for a drop-down, and one line on what it means.
QString method_words(core::mix::Method method);
QString basis_words(core::mix::Basis basis);

} // namespace ui::presenters
