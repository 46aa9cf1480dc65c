#pragma once

#include "core/model/chamber.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

/// How long the air was outside its band.
namespace core::chamber {

/// Bounds that are absent are not watched.
struct ClimateBand {
    std::optional<units::Temperature> low_temperature;
    std::optional<units::Temperature> high_temperature;
    std::optional<units::RelativeHumidity> low_humidity;
    std::optional<units::RelativeHumidity> high_humidity;
};
ClimateBand band_of(const model::Chamber& chamber);

enum class OutOfBand { too_cold, too_warm, too_dry, too_damp };

/// A stretch in which every reading was out of the band on the same side.
struct Excursion {
    OutOfBand side{};
    units::Instant from;
    units::Instant to;
    units::Duration time = units::Duration::seconds(0); ///< of readings; gaps inside not counted
    std::optional<units::Temperature> worst_temperature;
    std::optional<units::RelativeHumidity> worst_humidity;
};

struct BandTime {
    units::Duration watched = units::Duration::seconds(0); ///< covered by readings
    units::Duration unknown = units::Duration::seconds(0); ///< in gaps
    units::Duration too_cold = units::Duration::seconds(0);
    units::Duration too_warm = units::Duration::seconds(0);
    units::Duration too_dry = units::Duration::seconds(0);
    units::Duration too_damp = units::Duration::seconds(0);
    std::vector<Excursion> excursions; ///< by start; those shorter than asked for are left out
};

/// `readings` sorted by time. A reading stands until the next one, but no longer than `hold`;
/// what is beyond is a gap. The last one stands for nothing.
BandTime time_out_of_band(std::span<const model::ClimateReading> readings, const ClimateBand& band,
                          units::Duration hold, units::Duration shortest_excursion);

} // namespace core::chamber
