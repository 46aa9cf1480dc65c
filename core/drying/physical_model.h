#pragma once

#include "core/drying/air_path.h"
#include "core/drying/loss_curve.h"

#include <cstddef>

namespace core::drying {

enum class Geometry { slab = 0, cylinder = 1, round = 2 };

/// The solid that stands for the piece.
struct Body {
    Geometry geometry = Geometry::slab;
    double depth_m = 0.03; ///< from the drying face to the middle (or to a sealed face)
    double fat = 0.15;     ///< share of the reference weight; holds 8 % water, gives none up
};

/// What decides how a body dries. Water moves to the face by diffusion that slackens as the meat
/// dries, leaves it through the air film, and stops where the lean's isotherm meets the air.
struct Kinetics {
    double log_diffusivity; ///< ln of m2/s, wet meat at 13 C
    double slackening;      ///< ln of the diffusivity falls by this from wet to bone dry
    double log_film;        ///< ln of the film's mass transfer coefficient, m/s
    double water;           ///< share of the reference weight
    double log_isotherm;    ///< ln of the lean's moisture (kg/kg dry) at 49 % humidity
    double humidity_offset; ///< true minus logged (or usual) humidity, share
    double shrinkage;       ///< share of the lost water's volume by which the body shrinks
};

/// How the reference weight became the first weighing.
struct StartState {
    double cure_loss = 0;  ///< share lost evenly before hanging (salting, resting)
    double dried_loss = 0; ///< share lost by drying before the first weighing
};

/// Implicit finite volumes on ten cells, thin at the face; lagged diffusivity, the face's own
/// moisture solved exactly in each step. Within 0.005 of a fine grid's loss, mostly 0.002 (see
/// tests/core/drying/physical_model_test.cpp).
class PhysicalModel {
  public:
    PhysicalModel(const Body& body, const AirPath& air) : body_(&body), air_(&air) {}

    /// Fills `out` from day 0 (the first weighing) on, through `until_day` and further until the
    /// loss reaches `target` or the air path ends. `ahead_offset` is added to the humidity (share)
    /// after the air path's now_day.
    void run(const Kinetics& k, const StartState& start, double until_day, double target,
             double ahead_offset, LossCurve& out) const;

    /// The loss at which the body is at rest with air of this humidity (share).
    [[nodiscard]] double levelling_loss(const Kinetics& k, const StartState& start,
                                        double humidity) const;

  private:
    const Body* body_;
    const AirPath* air_;
};

} // namespace core::drying
