#include "app/cli/import_climate_options.h"

#include "app/cli/command.h"
#include "core/services/book.h"
#include "core/services/climate.h"
#include "core/units/parse.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <fmt/format.h>
#include <memory>

namespace app::cli {

namespace {

using core::services::Book;
using core::services::ClimateImportReport;
using core::services::LogPreview;
using nlohmann::json;
namespace model = core::model;
namespace chamber = core::chamber;
namespace base = core::base;

core::units::Instant clock_now() {
    using std::chrono::system_clock;
    return core::units::Instant::from_unix_seconds(
        std::chrono::duration_cast<std::chrono::seconds>(system_clock::now().time_since_epoch())
            .count());
}

bool same_name(const std::string& a, const std::string& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](unsigned char x, unsigned char y) {
        return std::tolower(x) == std::tolower(y);
    });
}

struct Located {
    std::optional<model::Chamber> chamber;
    std::optional<model::Sensor> sensor;
};

/// Where the readings go, and what had to be added for it.
struct Target {
    model::Sensor sensor;
    std::string chamber_name;
    bool chamber_added = false;
    bool sensor_added = false;
};

/// What is there already; nothing is changed. not_allowed, with the names, when several sensors
/// could be meant.
base::Result<Located> locate(const Book& book, const ImportClimateOptions& options) {
    Located found;
    const auto chambers = book.chambers();
    const auto sensors = book.sensors();
    if (!chambers || !sensors) {
        return tl::unexpected<base::Error>(chambers ? sensors.error() : chambers.error());
    }
    for (const auto& one : *chambers) {
        if (same_name(one.name, options.chamber)) {
            found.chamber = one;
        }
    }
    if (!found.chamber) {
        return found;
    }
    std::vector<model::Sensor> here;
    std::copy_if(sensors->begin(), sensors->end(), std::back_inserter(here),
                 [&](const model::Sensor& s) { return s.chamber == found.chamber->id; });
    for (const auto& sensor : here) {
        if (!options.sensor.empty() ? same_name(sensor.name, options.sensor) : here.size() == 1) {
            found.sensor = sensor;
        }
    }
    if (options.sensor.empty() && here.size() > 1) {
        std::string names;
        for (const auto& sensor : here) {
            names += (names.empty() ? "" : ", ") + sensor.name;
        }
        return base::fault(base::ErrorCode::not_allowed, names, "sensor");
    }
    return found;
}

/// Adds what is not there yet and remembers the dialect; each is an action of its own.
base::Result<Target> make_target(Book& book, const ImportClimateOptions& options,
                                 const Located& located, const chamber::LogDialect& dialect,
                                 const core::actions::Context& context) {
    Target target;
    model::Chamber place = located.chamber.value_or(model::Chamber{});
    if (!located.chamber) {
        place.name = options.chamber;
        place.kind = model::ChamberKind::other;
        const auto added = book.perform(core::actions::AddChamber{place}, context);
        if (!added) {
            return tl::unexpected<base::Error>(added.error());
        }
        place.id = added->id<model::ChamberId>(model::EntryKind::chamber);
        target.chamber_added = true;
    }
    target.chamber_name = place.name;
    target.sensor = located.sensor.value_or(model::Sensor{});
    const std::string remembered = target.sensor.log_dialect;
    target.sensor.log_dialect = chamber::to_json(dialect);
    if (located.sensor) {
        if (remembered != target.sensor.log_dialect) {
            const auto kept = book.perform(core::actions::ChangeSensor{target.sensor}, context);
            if (!kept) {
                return tl::unexpected<base::Error>(kept.error());
            }
        }
        return target;
    }
    target.sensor.chamber = place.id;
    target.sensor.name = options.sensor.empty() ? "logger" : options.sensor;
    const auto added = book.perform(core::actions::AddSensor{target.sensor}, context);
    if (!added) {
        return tl::unexpected<base::Error>(added.error());
    }
    target.sensor.id = added->id<model::SensorId>(model::EntryKind::sensor);
    target.sensor_added = true;
    return target;
}

ExitCode book_unreadable(const base::Error& error, const std::string& path) {
    using base::ErrorCode;
    const auto say = [&](const std::string& why) {
        return fail(ExitCode::unreadable, fmt::format("{}: {}", path, why));
    };
    switch (error.code) {
    case ErrorCode::not_found:
        return say("there is no book here; check the path, or add --create to make one.");
    case ErrorCode::not_a_book:
    case ErrorCode::is_a_directory:
        return say("this is not a Saltloft book; give the path of a .saltloft file.");
    case ErrorCode::newer_book:
        return say("the book was written by a newer version (" + error.detail +
                   "); update this program to open it.");
    case ErrorCode::damaged:
        return say("the book is damaged (" + error.detail + "); restore a backup of it.");
    case ErrorCode::no_permission:
        return say("the book may not be read; change its permissions.");
    default:
        return say("the book could not be opened (" + error.detail + ").");
    }
}

ExitCode log_unreadable(const base::Error& error, const std::string& path) {
    using base::ErrorCode;
    const auto say = [&](const std::string& why) {
        return fail(ExitCode::unreadable, fmt::format("{}: {}", path, why));
    };
    switch (error.code) {
    case ErrorCode::not_found:
        return say("there is no such file; check the path.");
    case ErrorCode::is_a_directory:
        return say("this is a folder; give the path of a log file.");
    case ErrorCode::no_permission:
        return say("the file may not be read; change its permissions.");
    case ErrorCode::empty_input:
        return say("the file is empty; export the log again.");
    case ErrorCode::ambiguous_number:
        return say("commas separate both the columns and the decimals, so 12,5 cannot be told from"
                   " 12 and 5; export it with semicolons or decimal points.");
    case ErrorCode::unknown_zone:
        return say("this system knows no time zone '" + error.detail +
                   "'; give a name like Europe/Rome with --zone.");
    case ErrorCode::bad_format:
        return say(error.detail == "binary"
                       ? "this is not a text file; export the log as CSV."
                       : "no lines with a date, a time and a temperature or humidity were found;"
                         " if it is a log, name its --separator and columns.");
    default:
        return say("the file could not be read (" + error.detail + ").");
    }
}

json parts_json(const std::vector<chamber::Detected>& parts) {
    json list = json::array();
    for (const auto& part : parts) {
        json rivals = json::array();
        for (const auto& rival : part.rivals) {
            rivals.push_back({{"choice", rival.choice}, {"sureness", rival.sureness}});
        }
        list.push_back({{"field", chamber::code_of(part.field)},
                        {"choice", part.choice},
                        {"sureness", part.sureness},
                        {"why", chamber::code_of(part.why)},
                        {"rivals", rivals}});
    }
    return list;
}

json report_json(const Target& target, const LogPreview& preview,
                 const ClimateImportReport& report) {
    const auto& log = report.import;
    json rejects = json::object();
    for (std::size_t i = 0; i < chamber::reject_reason_count; ++i) {
        if (report.tally.rejected[i] > 0) {
            rejects[std::string(chamber::code_of(static_cast<chamber::RejectReason>(i)))] =
                report.tally.rejected[i];
        }
    }
    json lines = json::array();
    for (const auto& reject : report.tally.first_rejects) {
        lines.push_back({{"line", reject.line},
                         {"reason", chamber::code_of(reject.reason)},
                         {"text", reject.text}});
    }
    const auto moment = [](const auto& at) {
        return at ? json(core::units::to_iso(*at)) : json(nullptr);
    };
    return {{"chamber", target.chamber_name},
            {"chamber_added", target.chamber_added},
            {"sensor", target.sensor.name},
            {"sensor_added", target.sensor_added},
            {"lines", report.tally.lines},
            {"readings", report.tally.readings},
            {"added", log.added},
            {"known", report.tally.readings - log.added},
            {"conflicts", log.conflicts},
            {"repeated", report.tally.repeated},
            {"out_of_order", report.tally.out_of_order},
            {"rejected", report.tally.rejected_lines()},
            {"rejected_by_reason", rejects},
            {"first_rejects", lines},
            {"first", moment(log.first)},
            {"last", moment(log.last)},
            {"complete", log.complete},
            {"dialect", json::parse(chamber::to_json(preview.detection.dialect))},
            {"detected", parts_json(preview.detection.parts)}};
}

void print_words(const Target& target, const ClimateImportReport& report) {
    if (target.chamber_added) {
        fmt::print("Added the chamber '{}', which the book did not have.\n", target.chamber_name);
    }
    if (target.sensor_added) {
        fmt::print("Added the sensor '{}'.\n", target.sensor.name);
    }
    const auto& log = report.import;
    fmt::print("{} of {} readings are new for '{}' in '{}'", log.added, report.tally.readings,
               target.sensor.name, target.chamber_name);
    if (log.first && log.last) {
        fmt::print(", from {} to {}", core::units::to_iso(*log.first),
                   core::units::to_iso(*log.last));
    }
    fmt::print(".\n");
    if (log.conflicts > 0) {
        fmt::print("{} readings say something else than the book; the older ones stay.\n",
                   log.conflicts);
    }
    for (const auto& reject : report.tally.first_rejects) {
        constexpr std::size_t lines_told = 10;
        if (&reject - report.tally.first_rejects.data() ==
            static_cast<std::ptrdiff_t>(lines_told)) {
            break;
        }
        fmt::print(stderr, "saltloft: line {}: {}: {}\n", reject.line,
                   chamber::code_of(reject.reason), reject.text);
    }
    if (report.tally.rejected_lines() > 0) {
        fmt::print(stderr, "saltloft: {} lines are no readings and were left out.\n",
                   report.tally.rejected_lines());
    }
}

/// Guesses are not imported: a log read with day and month swapped cannot be told later.
ExitCode refuse_guesses(const LogPreview& preview, const ImportClimateOptions& options) {
    for (const auto& guess : preview.detection.guesses()) {
        std::string rivals;
        for (const auto& rival : guess.rivals) {
            rivals += fmt::format(" or {}", rival.choice);
        }
        fail(ExitCode::found_something, fmt::format("{}: {} may be {}{}; say which with {}.",
                                                    options.log, chamber::code_of(guess.field),
                                                    guess.choice, rivals, option_for(guess.field)));
    }
    return ExitCode::found_something;
}

ExitCode found_wrong(const ClimateImportReport& report) {
    const auto& tally = report.tally;
    const auto skipped =
        tally.rejected[static_cast<std::size_t>(chamber::RejectReason::skipped_hour)];
    if (skipped > 0) {
        return fail(ExitCode::found_something,
                    fmt::format("{} lines are in an hour the clock skipped in spring: the logger"
                                " does not follow summer time, or the zone is another; undo the"
                                " import and give --offset or --zone.",
                                skipped));
    }
    const bool many_rejected = tally.rejected_lines() * 10 > tally.lines;
    return many_rejected || report.import.conflicts > 0 ? ExitCode::found_something
                                                        : ExitCode::done;
}

ExitCode import_into(Book& book, const ImportClimateOptions& options) {
    const core::actions::Context context{{}, clock_now(), {}};
    if (book.is_read_only()) {
        return fail(ExitCode::unreadable,
                    fmt::format("{}: the book is open elsewhere or may not be written; close it"
                                " there first.",
                                options.book));
    }
    auto hints = hints_of(options, context.now);
    if (!hints) {
        return fail(ExitCode::wrong_use, hints.error());
    }
    const auto located = locate(book, options);
    if (!located) {
        if (located.error().code == base::ErrorCode::not_allowed) {
            return fail(ExitCode::wrong_use,
                        fmt::format("'{}' has several sensors ({}); say which with --sensor.",
                                    options.chamber, located.error().detail));
        }
        return book_unreadable(located.error(), options.book);
    }
    if (located->sensor) {
        if (const auto known = chamber::dialect_from_json(located->sensor->log_dialect)) {
            hints->remembered = *known;
        }
    }
    const auto preview = core::services::preview_climate_log(options.log, *hints);
    if (!preview) {
        return log_unreadable(preview.error(), options.log);
    }
    if (!options.accept_guesses && !preview->detection.guesses().empty()) {
        if (options.json) {
            fmt::print("{}\n", json{{"detected", parts_json(preview->detection.parts)}}.dump());
        }
        return refuse_guesses(*preview, options);
    }
    const auto target = make_target(book, options, *located, preview->detection.dialect, context);
    if (!target) {
        return book_unreadable(target.error(), options.book);
    }
    core::services::ClimateImportRequest request{
        options.log, target->sensor.id, preview->detection.dialect, context.now, {}};
    const auto report =
        core::services::import_climate_log(book.path(), request, {}, std::stop_token());
    if (!report) {
        return log_unreadable(report.error(), options.log);
    }
    if (options.json) {
        fmt::print("{}\n", report_json(*target, *preview, *report).dump(2));
    } else {
        print_words(*target, *report);
    }
    return found_wrong(*report);
}

ExitCode run(const ImportClimateOptions& options) {
    core::services::OpenOptions open{.now = clock_now()};
    open.create_if_missing = options.create;
    auto book = Book::open(options.book, open);
    if (!book) {
        return book_unreadable(book.error(), options.book);
    }
    return import_into(*book, options);
}

} // namespace

void register_import_climate(CLI::App& root, ExitCode& exit_code) {
    auto options = std::make_shared<ImportClimateOptions>();
    auto* verb = root.add_subcommand("import-climate",
                                     "Take a logger's CSV file into the book's climate readings");
    add_options(*verb, *options);
    verb->callback([options, &exit_code] { exit_code = run(*options); });
}

} // namespace app::cli
