#pragma once

#include "core/base/result.h"
#include "core/chamber/log_dialect.h"
#include "core/units/time.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace core::chamber {

/// What is known besides the file. Fields that the person told are taken as they are.
struct DialectHints {
    std::string zone = "UTC";                ///< the book's zone, for stamps that name none
    std::optional<units::Instant> not_after; ///< now: a reading after it is implausible
    std::optional<LogDialect> remembered;    ///< confirmed for this sensor before
    // told by the person
    std::optional<Encoding> encoding;
    std::optional<char> separator;
    std::optional<char> decimal_sign;
    std::optional<StampForm> stamp;
    std::optional<TemperatureScale> temperature;
    std::optional<HumidityScale> humidity;
    std::optional<std::string> told_zone;
    std::optional<int> told_offset_seconds;
    std::optional<std::size_t> stamp_column; ///< numbers from 0
    std::optional<std::size_t> temperature_column;
    std::optional<std::size_t> humidity_column;
};

struct Detection {
    LogDialect dialect;
    std::vector<Detected> parts;      ///< in the order of DialectField
    std::vector<std::string> heading; ///< the columns' names; empty when the log has none
    /// The parts a person should confirm: sureness below `sure_enough`.
    [[nodiscard]] std::vector<Detected> guesses() const;
};

/// Finds how a log reads from pieces of it: the first is the file's start (64 KiB will do), the
/// others (from its middle and end) help to tell day from month; they may start and end inside a
/// line, but in a UTF-16 file must start at an even byte.
///
/// Fails with empty_input; bad_format "binary" when it is no text; bad_format "no_readings" when
/// no separator gives lines with a moment and a number; ambiguous_number when commas separate
/// both the columns and the decimals.
base::Result<Detection> detect_dialect(std::span<const std::string_view> pieces,
                                       const DialectHints& hints);

} // namespace core::chamber
