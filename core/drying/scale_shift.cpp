#include "core/drying/scale_shift.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace core::drying {

namespace {

struct Member {
    units::Instant at;
    std::size_t piece;
    std::size_t weighing;
};

/// Rounds of weighings: sorted by time, split where 12 h pass.
std::vector<std::vector<Member>> rounds_of(std::span<const PreparedPiece> pieces) {
    std::vector<Member> all;
    for (std::size_t p = 0; p < pieces.size(); ++p) {
        for (std::size_t i = 0; i < pieces[p].times.size(); ++i) {
            all.push_back({pieces[p].times[i], p, i});
        }
    }
    std::sort(all.begin(), all.end(), [](const Member& a, const Member& b) {
        return a.at != b.at ? a.at < b.at : a.piece < b.piece;
    });
    std::vector<std::vector<Member>> rounds;
    for (const Member& m : all) {
        if (rounds.empty() || (m.at - rounds.back().back().at).in_days() > 0.5) {
            rounds.emplace_back();
        }
        rounds.back().push_back(m);
    }
    return rounds;
}

/// What the pieces of one round say together about one kind of shift.
std::optional<ScaleShift> judge(const std::vector<Member>& round, std::span<const PieceFit> fits,
                                bool only_that_day) {
    struct Voice {
        Member member;
        StepEstimate step;
    };
    std::vector<Voice> voices;
    double weights = 0;
    double sum = 0;
    for (const Member& m : round) {
        const CurveFit& fit = fits[m.piece].curve;
        const bool first = m.weighing == 0;
        const bool repeated = !voices.empty() && voices.back().member.piece == m.piece;
        if (first || repeated || fit.input.points.size() < 3) {
            continue;
        }
        const StepEstimate step = estimate_step(fit, m.weighing, only_that_day);
        voices.push_back({m, step});
        weights += 1 / (step.sd * step.sd);
        sum += step.grams / (step.sd * step.sd);
    }
    if (voices.size() < 3) {
        return std::nullopt;
    }
    const double mean = sum / weights;
    const double sd = 1 / std::sqrt(weights);
    std::size_t clear = 0;
    std::size_t agree = 0;
    for (const Voice& v : voices) {
        if (v.step.grams / v.step.sd * (mean > 0 ? 1 : -1) > 2) {
            ++clear;
        }
        if (std::abs(v.step.grams - mean) < 3 * v.step.sd + 0.15 * std::abs(mean)) {
            ++agree;
        }
    }
    const double n = static_cast<double>(voices.size());
    const double least_grams = 5;
    if (std::abs(mean) < std::max(least_grams, 6 * sd) || static_cast<double>(clear) < 0.6 * n ||
        static_cast<double>(agree) < 0.8 * n) {
        return std::nullopt;
    }
    ScaleShift shift{.day = voices.front().member.at,
                     .grams = mean,
                     .sd = sd,
                     .only_that_day = only_that_day,
                     .pieces = {},
                     .weighings = {}};
    for (const Voice& v : voices) {
        shift.pieces.push_back(v.member.piece);
        shift.weighings.push_back(v.member.weighing);
    }
    return shift;
}

} // namespace

std::vector<ScaleShift> find_scale_shifts(std::span<const PreparedPiece> pieces,
                                          std::span<const PieceFit> fits) {
    std::vector<ScaleShift> found;
    if (pieces.size() < 3) {
        return found;
    }
    std::optional<ScaleShift> best;
    for (const auto& round : rounds_of(pieces)) {
        if (round.size() < 3) {
            continue;
        }
        for (const bool only : {false, true}) {
            const auto shift = judge(round, fits, only);
            if (shift &&
                (!best || std::abs(shift->grams) / shift->sd > std::abs(best->grams) / best->sd)) {
                best = shift;
            }
        }
    }
    if (best) {
        found.push_back(*best);
    }
    return found;
}

void take_out(const ScaleShift& shift, std::size_t weighing, PreparedPiece& piece) {
    auto& points = piece.input.points;
    const std::size_t end = shift.only_that_day ? weighing + 1 : points.size();
    for (std::size_t i = weighing; i < end; ++i) {
        points[i].grams -= shift.grams;
    }
}

} // namespace core::drying
