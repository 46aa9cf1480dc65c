// saltloft record: the printed sheets of a batch as PDF, without a display.
#include "app/cli/book_door.h"
#include "core/services/batch_record.h"
#include "core/units/parse.h"
#include "core/units/zone.h"

#include <cstdio>
#include <memory>
#include <string>

#ifdef SALTLOFT_HAS_WINDOW
#include "app/window/print_batch.h"
#endif

namespace app::cli {
namespace {

struct RecordOptions {
    std::string book;
    std::string batch;
    std::string out;
    std::string sheet = "record";
    std::string month;
};

#ifdef SALTLOFT_HAS_WINDOW
ExitCode said(const core::base::Result<int>& pages, const std::string& out) {
    if (!pages) {
        return fail(ExitCode::unreadable, out + " " + words_for(pages.error()));
    }
    std::printf("%s: %d pages\n", out.c_str(), *pages);
    return ExitCode::done;
}

ExitCode print_calibration(const core::services::Book& book, const RecordOptions& options) {
    const auto moment = now();
    core::units::Day month = core::units::Zone::utc().day_of(moment);
    if (!options.month.empty()) {
        const auto day = core::units::parse_day(options.month + "-01");
        if (!day) {
            return fail(ExitCode::wrong_use,
                        "--month '" + options.month + "' is no month; write it like 2026-03.");
        }
        month = *day;
    }
    return said(window::print_calibration(book, month, moment, options.out), options.out);
}
#endif

ExitCode run(const RecordOptions& options) {
#ifdef SALTLOFT_HAS_WINDOW
    ExitCode exit_code = ExitCode::done;
    const auto book = open_book(options.book, true, exit_code);
    if (!book) {
        return exit_code;
    }
    if (options.sheet == "calibration") {
        return print_calibration(*book, options);
    }
    if (options.batch.empty()) {
        return fail(ExitCode::wrong_use, "say which batch: give --batch CODE.");
    }
    const auto batch = book->batch_by_code(options.batch);
    if (!batch) {
        return fail(ExitCode::found_something, options.book + " " + words_for(batch.error()));
    }
    const auto record = core::services::batch_record(*book, batch->id, now());
    if (!record) {
        return fail(ExitCode::unreadable, options.book + " " + words_for(record.error()));
    }
    return said(window::print_batch(*record, options.sheet, options.out), options.out);
#else
    return fail(ExitCode::wrong_use,
                "this build cannot print; use one with the window, or 'saltloft export --book " +
                    options.book + "'.");
#endif
}

} // namespace

void register_record(CLI::App& root, ExitCode& exit_code) {
    const auto options = std::make_shared<RecordOptions>();
    CLI::App* verb = root.add_subcommand("record", "Write the record of a batch as PDF");
    verb->add_option("--book", options->book, "The book to read")->required();
    verb->add_option("--batch", options->batch, "Code of the batch");
    verb->add_option("--out", options->out, "The PDF file to write")->required();
    verb->add_option("--sheet", options->sheet,
                     "record, trace, balance, mix (for the bench), tags, small-tags, or "
                     "calibration (of the house, no batch)")
        ->check(CLI::IsMember(
            {"record", "trace", "balance", "mix", "tags", "small-tags", "calibration"}));
    verb->add_option("--month", options->month,
                     "Month of the calibration sheet, like 2026-03 (default: this month)");
    verb->callback([options, &exit_code] { exit_code = run(*options); });
}

} // namespace app::cli
