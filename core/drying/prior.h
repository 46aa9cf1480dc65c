#pragma once

#include "core/drying/physical_model.h"
#include "core/model/piece.h"
#include "core/units/length.h"
#include "core/units/mass_share.h"

#include <array>
#include <cstddef>
#include <optional>
#include <span>

namespace core::drying {

/// The fitted numbers, in the order of every parameter vector of this layer. Vectors hold them as
/// scores: (value - prior mean) / prior standard deviation.
enum Parameter : std::size_t {
    log_diffusivity,
    slackening,
    log_film,
    water,
    log_isotherm,
    humidity_offset,
    shrinkage,
    hung_weight, ///< grams; what the first weighing would have read without error
    parameter_count,
};
inline constexpr std::size_t kinetic_count = hung_weight;

using Scores = std::array<double, parameter_count>;

/// What is known of a piece before it is weighed.
struct PieceTraits {
    model::Form form = model::Form::slab;
    std::optional<units::Length> thickness; ///< > 0
    std::optional<units::MassShare> fat;    ///< 0 to 1, of the reference weight
    model::SkinSide skin = model::SkinSide::none;
};

/// What the user's own finished pieces taught: how far, in prior standard deviations, they lie
/// from the general prior, and how much narrower they are. Made by learn_prior (history.h).
struct LearntPrior {
    std::array<double, kinetic_count> shift{};
    std::array<double, kinetic_count> scale{1, 1, 1, 1, 1, 1, 1};
    int pieces = 0; ///< finished pieces behind it
};

struct Prior {
    Body body;
    Scores mean{};
    Scores sd{};
    [[nodiscard]] Kinetics kinetics(std::span<const double> scores) const;
    [[nodiscard]] double hung_grams(std::span<const double> scores) const {
        return mean[hung_weight] + sd[hung_weight] * scores[hung_weight];
    }
};

/// Log-normal rates and normal shares. Medians and widths start from published ranges (water
/// diffusivity in drying meat at 2 to 20 C 7e-12 to 3.6e-10 m2/s, film 3 to 15 W/(m2 K), lean meat
/// 72 to 76 % water) and were then settled on virtual pieces; see DEVELOPERS.md, "Forecast".
/// Without a thickness 70 mm is assumed and the rates are less certain by a factor 2.
Prior make_prior(const PieceTraits& traits, double first_grams, bool air_known,
                 const LearntPrior* learnt = nullptr);

} // namespace core::drying
