#pragma once

#include "core/uptake/cure_time.h"
#include "core/uptake/diffusion_series.h"
#include "core/uptake/stirred_table.h"

#include <optional>
#include <vector>

/// The piece as a product of one-dimensional bodies, and its salt as a function of the diffusion
/// path (integral of D dt, m2). Used by cure_time.cpp; apart so that it can be tested alone.
namespace core::uptake {

/// One direction in which salt comes in.
struct Axis {
    Body body;
    double reach_m; ///< half thickness or radius; the whole thickness when one face is sealed
};

/// The directions of a piece; empty when no face is open. Skin on one side doubles the reach of
/// the first direction. An unknown side counts as endless: no salt from there.
std::vector<Axis> axes_of(const CureRequest& request);

/// Levels are relative to the final level.
class PieceUptake {
  public:
    virtual ~PieceUptake() = default;
    PieceUptake(const PieceUptake&) = delete;
    PieceUptake& operator=(const PieceUptake&) = delete;
    [[nodiscard]] virtual double mean(double path_m2) const = 0;
    [[nodiscard]] virtual double centre(double path_m2) const = 0;
    /// The path at which mean (centre) reaches `level` in (0, 1).
    [[nodiscard]] std::optional<double> path_at_mean(double level) const;
    [[nodiscard]] std::optional<double> path_at_centre(double level) const;

  protected:
    explicit PieceUptake(std::vector<Axis> axes) : axes_(std::move(axes)) {}
    [[nodiscard]] double longest_path() const; ///< by when anything is even
    std::vector<Axis> axes_;
};

/// Buried in salt: the directions multiply (Crank 2.5, "product solutions"), exactly.
class ExcessSaltUptake : public PieceUptake {
  public:
    explicit ExcessSaltUptake(std::vector<Axis> axes);
    [[nodiscard]] double mean(double path_m2) const override;
    [[nodiscard]] double centre(double path_m2) const override;
    /// Centre's level after salting for one path and resting, sealed, for another. Exact too: the
    /// deficit of a product stays a product when sealed.
    [[nodiscard]] double rested_centre(double salting_m2, double rest_m2) const;
    /// The rest after which the centre holds `share` of the mean.
    [[nodiscard]] std::optional<double> rest_until_even(double salting_m2, double share) const;

  private:
    std::vector<DiffusionSeries> salting_;
    std::vector<RestingSeries> resting_;
};

/// A given amount of salt in a little (or a lot of) liquid that reaches every open face alike: bag
/// juice that is turned now and then, or a brine. One direction: the exact series. Several: the
/// level in the liquid is found step by step from the balance (salt in liquid + salt in piece =
/// all) with the exact answer of the piece to a step at its surface (Duhamel's principle, Crank
/// 3.5); good to 1 % of the final level, see piece_uptake_test.cpp.
class LimitedSaltUptake : public PieceUptake {
  public:
    /// outside_ratio: water outside over water inside, >= 0.
    LimitedSaltUptake(std::vector<Axis> axes, double outside_ratio);
    [[nodiscard]] double mean(double path_m2) const override;
    [[nodiscard]] double centre(double path_m2) const override;

  private:
    std::optional<DiffusionSeries> exact_;
    std::optional<StirredTable> table_;
};

} // namespace core::uptake
