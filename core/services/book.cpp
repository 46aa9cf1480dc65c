#include "core/services/book.h"

#include "core/actions/perform.h"
#include "core/store/backup.h"
#include "core/store/integrity.h"
#include "core/store/store.h"

#include <filesystem>

namespace core::services {

using base::Result;
using store::Connection;

namespace {

store::StoreOptions to_store(const OpenOptions& options, bool create) {
    return {.now = options.now,
            .create = create,
            .read_only = options.read_only,
            .backup_folder = options.backup_folder,
            .check = options.check,
            .vfs = options.vfs};
}

UndoLabel label_of(const store::LoggedAction& action) {
    return {action.id, action.verb, action.subject, action.at, action.who};
}

} // namespace

Book::Book(std::unique_ptr<store::Store> store) : store_(std::move(store)) {}
Book::Book(Book&&) noexcept = default;
Book& Book::operator=(Book&&) noexcept = default;
Book::~Book() = default;

Result<Book> Book::open(const std::string& path, const OpenOptions& options) {
    const bool create =
        options.create_if_missing && (!options.vfs.empty() || !std::filesystem::exists(path));
    auto opened = store::Store::open(path, to_store(options, create));
    if (!opened) {
        return tl::unexpected<base::Error>(opened.error());
    }
    return Book(std::move(*opened));
}

Result<Book> Book::create(const std::string& path, const OpenOptions& options) {
    auto opened = store::Store::open(path, to_store(options, true));
    if (!opened) {
        return tl::unexpected<base::Error>(opened.error());
    }
    return Book(std::move(*opened));
}

const std::string& Book::path() const {
    return store_->path();
}
bool Book::is_read_only() const {
    return store_->is_read_only();
}
const model::Findings& Book::opening_findings() const {
    return store_->opening_findings();
}
store::Store& Book::store() const {
    return *store_;
}

Result<model::Findings> Book::check(const actions::Command& command,
                                    const actions::Context& context) const {
    return actions::check_in_book(*store_, command, context);
}

Result<actions::Performed> Book::perform(const actions::Command& command,
                                         const actions::Context& context) {
    return actions::perform(*store_, command, context);
}

Result<UndoLabel> Book::undo(const actions::Context& context) {
    return actions::undo(*store_, context).map(label_of);
}

Result<UndoLabel> Book::redo(const actions::Context& context) {
    return actions::redo(*store_, context).map(label_of);
}

std::optional<UndoLabel> Book::undo_label() const {
    const auto action = store_->read([](Connection& book) { return store::next_to_undo(book); });
    return action && *action ? std::optional(label_of(**action)) : std::nullopt;
}

std::optional<UndoLabel> Book::redo_label() const {
    const auto action = store_->read([](Connection& book) { return store::next_to_redo(book); });
    return action && *action ? std::optional(label_of(**action)) : std::nullopt;
}

Result<std::int64_t> Book::revision() const {
    return store_->read([](Connection& book) { return store::revision(book); });
}

Result<std::int64_t> Book::piece_revision(model::PieceId piece) const {
    return store_->read([&](Connection& book) { return store::piece_revision(book, piece); });
}

Result<std::vector<model::HistoryLine>> Book::history(model::EntryRef entry) const {
    return store_->read([&](Connection& book) { return store::entry_history(book, entry); });
}

Result<std::vector<model::LoggedStep>> Book::log(int limit,
                                                 std::optional<model::StepId> before) const {
    return store_->read([&](Connection& book) { return store::logged_steps(book, limit, before); });
}

} // namespace core::services
