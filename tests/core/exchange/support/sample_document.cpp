#include "tests/core/exchange/support/sample_document.h"

#include "core/units/parse.h"

namespace test_support {
namespace {

using namespace core;
using core::exchange::Stamp;
using units::Mass;
using units::MassShare;

units::Instant at(const char* iso) {
    return *units::parse_instant(iso);
}
units::Day on(const char* iso) {
    return *units::parse_day(iso);
}

template <class T>
exchange::Entry<T> entry(T value) {
    return {std::move(value),
            Stamp{at("2026-03-01T10:00:00Z"), model::PersonId::from_row(1), "first entry"},
            {}};
}

model::Stage dry_stage() {
    model::StageTemplate what;
    what.name = "drying";
    what.kind = model::StageKind::dry;
    what.temperature = {units::Temperature::celsius(12), units::Temperature::celsius(14),
                        units::Temperature::celsius(10), units::Temperature::celsius(14)};
    return {model::StageId::from_row(1),
            model::BatchId::from_row(7),
            1,
            what,
            on("2026-03-08"),
            on("2026-05-01"),
            at("2026-03-08T09:00:00Z"),
            at("2026-05-02T09:00:00Z"),
            model::ChamberId::from_row(2),
            "loss reached"};
}

void add_places(exchange::BookDocument& d) {
    d.people = {entry<model::Person>({model::PersonId::from_row(1), "Invented Ida", "II", false})};
    d.chambers = {entry<model::Chamber>(
        {model::ChamberId::from_row(2), "Kammer \"Süd\"", model::ChamberKind::room,
         units::Temperature::celsius(4.4), units::Temperature::celsius(14),
         units::RelativeHumidity::percent(70.25), units::RelativeHumidity::percent(80),
         Mass::grams(1500), 24, "line one\nline two"})};
    d.sensors = {entry<model::Sensor>({model::SensorId::from_row(3), model::ChamberId::from_row(2),
                                       "S1", "top", units::TemperatureStep::kelvins(-0.3),
                                       units::RelativeHumidity::percent(-2.5), on("2026-09-01"),
                                       "{\"delimiter\": \";\"}", false})};
    d.instruments = {entry<model::Instrument>(
        {model::InstrumentId::from_row(4), model::InstrumentKind::scale, "bench scale",
         Mass::grams(0.1), model::SensorId::from_row(3), 30, false})};
    d.checks = {entry<model::CalibrationCheck>(
        {model::CheckId::from_row(5), model::InstrumentId::from_row(4), at("2026-03-02T08:00:00Z"),
         "500 g test weight", 500, 499.95, "none", model::PersonId::from_row(1)})};
}

void add_recipes(exchange::BookDocument& d) {
    d.recipes = {entry<model::Recipe>({model::RecipeId::from_row(6), "Coppa, invented", true})};
    d.recipe_versions = {entry<model::RecipeVersion>(
        {model::RecipeVersionId::from_row(8), model::RecipeId::from_row(6), 2,
         at("2026-02-20T12:00:00Z"), "{\n  \"salt\" : 2.75 }", "less salt"})};
    d.ingredients = {entry<model::Ingredient>(
        {model::IngredientId::from_row(9), "user:1", "cure", "{\"nitrite\":6.25}"})};
    d.lots = {entry<model::Lot>({model::LotId::from_row(10), model::IngredientId::from_row(9),
                                 "L-42", "Invented Salt", "2026-01-15"})};
    d.ingredient_uses = {entry<model::IngredientUse>(
        {model::IngredientUseId::from_row(11), model::BatchId::from_row(7),
         model::PieceId::from_row(12), "cure", "Cure", model::LotId::from_row(10), Mass::grams(2.5),
         Mass::grams(2.512)})};
}

void add_batch(exchange::BookDocument& d) {
    d.batches = {entry<model::Batch>({model::BatchId::from_row(7), "B07", "first", "coppa", "pork",
                                      "Invented Farm", "F-1", model::RecipeVersionId::from_row(8),
                                      on("2026-03-01"), model::BatchState::in_progress,
                                      Mass::kilograms(2.2), Mass::grams(150), 9.5, true, "notes"})};
    model::Piece piece{model::PieceId::from_row(12),
                       model::BatchId::from_row(7),
                       "K7",
                       "neck",
                       model::Form::cylinder,
                       units::Length::millimetres(92.5),
                       MassShare::percent(11.5),
                       model::SkinSide::one_side,
                       model::Target{MassShare::percent(35), model::ReferenceWeight::hung},
                       {},
                       model::ChamberId::from_row(2),
                       "rail 2",
                       4,
                       2,
                       model::PieceState::drying};
    model::Piece child = piece;
    child.id = model::PieceId::from_row(13);
    child.code = "K8";
    child.parent = piece.id;
    d.pieces = {entry(piece), entry(child)};
    model::Weighing slip{model::WeighingId::from_row(14),
                         piece.id,
                         at("2026-03-08T09:00:00Z"),
                         Mass::grams(11400.5),
                         Mass::grams(100.001),
                         model::WeighedState::netted,
                         Mass::grams(0.5),
                         true,
                         "=slip",
                         {},
                         model::WeighingId::from_row(15),
                         false};
    model::Weighing right = slip;
    right.id = model::WeighingId::from_row(15);
    right.on_scale = Mass::grams(1140.5);
    right.amends = slip.id;
    right.amended_by = {};
    right.withdrawn = true;
    d.weighings = {entry(slip), entry(right)};
    d.weighings[1].withdrawn =
        Stamp{at("2026-03-09T10:00:00Z"), model::PersonId::from_row(1), "hook left on"};
    d.events = {entry<model::PieceEvent>({model::EventId::from_row(16),
                                          piece.id,
                                          model::EventKind::split,
                                          at("2026-04-01T09:00:00Z"),
                                          Mass::grams(900),
                                          Mass::grams(450),
                                          Mass::grams(50),
                                          Mass::grams(520),
                                          {child.id},
                                          model::ChamberId::from_row(2),
                                          "cut in two",
                                          true})};
    d.stages = {entry(dry_stage())};
}

void add_judging(exchange::BookDocument& d) {
    const auto batch = model::BatchId::from_row(7);
    const auto piece = model::PieceId::from_row(12);
    const auto ida = model::PersonId::from_row(1);
    d.acceptances = {entry<model::Acceptance>({model::AcceptanceId::from_row(17), batch, piece,
                                               "scale_coarse", "line 2", "{\"step_g\":1}",
                                               at("2026-03-01T09:00:00Z"), ida, "blended"})};
    d.notes = {entry<model::Note>({model::NoteId::from_row(18),
                                   batch,
                                   piece,
                                   at("2026-04-02T09:00:00Z"),
                                   model::NoteKind::mould,
                                   "white, dry",
                                   "k7.jpg",
                                   {0xFF, 0xD8, 0x00, 0x7F}})};
    d.decisions = {entry<model::Decision>({model::DecisionId::from_row(19), piece,
                                           at("2026-05-02T09:00:00Z"), model::Verdict::not_yet, ida,
                                           "{\"loss\": 33.1}", "soft", on("2026-05-09")})};
    d.outcomes = {entry<model::Outcome>({batch, 1, -2, "next time 45 %"})};
    d.packs = {
        entry<model::Pack>({model::PackId::from_row(20), piece, "P20", model::PackKind::vacuum,
                            Mass::grams(300), Mass::grams(120.5), on("2026-05-10"),
                            on("2026-05-20"), on("2026-08-10"), "own_rule", "shelf 1", true})};
    d.pack_moves = {entry<model::PackMove>(
        {model::PackMoveId::from_row(21), model::PackId::from_row(20), model::MoveKind::sold,
         Mass::grams(179.5), at("2026-05-20T11:00:00Z"), "Invented Deli", "till 2"})};
    d.task_ticks = {
        entry<model::TaskTick>({model::TaskId::from_row(22), "turn:7:3", at("2026-03-04T08:00:00Z"),
                                ida, true, on("2026-03-04"), batch, piece, "turned"})};
}

} // namespace

exchange::BookDocument sample_document() {
    exchange::BookDocument d;
    d.scope = exchange::DocumentScope::batch;
    d.written_by = "saltloft test";
    d.written_at = at("2026-06-01T00:00:00Z");
    add_places(d);
    add_recipes(d);
    add_batch(d);
    add_judging(d);
    d.preferences = {{"currency", "EUR"}, {"limits", "own"}};
    d.log = {{model::StepId::from_row(23), model::ActionId::from_row(23), model::StepKind::undone,
              "add_weighing", "K7", at("2026-03-08T09:00:00Z"), model::PersonId::from_row(1),
              "mistyped"}};
    return d;
}

} // namespace test_support
