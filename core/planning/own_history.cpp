#include "core/planning/own_history.h"

#include "core/numeric/log_prediction.h"

#include <algorithm>
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

base::Interval<Duration> prediction(const std::vector<double>& days) {
    constexpr double least_spread = 0.05;
    const auto next = numeric::log_prediction(days, least_spread);
    return {Duration::days(std::exp(next.mean - next.reach)), Duration::days(std::exp(next.mean)),
            Duration::days(std::exp(next.mean + next.reach))};
}

void propose_target(Proposal& out, const std::optional<MassShare>& reached) {
    constexpr double step = 2.5;
    if (out.texture_score.value_or(0) != 0 && reached) {
        const double next = reached->in_percent() - step * *out.texture_score;
        out.target_next = MassShare::percent(std::clamp(std::round(next * 2) / 2, 5.0, 70.0));
    }
}

void propose_salt(Proposal& out, const std::optional<MassShare>& reached) {
    if (!out.salt_now || !reached || reached->as_fraction() >= 1) {
        return;
    }
    out.finished_salt = finished_salt(*out.salt_now, *reached);
    const MassShare next_loss = out.target_next.value_or(*reached);
    const MassShare same = *out.finished_salt * (1.0 - next_loss.as_fraction());
    if (out.target_next) {
        out.same_salt_dose = same;
    }
    constexpr double step = 0.1;
    constexpr double least = 2.0;
    constexpr double most = 4.0;
    const int score = out.salt_score.value_or(0);
    if (score == 0 || out.salt_now->in_percent() < least || out.salt_now->in_percent() > most) {
        return; // outside of what is usual already: not ours to move farther
    }
    const double wanted = same.in_percent() * (1 - step * score);
    const double dose = std::clamp(std::round(wanted * 20) / 20, least, most);
    // A target that moves the other way can eat the change up: then there is nothing to propose.
    const bool the_right_way = score > 0 ? dose < out.salt_now->in_percent() - 1e-9
                                         : dose > out.salt_now->in_percent() + 1e-9;
    if (the_right_way) {
        out.salt_next = MassShare::percent(dose);
    }
}

template <class Counts>
std::optional<Proposal> propose(const std::vector<FinishedPiece>& finished,
                                const std::vector<model::Outcome>& outcomes, Counts counts) {
    const FinishedPiece* newest = nullptr;
    const model::Outcome* said = nullptr;
    for (const auto& piece : finished) {
        if (!counts(piece) || (newest != nullptr && piece.finished <= newest->finished)) {
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
    Proposal out{.batch = newest->batch, .finished_on = newest->finished};
    out.target_now = newest->target;
    out.salt_now = newest->salt_dose;
    out.salt_score = said->salt;
    out.texture_score = said->texture;
    out.words = said->change_next_time;
    const auto reached = newest->loss ? newest->loss : newest->target;
    propose_target(out, reached);
    propose_salt(out, reached);
    return out;
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
    return propose(finished, outcomes,
                   [&](const FinishedPiece& piece) { return piece.product == product; });
}

std::optional<Proposal> propose_next(const std::vector<FinishedPiece>& finished,
                                     const std::vector<model::Outcome>& outcomes,
                                     const std::vector<model::BatchId>& batches) {
    return propose(finished, outcomes, [&](const FinishedPiece& piece) {
        return std::find(batches.begin(), batches.end(), piece.batch) != batches.end();
    });
}

} // namespace core::planning
