#pragma once

#include "core/chamber/log_dialect.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"

#include <optional>
#include <string_view>

/// A measured value as a logger wrote it. Not core/units/parse: that door serves people, explains
/// itself and allocates; this one reads tens of millions of plain cells.
namespace core::chamber {

enum class CellFault {
    not_a_number,
    out_of_range, ///< no air has that value: a sensor's error code or another column
};

template <class Q>
struct Cell {
    std::optional<Q> value;         ///< absent when the cell is empty or says "no value"
    std::optional<CellFault> fault; ///< set when there is something unreadable in it
};

/// The number a cell holds, with a unit after it dropped ("12,5 °C", "75 %RH"). Absent for
/// anything else, NaN included.
std::optional<double> cell_number(std::string_view text, char decimal_sign);
/// Empty, or one of the signs for a missing value: -, --, ---, NaN, N/A, null, none, nil.
bool is_blank_cell(std::string_view text);

/// -60 to +100 C is kept.
Cell<units::Temperature> temperature_cell(std::string_view text, char decimal_sign,
                                          TemperatureScale scale);
/// 0 to 110 % is kept: hygrometers overshoot near saturation.
Cell<units::RelativeHumidity> humidity_cell(std::string_view text, char decimal_sign,
                                            HumidityScale scale);

} // namespace core::chamber
