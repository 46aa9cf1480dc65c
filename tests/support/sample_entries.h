#pragma once

#include "core/actions/command.h"

#include <string>

/// Small entries for tests that need some book content and do not care which.
namespace saltloft::testing {

inline core::units::Instant at_s(std::int64_t seconds) {
    return core::units::Instant::from_unix_seconds(seconds);
}
/// 2026-03-01T08:00:00Z
inline constexpr std::int64_t test_now_s = 1772352000;

inline core::actions::Context context(std::string why = {}, std::int64_t now = test_now_s) {
    return {.who = std::nullopt, .now = at_s(now), .why = std::move(why)};
}

inline core::model::Weighing weighing(core::model::PieceId piece, double grams,
                                      std::int64_t taken_at = test_now_s, double tare_grams = 0) {
    return {.piece = piece,
            .taken_at = at_s(taken_at),
            .on_scale = core::units::Mass::grams(grams),
            .tare = core::units::Mass::grams(tare_grams)};
}

inline core::model::Batch batch(std::string code) {
    return {.code = std::move(code),
            .name = "Test loin",
            .product = "loin",
            .species = "pork",
            .started = core::units::Day::from_days_since_epoch(20500)};
}

inline core::actions::NewPiece new_piece(std::string code, double raw_grams = 1000) {
    core::actions::NewPiece piece;
    piece.piece.code = std::move(code);
    piece.piece.thickness = core::units::Length::millimetres(60);
    piece.piece.target = core::model::Target{core::units::MassShare::percent(35),
                                             core::model::ReferenceWeight::hung};
    piece.weighings.push_back(weighing({}, raw_grams));
    return piece;
}

/// A batch with two pieces, "<code>a" and "<code>b", each with a raw weight.
inline core::actions::StartBatch start_batch(const std::string& code) {
    core::actions::StartBatch start{.batch = batch(code)};
    start.pieces = {new_piece(code + "a", 1000), new_piece(code + "b", 1200)};
    core::model::Stage stage{.planned_start = start.batch.started,
                             .planned_end = start.batch.started + 14};
    stage.what.name = "Salt";
    stage.what.kind = core::model::StageKind::salt;
    start.stages.push_back(stage);
    return start;
}

} // namespace saltloft::testing
