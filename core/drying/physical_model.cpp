#include "core/drying/physical_model.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace core::drying {

namespace {

constexpr std::size_t cells = 10;
constexpr double density = 1060; // kg/m3, lean meat
constexpr double seconds_per_day = 86400;
constexpr double water_in_fat = 0.08;
/// Isotherm: moisture = A (a / (wet - a))^B, Oswin's form with the ceiling that salt sets to the
/// water activity of wet meat. A is fitted; B and the ceiling are middle values for cured meat.
constexpr double isotherm_power = 0.55;
constexpr double wet_activity = 0.975;

struct Grid {
    std::array<double, cells + 1> face{};
    std::array<double, cells> link{}; ///< 1 / distance of centres, to the cell before
    double face_link = 0;             ///< 1 / distance from the last centre to the surface
    std::array<std::array<double, cells + 1>, 3> area{};
    std::array<std::array<double, cells>, 3> volume{};
};

Grid make_grid() {
    Grid g;
    for (std::size_t i = 0; i <= cells; ++i) {
        g.face[i] = 1 - std::pow(1 - static_cast<double>(i) / cells, 1.6);
    }
    for (std::size_t i = 1; i < cells; ++i) {
        g.link[i] = 2 / (g.face[i + 1] - g.face[i - 1]);
    }
    g.face_link = 2 / (g.face[cells] - g.face[cells - 1]);
    for (std::size_t k = 0; k < 3; ++k) {
        const double power = static_cast<double>(k);
        for (std::size_t i = 0; i <= cells; ++i) {
            g.area[k][i] = (power + 1) * std::pow(g.face[i], power);
        }
        for (std::size_t i = 0; i < cells; ++i) {
            g.volume[k][i] = std::pow(g.face[i + 1], power + 1) - std::pow(g.face[i], power + 1);
        }
    }
    return g;
}

const Grid& grid() {
    static const Grid g = make_grid(); // constant
    return g;
}

double held_in_range(double humidity) {
    return std::clamp(humidity, 0.15, 0.955);
}

/// The body as hung: shares of the hung weight.
struct Hung {
    double water;
    double lean_dry;
};

Hung hung_state(const Kinetics& k, const Body& body, double cure_loss) {
    const double water = std::clamp(k.water, 0.1, 0.8);
    const double lean_dry = std::max(0.03, (1 - body.fat) - (water - water_in_fat * body.fat));
    const double left = 1 - cure_loss;
    return {std::max(0.05, (water - cure_loss) / left), lean_dry / left};
}

/// Marches one body through time. Moisture u is relative to the hung state.
class March {
  public:
    March(const Kinetics& k, const Body& body, const Hung& hung)
        : g_(static_cast<std::size_t>(body.geometry)), k_(&k), water_(hung.water),
          diffusion_(std::exp(k.log_diffusivity) / (body.depth_m * body.depth_m) * seconds_per_day),
          film_(std::exp(k.log_film) / (density * hung.water * body.depth_m) * seconds_per_day),
          log_shift_((std::log(hung.water / hung.lean_dry) - k.log_isotherm) / isotherm_power),
          shrinkage_(std::clamp(k.shrinkage, -0.5, 1.3)) {
        u_.fill(1.0);
    }

    [[nodiscard]] double loss() const { return loss_; } ///< share of the hung weight

    void step(double days, const AirStep& air, double humidity) {
        const Grid& grid_ = grid();
        // Moisture is followed in the solids; a shrunken body has shorter ways and less face.
        const double left = std::max(0.3, 1 - shrinkage_ * loss_);
        const double ways = g_ == 0   ? 1 / (left * left)
                            : g_ == 1 ? 1 / left
                                      : 1 / std::cbrt(left * left);
        const double face = g_ == 0 ? 1.0 : g_ == 1 ? std::sqrt(left) : std::cbrt(left * left);
        const double d0 = diffusion_ * air.diffusivity_factor * ways;
        for (std::size_t i = 0; i < cells; ++i) {
            d_[i] = d0 * std::exp(-k_->slackening * (1 - u_[i]));
        }
        const double d_face =
            d0 * std::exp(-k_->slackening * (1 - 0.5 * (u_[cells - 1] + std::exp(log_face_))));
        double before = 0;
        for (std::size_t i = 0; i < cells; ++i) {
            const double after = i + 1 < cells ? grid_.area[g_][i + 1] * 0.5 * (d_[i] + d_[i + 1]) *
                                                     grid_.link[i + 1]
                                               : grid_.area[g_][cells] * d_face * grid_.face_link;
            const double v = grid_.volume[g_][i] / days;
            double diagonal = v + before + after;
            double right = v * u_[i];
            if (i > 0) {
                diagonal -= before * c_[i - 1];
                right += before * e_[i - 1];
            }
            c_[i] = after / diagonal;
            e_[i] = right / diagonal;
            before = after;
        }
        // The last cell is now e + c * (moisture of the face); the face follows from the film.
        solve_face(before, film_ * face * air.saturated_vapour * grid_.area[g_][cells],
                   held_in_range(humidity));
        u_[cells - 1] = e_[cells - 1] + c_[cells - 1] * std::exp(log_face_);
        double mean = grid_.volume[g_][cells - 1] * u_[cells - 1];
        for (std::size_t i = cells - 1; i-- > 0;) {
            u_[i] = e_[i] + c_[i] * u_[i + 1];
            mean += grid_.volume[g_][i] * u_[i];
        }
        loss_ = water_ * (1 - mean);
    }

  private:
    void solve_face(double inner, double outer, double humidity) {
        const double e = e_[cells - 1];
        const double c = c_[cells - 1];
        for (int i = 0; i < 40; ++i) {
            const double u = std::exp(log_face_);
            const double s = 1 / (1 + std::exp(-(log_face_ / isotherm_power + log_shift_)));
            const double f = inner * (e - (1 - c) * u) - outer * (wet_activity * s - humidity);
            const double slope =
                -inner * (1 - c) * u - outer * wet_activity * s * (1 - s) / isotherm_power;
            const double move = std::clamp(-f / slope, -1.0, 1.0);
            log_face_ += move;
            if (std::abs(move) < 1e-9) {
                break;
            }
        }
    }

    std::size_t g_;
    const Kinetics* k_;
    double water_;
    double diffusion_; ///< per day, of the depth's square
    double film_;      ///< per day and kg/m3 of vapour
    double log_shift_;
    double shrinkage_;
    double loss_ = 0;
    double log_face_ = 0; ///< ln of the face's moisture
    std::array<double, cells> u_{}, d_{}, c_{}, e_{};
};

} // namespace

void PhysicalModel::run(const Kinetics& k, const StartState& start, double until_day, double target,
                        double ahead_offset, LossCurve& out) const {
    out.clear();
    const double left = 1 - start.cure_loss;
    March march(k, *body_, hung_state(k, *body_, start.cure_loss));
    const auto loss = [&] { return start.cure_loss + left * march.loss(); };
    if (air_->steps.empty()) {
        out.add(0, loss());
        return;
    }
    // Drying before the first weighing: in the first day's air, as long as it takes.
    double days = 0.1;
    for (int i = 0; i < 80 && loss() < start.cure_loss + start.dried_loss; ++i) {
        const AirStep& air = air_->steps.front();
        march.step(days, air, air.humidity + k.humidity_offset);
        days *= 1.15;
    }
    // Ends a step late; the curve is moved so that it begins at the weighed loss.
    const double early = start.dried_loss > 0 ? loss() - start.cure_loss - start.dried_loss : 0.0;
    double t = 0;
    out.add(0, loss() - early);
    for (const AirStep& air : air_->steps) {
        const double offset = k.humidity_offset + (t >= air_->now_day ? ahead_offset : 0.0);
        march.step(air.days, air, air.humidity + offset);
        t += air.days;
        out.add(t, loss() - early);
        if (t >= until_day && out.loss.back() >= target) {
            break;
        }
    }
}

double PhysicalModel::levelling_loss(const Kinetics& k, const StartState& start,
                                     double humidity) const {
    const Hung hung = hung_state(k, *body_, start.cure_loss);
    const double a = held_in_range(humidity + k.humidity_offset);
    const double rest = std::exp(k.log_isotherm) * std::pow(a / (wet_activity - a), isotherm_power);
    const double lost = std::max(0.0, hung.water - rest * hung.lean_dry);
    return start.cure_loss + (1 - start.cure_loss) * lost;
}

} // namespace core::drying
