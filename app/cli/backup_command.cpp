#include "app/cli/book_door.h"
#include "app/cli/command.h"

#include <cstdio>
#include <memory>
#include <string>

namespace app::cli {

namespace {

struct BackupOptions {
    std::string book;
    std::string out;
};

ExitCode back_up(const BackupOptions& options) {
    auto exit_code = ExitCode::done;
    const auto book = open_book(options.book, true, exit_code);
    if (!book) {
        return exit_code;
    }
    const auto made = book->backup_to(options.out);
    if (!made && made.error().code == core::base::ErrorCode::conflict) {
        return fail(ExitCode::unreadable,
                    options.out + " is there already; name a file that is not.");
    }
    if (!made) {
        return fail(ExitCode::unreadable,
                    "no backup was made: " + options.out + " " + words_for(made.error()));
    }
    std::printf("%s: a verified copy with %lld batches, %lld pieces and %lld weighings.\n",
                made->path.c_str(), static_cast<long long>(made->batches),
                static_cast<long long>(made->pieces), static_cast<long long>(made->weighings));
    return ExitCode::done;
}

} // namespace

void register_backup(CLI::App& root, ExitCode& exit_code) {
    auto* verb = root.add_subcommand("backup", "Copy a book, also one in use, and verify the copy");
    const auto options = std::make_shared<BackupOptions>();
    verb->add_option("--book", options->book, "The book file")->required();
    verb->add_option("--out", options->out, "The file to make; must not be there")->required();
    verb->callback([options, &exit_code] { exit_code = back_up(*options); });
}

} // namespace app::cli
