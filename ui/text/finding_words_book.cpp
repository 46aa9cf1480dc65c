#include "ui/text/finding_tables.h"

#include <QtGlobal>

namespace ui::text {

std::span<const FindingSentence> book_sentences() {
    static constexpr FindingSentence rows[] = {
        {"book_in_use",
         QT_TRANSLATE_NOOP("FindingWords", "This book is open elsewhere ({by}), so it can only be "
                                           "read here. Close it there and open it again.")},
        {"book_read_only",
         QT_TRANSLATE_NOOP("FindingWords", "This book is open for reading only. To write in it, "
                                           "free the file's permissions and open it again.")},
        {"book_damaged",
         QT_TRANSLATE_NOOP("FindingWords",
                           "This book is damaged ({problem}) and is open for reading only. Back "
                           "it up, then salvage what can be read into a new book.")},
        {"book_on_network_drive",
         QT_TRANSLATE_NOOP("FindingWords", "This book lies on a network drive, where a break can "
                                           "lose the last entry. Keep it on this computer.")},
        {"book_migrated",
         QT_TRANSLATE_NOOP("FindingWords", "This book was brought up to date from version {from} "
                                           "to {to}. The copy from before is {backup}.")},
        {"book_recovered_after_crash",
         QT_TRANSLATE_NOOP("FindingWords", "The program or the computer stopped without closing "
                                           "this book. All finished entries are here.")},
    };
    return rows;
}

} // namespace ui::text
