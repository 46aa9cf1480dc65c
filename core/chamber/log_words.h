#pragma once

#include "core/chamber/log_dialect.h"

#include <optional>
#include <string_view>

namespace core::chamber {

/// What a heading's words say about its column, in the languages loggers are sold in.
enum class ColumnMeaning {
    unknown,
    stamp, ///< date and time together
    date,
    time,
    temperature,
    humidity,
    other, ///< a named quantity we do not keep: dew point, pressure, battery...
};

struct HeadingCell {
    ColumnMeaning meaning = ColumnMeaning::unknown;
    std::optional<TemperatureScale> temperature;
    std::optional<HumidityScale> humidity;
    std::optional<int> offset_seconds; ///< "Time (UTC+01:00)"
};

HeadingCell read_heading(std::string_view cell);

/// The scale a value's own unit names ("54.3 °F"); nothing when it has none.
std::optional<TemperatureScale> scale_in_cell(std::string_view cell);

} // namespace core::chamber
