#pragma once

#include "core/base/interval.h"
#include "core/model/finding.h"
#include "core/model/piece.h"
#include "core/units/length.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"
#include "core/units/temperature.h"
#include "core/units/time.h"
#include "core/uptake/day_rules.h"
#include "core/uptake/salt_diffusivity.h"

#include <optional>
#include <string>
#include <vector>

/// How long a piece needs in its cure, by diffusion, beside the trade's day rules.
namespace core::uptake {

struct CureRequest {
    model::Form form = model::Form::slab;
    units::Length thickness;             ///< at the thickest point; diameter of cylinder and round
    std::optional<units::Length> width;  ///< block, slab: second side; unknown counts as endless
    std::optional<units::Length> length; ///< block, slab, cylinder: third side; likewise
    model::SkinSide skin = model::SkinSide::none; ///< skin or a thick fat cap: no salt passes
    CureMethod method = CureMethod::weighed;
    /// weighed: salt put on, of the raw weight. excess_salt: the mean wanted in the piece when it
    /// is taken out. immersion: salt in piece and brine together, of the raw weight.
    units::MassShare salt = units::MassShare::percent(2.75);
    std::optional<units::Mass> weight;   ///< for the weight rules
    std::optional<units::MassShare> fat; ///< of the raw weight
    /// Water outside the piece that holds salt (juice in the bag, the brine), of the raw weight.
    /// Default: 3 % for weighed (juice lost in cure 2 to 5 %), 100 % for immersion.
    std::optional<units::MassShare> outside_water;
    std::vector<Spell> spells; ///< what the cure went through so far; may be empty
    units::Temperature temperature = units::Temperature::celsius(4); ///< from then on
    bool thawed_meat = false;                ///< frozen and thawed before the cure
    std::optional<units::Duration> planned;  ///< the time in cure a person means to give
    std::optional<std::string> planned_rule; ///< the rule it came from (DayRule::id)
    double evenness = 0.9; ///< "even" is: centre holds this share of the piece's mean, 0.5 to 0.99
};

/// One day of the picture: salt of the raw weight, mean of the piece and at its centre, at low,
/// median and high diffusivity.
struct CurePoint {
    units::Duration since_start;
    base::Interval<units::MassShare> mean;
    base::Interval<units::MassShare> centre;
};

/// Durations are p10, p50 and p90 of what is known about diffusivity, counted from the start of
/// the cure with frozen time in them; absent where a stop finding says why or the piece stays
/// frozen.
struct CureEstimate {
    /// Until the salt is in: weighed and immersion, 95 % of what the piece will ever take up;
    /// excess_salt, the wanted mean - the moment to take it out.
    std::optional<base::Interval<units::Duration>> salt_in;
    /// Until even: centre at `evenness` of the mean. For excess_salt this counts salting (for
    /// salt_in) and the rest after it, sealed, at the same temperature.
    std::optional<base::Interval<units::Duration>> even;
    /// Mean salt the piece comes to: of the raw weight, and of its lean (fat takes a third of
    /// what lean takes; range from that).
    units::MassShare final_mean = units::MassShare::fraction(0);
    std::optional<base::Interval<units::MassShare>> final_in_lean;
    /// What the centre holds after `planned`, as a share of the piece's final mean.
    std::optional<base::Interval<double>> centre_after_planned;
    std::vector<CurePoint> curve; ///< from 0 to beyond `even`, about 60 points
    std::vector<RuleDays> rules;
    model::Findings findings;
};

/// Pure. Bad input gives stop findings (all of them), never a failure:
///   thickness_out_of_range, side_out_of_range, salt_out_of_range, temperature_out_of_range,
///   outside_water_out_of_range, evenness_out_of_range, fat_out_of_range, no_open_face,
///   planned_out_of_range, salt_beyond_saturation, unknown_rule
/// Cautions and notes: cure_rules_disagree, rule_of_other_method, planned_shorter_than_even,
///   planned_longer_than_wanted (excess_salt), cure_too_warm, cure_too_cold, cure_paused_frozen,
///   still_frozen, rule_far_from_diffusion, sides_taken_endless, fat_slows_and_thins
CureEstimate estimate_cure(const CureRequest& request);

} // namespace core::uptake
