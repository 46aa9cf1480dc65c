#include "core/drying/history.h"

#include "core/drying/piece_fit.h"
#include "core/drying/posterior.h"

#include <cmath>
#include <vector>

namespace core::drying {

namespace {

using numeric::Cholesky;
using numeric::SquareMatrix;

constexpr double general_pieces = 10; // the general prior's weight in pieces
constexpr double mean_sd = 0.7;       // how far a user's pieces lie from the general mean
constexpr int rounds = 25;

/// What one piece says by itself: its posterior with the general prior taken out.
struct Evidence {
    SquareMatrix precision{kinetic_count};
    std::array<double, kinetic_count> pull{}; ///< precision times mean
};

std::optional<Evidence> evidence_of(const ForecastRequest& request) {
    const auto piece = prepare(request);
    if (!piece || piece->input.points.size() < 5) {
        return std::nullopt;
    }
    const PieceFit fit = fit_piece(*piece);
    const double target = request.target.as_fraction();
    const Posterior posterior(fit.curve, target);
    if (posterior.loss_at(piece->input.air.now_day).p50 < 0.5 * target) {
        return std::nullopt;
    }
    SquareMatrix covariance(kinetic_count);
    for (std::size_t i = 0; i < kinetic_count; ++i) {
        for (std::size_t j = 0; j < kinetic_count; ++j) {
            covariance(i, j) = posterior.score_covariance()(i, j);
        }
        covariance(i, i) += 0.01; // samples are finite: no number is known that well
    }
    const auto factor = Cholesky::of(covariance);
    if (!factor) {
        return std::nullopt;
    }
    Evidence e;
    e.precision = factor->inverse();
    for (std::size_t i = 0; i < kinetic_count; ++i) {
        for (std::size_t j = 0; j < kinetic_count; ++j) {
            e.pull[i] += e.precision(i, j) * posterior.mean_scores()[j];
        }
    }
    return e;
}

/// One round: each piece under the present hierarchy, then the hierarchy from the pieces.
void improve(const std::vector<Evidence>& pieces, LearntPrior& prior) {
    std::array<double, kinetic_count> sum{};
    std::vector<std::array<double, kinetic_count>> means;
    std::vector<std::array<double, kinetic_count>> variances;
    for (const Evidence& e : pieces) {
        SquareMatrix precision = e.precision;
        std::vector<double> pull(e.pull.begin(), e.pull.end());
        for (std::size_t i = 0; i < kinetic_count; ++i) {
            const double own = 1 / (prior.scale[i] * prior.scale[i]);
            precision(i, i) += own - 1; // the general prior out, this one in
            pull[i] += own * prior.shift[i];
        }
        const auto factor = Cholesky::of(precision);
        if (!factor) {
            continue; // said less than the general prior: nothing left without it
        }
        factor->solve(pull);
        const SquareMatrix covariance = factor->inverse();
        auto& mean = means.emplace_back();
        auto& variance = variances.emplace_back();
        for (std::size_t i = 0; i < kinetic_count; ++i) {
            mean[i] = pull[i];
            variance[i] = covariance(i, i);
            sum[i] += pull[i];
        }
    }
    const double n = static_cast<double>(means.size());
    for (std::size_t i = 0; i < kinetic_count; ++i) {
        const double own = prior.scale[i] * prior.scale[i];
        prior.shift[i] = sum[i] / (n + own / (mean_sd * mean_sd));
        double spread = general_pieces;
        for (std::size_t k = 0; k < means.size(); ++k) {
            spread += std::pow(means[k][i] - prior.shift[i], 2) + variances[k][i];
        }
        prior.scale[i] = std::sqrt(spread / (n + general_pieces));
    }
}

} // namespace

LearntPrior learn_prior(std::span<const ForecastRequest> finished) {
    std::vector<Evidence> pieces;
    for (const ForecastRequest& request : finished) {
        ForecastRequest plain = request;
        plain.learnt.reset();
        if (auto e = evidence_of(plain)) {
            pieces.push_back(std::move(*e));
        }
    }
    LearntPrior prior;
    if (pieces.size() < 2) {
        return prior;
    }
    for (int i = 0; i < rounds; ++i) {
        improve(pieces, prior);
    }
    prior.pieces = static_cast<int>(pieces.size());
    return prior;
}

} // namespace core::drying
