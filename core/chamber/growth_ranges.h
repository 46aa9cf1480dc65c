#pragma once

#include "core/base/cited.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"

#include <optional>
#include <span>
#include <string_view>

namespace core::chamber {

/// Where an organism grows, as tabled. Outside these bounds nothing is promised: they are limits
/// of growth under otherwise good conditions, given for a record of exposure, not as a verdict.
struct GrowthRange {
    std::string_view organism; ///< Latin name, as in the table
    units::Temperature low;
    std::optional<units::Temperature> high;             ///< not given for every organism
    std::optional<units::WaterActivity> above_activity; ///< grows above; not given for every one
    std::string_view source;
    std::string_view edition;
    base::Sureness sureness;
};

/// FDA Bad Bug Book, table of factors (1992/1999): temperature and least water activity.
std::span<const GrowthRange> growth_ranges();

} // namespace core::chamber
