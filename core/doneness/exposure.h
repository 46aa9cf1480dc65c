#pragma once

#include "core/base/cited.h"
#include "core/base/interval.h"
#include "core/facts/hurdles.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <vector>

/// How long a piece was where named organisms can grow. A record to weigh up, no prediction: the
/// growth models are of laboratory media at the best pH, without nitrite or competitors.
namespace core::doneness {

/// Time at one temperature with the piece's water activity then, as far as known (unknown counts
/// as wet enough to grow).
struct WarmSpell {
    units::Duration lasts;
    units::Temperature temperature;
    std::optional<base::Interval<units::WaterActivity>> activity;
};

struct OrganismExposure {
    std::string id;
    std::string name;
    /// Time in which temperature lay in its range and activity might have (judged by the wet end).
    units::Duration in_range = units::Duration::seconds(0);
    /// Growth rate relative to its best, averaged over in_range, where a cardinal model is known.
    std::optional<double> relative_rate;
    /// Growth that rate would allow, log10 units, counted without lag. Only for up to 48 hours in
    /// range: over longer times salt, drying and other microbes decide, and the figure would
    /// mislead.
    std::optional<double> log10_possible;
    base::Source range_source;
    std::optional<base::Source> rate_source;
};

/// Growth rate of Staphylococcus aureus relative to its optimum, 0 to 1: cardinal model with
/// T 7.7 / 40.6 / 46.7 C and aw 0.808 / 0.994 / 1 (Medvedova 2019, doi 10.4081/ijfs.2019.8287;
/// the product form CM2 from memory). Zero outside.
double staphylococcus_relative_rate(units::Temperature t, units::WaterActivity activity);
/// Its rate at the optimum, 1.97 per hour (natural logarithm), same source.
inline constexpr double staphylococcus_best_rate_per_hour = 1.97;

/// Growth of Listeria monocytogenes at t relative to 5 C: ((T + 1.18)/6.18)^2, T in C (square-root
/// model, derived from the conversion table of FSIS/FDA guidance); 0 below -1.18 C and above 45.
double listeria_rate_relative_to_5c(units::Temperature t);

std::vector<OrganismExposure> exposure_of(const std::vector<WarmSpell>& spells,
                                          const facts::Hurdles& hurdles);

} // namespace core::doneness
