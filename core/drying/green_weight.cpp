#include "core/drying/green_weight.h"

#include "core/drying/history.h"
#include "core/drying/piece_fit.h"
#include "core/numeric/quasi_random.h"

#include <algorithm>
#include <cmath>

namespace core::drying {

namespace {

using numeric::Weighted;

constexpr std::size_t draws = 256;
/// What two pieces that hang side by side still differ by, of the loss (common practice, no
/// source: position, trim and grain).
constexpr double sibling_spread = 0.06;

/// Siblings' mean scores and spread; the general prior where there are too few.
LearntPrior from_siblings(std::span<const ForecastRequest> siblings) {
    LearntPrior learnt = learn_prior(siblings);
    if (learnt.pieces < 2) {
        return learnt;
    }
    // Pieces of one batch are nearer to each other than finished pieces over the years: the
    // weight that learn_prior keeps for the general prior is taken back in part.
    for (double& scale : learnt.scale) {
        scale *= 0.6;
    }
    return learnt;
}

} // namespace

std::optional<GreenWeightEstimate>
estimate_green_weight(const ForecastRequest& piece, units::Instant hung,
                      std::span<const ForecastRequest> siblings) {
    const NetWeight* last = nullptr;
    for (const NetWeight& w : piece.weighings) {
        if (w.net.in_grams() > 0 && w.at > hung && (last == nullptr || w.at > last->at)) {
            last = &w;
        }
    }
    if (last == nullptr) {
        return std::nullopt;
    }
    const double age = (last->at - hung).in_days();
    const AirPath air = make_air_path(piece.air, hung, last->at, age + 1);
    const LearntPrior learnt = from_siblings(siblings);
    const Prior prior = make_prior(piece.traits, last->net.in_grams(), air.known,
                                   learnt.pieces > 0 ? &learnt : nullptr);
    const PhysicalModel model(prior.body, air);
    const numeric::QuasiRandom normals(draws, kinetic_count + 1);
    std::vector<Weighted> losses;
    LossCurve curve;
    // Weighings before the last constrain the curve: loss ratios between them are known exactly.
    for (std::size_t i = 0; i < draws; ++i) {
        const auto u = normals.point(i);
        model.run(prior.kinetics(u.first(kinetic_count)), {}, age, 0, 0, curve);
        const double own = std::exp(sibling_spread * u[kinetic_count]);
        const double lost = std::clamp(curve.at(age) * own, 0.0, 0.75);
        double misfit = 0;
        for (const NetWeight& w : piece.weighings) {
            const double day = (w.at - hung).in_days();
            if (day < 0 || &w == last || w.net.in_grams() <= 0) {
                continue;
            }
            const double expected =
                last->net.in_grams() * (1 - std::min(0.75, curve.at(day) * own)) / (1 - lost);
            const double sd = 3 + 0.01 * w.net.in_grams();
            misfit += std::pow((w.net.in_grams() - expected) / sd, 2);
        }
        losses.push_back({lost, std::exp(-0.5 * misfit) + 1e-12});
    }
    std::sort(losses.begin(), losses.end(),
              [](const Weighted& a, const Weighted& b) { return a.value < b.value; });
    double total = 0;
    for (const Weighted& w : losses) {
        total += w.weight;
    }
    const auto loss = [&](double p) {
        return numeric::weighted_quantile(losses, p, total * (1 - 1e-12));
    };
    const auto start = [&](double p) { return last->net / (1 - loss(p)); };
    return GreenWeightEstimate{.weight = {start(0.1), start(0.5), start(0.9)},
                               .loss = {units::MassShare::fraction(loss(0.1)),
                                        units::MassShare::fraction(loss(0.5)),
                                        units::MassShare::fraction(loss(0.9))},
                               .siblings = learnt.pieces};
}

} // namespace core::drying
