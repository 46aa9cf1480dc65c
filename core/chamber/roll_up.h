#pragma once

#include "core/model/chamber.h"
#include "core/model/climate.h"

#include <span>
#include <vector>

namespace core::chamber {

/// The buckets of `level` over readings in any order; two readings of the same moment both count.
/// Values are summed in hundredths of a degree and of a percent, as the book keeps them, so the
/// result does not depend on the order of the readings. Sorted by start.
std::vector<model::ClimateBucket> roll_up(std::span<const model::ClimateReading> readings,
                                          model::ClimateLevel level);

/// The coarsest level that gives at least `buckets` buckets over `span`; single readings where
/// even quarter hours are too coarse.
model::ClimateLevel level_for(units::Duration span, int buckets);

/// Value as the book keeps it.
std::int64_t centi_celsius(units::Temperature t);
std::int64_t centi_percent(units::RelativeHumidity rh);

} // namespace core::chamber
