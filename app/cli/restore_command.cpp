#include "app/cli/book_door.h"
#include "app/cli/command.h"

#include <cstdio>
#include <memory>
#include <string>

namespace app::cli {

namespace {

struct RestoreOptions {
    std::string book;
    std::string backup;
    bool preview = false;
};

/// A fault names the file it is about where it can; else it is the backup, which is read first.
ExitCode tell(const core::base::Error& error, const RestoreOptions& options) {
    const std::string& path = error.where.empty() ? options.backup : error.where;
    return fail(ExitCode::unreadable, "nothing was restored: " + path + " " + words_for(error));
}

void print(const char* label, const core::services::BookSummary& summary) {
    std::printf("%s %s: %lld batches, %lld pieces, %lld weighings\n", label, summary.path.c_str(),
                static_cast<long long>(summary.batches), static_cast<long long>(summary.pieces),
                static_cast<long long>(summary.weighings));
}

ExitCode restore(const RestoreOptions& options) {
    const auto preview = core::services::preview_restore(options.book, options.backup);
    if (!preview) {
        return tell(preview.error(), options);
    }
    if (!preview->backup.verified) {
        return fail(ExitCode::found_something, "nothing was restored: " + options.backup +
                                                   " is damaged itself; choose another backup.");
    }
    print("backup", preview->backup);
    if (preview->current.schema_version > 0) {
        print("book", preview->current);
        std::printf("changes in the book since the backup: %lld\n",
                    static_cast<long long>(preview->steps_lost));
    } else if (preview->current.bytes > 0) {
        std::printf("book %s: cannot be read\n", options.book.c_str());
    }
    if (options.preview) {
        return ExitCode::done;
    }
    const auto kept = core::services::restore(options.book, options.backup, now());
    if (!kept) {
        return tell(kept.error(), options);
    }
    std::printf("%s: restored.\n", options.book.c_str());
    if (!kept->empty()) {
        std::printf("what it replaced is kept as %s\n", kept->c_str());
    }
    return ExitCode::done;
}

} // namespace

void register_restore(CLI::App& root, ExitCode& exit_code) {
    auto* verb = root.add_subcommand(
        "restore", "Put a backup in the place of a book; what it replaces is kept");
    const auto options = std::make_shared<RestoreOptions>();
    verb->add_option("--book", options->book, "The book file; must not be open")->required();
    verb->add_option("--backup", options->backup, "The copy to put in its place")->required();
    verb->add_flag("--preview", options->preview,
                   "Only say what would be lost and brought back; change nothing");
    verb->callback([options, &exit_code] { exit_code = restore(*options); });
}

} // namespace app::cli
