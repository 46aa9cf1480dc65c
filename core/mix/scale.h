#pragma once

#include "core/units/mass.h"
#include "core/units/mass_share.h"

#include <optional>
#include <string>
#include <vector>

/// What a scale's step does to a small dose, and the ways out.
namespace core::mix {

/// Half a step as a share of the amount: the dose error of a reading that is right to the step.
/// `amount` and `step` more than zero.
[[nodiscard]] double half_step_error(units::Mass amount, units::Mass step);

/// To the nearest step; exact halves up.
[[nodiscard]] units::Mass round_to_step(units::Mass amount, units::Mass step);
[[nodiscard]] units::Mass round_down_to_step(units::Mass amount, units::Mass step);

/// Some of a batch of cure mixed beforehand, so that a coarse scale weighs larger amounts.
struct PreBlend {
    struct Part {
        std::size_t line;
        units::Mass mass; ///< in the batch, on the scale's step
    };
    std::vector<Part> parts;
    units::Mass batch = units::Mass::grams(0);   ///< all parts together
    units::Mass portion = units::Mass::grams(0); ///< of the batch for this meat
    double error = 0; ///< worst relative error of a cure's dose, both weighings together
};

/// For one line that the scale is too coarse for.
struct ScaleAdvice {
    std::size_t line = 0;
    units::Mass amount = units::Mass::grams(0);
    double error = 0;                      ///< half a step over the amount
    std::optional<units::Mass> finer_step; ///< the coarsest common step that is good enough
    std::optional<PreBlend> blend;
};

/// Doses are wanted to within this much.
inline constexpr double wanted_dose_error = 0.05;

/// A line as the scale sees it.
struct ScaleLine {
    std::size_t line = 0;
    units::Mass amount = units::Mass::grams(0);
    bool is_cure = false;               ///< holds nitrite or nitrate
    bool can_blend = false;             ///< dry, so that it can be mixed with the others beforehand
    std::optional<units::Mass> at_most; ///< more of it would pass a limit
};

/// Advice for each cure line with an error above wanted_dose_error: the coarsest step of 1, 0.1,
/// 0.01 or 0.001 g that is good enough, and the smallest batch (of 50 g steps, up to 20 kg) of
/// all dry lines mixed beforehand that brings the dose within bounds on this scale; no blend
/// where the portion itself would be too small for the scale.
std::vector<ScaleAdvice> advise_scale(const std::vector<ScaleLine>& lines, units::Mass step);

} // namespace core::mix
