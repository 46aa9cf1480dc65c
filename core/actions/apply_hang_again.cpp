#include "core/actions/applying.h"
#include "core/actions/hanging.h"
#include "core/store/batches.h"
#include "core/store/notes_and_stock.h"
#include "core/store/pieces.h"

#include <algorithm>

namespace core::actions {

using base::ErrorCode;
using model::EntryKind;
using model::Piece;
using model::PieceId;
using model::PieceState;
using units::Duration;
using units::Instant;
using units::Mass;

namespace {

constexpr Mass rounding = Mass::milligrams(0.5);
constexpr double whole_from = 0.9;

bool dries(const model::Stage& stage) {
    return stage.what.kind == model::StageKind::dry || stage.what.kind == model::StageKind::age ||
           stage.what.kind == model::StageKind::smoke;
}

/// The calendar has no zone in here: the day in UTC is near enough for a planned one.
units::Day day_of(Instant at) {
    return units::Day::from_days_since_epoch(static_cast<std::int32_t>(at.unix_seconds() / 86400));
}

/// As the batch dried before, weighed at least every week.
model::Stage stage_like(const std::optional<model::Stage>& before, Instant at) {
    constexpr int usual_days = 28;
    model::Stage stage{.planned_start = day_of(at), .planned_end = day_of(at) + usual_days};
    stage.what.name = "Dry";
    stage.what.kind = model::StageKind::dry;
    stage.what.weight = model::WeightEffect::loses;
    stage.what.ends = {{.kind = model::EndCondition::Kind::loss}};
    if (before) {
        stage.what = before->what;
        stage.chamber = before->chamber;
    }
    auto& routines = stage.what.routines;
    if (std::none_of(routines.begin(), routines.end(),
                     [](const auto& routine) { return routine.verb == "weigh"; })) {
        routines.push_back({.verb = "weigh", .every = Duration::weeks(1)});
    }
    stage.started_at = at;
    return stage;
}

/// The day sheet of a batch comes from its running stages: without one nobody would be told to
/// weigh what hangs again.
void run_stage(Applying& a, model::BatchId id, Instant at) {
    auto batch = store::get<model::Batch>(a.book, id);
    if (batch.state != model::BatchState::in_progress) {
        batch.state = model::BatchState::in_progress;
        store::update(a.book, batch);
    }
    int last = 0;
    std::optional<model::Stage> before;
    for (const auto& stage : store::stages(a.book, id)) {
        last = std::max(last, stage.order);
        if (dries(stage) && stage.started_at && !stage.ended_at) {
            return;
        }
        if (stage.what.kind == model::StageKind::dry) {
            before = stage;
        }
    }
    model::Stage stage = stage_like(before, at);
    stage.batch = id;
    stage.order = last + 1;
    a.add(EntryKind::stage, stage);
}

void record_hanging(Applying& a, const Piece& piece, Instant at, std::optional<Mass> net,
                    const std::string& note) {
    // A first `hung` event says where drying began (core/drying/net_series): a piece whose drying
    // began without one must not seem to begin now.
    const auto events = store::events(a.book, piece.id);
    const bool began = piece.parent || std::any_of(events.begin(), events.end(), [](const auto& e) {
                           return e.kind == model::EventKind::hung && !e.withdrawn;
                       });
    a.add(EntryKind::event,
          model::PieceEvent{.piece = piece.id,
                            .kind = began ? model::EventKind::hung : model::EventKind::moved,
                            .at = at,
                            .net_after = net,
                            .tare_after =
                                net ? std::optional(Mass::grams(0)) : std::nullopt, // packed bare
                            .chamber = piece.chamber,
                            .note = note});
}

void hang_whole(Applying& a, Piece piece, Instant at, const std::string& note) {
    piece.state = PieceState::drying;
    store::update(a.book, piece);
    record_hanging(a, piece, at, {}, note);
    run_stage(a, piece.batch, at);
}

/// What it weighs as it hangs: bare, so that no casing of before is taken off again.
model::Weighing weighing_now(Applying& a, PieceId piece, Instant at, Mass net) {
    model::Weighing weighing{
        .piece = piece, .taken_at = at, .on_scale = net, .tare = Mass::grams(0)};
    weighing.state = model::WeighedState::rinsed;
    if (const auto last = last_standing(store::weighings(a.book, piece))) {
        weighing.scale_step = last->scale_step;
    }
    return weighing;
}

void hang_part(Applying& a, const Piece& parent, const model::PackMove& move) {
    if (move.to_whom.empty()) {
        store::refuse(ErrorCode::not_allowed, "code_missing", parent.code);
    }
    NewPiece part{parent, {weighing_now(a, parent.id, move.at, move.amount)}};
    part.piece.id = {};
    part.piece.parent = parent.id;
    part.piece.code = move.to_whom;
    part.piece.count = 1;
    part.piece.state = PieceState::drying;
    part.piece.id = add_piece(a, part);
    a.about(part.piece.code);
    record_hanging(a, part.piece, move.at, move.amount, move.note);
    run_stage(a, parent.batch, move.at);
}

void require_finished(const Piece& piece) {
    if (piece.state != PieceState::finished) {
        store::refuse(ErrorCode::not_allowed, "not_to_hang_again", piece.code);
    }
}

} // namespace

std::optional<model::Weighing> last_standing(const std::vector<model::Weighing>& weighings) {
    const auto last = std::find_if(weighings.rbegin(), weighings.rend(),
                                   [](const model::Weighing& w) { return w.stands(); });
    return last == weighings.rend() ? std::nullopt : std::optional(*last);
}

bool hangs_whole(const model::Pack& pack, std::size_t packs_of_piece,
                 const std::vector<model::Weighing>& weighings, Mass net) {
    const auto last = last_standing(weighings);
    return packs_of_piece == 1 && pack.weight_left >= pack.packed_weight - rounding &&
           net >= pack.weight_left * whole_from && last &&
           pack.packed_weight >= last->net() * whole_from;
}

void hang_again(Applying& a, PieceId id, Instant at, const std::string& note) {
    const auto piece = store::get<Piece>(a.book, id);
    require_finished(piece);
    if (!store::packs(a.book, false, id).empty()) {
        store::refuse(ErrorCode::not_allowed, "piece_is_packed", piece.code);
    }
    hang_whole(a, piece, at, note);
}

model::PackMove hang_from_pack(Applying& a, const model::PackMove& asked) {
    model::PackMove move = asked;
    auto pack = store::get<model::Pack>(a.book, move.pack);
    const auto piece = store::get<Piece>(a.book, pack.piece);
    require_finished(piece);
    if (move.amount > pack.weight_left + rounding) {
        store::refuse(ErrorCode::not_allowed, "more_than_is_left", pack.code);
    }
    const bool whole = hangs_whole(pack, store::packs(a.book, true, piece.id).size(),
                                   store::weighings(a.book, piece.id), move.amount);
    // What the whole of it lost in the pack is gone with it.
    pack.weight_left = whole ? Mass::grams(0) : pack.weight_left - move.amount;
    pack.gone = pack.weight_left < rounding;
    store::update(a.book, pack);
    if (!whole) {
        hang_part(a, piece, move);
        return move;
    }
    a.add(EntryKind::weighing, weighing_now(a, piece.id, move.at, move.amount));
    Piece hanging = piece;
    hanging.state = PieceState::drying;
    store::update(a.book, hanging);
    record_hanging(a, hanging, move.at, move.amount, move.note);
    run_stage(a, piece.batch, move.at);
    move.to_whom = piece.code;
    return move;
}

} // namespace core::actions
