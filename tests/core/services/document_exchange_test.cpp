// A book out to an exchange document and in again, through real files.
#include "core/services/document_exchange.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

using namespace core;
using namespace core::actions;
using core::base::ErrorCode;
using core::exchange::BookDocument;
using core::services::Book;
using model::EntryKind;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::TempFolder;
using saltloft::testing::test_now_s;
using saltloft::testing::weighing;
using testing::ElementsAre;
using units::Mass;

namespace {

class DocumentExchange : public ::testing::Test {
  protected:
    Book open(const std::string& name) {
        auto book =
            Book::open(folder.file(name), {.now = at_s(test_now_s), .create_if_missing = true});
        EXPECT_TRUE(book.has_value()) << book.error().detail;
        return std::move(*book);
    }

    /// Everything a book can hold, with corrections and withdrawals, by two people over days.
    void fill(Book& book) {
        const auto ida = must(book, AddPerson{{{}, "Invented Ida", "II", true}})
                             .id<model::PersonId>(EntryKind::person);
        const auto tom = must(book, AddPerson{{{}, "Invented Tom", "IT", true}})
                             .id<model::PersonId>(EntryKind::person);
        who = ida;
        model::Chamber room;
        room.name = "Room 1";
        room.low_temperature = units::Temperature::celsius(4.4);
        const auto chamber = must(book, AddChamber{room}).id<model::ChamberId>(EntryKind::chamber);
        model::Sensor probe;
        probe.chamber = chamber;
        probe.name = "S1";
        const auto sensor = must(book, AddSensor{probe}).id<model::SensorId>(EntryKind::sensor);
        model::Instrument scale;
        scale.name = "bench scale";
        scale.scale_step = Mass::grams(0.5);
        const auto instrument =
            must(book, AddInstrument{scale}).id<model::InstrumentId>(EntryKind::instrument);
        must(book,
             AddInstrument{{{}, model::InstrumentKind::hygrometer, "H1", {}, sensor, 30, true}});
        must(book,
             AddCheck{{{}, instrument, at_s(now), "500 g test weight", 500, 499.5, "none", ida}});
        const auto cure = must(book, AddIngredient{{{}, "cure_no2", "Cure", ""}})
                              .id<model::IngredientId>(EntryKind::ingredient);
        const auto lot = must(book, AddLot{{{}, cure, "L-42", "Invented Salt", "2026-01-15"}})
                             .id<model::LotId>(EntryKind::lot);

        StartBatch start = saltloft::testing::start_batch("B01");
        start.recipe = AddRecipe{"Loin", "{ \"lines\": [] }"};
        start.uses.push_back({.ingredient = "cure",
                              .name = "Cure",
                              .lot = lot,
                              .planned = Mass::grams(5.5),
                              .weighed = Mass::grams(5.512)});
        start.accepted.push_back({.code = "dose_coarse",
                                  .place = "line 1",
                                  .at = at_s(now),
                                  .by = ida,
                                  .why = "blended"});
        for (NewPiece& piece : start.pieces) {
            piece.piece.chamber = chamber;
        }
        const Performed started = must(book, start);
        const auto batch = started.id<model::BatchId>(EntryKind::batch);
        const auto first = started.id<model::PieceId>(EntryKind::piece, 0);
        const auto second = started.id<model::PieceId>(EntryKind::piece, 1);
        must(book, AddRecipeVersion{book.recipes()->front().id, "{\"lines\":[1]}"});

        who = tom;
        const auto slip = must(book, AddWeighing{weighing(first, 9500, now)})
                              .id<model::WeighingId>(EntryKind::weighing);
        who = ida;
        must(book, AmendWeighing{slip, weighing(first, 950, now)}, "comma slipped");
        const auto taken_back = must(book, AddWeighing{weighing(second, 1150, now)})
                                    .id<model::WeighingId>(EntryKind::weighing);
        must(book, WithdrawWeighing{taken_back}, "wrong piece");
        must(book, RecordEvent{{.piece = second, .kind = model::EventKind::hung, .at = at_s(now)}});
        must(book, SplitPiece{first,
                              at_s(now),
                              Mass::grams(950),
                              {saltloft::testing::new_piece("C1", 500),
                               saltloft::testing::new_piece("C2", 440)},
                              "cut"});
        model::Note note{.batch = batch,
                         .piece = second,
                         .at = at_s(now),
                         .kind = model::NoteKind::mould,
                         .text = "white",
                         .photo_name = "a.jpg",
                         .photo = {1, 2, 255}};
        must(book, AddNote{note});
        must(book, TickTask{{.key = "turn", .at = at_s(now), .by = ida, .batch = batch}});
        must(book, SignDecision{{.piece = second,
                                 .at = at_s(now),
                                 .verdict = model::Verdict::done,
                                 .signed_by = ida,
                                 .evidence = "{}",
                                 .why = "firm"}});
        must(book, RecordOutcome{{batch, 1, -1, "more pepper"}});
        const auto pack =
            must(book, AddPack{{.piece = second,
                                .code = "P1",
                                .packed_weight = Mass::grams(700),
                                .weight_left = Mass::grams(700),
                                .packed_on = units::Day::from_days_since_epoch(20600)}})
                .id<model::PackId>(EntryKind::pack);
        must(book, MovePack{{.pack = pack,
                             .kind = model::MoveKind::sold,
                             .amount = Mass::grams(200),
                             .at = at_s(now),
                             .to_whom = "Invented Deli"}});
        must(book, SetPreference{"currency", "EUR"});
        must(book, saltloft::testing::start_batch("B02"));
    }

    Performed must(Book& book, const Command& command, const std::string& why = {}) {
        now += 3600;
        auto performed = book.perform(command, {who, at_s(now), why});
        EXPECT_TRUE(performed.has_value()) << verb_of(command) << ": " << performed.error().detail
                                           << " " << performed.error().where;
        return performed.value_or(Performed{});
    }

    BookDocument out(const Book& book, const std::string& batch = {}) {
        services::ExportRequest request{.now = at_s(test_now_s), .written_by = "test"};
        if (!batch.empty()) {
            request.batch = book.batch_by_code(batch)->id;
        }
        auto document = services::export_document(book, request);
        EXPECT_TRUE(document.has_value()) << document.error().detail;
        return std::move(*document);
    }

    /// Through the text, as between two computers.
    static BookDocument posted(const BookDocument& document) {
        auto read = exchange::read_book_document(exchange::write_book_document(document));
        EXPECT_TRUE(read.has_value())
            << read.error().front().where << " " << read.error().front().detail;
        return std::move(*read);
    }

    TempFolder folder;
    std::optional<model::PersonId> who;
    std::int64_t now = test_now_s;
};

} // namespace

TEST_F(DocumentExchange, AWholeBookComesBackAsItWas) {
    Book book = open("first.saltloft");
    fill(book);
    const BookDocument before = out(book);
    EXPECT_EQ(before.weighings.size(),
              9U); // 4 raw, 2 of children, a slip, its amendment, a withdrawn one
    EXPECT_EQ(before.notes.at(0).value.photo, (std::vector<unsigned char>{1, 2, 255}));

    Book copy = open("copy.saltloft");
    const auto report = services::import_document(copy, posted(before), context());
    ASSERT_TRUE(report.has_value()) << report.error().detail << " " << report.error().where;
    EXPECT_THAT(report->batches, testing::UnorderedElementsAre("B01", "B02"));

    // Everything but the log, whose lines are now those of the import, is the same text: also
    // who entered, amended and withdrew what, when and why.
    BookDocument after = out(copy);
    BookDocument expected = before;
    after.log.clear();
    expected.log.clear();
    EXPECT_EQ(exchange::write_book_document(after), exchange::write_book_document(expected));
    EXPECT_TRUE(copy.check_integrity(true)->sound());
    EXPECT_FALSE(copy.undo_label().has_value()); // an import is not taken apart by undo

    const auto versions = copy.weighing_versions(after.weighings.back().value.id);
    ASSERT_TRUE(versions.has_value());
}

TEST_F(DocumentExchange, CorrectionsKeepTheirStory) {
    Book book = open("first.saltloft");
    fill(book);
    Book copy = open("copy.saltloft");
    ASSERT_TRUE(services::import_document(copy, posted(out(book)), context()).has_value());
    const auto piece = copy.pieces({.text = "B01a"})->at(0);
    const auto weighings = copy.weighings(piece.id);
    const auto slip =
        std::find_if(weighings->begin(), weighings->end(),
                     [](const model::Weighing& w) { return w.amended_by.has_value(); });
    ASSERT_NE(slip, weighings->end());
    const auto chain = copy.weighing_versions(slip->id);
    ASSERT_EQ(chain->size(), 2U);
    EXPECT_EQ(chain->at(0).weighing.on_scale, Mass::grams(9500));
    EXPECT_EQ(chain->at(1).why, "comma slipped");
    const auto people = copy.people();
    const auto name = [&](std::optional<model::PersonId> id) {
        const auto found =
            std::find_if(people->begin(), people->end(), [&](const auto& p) { return p.id == id; });
        return found == people->end() ? std::string("nobody") : found->initials;
    };
    EXPECT_EQ(name(chain->at(0).who), "IT");
    EXPECT_EQ(name(chain->at(1).who), "II");
    EXPECT_LT(chain->at(0).entered_at, chain->at(1).entered_at);
}

TEST_F(DocumentExchange, ABatchBringsWhatItNeedsAndNoMore) {
    Book book = open("first.saltloft");
    fill(book);
    const BookDocument batch = out(book, "B02");
    EXPECT_EQ(batch.batches.size(), 1U);
    EXPECT_EQ(batch.pieces.size(), 2U);
    EXPECT_TRUE(batch.packs.empty());
    EXPECT_TRUE(batch.recipes.empty());
    EXPECT_TRUE(batch.chambers.empty());
    EXPECT_TRUE(batch.log.empty());
    const BookDocument rich = out(book, "B01");
    EXPECT_EQ(rich.lots.size(), 1U);
    EXPECT_EQ(rich.recipe_versions.size(), 1U); // the one used, not the later one
    EXPECT_EQ(rich.checks.size(), 1U);
    EXPECT_EQ(rich.pack_moves.size(), 1U);
    EXPECT_TRUE(exchange::read_book_document(exchange::write_book_document(rich)).has_value());
}

TEST_F(DocumentExchange, ABatchJoinsABookWithoutDoublingItsRegisters) {
    Book book = open("first.saltloft");
    fill(book);
    Book other = open("other.saltloft");
    ASSERT_TRUE(services::import_document(other, posted(out(book, "B02")), context()).has_value());
    const auto joined = services::import_document(other, posted(out(book, "B01")), context());
    ASSERT_TRUE(joined.has_value()) << joined.error().detail;
    EXPECT_EQ(other.people()->size(), book.people()->size());
    EXPECT_EQ(other.chambers()->size(), 1U);
    EXPECT_EQ(other.batches()->size(), 2U);
    BookDocument there = out(other, "B01");
    EXPECT_EQ(there.weighings.size(), out(book, "B01").weighings.size());
}

TEST_F(DocumentExchange, RefusesCodesInUseAndLeavesTheBookAlone) {
    Book book = open("first.saltloft");
    fill(book);
    const auto revision = book.revision();
    const auto again = services::import_document(book, posted(out(book, "B02")), context());
    ASSERT_FALSE(again.has_value());
    EXPECT_EQ(again.error().code, ErrorCode::conflict);
    EXPECT_EQ(again.error().detail, "B02, B02a, B02b");
    EXPECT_EQ(book.revision(), revision);
}

TEST_F(DocumentExchange, RefusesEntriesAPersonCouldNotEnter) {
    Book book = open("first.saltloft");
    fill(book);
    BookDocument bad = out(book, "B01");
    bad.weighings.at(0).value.on_scale = Mass::grams(-5);
    bad.pieces.at(1).value.code = " ";
    Book other = open("other.saltloft");
    const auto refused = services::import_document(other, bad, context());
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, ErrorCode::not_allowed);
    EXPECT_THAT(refused.error().detail, testing::HasSubstr("weight_not_positive"));
    EXPECT_THAT(refused.error().detail, testing::HasSubstr("code_missing"));
    EXPECT_TRUE(other.batches()->empty());
}

TEST_F(DocumentExchange, RefusesAChainThatBitesItsTail) {
    Book book = open("first.saltloft");
    fill(book);
    BookDocument bad = out(book, "B02");
    bad.pieces.at(0).value.parent = bad.pieces.at(1).value.id;
    bad.pieces.at(1).value.parent = bad.pieces.at(0).value.id;
    Book other = open("other.saltloft");
    const auto refused = services::import_document(other, bad, context());
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().detail, "refers_to_itself");
}
