#pragma once

#include "core/base/interval.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"

#include <optional>

/// Estimate of the water activity of salted, dried meat from its composition. An estimate for
/// sorting pieces, never a substitute for a measurement.
namespace core::doneness {

/// What the water of the lean sees, all of the piece's weight. Fat is left out: it holds next to
/// no water ("fat is ineffective in terms of aw", Handbook of Meat Processing p. 221).
struct LeanPhase {
    double water;  ///< kg
    double salt;   ///< kg dissolved in it
    double solids; ///< kg of lean dry matter other than salt
};

/// aw = aw(NaCl solution) x aw(lean without salt), both with all of the water (Ross). The second
/// follows a Halsey-type isotherm, ln aw = -a X^-1.575, X = water / solids. The shape is set by
/// points of unsalted pork from memory (X 0.42 at 0.90, 0.22 at 0.75); `a` is a judgement that
/// fits published products (pastirma 0.88 with 4.5 % salt, raw pork 0.99): median 0.035, 95 %
/// within 0.02 to 0.06. isotherm_quantile is its standard normal deviate. All masses positive.
units::WaterActivity estimated_activity(const LeanPhase& lean, double isotherm_quantile = 0);

/// The estimate with p10 and p90 of the isotherm alone, for a product given by shares of its
/// weight. `fat` is tissue with 15 % water and a third of the lean's salt content. nullopt when
/// the shares leave no water or no solids in the lean.
std::optional<base::Interval<units::WaterActivity>>
activity_of_product(units::MassShare salt, units::MassShare water,
                    std::optional<units::MassShare> fat = {});

} // namespace core::doneness
