#pragma once

#include "core/model/pack.h"
#include "core/services/book.h"
#include "ui/text/style.h"

#include <QString>
#include <QVector>
#include <optional>
#include <string>

/// Until when a pack is usually kept, by cited rules. A day to look at it by, never a verdict.
namespace ui::presenters {

/// A rule that fits the pack, with the day it gives.
struct KeepChoice {
    QString id;
    QString words;  ///< "Dry-cured ham, cut, in the cold: 60 days from packing"
    QString source; ///< with its note, and "unverified" where it is
    core::units::Day day;
};
/// Once it is opened only the rules from opening; none of them reaches beyond `latest`, the day the
/// pack had while it was closed.
QVector<KeepChoice> keep_choices(core::model::PackKind kind, core::units::Day packed_on,
                                 std::optional<core::units::Day> opened_on,
                                 std::optional<core::units::Day> latest = {});

/// The rule a pack was kept by, with its source; empty for one's own day.
QString keep_rule_words(const std::string& rule);

/// Why somebody set a day of their own, from the log; empty when none was given.
QString own_day_why(const core::services::Book& book, const core::model::Pack& pack);

} // namespace ui::presenters
