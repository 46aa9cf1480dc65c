#include "app/cli/import_climate_options.h"

#include "core/chamber/log_stamp.h"
#include "core/units/zone.h"

#include <cstdlib>
#include <filesystem>
#include <map>

namespace app::cli {

namespace {

namespace chamber = core::chamber;
using Hints = chamber::DialectHints;
using Problem = std::optional<std::string>;

/// The desktop's zone: TZ, or the name /etc/localtime points to, or UTC.
std::string system_zone() {
    const char* named = std::getenv("TZ");
    std::string name = named != nullptr ? named : "";
    if (name.starts_with(':')) {
        name.erase(0, 1);
    }
    if (name.empty()) {
        std::error_code error;
        const auto target = std::filesystem::read_symlink("/etc/localtime", error).string();
        const auto at = target.find("zoneinfo/");
        name = at == std::string::npos ? "" : target.substr(at + std::string("zoneinfo/").size());
    }
    return core::units::Zone::named(name) ? name : "UTC";
}

/// Takes `text` as one of the words of `table`.
template <class T>
Problem take_word(const std::string& option, const std::string& text,
                  const std::map<std::string, T>& table, std::optional<T>& into) {
    if (text.empty()) {
        return {};
    }
    const auto found = table.find(text);
    if (found != table.end()) {
        into = found->second;
        return {};
    }
    std::string words;
    for (const auto& [word, value] : table) {
        words += (words.empty() ? "" : ", ") + word;
    }
    return option + " '" + text + "' is not known; use one of: " + words + ".";
}

Problem take_clock(const ImportClimateOptions& options, Hints& hints) {
    if (!options.offset.empty()) {
        hints.told_offset_seconds = chamber::read_offset(options.offset);
        if (!hints.told_offset_seconds) {
            return "--offset '" + options.offset + "' is no offset; write it like +01:00.";
        }
    }
    if (!options.zone.empty()) {
        if (!core::units::Zone::named(options.zone)) {
            return "--zone '" + options.zone +
                   "' is not known to this system; give a name like Europe/Rome.";
        }
        hints.told_zone = options.zone;
    }
    return {};
}

void take_column(int from_one, std::optional<std::size_t>& into) {
    if (from_one > 0) {
        into = static_cast<std::size_t>(from_one - 1);
    }
}

} // namespace

void add_options(CLI::App& verb, ImportClimateOptions& o) {
    verb.add_option("log", o.log, "The logger's file")->required();
    verb.add_option("--book", o.book, "The book file")->required();
    verb.add_option("--chamber", o.chamber, "The chamber's name; added when the book has none such")
        ->required();
    verb.add_option("--sensor", o.sensor,
                    "The sensor's name; needed when the chamber has several, added when it is new");
    verb.add_flag("--json", o.json, "Print the result as JSON");
    verb.add_flag("--create", o.create, "Make the book if it is not there");
    verb.add_flag("--accept-guesses", o.accept_guesses,
                  "Import although part of the file's format is a guess");
    verb.add_option("--encoding", o.encoding, "utf8, utf16_le, utf16_be or latin1");
    verb.add_option("--separator", o.separator, "comma, semicolon, tab or bar");
    verb.add_option("--decimal", o.decimal, "point or comma");
    verb.add_option("--dates", o.dates,
                    "ymd, dmy, mdy, epoch (seconds), epoch_ms or spreadsheet (day numbers)");
    verb.add_option("--temperature", o.temperature_unit, "C, F or K");
    verb.add_option("--humidity", o.humidity_unit, "percent or fraction");
    verb.add_option(
        "--zone", o.zone,
        "The time zone the logger's clock follows, e.g. Europe/Rome; else this system's");
    verb.add_option("--offset", o.offset,
                    "The offset from UTC the logger keeps all year, e.g. +01:00");
    verb.add_option("--time-column", o.stamp_column, "The date's column, the first being 1")
        ->check(CLI::PositiveNumber);
    verb.add_option("--temperature-column", o.temperature_column, "The temperature's column")
        ->check(CLI::PositiveNumber);
    verb.add_option("--humidity-column", o.humidity_column, "The humidity's column")
        ->check(CLI::PositiveNumber);
}

tl::expected<Hints, std::string> hints_of(const ImportClimateOptions& options,
                                          core::units::Instant now) {
    using enum chamber::StampForm;
    Hints hints;
    hints.zone = system_zone();
    hints.not_after = now;
    const Problem problems[] = {
        take_word<chamber::Encoding>("--encoding", options.encoding,
                                     {{"utf8", chamber::Encoding::utf8},
                                      {"utf16_le", chamber::Encoding::utf16_le},
                                      {"utf16_be", chamber::Encoding::utf16_be},
                                      {"latin1", chamber::Encoding::latin1}},
                                     hints.encoding),
        take_word<char>("--separator", options.separator,
                        {{"comma", ','},
                         {"semicolon", ';'},
                         {"tab", '\t'},
                         {"bar", '|'},
                         {",", ','},
                         {";", ';'},
                         {"|", '|'}},
                        hints.separator),
        take_word<char>("--decimal", options.decimal,
                        {{"point", '.'}, {"comma", ','}, {".", '.'}, {",", ','}},
                        hints.decimal_sign),
        take_word<chamber::StampForm>("--dates", options.dates,
                                      {{"ymd", year_month_day},
                                       {"dmy", day_month_year},
                                       {"mdy", month_day_year},
                                       {"epoch", epoch_seconds},
                                       {"epoch_ms", epoch_milliseconds},
                                       {"spreadsheet", spreadsheet_days}},
                                      hints.stamp),
        take_word<chamber::TemperatureScale>("--temperature", options.temperature_unit,
                                             {{"C", chamber::TemperatureScale::celsius},
                                              {"F", chamber::TemperatureScale::fahrenheit},
                                              {"K", chamber::TemperatureScale::kelvin}},
                                             hints.temperature),
        take_word<chamber::HumidityScale>("--humidity", options.humidity_unit,
                                          {{"percent", chamber::HumidityScale::percent},
                                           {"fraction", chamber::HumidityScale::fraction}},
                                          hints.humidity),
        take_clock(options, hints)};
    for (const auto& problem : problems) {
        if (problem) {
            return tl::unexpected(*problem);
        }
    }
    take_column(options.stamp_column, hints.stamp_column);
    take_column(options.temperature_column, hints.temperature_column);
    take_column(options.humidity_column, hints.humidity_column);
    return hints;
}

std::string option_for(chamber::DialectField field) {
    switch (field) {
    case chamber::DialectField::encoding:
        return "--encoding";
    case chamber::DialectField::separator:
        return "--separator";
    case chamber::DialectField::decimal_sign:
        return "--decimal";
    case chamber::DialectField::stamp_form:
        return "--dates";
    case chamber::DialectField::clock:
        return "--zone or --offset";
    case chamber::DialectField::stamp_column:
        return "--time-column";
    case chamber::DialectField::temperature_column:
        return "--temperature-column";
    case chamber::DialectField::humidity_column:
        return "--humidity-column";
    case chamber::DialectField::temperature_scale:
        return "--temperature";
    case chamber::DialectField::humidity_scale:
        return "--humidity";
    }
    return "--accept-guesses";
}

} // namespace app::cli
