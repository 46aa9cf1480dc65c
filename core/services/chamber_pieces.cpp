#include "core/doneness/composition.h"
#include "core/mix/mix_sheet.h"
#include "core/services/chamber_desk.h"

#include <algorithm>

namespace core::services {

using base::Result;
using units::Duration;
using units::Instant;
using units::Mass;
using units::MassShare;

namespace {

/// Net weights at which something hung or was only cured.
struct Weights {
    std::optional<Mass> raw;
    std::optional<Mass> hung;
    std::optional<Mass> last; ///< by `at`
};

std::optional<Instant> hung_at(const PieceHistory& history, Instant at) {
    std::optional<Instant> found;
    for (const auto& event : history.events) {
        // The first: one that was taken down and hung again lost before, too.
        if (event.kind == model::EventKind::hung && event.at <= at && !found) {
            found = event.at;
        }
    }
    return found;
}

Weights weights_of(const PieceHistory& history, std::optional<Instant> hung, Instant at) {
    Weights found;
    for (const auto& weighing : history.weighings) {
        if (weighing.taken_at > at || weighing.wet_surface) {
            continue;
        }
        if (weighing.state == model::WeighedState::raw && !found.raw) {
            found.raw = weighing.net();
        }
        if (hung && weighing.taken_at >= *hung - Duration::hours(12) && !found.hung) {
            found.hung = weighing.net();
        }
        found.last = weighing.net();
    }
    return found;
}

/// Salt and nitrite put on, of the green weight, by the recipe the batch used.
struct Dosed {
    std::optional<MassShare> salt;
    std::optional<MassShare> nitrite;
};

Dosed dosed(const Book& book, const model::Batch& batch, Mass raw, const facts::Facts& facts) {
    if (!batch.recipe) {
        return {};
    }
    const auto version = book.recipe_version(*batch.recipe);
    if (!version) {
        return {};
    }
    const auto recipe = mix::read_recipe(version->document);
    if (!recipe) {
        return {};
    }
    mix::MixRequest request{*recipe, {{"piece", raw}}, {}, {}, {}};
    const auto sheet = mix::make_mix_sheet(request, facts);
    return {sheet.dose.salt.best, sheet.dose.nitrite.best};
}

std::optional<model::Stage> stage_then(const std::vector<model::Stage>& stages, Instant at) {
    for (const auto& stage : stages) {
        if (stage.started_at && *stage.started_at <= at &&
            (!stage.ended_at || *stage.ended_at > at)) {
            return stage;
        }
    }
    return std::nullopt;
}

chamber::PieceThen piece_then(const Book& book, const PieceHistory& history,
                              const model::Batch& batch, const std::vector<model::Stage>& stages,
                              Instant at, const facts::Facts& facts) {
    chamber::PieceThen then;
    then.piece = history.piece.id;
    then.code = history.piece.code;
    then.name = history.piece.name;
    if (const auto stage = stage_then(stages, at)) {
        then.stage = stage->what.kind;
        then.in_stage = at - *stage->started_at;
    }
    const auto hung = hung_at(history, at);
    if (hung) {
        then.hung = at - *hung;
    }
    const auto weights = weights_of(history, hung, at);
    if (weights.hung && weights.last) {
        then.loss = MassShare::of(*weights.hung - *weights.last, *weights.hung);
    }
    if (!weights.raw) {
        return then;
    }
    const auto dose = dosed(book, batch, *weights.raw, facts);
    then.nitrite = dose.nitrite;
    if (dose.salt && weights.last && *weights.last > Mass::grams(0)) {
        // What was put on, in what is left of the piece: the most it can be.
        then.salt = MassShare::of(dose.salt->part_of(*weights.raw), *weights.last);
        doneness::EvidenceRequest request{.now = at};
        request.fat = history.piece.fat;
        request.references.raw = weights.raw;
        request.references.hung = weights.hung;
        request.weights = {{at, *weights.last}};
        request.salt_dose = dose.salt;
        if (const auto composition = doneness::composition_of(request)) {
            then.water_activity = composition->water_activity;
        }
    }
    return then;
}

/// Where a piece was at `at`: the last move or hanging before it that names a chamber, else where
/// it is now.
std::optional<model::ChamberId> chamber_then(const PieceHistory& history, Instant at) {
    std::optional<model::ChamberId> found;
    bool moved_later = false;
    for (const auto& event : history.events) {
        if (!event.chamber) {
            continue;
        }
        if (event.at <= at) {
            found = event.chamber;
        } else {
            moved_later = true;
        }
    }
    return found || moved_later ? found : history.piece.chamber;
}

bool is_there(model::PieceState state) {
    return state == model::PieceState::curing || state == model::PieceState::resting ||
           state == model::PieceState::drying;
}

/// Whether a piece was still curing or drying at `at`. One that was finished or discarded since
/// was: what went through an upset and is now in stock is to be looked at, too.
Result<bool> was_there(const Book& book, const model::Piece& piece, Instant at) {
    using model::PieceState;
    if (piece.state != PieceState::finished && piece.state != PieceState::discarded) {
        return is_there(piece.state);
    }
    const auto decisions = book.decisions(piece.id);
    if (!decisions) {
        return tl::unexpected<base::Error>(decisions.error());
    }
    return std::any_of(decisions->begin(), decisions->end(), [&](const auto& decision) {
        return decision.verdict != model::Verdict::not_yet && decision.at > at;
    });
}

} // namespace

Result<std::vector<chamber::LoadPiece>> load_pieces(const Book& book, model::ChamberId chamber,
                                                    Instant now) {
    const auto histories = book.piece_histories({.chamber = chamber});
    if (!histories) {
        return tl::unexpected<base::Error>(histories.error());
    }
    std::vector<chamber::LoadPiece> pieces;
    for (const auto& history : *histories) {
        if (!is_there(history.piece.state)) {
            continue;
        }
        const auto hung = hung_at(history, now);
        const auto weights = weights_of(history, hung, now);
        if (!weights.last) {
            continue;
        }
        chamber::LoadPiece piece{.piece = history.piece.id,
                                 .code = history.piece.code,
                                 .position = history.piece.position,
                                 .net = *weights.last,
                                 .hung = hung ? now - *hung : Duration::seconds(0)};
        if (weights.hung) {
            piece.loss = MassShare::of(*weights.hung - *weights.last, *weights.hung);
        }
        if (history.piece.target &&
            history.piece.target->reference == model::ReferenceWeight::hung) {
            piece.target_loss = history.piece.target->loss;
        }
        const model::Weighing* earlier = nullptr;
        const model::Weighing* last = nullptr;
        for (auto it = history.weighings.rbegin(); it != history.weighings.rend(); ++it) {
            if (it->wet_surface) {
                continue;
            }
            if (last == nullptr) {
                last = &*it;
            } else if (last->taken_at - it->taken_at >= Duration::days(1)) {
                earlier = &*it;
                break;
            }
        }
        if (earlier != nullptr && hung && earlier->taken_at >= *hung - Duration::hours(12)) {
            piece.water_per_day =
                (earlier->net() - last->net()) / (last->taken_at - earlier->taken_at).in_days();
        }
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

Result<std::vector<chamber::PieceThen>> pieces_then(const Book& book, model::ChamberId chamber,
                                                    Instant at, const facts::Facts& facts) {
    const auto histories = book.piece_histories();
    const auto batches = book.batches();
    if (!histories || !batches) {
        return tl::unexpected<base::Error>(!histories ? histories.error() : batches.error());
    }
    std::vector<chamber::PieceThen> pieces;
    for (const auto& history : *histories) {
        if (chamber_then(history, at) != chamber) {
            continue;
        }
        const auto there = was_there(book, history.piece, at);
        if (!there) {
            return tl::unexpected<base::Error>(there.error());
        }
        if (!*there) {
            continue;
        }
        const auto batch = std::find_if(batches->begin(), batches->end(),
                                        [&](const auto& b) { return b.id == history.piece.batch; });
        const auto stages = book.stages(history.piece.batch);
        if (batch == batches->end() || !stages) {
            continue;
        }
        pieces.push_back(piece_then(book, history, *batch, *stages, at, facts));
    }
    return pieces;
}

} // namespace core::services
