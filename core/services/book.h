#pragma once

#include "core/actions/command.h"
#include "core/services/book_types.h"

#include <memory>

namespace core::store {
class Store;
} // namespace core::store

/// The only door to the book for the window and the command line.
namespace core::services {

/// An open book. Not thread-safe: one thread uses it; workers open their own (read-only, or with
/// an import's own door). Every call can fail as files can fail; a failed change leaves the old
/// state, never a mixture. Once perform, undo or redo has returned a value, the change survives a
/// crash of the program and a power cut (as far as the disk keeps its promises).
class Book {
  public:
    /// Opens the book at `path`, bringing an older one up to date after a verified backup.
    /// Fails with not_found, no_permission, is_a_directory, not_a_book (foreign, empty or
    /// truncated beyond its header), newer_book (`detail` names the version that wrote it),
    /// damaged, locked, disk_full or io_failure. Look at `opening_findings` afterwards.
    static base::Result<Book> open(const std::string& path, const OpenOptions& options);
    /// Makes a new, empty book; refuses (conflict) when the file is there.
    static base::Result<Book> create(const std::string& path, const OpenOptions& options);

    Book(Book&&) noexcept;
    Book& operator=(Book&&) noexcept;
    ~Book();

    [[nodiscard]] const std::string& path() const;
    [[nodiscard]] bool is_read_only() const;
    /// Codes: book_in_use (read-only because another instance writes; value "by"),
    /// book_read_only (file permission or asked for), book_damaged (value "problem"),
    /// book_on_network_drive, book_migrated (values "from", "to", "backup"),
    /// book_recovered_after_crash.
    [[nodiscard]] const model::Findings& opening_findings() const;

    // --- changes ---------------------------------------------------------------------------
    /// All that is wrong with a command by itself and against the book; empty is good. `stop`
    /// findings make perform refuse.
    [[nodiscard]] base::Result<model::Findings> check(const actions::Command& command,
                                                      const actions::Context& context) const;
    /// One transaction. Fails with read_only, not_allowed (`detail`: finding codes), no_such_entry,
    /// conflict (a code already taken, an entry already amended), or as files fail.
    base::Result<actions::Performed> perform(const actions::Command& command,
                                             const actions::Context& context);
    /// Takes back the last action that stands; nothing_to_undo when there is none. The log keeps
    /// both. Works across restarts.
    base::Result<UndoLabel> undo(const actions::Context& context);
    /// Brings back what was undone last, until something new is performed.
    base::Result<UndoLabel> redo(const actions::Context& context);
    [[nodiscard]] std::optional<UndoLabel> undo_label() const; ///< absent: nothing to undo
    [[nodiscard]] std::optional<UndoLabel> redo_label() const;

    // --- revisions and the log --------------------------------------------------------------
    /// Grows with every change, undo and redo; also when another instance made it.
    [[nodiscard]] base::Result<std::int64_t> revision() const;
    /// The revision of the last change that touched the piece, its weighings, events or batch.
    [[nodiscard]] base::Result<std::int64_t> piece_revision(model::PieceId piece) const;
    [[nodiscard]] base::Result<std::vector<model::HistoryLine>>
    history(model::EntryRef entry) const;
    /// The log, newest first.
    [[nodiscard]] base::Result<std::vector<model::LoggedStep>>
    log(int limit, std::optional<model::StepId> before = {}) const;

    // --- batches and pieces -----------------------------------------------------------------
    template <class T>
    using Rows = base::Result<std::vector<T>>;

    [[nodiscard]] Rows<model::Batch> batches(const BatchFilter& filter = {}) const;
    [[nodiscard]] Rows<BatchOverview> batch_overviews(const BatchFilter& filter = {}) const;
    [[nodiscard]] base::Result<model::Batch> batch(model::BatchId id) const;
    [[nodiscard]] base::Result<model::Batch> batch_by_code(const std::string& code) const;
    [[nodiscard]] Rows<std::string> products() const; ///< distinct product families in use
    /// A batch code not yet in use: "B07"; a piece code free among open pieces.
    [[nodiscard]] base::Result<std::string> free_batch_code() const;
    [[nodiscard]] Rows<std::string> free_piece_codes(int how_many) const;

    [[nodiscard]] Rows<model::Piece> pieces(const PieceFilter& filter = {}) const;
    [[nodiscard]] base::Result<model::Piece> piece(model::PieceId id) const;
    /// Ancestors and descendants by split, and itself; oldest first.
    [[nodiscard]] Rows<model::Piece> family(model::PieceId id) const;
    /// Weighings and events of many pieces in three reads, in hanging order.
    [[nodiscard]] Rows<PieceHistory> piece_histories(const PieceFilter& filter = {}) const;
    [[nodiscard]] base::Result<PieceHistory> piece_history(model::PieceId id) const;

    [[nodiscard]] base::Result<model::Weighing> weighing(model::WeighingId id) const;
    /// All weighings of a piece by time, also those amended or withdrawn.
    [[nodiscard]] Rows<model::Weighing> weighings(model::PieceId piece) const;
    /// The chain of corrections a weighing belongs to, first entry first.
    [[nodiscard]] Rows<WeighingVersion> weighing_versions(model::WeighingId id) const;
    /// All events of a piece by time, also withdrawn ones.
    [[nodiscard]] Rows<model::PieceEvent> events(model::PieceId piece) const;

    [[nodiscard]] Rows<model::Stage> stages(model::BatchId batch) const; ///< by order
    /// Stages that ran in this chamber at any time of [from, to); by start.
    [[nodiscard]] Rows<model::Stage> stages_in(model::ChamberId chamber, units::Instant from,
                                               units::Instant to) const;
    [[nodiscard]] Rows<model::Stage> open_stages() const; ///< not ended, of open batches
    [[nodiscard]] Rows<model::IngredientUse> ingredient_uses(model::BatchId batch) const;
    [[nodiscard]] Rows<model::Acceptance> acceptances(model::BatchId batch) const;
    [[nodiscard]] base::Result<std::optional<model::Outcome>> outcome(model::BatchId batch) const;
    [[nodiscard]] Rows<model::Outcome> outcomes() const;

    // --- recipes, places, people, instruments -----------------------------------------------
    [[nodiscard]] Rows<model::Recipe> recipes(bool with_archived = false) const;
    [[nodiscard]] Rows<model::RecipeVersion> recipe_versions(model::RecipeId recipe) const;
    [[nodiscard]] base::Result<model::RecipeVersion>
    recipe_version(model::RecipeVersionId id) const;
    [[nodiscard]] Rows<model::Ingredient> ingredients() const;
    [[nodiscard]] Rows<model::Lot> lots() const;
    [[nodiscard]] Rows<model::Chamber> chambers() const;
    [[nodiscard]] Rows<model::Sensor> sensors() const;
    [[nodiscard]] Rows<model::Person> people() const;
    [[nodiscard]] Rows<model::Instrument> instruments() const;
    [[nodiscard]] Rows<model::CalibrationCheck> checks(model::InstrumentId instrument) const;
    [[nodiscard]] Rows<model::CalibrationCheck> all_checks() const;

    // --- notes, decisions, stock, daily work ------------------------------------------------
    [[nodiscard]] Rows<model::Note> notes(const NoteFilter& filter = {}) const; ///< no photo bytes
    [[nodiscard]] base::Result<std::vector<unsigned char>> photo(model::NoteId note) const;
    [[nodiscard]] Rows<model::Decision> decisions(model::PieceId piece) const;
    [[nodiscard]] Rows<model::Decision> all_decisions() const;
    [[nodiscard]] Rows<model::Pack> packs(bool with_gone = true) const;
    [[nodiscard]] Rows<model::Pack> packs_of(model::PieceId piece) const;
    [[nodiscard]] Rows<model::PackMove> pack_moves(model::PackId pack) const;
    [[nodiscard]] Rows<model::PackMove> all_pack_moves() const;
    /// Ticks made in [from, until), also withdrawn ones.
    [[nodiscard]] Rows<model::TaskTick> task_ticks(units::Instant from, units::Instant until) const;
    [[nodiscard]] base::Result<std::optional<std::string>> preference(const std::string& key) const;

    // --- keeping ----------------------------------------------------------------------------
    [[nodiscard]] base::Result<IntegrityReport> check_integrity(bool full) const;
    /// Repair of climate roll-ups that do not agree with their readings: makes all of them anew.
    base::Status rebuild_roll_ups();
    /// A verified copy at `target` (which must not exist) while the book stays open.
    [[nodiscard]] base::Result<BookSummary> backup_to(const std::string& target) const;
    /// The rotating backup: makes today's and this week's when missing, verifies it, drops what
    /// rotation no longer keeps (7 daily, 8 weekly). Absent when today's is there already.
    base::Result<std::optional<BookSummary>> backup_if_due(units::Instant now);

    // --- for the other files of core/services -----------------------------------------------
    [[nodiscard]] store::Store& store() const;

  private:
    explicit Book(std::unique_ptr<store::Store> store);
    std::unique_ptr<store::Store> store_;
};

/// What a restore from `backup` over `book` would mean.
base::Result<RestorePreview> preview_restore(const std::string& book, const std::string& backup);
/// Puts the backup in the book's place. The book must not be open anywhere (locked otherwise); the
/// replaced file is kept beside it under a name with `now`, whose path is returned.
base::Result<std::string> restore(const std::string& book, const std::string& backup,
                                  units::Instant now);
/// Carries every readable row of a damaged book into a new one at `target`.
base::Result<SalvageReport> salvage(const std::string& damaged, const std::string& target,
                                    units::Instant now);

} // namespace core::services
