#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// How one logger writes its files. A dialect is found by detect_dialect, shown to a person with
/// how sure each part is, and remembered for the sensor as JSON.
namespace core::chamber {

enum class Encoding { utf8, utf16_le, utf16_be, latin1 };

/// How a moment is written. The three calendar forms also read month names, two-digit years, a
/// 12-hour clock and a zone offset at the end.
enum class StampForm {
    year_month_day,
    day_month_year,
    month_day_year,
    epoch_seconds,
    epoch_milliseconds,
    spreadsheet_days, ///< days since 1899-12-30, fraction = time of day
};

enum class TemperatureScale { celsius, fahrenheit, kelvin };
enum class HumidityScale { percent, fraction };

/// Which clock the stamps were taken from.
enum class ClockKind {
    in_stamp,     ///< every stamp names its own offset (or is an epoch count)
    fixed_offset, ///< the logger keeps one offset all year
    named_zone,   ///< the logger follows a zone's summer time
};

/// Columns by number, the first being 0.
struct LogColumns {
    std::size_t stamp = 0;                  ///< date and time, or the date alone
    std::optional<std::size_t> time_of_day; ///< when the time has a column of its own
    std::optional<std::size_t> temperature;
    std::optional<std::size_t> humidity; ///< at least one of the two is there
    friend bool operator==(const LogColumns&, const LogColumns&) = default;
};

struct LogDialect {
    Encoding encoding = Encoding::utf8;
    char separator = ',';
    char decimal_sign = '.';
    bool carriage_return_ends_line = false; ///< lines end in CR alone
    int lines_before_data = 0;              ///< preamble and heading, skipped without a reject
    StampForm stamp = StampForm::year_month_day;
    LogColumns columns;
    TemperatureScale temperature = TemperatureScale::celsius;
    HumidityScale humidity = HumidityScale::percent;
    ClockKind clock = ClockKind::named_zone;
    int offset_seconds = 0;    ///< for fixed_offset: local minus UTC
    std::string zone = "UTC";  ///< for named_zone: IANA name
    bool newest_first = false; ///< decides which hour of an autumn fold comes first
    friend bool operator==(const LogDialect&, const LogDialect&) = default;
};

enum class DialectField {
    encoding,
    separator,
    decimal_sign,
    stamp_form,
    clock,
    stamp_column,
    temperature_column,
    humidity_column,
    temperature_scale,
    humidity_scale,
};

/// Why a part of the dialect was chosen.
enum class Evidence {
    told,          ///< the person said so
    remembered,    ///< confirmed for this sensor before, and this file does not contradict it
    mark,          ///< a byte order mark
    heading,       ///< the heading names it
    only_possible, ///< no other reading of the lines holds
    even_steps,    ///< the other reading makes time jump
    contents,      ///< the values are of that size
    context,       ///< other parts of the dialect make it likely
    assumed,       ///< nothing in the file says so
};

struct Rival {
    std::string choice;
    double sureness; ///< 0 to 1
};

/// One part of the dialect, with how sure we are and what else it could have been.
struct Detected {
    DialectField field;
    std::string choice; ///< stable code: "semicolon", "day_month_year", "fahrenheit", "3"
    double sureness;    ///< 0 to 1; below `sure_enough` a person should be asked
    Evidence why;
    std::vector<Rival> rivals;
};

/// A part below this is a guess: the command line refuses it and the dialog asks.
inline constexpr double sure_enough = 0.75;

/// Stable codes, in JSON and as `Detected::choice`.
std::string_view code_of(Encoding value);
std::string_view code_of(StampForm value);
std::string_view code_of(TemperatureScale value);
std::string_view code_of(HumidityScale value);
std::string_view code_of(ClockKind value);
std::string_view code_of(DialectField value);
std::string_view code_of(Evidence value);
/// "comma", "semicolon", "tab", "bar", "point"; any other character as itself.
std::string code_of_sign(char sign);

std::optional<StampForm> stamp_form_from(std::string_view code);
std::optional<TemperatureScale> temperature_scale_from(std::string_view code);
std::optional<HumidityScale> humidity_scale_from(std::string_view code);
std::optional<Encoding> encoding_from(std::string_view code);
std::optional<char> sign_from(std::string_view code);

/// The form kept in a sensor's `log_dialect`. Reading fails with bad_format on anything but what
/// `to_json` wrote (or a later version's superset of it).
std::string to_json(const LogDialect& dialect);
base::Result<LogDialect> dialect_from_json(std::string_view json);

} // namespace core::chamber
