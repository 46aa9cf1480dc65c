#pragma once

#include "core/base/interval.h"
#include "core/doneness/exposure.h"
#include "core/facts/hurdles.h"
#include "core/model/finding.h"
#include "core/model/piece.h"
#include "core/units/length.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <optional>
#include <vector>

/// Finishing a nearly dry piece in warm air (a dehydrator, a low oven, a warm cupboard): how many
/// hours the rest of the loss takes, and what the warmth means for microbes. No verdict.
namespace core::doneness {

struct WarmFinishRequest {
    model::Form form = model::Form::slab;
    units::Length thickness;
    model::SkinSide skin = model::SkinSide::none;
    units::MassShare loss_now;    ///< of the target's reference weight
    units::MassShare loss_wanted; ///< of the same
    units::MassShare water_now;   ///< water of the piece as it is (Composition::water.best)
    units::Temperature air;
    units::RelativeHumidity humidity = units::RelativeHumidity::percent(30);
    /// What it lost per day lately, of the reference, and in what; the better start for the sum.
    std::optional<units::MassShare> rate_per_day;
    units::Temperature chamber = units::Temperature::celsius(13);
    std::optional<units::MassShare> levels_off_in_chamber; ///< where the chamber would stop it
    std::optional<base::Interval<units::WaterActivity>> activity;
};

struct WarmFinish {
    /// p10, p50, p90 of the hours in warm air; absent with target_not_reachable_warm or a stop.
    std::optional<base::Interval<units::Duration>> time;
    units::MassShare levels_off = units::MassShare::fraction(0); ///< best estimate, of reference
    std::vector<OrganismExposure> exposure;                      ///< over the median time
    model::Findings findings;
};

/// The loss approaches its end exponentially (first term of Fick's series). The rate constant is
/// the chamber's own, from rate_per_day and levels_off_in_chamber, or else pi^2 D / (4 l^2) (and
/// its like) with D at 13 C 5e-11 m2/s, 95 % within 7e-12 and 3.6e-10; both times
/// exp(Ea/R (1/T0 - 1/T)) with Ea 35 kJ/mol, 95 % within 15 and 60 (physics of cold-dried pork
/// and beef, sources in the mathematics guide). Of the water 8 % stays. Findings: stop -
/// warm_value_out_of_range; caution - warm_in_growth_range, warm_longer_than_guide, warm_while_wet,
/// warm_rim, target_not_reachable_warm; note - heat_leaves_toxin, warm_cooks, already_there.
WarmFinish warm_finish(const WarmFinishRequest& request, const facts::Hurdles& hurdles);

} // namespace core::doneness
