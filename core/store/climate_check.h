#pragma once

#include <string_view>

namespace core::store {

/// How a problem of a roll-up begins in climate_problems: rebuild_climate_roll_ups mends these.
inline constexpr std::string_view roll_up_problem = "climate roll-up ";

} // namespace core::store
