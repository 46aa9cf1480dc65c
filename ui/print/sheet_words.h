#pragma once

#include <QCoreApplication>
#include <QString>
#include <string>

/// What the sources of the printed sheets share: the translators' contexts and the kept texts.
namespace ui::print {

/// The translators' context of the batch record.
struct RecordText {
    Q_DECLARE_TR_FUNCTIONS(RecordText)
};

/// The translators' context of what every printed sheet has.
struct SheetText {
    Q_DECLARE_TR_FUNCTIONS(SheetText)
};

/// The translators' context of the tags.
struct TagText {
    Q_DECLARE_TR_FUNCTIONS(TagText)
};

/// A text kept in the book, as it was typed.
inline QString text_of(const std::string& kept) {
    return QString::fromStdString(kept);
}

} // namespace ui::print
