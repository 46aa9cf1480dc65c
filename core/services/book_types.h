#pragma once

#include "core/base/result.h"
#include "core/model/batch.h"
#include "core/model/finding.h"
#include "core/model/ids.h"
#include "core/model/log.h"
#include "core/model/piece.h"
#include "core/store/filters.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace core::services {

/// How to open a book.
struct OpenOptions {
    units::Instant now;             ///< named in the backup made before a migration
    bool create_if_missing = false; ///< otherwise a missing file is not_found
    bool read_only = false;
    /// Where backups go; empty: the folder "backups" beside the book.
    std::string backup_folder;
    /// Quick integrity check on opening. A damaged book opens read-only with a finding, so that it
    /// can be looked at, backed up and salvaged.
    bool check = true;
    std::string vfs; ///< tests only: the SQLite file system to use; empty for the system's
};

using store::BatchFilter;
using store::NoteFilter;
using store::PieceFilter;

/// A weighing that no longer stands, or the one that does, with the act that made it.
struct WeighingVersion {
    model::Weighing weighing;
    units::Instant entered_at;
    std::optional<model::PersonId> who;
    std::string why;
    std::optional<units::Instant> withdrawn_at; ///< with who and why below
    std::optional<model::PersonId> withdrawn_by;
    std::string withdrawn_why;
};

/// All that a screen or a forecast needs of a piece, read in one go.
struct PieceHistory {
    model::Piece piece;
    std::vector<model::Weighing> weighings; ///< standing ones only, by time
    std::vector<model::PieceEvent> events;  ///< not withdrawn, by time
    std::int64_t revision = 0;              ///< see Book::piece_revision
};

struct BatchOverview {
    model::Batch batch;
    int pieces = 0; ///< not split up, merged away or discarded
    int drying = 0;
    int finished = 0;
    std::optional<units::Instant> last_weighed;
};

/// What undo or redo would do next, for a menu's words.
struct UndoLabel {
    model::ActionId action;
    std::string verb;
    std::string subject;
    units::Instant at;
    std::optional<model::PersonId> who;
};

/// What is in a book, for lists of backups and the preview before a restore.
struct BookSummary {
    std::string path;
    std::int64_t bytes = 0;
    int schema_version = 0;
    std::string written_by; ///< the program version that last wrote it
    std::string title;
    std::optional<units::Instant> last_change;
    std::int64_t revision = 0;
    std::int64_t batches = 0;
    std::int64_t pieces = 0;
    std::int64_t weighings = 0;
    bool verified = false; ///< a full integrity check of the file passed
};

/// What a restore would take away and bring back.
struct RestorePreview {
    BookSummary backup;
    BookSummary current;
    std::int64_t steps_lost = 0; ///< changes made since the backup, which the restore would drop
};

/// Outcome of an integrity check: empty problems means sound.
struct IntegrityReport {
    bool full = false;
    std::vector<std::string> problems; ///< the engine's own words, for the log and the screen
    [[nodiscard]] bool sound() const { return problems.empty(); }
};

/// What a salvage could carry over into a new book.
struct SalvageReport {
    struct Table {
        std::string name;
        std::int64_t kept = 0;
        std::int64_t lost =
            0; ///< rows known to be there and not readable, or refused by the new book
    };
    std::vector<Table> tables;
};

} // namespace core::services
