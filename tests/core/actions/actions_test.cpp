// Every command does what it says, refuses what it must, and undo takes all of it back.
#include "core/actions/perform.h"

#include "core/store/batches.h"
#include "core/store/notes_and_stock.h"
#include "core/store/people_and_places.h"
#include "core/store/pieces.h"
#include "core/store/recipes.h"
#include "tests/support/book_dump.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>
#include <set>

using namespace core;
using namespace core::actions;
using model::EntryKind;
using model::PieceId;
using model::PieceState;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::dump;
using saltloft::testing::new_piece;
using saltloft::testing::start_batch;
using saltloft::testing::TempFolder;
using saltloft::testing::test_now_s;
using saltloft::testing::weighing;
using store::Connection;
using units::Mass;

namespace {

class ActionsTest : public ::testing::Test {
  protected:
    void SetUp() override {
        auto opened = store::Store::open(path, {.now = at_s(test_now_s), .create = true});
        ASSERT_TRUE(opened.has_value()) << opened.error().detail;
        store = std::move(*opened);
        const Performed started = does(start_batch("B01"));
        batch = started.id<model::BatchId>(EntryKind::batch);
        piece = started.id<PieceId>(EntryKind::piece, 0);
        other = started.id<PieceId>(EntryKind::piece, 1);
        stage = started.id<model::StageId>(EntryKind::stage);
    }

    /// Performs, checks that undo and redo give exactly the states before and after, and leaves
    /// the book in the state after.
    Performed does(const Command& command, const std::string& why = "because") {
        const auto before = dump(path);
        auto done = perform(*store, command, context(why));
        EXPECT_TRUE(done.has_value())
            << verb_of(command) << ": " << done.error().detail << " at " << done.error().where;
        if (!done || std::holds_alternative<SetPreference>(command)) {
            return done.value_or(Performed{});
        }
        const auto after = dump(path);
        EXPECT_NE(before, after) << verb_of(command);
        EXPECT_TRUE(undo(*store, context()).has_value());
        EXPECT_EQ(dump(path), before) << verb_of(command);
        EXPECT_TRUE(redo(*store, context()).has_value());
        EXPECT_EQ(dump(path), after) << verb_of(command);
        seen.insert(verb_of(command));
        return std::move(*done);
    }

    std::string refuses(const Command& command, const std::string& why = "because") {
        const auto before = dump(path, saltloft::testing::DumpOf::all);
        const auto done = perform(*store, command, context(why));
        EXPECT_FALSE(done.has_value()) << verb_of(command);
        EXPECT_EQ(dump(path, saltloft::testing::DumpOf::all), before) << "nothing is left behind";
        return done.has_value() ? "done" : done.error().detail;
    }

    model::Piece read_piece(PieceId id) {
        return store->read([&](Connection& book) { return store::get<model::Piece>(book, id); })
            .value();
    }
    model::PersonId person() {
        return does(AddPerson{{.name = "Ada (invented)", .initials = "A"}})
            .id<model::PersonId>(EntryKind::person);
    }
    model::ChamberId chamber(const char* name) {
        return does(AddChamber{{.name = name}}).id<model::ChamberId>(EntryKind::chamber);
    }

    TempFolder folder;
    std::string path = folder.file("book.saltloft");
    std::unique_ptr<store::Store> store;
    model::BatchId batch;
    PieceId piece;
    PieceId other;
    model::StageId stage;
    std::set<std::string> seen;
};

} // namespace

TEST_F(ActionsTest, RegistersOfPeoplePlacesAndInstruments) {
    const auto ada = person();
    does(ChangePerson{{.id = ada, .name = "Ada B. (invented)", .initials = "AB", .active = false}});
    const auto cellar = chamber("Cellar");
    EXPECT_EQ(refuses(AddChamber{{.name = "Cellar"}}), "name_taken");
    does(ChangeChamber{{.id = cellar,
                        .name = "Cellar",
                        .low_temperature = units::Temperature::celsius(11.5),
                        .high_humidity = units::RelativeHumidity::percent(78.25),
                        .water_capacity_per_day = Mass::grams(800),
                        .places = 12}});
    const auto read = store->read([](Connection& b) { return store::chambers(b); }).value().at(0);
    EXPECT_NEAR(read.low_temperature->in_celsius(), 11.5, 1e-9);
    EXPECT_NEAR(read.high_humidity->in_percent(), 78.25, 1e-9);
    EXPECT_FALSE(read.high_temperature.has_value()) << "not known is not zero";
    EXPECT_EQ(refuses(ChangeChamber{{.id = cellar,
                                     .name = "",
                                     .low_temperature = units::Temperature::celsius(15),
                                     .high_temperature = units::Temperature::celsius(11)}}),
              "name_missing, band_upside_down");
    const auto sensor =
        does(AddSensor{{.chamber = cellar,
                        .name = "S1",
                        .temperature_offset = units::TemperatureStep::kelvins(-0.4)}})
            .id<model::SensorId>(EntryKind::sensor);
    does(ChangeSensor{{.id = sensor, .chamber = cellar, .name = "S1", .place = "door"}});
    const auto scale = does(AddInstrument{{.name = "Scale", .scale_step = Mass::grams(0.1)}})
                           .id<model::InstrumentId>(EntryKind::instrument);
    does(ChangeInstrument{{.id = scale, .name = "Scale", .check_every_days = 30}});
    does(AddCheck{{.instrument = scale,
                   .at = at_s(test_now_s),
                   .against = "500 g",
                   .expected = 500,
                   .found = 499.8,
                   .by = ada}});
}

TEST_F(ActionsTest, RecipesKeepEveryVersion) {
    const Performed made = does(AddRecipe{"Coppa", "{\"v\":1}"});
    const auto recipe = made.id<model::RecipeId>(EntryKind::recipe);
    does(AddRecipeVersion{recipe, "{\"v\":2}"}, "less salt");
    does(RenameRecipe{recipe, "House coppa"});
    does(ArchiveRecipe{recipe});
    const auto versions =
        store->read([&](Connection& b) { return store::recipe_versions(b, recipe); }).value();
    ASSERT_EQ(versions.size(), 2U);
    EXPECT_EQ(versions.at(0).number, 2);
    EXPECT_EQ(versions.at(0).why, "less salt");
    EXPECT_EQ(versions.at(1).document, "{\"v\":1}");
    EXPECT_EQ(refuses(AddRecipeVersion{model::RecipeId::from_row(99), "{}"}), "recipe");
    const auto salt = does(AddIngredient{{.catalogue_id = "salt", .name = "Salt"}})
                          .id<model::IngredientId>(EntryKind::ingredient);
    does(ChangeIngredient{{.id = salt, .catalogue_id = "salt", .name = "Sea salt"}});
    const auto lot =
        does(AddLot{{.ingredient = salt, .code = "S1"}}).id<model::LotId>(EntryKind::lot);
    does(ChangeLot{{.id = lot, .ingredient = salt, .code = "S1", .supplier = "invented"}});
    const auto use = does(AddIngredientUse{{.batch = batch,
                                            .ingredient = "salt",
                                            .name = "Salt",
                                            .lot = lot,
                                            .planned = Mass::grams(27.5)}})
                         .id<model::IngredientUseId>(EntryKind::ingredient_use);
    does(ChangeIngredientUse{{.id = use,
                              .batch = batch,
                              .ingredient = "salt",
                              .name = "Salt",
                              .lot = lot,
                              .planned = Mass::grams(27.5),
                              .weighed = Mass::grams(27.6)}});
}

TEST_F(ActionsTest, BatchesAndStages) {
    does(AddBatch{saltloft::testing::batch("B02")});
    EXPECT_EQ(refuses(AddBatch{saltloft::testing::batch("B02")}), "code_taken");
    model::Batch changed = saltloft::testing::batch("B01");
    changed.id = batch;
    changed.price_per_kilogram = 8.35;
    does(ChangeBatch{changed});
    const auto cellar = chamber("Cellar");
    does(StartStage{stage, at_s(test_now_s), cellar});
    EXPECT_EQ(read_piece(piece).state, PieceState::curing);
    EXPECT_EQ(read_piece(piece).chamber, cellar);
    EXPECT_EQ(refuses(StartStage{stage, at_s(test_now_s), {}}), "stage_has_started");
    EXPECT_EQ(refuses(SetStages{batch, {}}), "stage_has_started");
    EXPECT_EQ(refuses(EndStage{stage, at_s(test_now_s - 60), ""}), "ends_before_start");
    does(EndStage{stage, at_s(test_now_s + 60), "firm"});
    auto kept = store->read([&](Connection& b) { return store::stages(b, batch); }).value();
    model::Stage more = kept.at(0);
    more.id = {};
    more.started_at.reset();
    more.ended_at.reset();
    more.what.kind = model::StageKind::dry;
    kept.push_back(more);
    does(SetStages{batch, kept});
    does(RecordOutcome{{.batch = batch, .salt = 1, .change_next_time = "less salt"}});
    EXPECT_EQ(refuses(RecordOutcome{{.batch = batch, .salt = 7}}), "score_out_of_range");
}

TEST_F(ActionsTest, WeighingsAppendCorrectAndWithdraw) {
    does(AddPiece{[&] {
        NewPiece third = new_piece("C");
        third.piece.batch = batch;
        return third;
    }()});
    const auto first = does(AddWeighing{weighing(piece, 950, test_now_s, 40)})
                           .id<model::WeighingId>(EntryKind::weighing);
    does(AddWeighings{{weighing(piece, 940), weighing(other, 1100)}});
    does(AmendWeighing{first, weighing({}, 955, test_now_s, 40)});
    EXPECT_EQ(refuses(WithdrawWeighing{first}), "already_amended");
    const auto last =
        does(AddWeighing{weighing(piece, 930)}).id<model::WeighingId>(EntryKind::weighing);
    does(WithdrawWeighing{last});
    EXPECT_EQ(refuses(WithdrawWeighing{last}), "already_withdrawn");
    EXPECT_EQ(refuses(WithdrawWeighing{last}, ""), "why_missing");
    EXPECT_EQ(refuses(AddWeighing{weighing(piece, 30, test_now_s, 40)}), "tare_not_below_weight");
    EXPECT_EQ(refuses(AddWeighing{weighing(piece, 40, test_now_s, 40)}), "tare_not_below_weight");
    EXPECT_EQ(refuses(AddWeighing{weighing(piece, std::nan(""))}),
              "weight_not_positive"); // NaN stops here, whatever let it through
    EXPECT_EQ(refuses(AddWeighing{weighing(PieceId::from_row(77), 30)}), "piece");
    EXPECT_EQ(refuses(AddWeighings{}), "nothing_entered");
}

TEST_F(ActionsTest, EventsChangeThePieceTheyAreAbout) {
    const auto cellar = chamber("Cellar");
    does(RecordEvent{{.piece = piece,
                      .kind = model::EventKind::hung,
                      .at = at_s(test_now_s),
                      .net_after = Mass::grams(980),
                      .tare_after = Mass::grams(60),
                      .chamber = cellar}});
    EXPECT_EQ(read_piece(piece).state, PieceState::drying);
    EXPECT_EQ(read_piece(piece).chamber, cellar);
    const auto event = does(RecordEvent{{.piece = piece,
                                         .kind = model::EventKind::trimmed,
                                         .at = at_s(test_now_s),
                                         .net_before = Mass::grams(900),
                                         .net_after = Mass::grams(850),
                                         .start_override = Mass::grams(930)}})
                           .id<model::EventId>(EntryKind::event);
    does(WithdrawEvent{event});
    EXPECT_EQ(refuses(WithdrawEvent{event}), "already_withdrawn");
    EXPECT_EQ(refuses(RecordEvent{
                  {.piece = piece, .kind = model::EventKind::split, .at = at_s(test_now_s)}}),
              "use_split_or_merge");
}

TEST_F(ActionsTest, SplittingKeepsTheFamilyAndMergingJoinsIt) {
    SplitPiece split{.piece = piece, .at = at_s(test_now_s), .net_before = Mass::grams(990)};
    split.children = {new_piece("B01a", 500), new_piece("X2", 470)}; // one takes over the code
    split.children.at(1).piece.target.reset();
    const Performed made = does(split);
    const auto one = made.id<PieceId>(EntryKind::piece, 0);
    const auto two = made.id<PieceId>(EntryKind::piece, 1);
    EXPECT_EQ(read_piece(piece).state, PieceState::split_up);
    EXPECT_EQ(read_piece(one).parent, piece);
    EXPECT_EQ(read_piece(two).target, read_piece(piece).target);
    const auto events = store->read([&](Connection& b) { return store::events(b, piece); }).value();
    EXPECT_EQ(events.at(0).others, (std::vector<PieceId>{one, two}));
    const auto family = store->read([&](Connection& b) { return store::family(b, two); }).value();
    EXPECT_EQ(family.size(), 3U);
    EXPECT_EQ(refuses(AddWeighing{weighing(piece, 500)}), "piece_carries_on_elsewhere");
    split.children.resize(1);
    EXPECT_EQ(refuses(split), "too_few_pieces");

    MergePieces merge{.members = {one, two}, .at = at_s(test_now_s), .into = new_piece("M", 960)};
    merge.into.piece.batch = batch;
    does(merge);
    EXPECT_EQ(read_piece(two).state, PieceState::merged_away);
    merge.members = {other, other};
    EXPECT_EQ(refuses(merge), "too_few_pieces");
}

TEST_F(ActionsTest, NotesDecisionsTicksAndStock) {
    const auto ada = person();
    std::vector<unsigned char> picture(100000, 0x41);
    const auto note = does(AddNote{{.piece = piece,
                                    .at = at_s(test_now_s),
                                    .kind = model::NoteKind::mould,
                                    .photo_name = "spot.jpg",
                                    .photo = picture}})
                          .id<model::NoteId>(EntryKind::note);
    does(AddNote{{.batch = batch, .at = at_s(test_now_s), .text = "again", .photo = picture}});
    EXPECT_EQ(store->read([&](Connection& b) { return store::photo(b, note); }).value(), picture);
    EXPECT_EQ(saltloft::testing::query(path, "SELECT count(*) FROM photo"), "1")
        << "equal photos are kept once";
    EXPECT_EQ(refuses(AddNote{{.at = at_s(test_now_s)}}), "reference_missing, nothing_entered");
    does(AcceptFinding{{.piece = piece, .code = "c", .at = at_s(test_now_s), .by = ada}});
    EXPECT_EQ(refuses(AcceptFinding{{.piece = piece, .code = "c", .at = at_s(test_now_s)}}),
              "acceptance_without_name");
    auto nameless = start_batch("B02");
    nameless.accepted.push_back({.code = "c", .at = at_s(test_now_s)});
    EXPECT_EQ(refuses(nameless), "acceptance_without_name");
    const auto tick = does(TickTask{{.key = "turn", .at = at_s(test_now_s), .piece = piece}})
                          .id<model::TaskId>(EntryKind::task_tick);
    does(UntickTask{tick});
    does(SignDecision{{.piece = piece,
                       .at = at_s(test_now_s),
                       .verdict = model::Verdict::not_yet,
                       .signed_by = ada,
                       .weigh_again = units::Day::from_days_since_epoch(20600)}});
    EXPECT_EQ(read_piece(piece).state, PieceState::planned);
    does(SignDecision{{.piece = piece,
                       .at = at_s(test_now_s),
                       .verdict = model::Verdict::done,
                       .signed_by = ada,
                       .evidence = "{}"}});
    EXPECT_EQ(read_piece(piece).state, PieceState::finished);
    EXPECT_EQ(refuses(SignDecision{{.piece = piece, .at = at_s(test_now_s)}}), "reference_missing")
        << "a decision has a name under it";
    const auto pack = does(AddPack{{.piece = piece,
                                    .code = "K1",
                                    .packed_weight = Mass::grams(640),
                                    .weight_left = Mass::grams(0),
                                    .packed_on = units::Day::from_days_since_epoch(20600)}})
                          .id<model::PackId>(EntryKind::pack);
    const auto read_pack = [&] {
        return store->read([&](Connection& b) { return store::get<model::Pack>(b, pack); }).value();
    };
    EXPECT_NEAR(read_pack().weight_left.in_grams(), 640, 1e-9);
    const auto move = [&](model::MoveKind kind, double grams) {
        return MovePack{
            {.pack = pack, .kind = kind, .amount = Mass::grams(grams), .at = at_s(test_now_s)}};
    };
    does(move(model::MoveKind::sold, 240));
    EXPECT_EQ(refuses(move(model::MoveKind::used, 400.5)), "more_than_is_left");
    does(move(model::MoveKind::counted, 390));
    EXPECT_NEAR(read_pack().weight_left.in_grams(), 390, 1e-9);
    auto moved = read_pack();
    moved.place = "shelf 2";
    moved.weight_left = Mass::grams(9999); // not this way
    does(ChangePack{moved});
    EXPECT_NEAR(read_pack().weight_left.in_grams(), 390, 1e-9);
    does(move(model::MoveKind::wasted, 390));
    EXPECT_TRUE(read_pack().gone);
    does(DiscardPiece{other, at_s(test_now_s)});
    EXPECT_EQ(refuses(DiscardPiece{other, at_s(test_now_s)}), "already_discarded");
}

TEST_F(ActionsTest, APreferenceIsLoggedButNotUndone) {
    does(SetPreference{"units", "imperial"});
    const auto undone = undo(*store, context());
    ASSERT_TRUE(undone.has_value());
    EXPECT_EQ(undone->verb, "start_batch") << "the batch, not somebody's units";
    EXPECT_EQ(store->read([](Connection& b) { return store::preference(b, "units"); }).value(),
              "imperial");
    does(SetPreference{"units", std::nullopt});
    EXPECT_TRUE(redo(*store, context()).has_value()) << "and it does not close the way forward";
}

TEST_F(ActionsTest, UndoNeverOverwritesWhatChangedOutsideTheLog) {
    does(RecordOutcome{{.batch = batch, .salt = 1, .change_next_time = "x"}});
    saltloft::testing::run_sql(path, "UPDATE outcome SET salt = 2");
    const auto result = undo(*store, context());
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().code, base::ErrorCode::conflict);
    EXPECT_EQ(saltloft::testing::query(path, "SELECT salt FROM outcome"), "2");
    EXPECT_EQ(saltloft::testing::query(path, "SELECT count(*) FROM step WHERE kind = 'undone'"),
              saltloft::testing::query(path, "SELECT count(*) FROM step WHERE kind = 'redone'"))
        << "the failed undo is not in the log either";
}

TEST_F(ActionsTest, HistoryNamesFieldsBeforeAndAfter) {
    model::Piece changed = read_piece(piece);
    changed.position = "rail 2";
    changed.thickness = units::Length::millimetres(64.5);
    does(ChangePiece{changed}, "measured again");
    const auto lines = store
                           ->read([&](Connection& b) {
                               return store::entry_history(b, {EntryKind::piece, piece.row()});
                           })
                           .value();
    // Added (undone, redone by the fixture), changed (undone, redone).
    ASSERT_EQ(lines.size(), 6U);
    const model::HistoryLine& line = lines.at(3);
    EXPECT_EQ(line.verb, "change_piece");
    EXPECT_EQ(line.why, "measured again");
    EXPECT_EQ(line.fate, model::EntryFate::changed);
    ASSERT_EQ(line.fields.size(), 2U);
    EXPECT_EQ(line.fields.at(0).field, "thickness_um");
    EXPECT_EQ(line.fields.at(0).before, "60000");
    EXPECT_EQ(line.fields.at(0).after, "64500");
    EXPECT_EQ(lines.at(4).step_kind, model::StepKind::undone);
    EXPECT_EQ(lines.at(4).fields.at(0).after, "60000");
    EXPECT_EQ(lines.at(1).fate, model::EntryFate::removed);
}
