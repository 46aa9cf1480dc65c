#include "core/services/demo_teller.h"

namespace core::services::demo {

using namespace actions; // NOLINT(google-build-using-namespace): commands by the dozen
using model::EntryKind;
using model::StageKind;
using units::Duration;
using units::MassShare;

namespace {

model::StageTemplate cure_stage(const BatchStory& story) {
    model::StageTemplate stage{
        .name = "Cure", .kind = StageKind::salt, .salting = model::SaltingMethod::weighed};
    stage.ends.push_back(
        {.kind = model::EndCondition::Kind::after, .time = Duration::days(story.cure_days)});
    stage.routines.push_back(
        {.verb = "turn", .every = Duration::days(story.cure_days > 3 ? 2 : 1)});
    stage.weight = model::WeightEffect::loses;
    return stage;
}

model::StageTemplate rest_stage(const BatchStory& story) {
    model::StageTemplate stage{.name = "Rinse, tie and rest", .kind = StageKind::rest};
    stage.ends.push_back(
        {.kind = model::EndCondition::Kind::after, .time = Duration::days(story.rest_days)});
    stage.weight = model::WeightEffect::resets_tare;
    return stage;
}

model::StageTemplate dry_stage(const BatchStory& story) {
    model::StageTemplate stage{.name = "Dry", .kind = StageKind::dry};
    stage.ends.push_back(
        {.kind = model::EndCondition::Kind::loss, .loss = MassShare::fraction(story.target_loss)});
    stage.routines.push_back(
        {.verb = "weigh", .every = Duration::days(story.rhythm == Rhythm::weekly ? 7 : 2)});
    stage.weight = model::WeightEffect::loses;
    return stage;
}

/// Days the story's own curve needs to the target; for the planned end.
int days_to_target(const BatchStory& story) {
    int days = 1;
    while (days < 200 && story.curve.remaining(days) > 1 - story.target_loss) {
        ++days;
    }
    return days;
}

double share_of_salt(const BatchStory& story) {
    static const std::vector<double> shares{0.025, 0.024, 0.0275, 0.026, 0.03};
    return shares[static_cast<std::size_t>(story.recipe)];
}

} // namespace

std::vector<model::Stage> Teller::stages_of(const BatchStory& story, units::Day first) const {
    std::vector<model::Stage> stages;
    units::Day from = first;
    const auto add = [&](model::StageTemplate what, int days) {
        stages.push_back({.order = static_cast<int>(stages.size()),
                          .what = std::move(what),
                          .planned_start = from,
                          .planned_end = from + days});
        from = from + days;
    };
    add(cure_stage(story), story.cure_days);
    add(rest_stage(story), story.rest_days);
    add(dry_stage(story), days_to_target(story));
    stages.back().chamber = chambers_[static_cast<std::size_t>(story.chamber)];
    return stages;
}

StartBatch Teller::plan_of(const LiveBatch& batch) {
    const BatchStory& story = *batch.story;
    double total = 0;
    for (const PieceStory& piece : story.pieces) {
        total += piece.raw_grams;
    }
    const auto first = day(story.started_days_ago);
    StartBatch plan{
        .batch = {.code = story.code,
                  .name = story.name,
                  .product = story.product,
                  .species = story.species,
                  .supplier = "Invented butcher, Low Lane",
                  .supplier_lot = "L" + std::to_string(1000 + first.days_since_epoch() % 1000),
                  .recipe = recipes_[static_cast<std::size_t>(story.recipe)],
                  .started = first,
                  .bought_weight = grams(std::round(total * 1.06)),
                  .trim_weight = grams(std::round(total * 0.06)),
                  .price_per_kilogram = story.species == std::string("beef") ? 14.5 : 8.9}};
    const auto codes = book_.free_piece_codes(static_cast<int>(story.pieces.size()));
    if (!codes) {
        throw store::Fault(codes.error());
    }
    for (std::size_t i = 0; i < story.pieces.size(); ++i) {
        const PieceStory& of = story.pieces[i];
        NewPiece piece;
        piece.piece.code = codes->at(i);
        piece.piece.name = of.name;
        piece.piece.form = story.form;
        piece.piece.thickness = units::Length::millimetres(of.thickness_mm);
        piece.piece.fat = MassShare::fraction(of.fat);
        piece.piece.skin = story.skin;
        piece.piece.target =
            model::Target{MassShare::fraction(story.target_loss), model::ReferenceWeight::hung};
        plan.pieces.push_back(std::move(piece));
    }
    const auto use = [&](const char* id, const char* name, std::size_t lot, double share) {
        const double planned = std::round(total * share * 10) / 10;
        plan.uses.push_back({.ingredient = id,
                             .name = name,
                             .lot = lots_[lot],
                             .planned = grams(planned),
                             .weighed = grams(planned + (noise_.chance(0.5) ? 0.1 : 0))});
    };
    use("fine_sea_salt", "Fine sea salt", 0, share_of_salt(story));
    use("black_pepper", "Black pepper", 2, 0.004);
    if (story.recipe != 4 && story.recipe != 1) {
        use("cure_no2", "Curing salt no. 2", 1, 0.0025);
    }
    plan.stages = stages_of(story, first);
    return plan;
}

void Teller::plan_ahead(LiveBatch& batch) {
    StartBatch plan = plan_of(batch);
    plan.uses.clear(); // nothing has been weighed out yet
    enter(plan, at(1, 18), "For the new year");
    batch.is_started = true;
}

void Teller::start(LiveBatch& batch) {
    const BatchStory& story = *batch.story;
    const auto when = at(story.started_days_ago, 9.5);
    StartBatch plan = plan_of(batch);
    plan.batch.state = model::BatchState::in_progress;
    for (std::size_t i = 0; i < plan.pieces.size(); ++i) {
        plan.pieces[i].piece.state = model::PieceState::curing;
        plan.pieces[i].weighings.push_back({.taken_at = when,
                                            .on_scale = grams(story.pieces[i].raw_grams),
                                            .tare = grams(0),
                                            .state = model::WeighedState::trimmed,
                                            .scale_step = grams(1)});
    }
    const Performed made = enter(plan, when);
    batch.id = made.id<model::BatchId>(EntryKind::batch);
    for (std::size_t i = 0; i < plan.stages.size(); ++i) {
        batch.stages.push_back(made.id<model::StageId>(EntryKind::stage, i));
    }
    for (std::size_t i = 0; i < plan.pieces.size(); ++i) {
        LivePiece piece{.id = made.id<model::PieceId>(EntryKind::piece, i),
                        .code = plan.pieces[i].piece.code,
                        .raw = story.pieces[i].raw_grams,
                        .curve = story.curve};
        // Thicker dries slower (as the square of the thickness); no two pieces are alike.
        const double thickness = story.pieces[i].thickness_mm / story.pieces[0].thickness_mm;
        piece.curve.slow_days *= thickness * thickness * (1 + 0.06 * noise_.normal());
        piece.curve.levels_off *= 1 + 0.015 * noise_.normal();
        batch.pieces.push_back(piece);
    }
    enter(StartStage{batch.stages[0], when, {}}, when);
    batch.is_started = true;
}

void Teller::end_cure(LiveBatch& batch) {
    const BatchStory& story = *batch.story;
    const int ago = story.started_days_ago - story.cure_days;
    const auto when = at(ago, 9);
    AddWeighings round;
    for (LivePiece& piece : batch.pieces) {
        const double cured = piece.raw * (1 - 0.027 + 0.004 * noise_.normal());
        round.weighings.push_back({.piece = piece.id,
                                   .taken_at = when,
                                   .on_scale = grams(std::round(cured)),
                                   .tare = grams(0),
                                   .state = model::WeighedState::cured,
                                   .scale_step = grams(1)});
        piece.hung_net = cured; // so far
    }
    enter(EndStage{batch.stages[0], when, "planned days are over"}, when);
    enter(round, when);
    enter(StartStage{batch.stages[1], when, {}}, when);
    for (LivePiece& piece : batch.pieces) {
        const double rinsed = std::round(piece.hung_net * 1.007);
        enter(RecordEvent{{.piece = piece.id,
                           .kind = model::EventKind::washed,
                           .at = at(ago, 9.3),
                           .net_before = grams(std::round(piece.hung_net)),
                           .net_after = grams(rinsed)}},
              at(ago, 9.3));
        piece.hung_net *= 0.998; // dried off again by the time it is tied
    }
}

void Teller::hang_piece(LiveBatch& batch, LivePiece& piece, units::Instant when) {
    const BatchStory& story = *batch.story;
    double net = std::round(piece.hung_net);
    if (story.coated) {
        const double coat = std::round(net * 0.012);
        enter(RecordEvent{{.piece = piece.id,
                           .kind = model::EventKind::coated,
                           .at = when,
                           .net_before = grams(net),
                           .net_after = grams(net + coat),
                           .note = "Cracked pepper pressed on"}},
              when);
        net += coat;
    }
    piece.hung_net = net;
    piece.tare = std::round(story.tare_grams * (1 + 0.08 * noise_.normal()));
    enter(RecordEvent{{.piece = piece.id,
                       .kind = model::EventKind::dressed,
                       .at = when,
                       .net_before = grams(net),
                       .net_after = grams(net),
                       .tare_after = grams(piece.tare)}},
          when);
    enter(RecordEvent{{.piece = piece.id,
                       .kind = model::EventKind::hung,
                       .at = when,
                       .net_after = grams(net),
                       .tare_after = grams(piece.tare),
                       .chamber = chambers_[static_cast<std::size_t>(story.chamber)]}},
          when);
    enter(AddWeighing{{.piece = piece.id,
                       .taken_at = when,
                       .on_scale = grams(net + piece.tare),
                       .tare = grams(piece.tare),
                       .state = model::WeighedState::netted,
                       .scale_step = grams(1)}},
          when);
    piece.is_hanging = true;
}

void Teller::hang(LiveBatch& batch) {
    const BatchStory& story = *batch.story;
    const int ago = days_ago_hung(story);
    const auto when = at(ago, 11);
    if (!has_come(when)) {
        return;
    }
    enter(EndStage{batch.stages[1], when, "dry to the touch"}, when);
    enter(StartStage{batch.stages[2], when, chambers_[static_cast<std::size_t>(story.chamber)]},
          when);
    for (LivePiece& piece : batch.pieces) {
        hang_piece(batch, piece, when);
        piece.hung_ago = ago;
    }
}

} // namespace core::services::demo
