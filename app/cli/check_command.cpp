#include "app/cli/book_door.h"
#include "app/cli/command.h"
#include "core/services/keeping.h"

#include <cstdio>
#include <memory>
#include <string>

namespace app::cli {

namespace {

struct CheckOptions {
    std::string book;
    bool repair = false;
};

std::optional<core::services::BookCheck> read_through(const core::services::Book& book,
                                                      const CheckOptions& options) {
    auto report = book.check_integrity(true);
    if (!report) {
        fail(ExitCode::unreadable, options.book + " " + words_for(report.error()));
        return {};
    }
    return core::services::with_roll_ups_told(std::move(*report));
}

ExitCode tell(const core::services::BookCheck& found, const CheckOptions& options) {
    for (const std::string& problem : found.report.problems) {
        std::printf("%s\n", problem.c_str());
    }
    if (found.only_roll_ups()) {
        return fail(ExitCode::found_something,
                    options.book + " is whole, but climate roll-ups disagree with their readings; "
                                   "'saltloft check --repair' makes them anew.");
    }
    if (!found.report.sound()) {
        return fail(ExitCode::found_something,
                    options.book + " is damaged; restore a backup of it ('saltloft restore'), or "
                                   "carry what can be read into a new book ('saltloft salvage').");
    }
    std::printf("%s: sound. Pages, indexes, links and climate roll-ups agree.\n",
                options.book.c_str());
    return ExitCode::done;
}

ExitCode check(const CheckOptions& options) {
    auto exit_code = ExitCode::done;
    // Read-only: looking must not change what may be the last good copy.
    auto book = open_book(options.book, true, exit_code);
    if (!book) {
        return exit_code;
    }
    auto found = read_through(*book, options);
    if (!found) {
        return ExitCode::unreadable;
    }
    if (!options.repair || !found->only_roll_ups()) {
        return tell(*found, options);
    }
    book.reset();
    book = open_book(options.book, false, exit_code);
    if (!book) {
        return exit_code;
    }
    if (const auto made = book->rebuild_roll_ups(); !made) {
        return fail(ExitCode::unreadable, options.book + " " + words_for(made.error()));
    }
    std::printf("%s: climate roll-ups that disagreed: %zu. All were made anew.\n",
                options.book.c_str(), found->roll_ups);
    found = read_through(*book, options);
    return found ? tell(*found, options) : ExitCode::unreadable;
}

} // namespace

void register_check(CLI::App& root, ExitCode& exit_code) {
    auto* verb = root.add_subcommand(
        "check", "Check a book from end to end; changes nothing without --repair");
    const auto options = std::make_shared<CheckOptions>();
    verb->add_option("--book", options->book, "The book file")->required();
    verb->add_flag("--repair", options->repair,
                   "Make climate roll-ups anew where they disagree with their readings");
    verb->callback([options, &exit_code] { exit_code = check(*options); });
}

} // namespace app::cli
