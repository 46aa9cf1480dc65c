#include "ui/text/error_words.h"

#include "ui/text/finding_words.h"

#include <QCoreApplication>

namespace ui::text {
namespace {

using core::base::ErrorCode;

struct ErrorWords {
    Q_DECLARE_TR_FUNCTIONS(ErrorWords)
};

/// %1 is the detail, which may be empty.
QString sentence_of_entry(ErrorCode code) {
    switch (code) {
    case ErrorCode::empty_input:
        return ErrorWords::tr("Nothing is entered here yet. Type a value.");
    case ErrorCode::not_a_number:
        return ErrorWords::tr("“%1” is not a number. Type digits, such as 740 or 2.5.");
    case ErrorCode::unknown_unit:
        return ErrorWords::tr("The unit “%1” is not known. Use g, kg, oz, lb, mm, in, °C, °F, mL "
                              "or fl oz.");
    case ErrorCode::unit_missing:
        return ErrorWords::tr("Say which unit is meant, such as g or oz.");
    case ErrorCode::wrong_kind:
        return ErrorWords::tr("“%1” is another kind of quantity than is asked for here. Enter one "
                              "in the unit shown beside the field.");
    case ErrorCode::out_of_range:
        return ErrorWords::tr("“%1” is outside what is possible here. Check the digits and the "
                              "unit.");
    case ErrorCode::trailing_text:
        return ErrorWords::tr("“%1” is left over after the value. Take it away or write it in a "
                              "note.");
    case ErrorCode::ambiguous_number:
        return ErrorWords::tr("“%1” can be read as a thousand or as a decimal. Write it without a "
                              "thousands mark.");
    default:
        return {};
    }
}

QString sentence_of_file(ErrorCode code) {
    switch (code) {
    case ErrorCode::bad_format:
        return ErrorWords::tr("This is not in the expected form: %1. Check that it is the file "
                              "you meant.");
    case ErrorCode::missing_column:
        return ErrorWords::tr("The column “%1” is missing. Add it to the file's first line.");
    case ErrorCode::bad_row:
        return ErrorWords::tr("A line could not be read: %1. Mend it and read the file again.");
    case ErrorCode::unknown_zone:
        return ErrorWords::tr("The time zone “%1” is not known on this computer. Choose another "
                              "in Preferences.");
    case ErrorCode::not_found:
        return ErrorWords::tr("%1 was not found. Check the name and whether the disk is there.");
    case ErrorCode::no_permission:
        return ErrorWords::tr("%1 may not be read or written by you. Change its permissions or "
                              "choose another place.");
    case ErrorCode::is_a_directory:
        return ErrorWords::tr("%1 is a folder. Choose a file in it.");
    case ErrorCode::not_a_book:
        return ErrorWords::tr(
            "%1 is not a Saltloft book. Choose another file, or make a new book.");
    case ErrorCode::newer_book:
        return ErrorWords::tr("This book was written by a newer Saltloft (%1). Install that "
                              "version to open it; nothing was changed.");
    case ErrorCode::damaged:
        return ErrorWords::tr("The book is damaged: %1. Open a backup, or salvage what can be "
                              "read into a new book.");
    case ErrorCode::locked:
        return ErrorWords::tr("The book is busy in another program. Close it there and try again.");
    case ErrorCode::disk_full:
        return ErrorWords::tr("The disk is full. Free some space and try again; nothing was lost.");
    case ErrorCode::io_failure:
        return ErrorWords::tr("The disk did not answer as it should: %1. Check the disk, then try "
                              "again.");
    case ErrorCode::read_only:
        return ErrorWords::tr("The book is open for reading only, so nothing was changed. Close "
                              "it elsewhere or free the file, then open it again.");
    default:
        return {};
    }
}

QString sentence_of_book(ErrorCode code) {
    switch (code) {
    case ErrorCode::no_such_entry:
        return ErrorWords::tr("This entry is no longer in the book: %1. Go back and choose again.");
    case ErrorCode::conflict:
        return ErrorWords::tr("This clashes with what is in the book: %1. Choose another code, or "
                              "look at the entry again and repeat.");
    case ErrorCode::not_allowed:
        return ErrorWords::tr("The book does not allow this: %1. Mend what is named and try "
                              "again.");
    case ErrorCode::nothing_to_undo:
        return ErrorWords::tr("There is nothing to undo.");
    case ErrorCode::nothing_to_redo:
        return ErrorWords::tr("There is nothing to do again.");
    case ErrorCode::no_solution:
        return ErrorWords::tr("There is no answer that meets everything asked: %1. Loosen one of "
                              "the wishes.");
    case ErrorCode::no_convergence:
        return ErrorWords::tr("The computation did not settle: %1. More weighings usually help.");
    case ErrorCode::cancelled:
        return ErrorWords::tr("Stopped, as you asked. Nothing was changed.");
    default:
        return {};
    }
}

/// The book names what it refuses by the codes of findings; those have sentences already.
QString sentences_of_codes(const core::base::Error& error) {
    QStringList sentences;
    QString detail = QString::fromStdString(error.detail);
    for (const QString& code : detail.replace(QLatin1Char(','), QLatin1Char(' '))
                                   .split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (!has_sentence(code.toStdString())) {
            return {};
        }
        core::model::Finding finding{.code = code.toStdString(), .place = error.where};
        sentences << finding_words(finding, Style{});
    }
    return sentences.join(QLatin1Char(' '));
}

} // namespace

QString error_words(const core::base::Error& error) {
    if (error.code == ErrorCode::not_allowed || error.code == ErrorCode::conflict) {
        if (QString known = sentences_of_codes(error); !known.isEmpty()) {
            return known;
        }
    }
    QString sentence = sentence_of_entry(error.code);
    if (sentence.isEmpty()) {
        sentence = sentence_of_file(error.code);
    }
    if (sentence.isEmpty()) {
        sentence = sentence_of_book(error.code);
    }
    if (sentence.isEmpty()) {
        sentence = ErrorWords::tr("Something went wrong: %1. Try again.");
    }
    if (sentence.contains(QLatin1String("%1"))) {
        const QString detail = QString::fromStdString(error.detail);
        sentence = sentence.arg(detail.isEmpty() ? ErrorWords::tr("no detail") : detail);
    }
    if (error.where.empty()) {
        return sentence;
    }
    //: %1 a place such as "line 14" or a file, %2 a sentence
    return ErrorWords::tr("%1: %2").arg(QString::fromStdString(error.where), sentence);
}

} // namespace ui::text
