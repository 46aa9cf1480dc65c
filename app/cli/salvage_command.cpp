#include "app/cli/book_door.h"
#include "app/cli/command.h"
#include "core/services/keeping.h"

#include <cstdio>
#include <memory>
#include <string>

namespace app::cli {

namespace {

struct SalvageOptions {
    std::string book;
    std::string out;
};

ExitCode salvage(const SalvageOptions& options) {
    const auto report = core::services::salvage(options.book, options.out, now());
    if (!report && report.error().code == core::base::ErrorCode::conflict) {
        return fail(ExitCode::unreadable,
                    options.out + " is there already; name a file that is not.");
    }
    if (!report) {
        return fail(ExitCode::unreadable,
                    "nothing was carried over: " + options.book + " " + words_for(report.error()));
    }
    for (const auto& table : report->tables) {
        if (table.kept > 0 || table.lost > 0) {
            std::printf("%s: %lld kept, %lld lost\n", table.name.c_str(),
                        static_cast<long long>(table.kept), static_cast<long long>(table.lost));
        }
    }
    std::printf("%s: made and checked; %s was not changed.\n", options.out.c_str(),
                options.book.c_str());
    if (const auto lost = core::services::lost_rows(*report); lost > 0) {
        return fail(ExitCode::found_something,
                    std::to_string(lost) + " entries could not be read; look " + options.out +
                        " through, and keep the damaged book.");
    }
    return ExitCode::done;
}

} // namespace

void register_salvage(CLI::App& root, ExitCode& exit_code) {
    auto* verb =
        root.add_subcommand("salvage", "Carry what can be read of a damaged book into a new one");
    const auto options = std::make_shared<SalvageOptions>();
    verb->add_option("--book", options->book, "The damaged book; it is not changed")->required();
    verb->add_option("--out", options->out, "The new book; must not be there")->required();
    verb->callback([options, &exit_code] { exit_code = salvage(*options); });
}

} // namespace app::cli
