#include "core/planning/own_history.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

namespace core::planning {
namespace {

using units::Duration;
using units::MassShare;

bool same_time_of_year(units::Day a, units::Day b) {
    constexpr double year = 365.25;
    const double apart = std::fmod(std::abs(static_cast<double>(a - b)), year);
    return std::min(apart, year - apart) <= 45;
}

double median_of(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    const std::size_t middle = values.size() / 2;
    return values.size() % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
}

using Pointers = std::vector<const FinishedPiece*>;

/// Keeps only the pieces that agree, if that leaves enough. Says whether it did.
template <class Agrees>
bool narrow(Pointers& pieces, std::size_t least, Agrees agrees) {
    Pointers kept;
    std::copy_if(pieces.begin(), pieces.end(), std::back_inserter(kept),
                 [&](const auto* piece) { return agrees(*piece); });
    if (kept.size() < std::max<std::size_t>(1, least)) {
        return false;
    }
    pieces = std::move(kept);
    return true;
}

HistorySummary summary_of(const Pointers& pieces) {
    std::vector<double> days;
    std::vector<double> speeds;
    HistorySummary out{{}, base::Interval<Duration>::exactly(Duration::days(0)), {}};
    for (const auto* piece : pieces) {
        out.pieces.push_back(piece->piece);
        days.push_back(piece->dried_for().in_days());
        if (piece->loss && piece->dried_for() > Duration::days(0)) {
            speeds.push_back(piece->loss->in_percent() / piece->dried_for().in_weeks());
        }
    }
    const auto [low, high] = std::minmax_element(days.begin(), days.end());
    out.took = {Duration::days(*low), Duration::days(median_of(days)), Duration::days(*high)};
    if (!speeds.empty()) {
        const auto [slow, fast] = std::minmax_element(speeds.begin(), speeds.end());
        out.loss_per_week = base::Interval<MassShare>{MassShare::percent(*slow),
                                                      MassShare::percent(median_of(speeds)),
                                                      MassShare::percent(*fast)};
    }
    return out;
}

/// Student's t, 90 % one-sided, by degrees of freedom from 1 (standard table).
double t90(std::size_t freedom) {
    static constexpr std::array<double, 10> table{3.078, 1.886, 1.638, 1.533, 1.476,
                                                  1.440, 1.415, 1.397, 1.383, 1.372};
    constexpr double beyond = 1.372; // keeps the interval on the wide side from 11 on
    return freedom >= 1 && freedom <= table.size() ? table[freedom - 1] : beyond;
}

base::Interval<Duration> prediction(const std::vector<double>& days) {
    const auto n = static_cast<double>(days.size());
    double mean = 0;
    for (const double d : days) {
        mean += std::log(d) / n;
    }
    double squares = 0;
    for (const double d : days) {
        squares += std::pow(std::log(d) - mean, 2);
    }
    // Equal numbers are luck or rounding, not certainty.
    constexpr double least_spread = 0.05;
    const double spread = std::max(least_spread, std::sqrt(squares / (n - 1)));
    const double reach = t90(days.size() - 1) * spread * std::sqrt(1 + 1 / n);
    return {Duration::days(std::exp(mean - reach)), Duration::days(std::exp(mean)),
            Duration::days(std::exp(mean + reach))};
}

} // namespace

std::optional<HistorySummary> summarise(const std::vector<FinishedPiece>& finished,
                                        const Likeness& likeness, std::size_t most,
                                        std::size_t least) {
    Pointers pieces;
    for (const auto& piece : finished) {
        if (piece.product == likeness.product) {
            pieces.push_back(&piece);
        }
    }
    if (pieces.size() < std::max<std::size_t>(1, least)) {
        return std::nullopt;
    }
    const bool form = likeness.form && narrow(pieces, least, [&](const FinishedPiece& piece) {
                          return piece.form == *likeness.form;
                      });
    const bool chamber = likeness.chamber && narrow(pieces, least, [&](const FinishedPiece& piece) {
                             return piece.chamber == likeness.chamber;
                         });
    const bool season = likeness.hung_on && narrow(pieces, least, [&](const FinishedPiece& piece) {
                            return same_time_of_year(piece.hung, *likeness.hung_on);
                        });
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const auto* a, const auto* b) { return a->finished > b->finished; });
    pieces.resize(std::min(pieces.size(), std::max<std::size_t>(1, most)));
    HistorySummary out = summary_of(pieces);
    out.same_form = form;
    out.same_chamber = chamber;
    out.same_time_of_year = season;
    return out;
}

std::function<LengthSources::Answer(const PieceSpec&)>
own_drying(std::vector<FinishedPiece> finished, std::string product) {
    constexpr std::size_t enough = 3;
    return [finished = std::move(finished),
            product = std::move(product)](const PieceSpec& asked) -> LengthSources::Answer {
        std::vector<double> days;
        double farthest = 1;
        for (const auto& piece : finished) {
            if (piece.product != product || piece.form != asked.form ||
                piece.finished <= piece.hung) {
                continue;
            }
            const double ratio =
                piece.thickness && asked.thickness ? *asked.thickness / *piece.thickness : 1.0;
            if (std::abs(std::log(ratio)) > std::abs(std::log(farthest))) {
                farthest = ratio;
            }
            days.push_back(piece.dried_for().in_days() * std::pow(ratio, 1.5));
        }
        if (days.size() < enough) {
            return std::nullopt;
        }
        // Scaling by the middle exponent is itself unsure by the farther the thickness lies off.
        const auto own = prediction(days);
        const auto span =
            scaled_to_thickness(base::Interval<Duration>::exactly(Duration::days(1)), farthest);
        return base::Interval<Duration>{own.low * (span.low / span.best), own.best,
                                        own.high * (span.high / span.best)};
    };
}

MassShare finished_salt(MassShare dose, MassShare loss) {
    return dose / (1.0 - loss.as_fraction());
}

std::optional<Proposal> propose_next(const std::vector<FinishedPiece>& finished,
                                     const std::vector<model::Outcome>& outcomes,
                                     const std::string& product) {
    const FinishedPiece* newest = nullptr;
    const model::Outcome* said = nullptr;
    for (const auto& piece : finished) {
        if (piece.product != product || (newest != nullptr && piece.finished <= newest->finished)) {
            continue;
        }
        const auto outcome =
            std::find_if(outcomes.begin(), outcomes.end(),
                         [&](const model::Outcome& o) { return o.batch == piece.batch; });
        if (outcome != outcomes.end()) {
            newest = &piece;
            said = &*outcome;
        }
    }
    if (newest == nullptr) {
        return std::nullopt;
    }
    constexpr double step = 2.5;
    Proposal out;
    out.target_now = newest->target;
    out.salt_score = said->salt;
    out.texture_score = said->texture;
    out.words = said->change_next_time;
    const auto reached = newest->loss ? newest->loss : newest->target;
    if (said->texture && *said->texture != 0 && reached) {
        out.target_next = MassShare::percent(
            std::clamp(reached->in_percent() - step * *said->texture, 5.0, 70.0));
    }
    if (newest->salt_dose && reached && reached->as_fraction() < 1) {
        out.finished_salt = finished_salt(*newest->salt_dose, *reached);
        if (out.target_next) {
            out.same_salt_dose = *out.finished_salt * (1.0 - out.target_next->as_fraction());
        }
    }
    return out;
}

} // namespace core::planning
