#pragma once

#include <cstddef>
#include <optional>
#include <vector>

/// Exact solutions of Fick's second law with constant diffusivity D, as series over the roots of
/// a boundary equation: J. Crank, The Mathematics of Diffusion (2nd ed., 1975), ch. 4 to 6.
///
/// Everything is dimensionless. Time is the Fourier number Fo = D t / l^2 with l the half
/// thickness of a sheet that is open on both faces (the whole thickness when one face is sealed)
/// or the radius. Place x is 0 at the centre and 1 at the open surface. Uptake and level are
/// shares of what they come to in the end: M(t)/M(inf) and C(x,t)/C(inf).
namespace core::uptake {

enum class Body { sheet, cylinder, sphere };

class DiffusionSeries {
  public:
    /// The surface is held at the final level (a piece buried in salt). Crank eq. 4.18, 5.23, 6.20.
    static DiffusionSeries constant_surface(Body body);
    /// A film or surface resistance; biot = l k / D > 0 is Crank's L. Eq. 4.53, 5.49, 6.43.
    static DiffusionSeries surface_resistance(Body body, double biot);
    /// A well-stirred solution of limited volume holds the salt; outside_ratio >= 0 is Crank's
    /// alpha: the outside water over the piece's water. The share of the salt that ends in the
    /// piece is 1/(1 + alpha). 0 means all of it is on the surface at the start (a dry rub).
    /// Eq. 4.37, 5.33, 6.30.
    static DiffusionSeries limited_volume(Body body, double outside_ratio);

    /// The roots q_1 < q_2 < ... of the boundary equation, as many as the series uses.
    [[nodiscard]] const std::vector<double>& roots() const { return roots_; }

    /// M(t)/M(inf), 0 to 1; monotone in fo. Better than 1e-10 for fo >= least_fourier; below, it
    /// follows the square root of time down to 0 (for a resistance: time itself).
    [[nodiscard]] double uptake(double fo) const;
    /// C(x,t)/C(inf) at x in [0, 1]. Times below least_fourier count as that time.
    [[nodiscard]] double level(double fo, double x) const;
    [[nodiscard]] double centre(double fo) const { return level(fo, 0.0); }

    /// The Fourier number at which uptake (or the centre's level) reaches `share` in (0, 1).
    /// nullopt for other shares, and for an uptake that is complete from the start.
    [[nodiscard]] std::optional<double> fourier_at_uptake(double share) const;
    [[nodiscard]] std::optional<double> fourier_at_centre(double share) const;

    /// The shortest time the stored terms resolve (200 terms: 9e-5, a few minutes for a slice).
    static constexpr double least_fourier = 1e-4;

  private:
    DiffusionSeries(Body body, std::vector<double> roots) : body_(body), roots_(std::move(roots)) {}

    Body body_;
    std::vector<double> roots_;
    std::vector<double> uptake_weights_; ///< M = 1 - sum w exp(-q^2 Fo)
    std::vector<double> level_weights_;  ///< C = 1 - sum w shape(q x) exp(-q^2 Fo)
    double early_power_ = 0.5;           ///< uptake ~ Fo^power at the very start
};

/// A piece that took up salt at a constant surface and then rests, sealed: how the salt evens
/// out. Expands the profile left by constant_surface at `fo_salting` over the roots of the sealed
/// body (derived from Crank eq. 4.17, 5.22, 6.18; the mean stays, by construction).
class RestingSeries {
  public:
    explicit RestingSeries(Body body);
    /// 1 - C(0)/C(inf) at the centre, fo_rest after the salt was taken off.
    [[nodiscard]] double centre_deficit(double fo_salting, double fo_rest) const;
    /// 1 - M(t)/M(inf) at the end of salting; rest does not change it.
    [[nodiscard]] double mean_deficit(double fo_salting) const;

  private:
    DiffusionSeries salting_;
    std::vector<double> roots_;       ///< of the sealed body
    std::vector<double> edge_values_; ///< the eigenfunction at x = 1
};

} // namespace core::uptake
