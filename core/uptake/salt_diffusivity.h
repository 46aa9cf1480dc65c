#pragma once

#include "core/base/interval.h"
#include "core/units/diffusivity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <optional>
#include <vector>

namespace core::uptake {

/// How fast salt spreads in lean pork, with how little is known about it. All log-normal; sources
/// read as abstracts.
///   D at 5 C   2.5e-10 m2/s, 95 % within 1.2e-10 to 6e-10 (pork loin in brine (1.90 +- 0.28)e-10
///              at 5 C, doi 10.1007/978-1-4939-2578-0_47; 3e-10 to 7e-10 by imaging, Hansen 2008,
///              Meat Sci 80: 851)
///   Ea         25 kJ/mol, 95 % within 15 to 40: a judgement; none was found for salt itself
///              (nitrate across the fibre 24.7, doi 10.1016/j.jfoodeng.2017.06.028)
///   thawed     x 1.3 after freezing and thawing, 95 % within 1.0 to 1.6 (one study of ham, 30 %)
/// `quantile` is a standard normal deviate: 0 the median, -1.2816 and +1.2816 the 10th and 90th
/// percentile.
units::Diffusivity salt_diffusivity(units::Temperature t, bool thawed, double quantile = 0);

/// p10, median, p90.
base::Interval<units::Diffusivity> salt_diffusivity_range(units::Temperature t, bool thawed);

/// Below this meat is frozen enough that salt stands still (lean meat begins to freeze at -1 to
/// -2 C; from memory).
inline constexpr units::Temperature freezing_meat = units::Temperature::celsius(-2);

/// A stretch of time at one temperature.
struct Spell {
    units::Duration lasts;
    units::Temperature temperature;
    bool frozen = false; ///< in the freezer whatever the temperature says
    [[nodiscard]] bool paused() const { return frozen || temperature < freezing_meat; }
};

/// Turns clock time into diffusion path: the integral of D dt over `spells`, then at `after` for
/// ever. Frozen spells add nothing.
class CureClock {
  public:
    CureClock(std::vector<Spell> spells, const Spell& after, bool thawed, double quantile = 0);

    /// Integral of D from the start, m2.
    [[nodiscard]] double path_m2(units::Duration since_start) const;
    /// The moment the path reaches this length; nullopt when it never does (frozen for good).
    [[nodiscard]] std::optional<units::Duration> time_at(double path_m2) const;

  private:
    [[nodiscard]] double rate(const Spell& spell) const; ///< m2/s

    std::vector<Spell> spells_;
    Spell after_;
    bool thawed_;
    double quantile_;
};

} // namespace core::uptake
