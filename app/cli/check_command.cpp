#include "app/cli/book_door.h"
#include "app/cli/command.h"

#include <cstdio>
#include <memory>
#include <string>

namespace app::cli {

namespace {

struct Options {
    std::string book;
};

ExitCode check(const Options& options) {
    auto exit_code = ExitCode::done;
    // Read-only: looking must not change what may be the last good copy.
    const auto book = open_book(options.book, true, exit_code);
    if (!book) {
        return exit_code;
    }
    const auto report = book->check_integrity(true);
    if (!report) {
        return fail(ExitCode::unreadable, options.book + " " + words_for(report.error()));
    }
    for (const std::string& problem : report->problems) {
        std::printf("%s\n", problem.c_str());
    }
    if (!report->sound()) {
        return fail(ExitCode::found_something,
                    options.book + " is damaged; restore a backup, or carry what can be read into "
                                   "a new book with the window's Repair.");
    }
    std::printf("%s: sound. Pages, indexes, links and climate roll-ups agree.\n",
                options.book.c_str());
    return ExitCode::done;
}

} // namespace

void register_check(CLI::App& root, ExitCode& exit_code) {
    auto* verb = root.add_subcommand("check", "Check a book from end to end; changes nothing");
    const auto options = std::make_shared<Options>();
    verb->add_option("--book", options->book, "The book file")->required();
    verb->callback([options, &exit_code] { exit_code = check(*options); });
}

} // namespace app::cli
