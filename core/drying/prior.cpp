#include "core/drying/prior.h"

#include <algorithm>
#include <cmath>

namespace core::drying {

namespace {

constexpr double wet_diffusivity = 6.5e-11; // m2/s, lean, 13 C
constexpr double diffusivity_sd = 1.0;      // of the logarithm
constexpr double diffusivity_per_fat = -0.9;
constexpr double film = 2.8e-3; // m/s; with casing and sheltered air below the bare film's value
constexpr double film_sd = 0.65;
constexpr double lean_water = 0.75;
constexpr double fat_water = 0.08;
constexpr double lean_water_sd = 0.014;
constexpr double usual_fat = 0.15;
constexpr double usual_fat_sd = 0.12;
constexpr double sensor_sd = 0.025; // share; hygrometers of this price are trusted to 2-3 points
constexpr double usual_depth_m = 0.035;
constexpr double unknown_depth_sd = 0.7; // of the logarithm of a rate

Geometry geometry_of(model::Form form) {
    switch (form) {
    case model::Form::slab:
        return Geometry::slab;
    case model::Form::cylinder:
    case model::Form::block: // four faces near each other: nearest to a cylinder
        return Geometry::cylinder;
    case model::Form::round:
        return Geometry::round;
    }
    return Geometry::slab;
}

} // namespace

Kinetics Prior::kinetics(std::span<const double> scores) const {
    const auto value = [&](std::size_t i) { return mean[i] + sd[i] * scores[i]; };
    return {.log_diffusivity = value(log_diffusivity),
            .slackening = value(slackening),
            .log_film = value(log_film),
            .water = value(water),
            .log_isotherm = value(log_isotherm),
            .humidity_offset = value(humidity_offset),
            .shrinkage = value(shrinkage)};
}

Prior make_prior(const PieceTraits& traits, double first_grams, bool air_known,
                 const LearntPrior* learnt) {
    Prior p;
    const bool thick_known = traits.thickness && traits.thickness->in_metres() > 0;
    p.body.geometry = geometry_of(traits.form);
    p.body.depth_m = thick_known ? traits.thickness->in_metres() / 2 : usual_depth_m;
    if (traits.skin == model::SkinSide::one_side && p.body.geometry == Geometry::slab) {
        p.body.depth_m *= 2; // skin lets little water through: dries from the other face only
    }
    p.body.fat = traits.fat ? std::clamp(traits.fat->as_fraction(), 0.0, 0.95) : usual_fat;
    const double fat = p.body.fat;
    p.mean[log_diffusivity] = std::log(wet_diffusivity) + diffusivity_per_fat * fat;
    p.sd[log_diffusivity] =
        thick_known ? diffusivity_sd : std::hypot(diffusivity_sd, unknown_depth_sd);
    p.mean[slackening] = 1.9;
    p.sd[slackening] = 1.3;
    p.mean[log_film] = std::log(film);
    p.sd[log_film] = film_sd;
    p.mean[water] = (1 - fat) * lean_water + fat * fat_water;
    p.sd[water] = traits.fat ? lean_water_sd
                             : std::hypot(lean_water_sd, (lean_water - fat_water) * usual_fat_sd);
    p.mean[log_isotherm] = std::log(0.22);
    p.sd[log_isotherm] = 0.2;
    p.mean[humidity_offset] = 0;
    p.sd[humidity_offset] = air_known ? sensor_sd : UsualAir{}.mean_sd_percent / 100;
    p.mean[shrinkage] = 0.35;
    p.sd[shrinkage] = 0.25;
    p.mean[hung_weight] = first_grams;
    p.sd[hung_weight] = 15 + 0.02 * first_grams; // the weighing itself says it better
    if (learnt != nullptr) {
        for (std::size_t i = 0; i < kinetic_count; ++i) {
            if (i == water && traits.fat) {
                continue; // the piece's own fat share is better news than other pieces'
            }
            p.mean[i] += p.sd[i] * learnt->shift[i];
            p.sd[i] *= learnt->scale[i];
        }
    }
    return p;
}

} // namespace core::drying
