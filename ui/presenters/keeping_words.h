#pragma once

#include "core/services/keeping.h"
#include "ui/text/style.h"

#include <QString>
#include <vector>

/// What is told about the file of a book: its backups, a restore, a check, a salvage.
namespace ui::presenters {

QString number_words(std::int64_t number, const text::Style& style);
/// "14 Mar 2026, 18:30": with the year, as backups are kept for long.
QString moment_words(core::units::Instant at, const text::Style& style);
/// "Batches: 3, pieces: 12, weighings: 140". Labels first: they need no plural.
QString content_words(const core::services::BookSummary& summary, const text::Style& style);
/// Whether the backup is whole, and what a restore of it would take away and bring back.
QString restore_words(const core::services::RestorePreview& preview, const text::Style& style);
/// Only a backup that passed its check may be put in the book's place.
bool may_restore(const core::services::RestorePreview& preview);

/// What the check found, and what can be done.
QString check_words(const core::services::BookCheck& check, const text::Style& style);

/// One line of a salvage: a kind of entry in the person's words.
struct SalvageLine {
    QString kind;
    std::int64_t kept = 0;
    std::int64_t lost = 0;
};
/// Entries people made, in the order they look for them; what the program keeps for itself (log,
/// roll-ups) is one line at the end. Kinds with nothing in them are left out.
std::vector<SalvageLine> salvage_lines(const core::services::SalvageReport& report);
QString salvage_words(const core::services::SalvageReport& report, const text::Style& style);

} // namespace ui::presenters
