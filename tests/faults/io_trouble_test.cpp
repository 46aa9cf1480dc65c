// An I/O error or a full disk at each operation of each action: the book is in the old state or in
// the new one, never between, and what was reported as done is done.
#include "core/services/book.h"
#include "core/store/store.h"
#include "tests/faults/support/crash_vfs.h"
#include "tests/support/book_dump.h"
#include "tests/support/sample_entries.h"

#include <functional>
#include <gtest/gtest.h>

using namespace core;
using namespace saltloft::testing;
using model::EntryKind;
using services::Book;
using units::Mass;

namespace {

struct Case {
    std::string name;
    std::function<bool(Book&)> act; ///< true: reported as done
};

struct Ids {
    model::BatchId batch;
    model::PieceId piece;
    model::PieceId other;
    model::StageId stage;
    model::WeighingId weighing;
    model::PersonId person;
    model::PackId pack;
};

Book open(const CrashDisk& disk, bool create = false) {
    auto book = Book::open(
        "book", {.now = at_s(test_now_s), .create_if_missing = create, .vfs = disk.name()});
    if (!book) {
        throw std::runtime_error(book.error().detail);
    }
    // The main file is written often, so that trouble strikes there too.
    book->store().connection().run("PRAGMA wal_autocheckpoint=4");
    return std::move(*book);
}

Ids fill(Book& book) {
    const auto must = [&](const actions::Command& command) {
        auto done = book.perform(command, context("why"));
        EXPECT_TRUE(done.has_value()) << done.error().detail;
        return *done;
    };
    Ids ids;
    const auto started = must(start_batch("B01"));
    ids.batch = started.id<model::BatchId>(EntryKind::batch);
    ids.piece = started.id<model::PieceId>(EntryKind::piece, 0);
    ids.other = started.id<model::PieceId>(EntryKind::piece, 1);
    ids.stage = started.id<model::StageId>(EntryKind::stage);
    ids.person = must(actions::AddPerson{{.name = "A"}}).id<model::PersonId>(EntryKind::person);
    ids.weighing = must(actions::AddWeighing{weighing(ids.piece, 950)})
                       .id<model::WeighingId>(EntryKind::weighing);
    ids.pack = must(actions::AddPack{{.piece = ids.other,
                                      .code = "K1",
                                      .packed_weight = Mass::grams(500),
                                      .weight_left = Mass::grams(0),
                                      .packed_on = units::Day::from_days_since_epoch(20600)}})
                   .id<model::PackId>(EntryKind::pack);
    must(actions::SignDecision{{.piece = ids.other,
                                .at = at_s(test_now_s),
                                .verdict = model::Verdict::done,
                                .signed_by = ids.person}});
    must(actions::AddWeighing{weighing(ids.piece, 940)});
    EXPECT_TRUE(book.undo(context()).has_value());
    return ids;
}

std::vector<Case> cases(const Ids& ids) {
    const auto performing = [](actions::Command command) {
        return [command = std::move(command)](Book& book) {
            return book.perform(command, context("why")).has_value();
        };
    };
    actions::SplitPiece split{.piece = ids.piece, .at = at_s(test_now_s)};
    split.children = {new_piece("X1", 500), new_piece("X2", 400)};
    std::vector<unsigned char> photo(20000, 7);
    auto again = batch("B02");
    return {
        {"start_batch", performing(start_batch("B03"))},
        {"add_batch", performing(actions::AddBatch{again})},
        {"add_weighing", performing(actions::AddWeighing{weighing(ids.piece, 930)})},
        {"add_weighings",
         performing(actions::AddWeighings{{weighing(ids.piece, 930), weighing(ids.other, 1090)}})},
        {"amend_weighing", performing(actions::AmendWeighing{ids.weighing, weighing({}, 905)})},
        {"withdraw_weighing", performing(actions::WithdrawWeighing{ids.weighing})},
        {"record_event",
         performing(actions::RecordEvent{
             {.piece = ids.piece, .kind = model::EventKind::hung, .at = at_s(test_now_s)}})},
        {"split_piece", performing(split)},
        {"start_stage", performing(actions::StartStage{ids.stage, at_s(test_now_s), {}})},
        {"set_stages", performing(actions::SetStages{ids.batch, {}})},
        {"add_note",
         performing(actions::AddNote{
             {.piece = ids.piece, .at = at_s(test_now_s), .text = "t", .photo = photo}})},
        {"sign_decision", performing(actions::SignDecision{{.piece = ids.piece,
                                                            .at = at_s(test_now_s),
                                                            .verdict = model::Verdict::done,
                                                            .signed_by = ids.person}})},
        {"move_pack", performing(actions::MovePack{{.pack = ids.pack,
                                                    .kind = model::MoveKind::sold,
                                                    .amount = Mass::grams(200),
                                                    .at = at_s(test_now_s)}})},
        {"hang_from_pack", performing(actions::MovePack{{.pack = ids.pack,
                                                         .kind = model::MoveKind::re_hung,
                                                         .amount = Mass::grams(200),
                                                         .at = at_s(test_now_s),
                                                         .to_whom = "X9"}})},
        {"add_chamber", performing(actions::AddChamber{{.name = "C"}})},
        {"set_preference", performing(actions::SetPreference{"k", "v"})},
        {"undo", [](Book& book) { return book.undo(context()).has_value(); }},
        {"redo", [](Book& book) { return book.redo(context()).has_value(); }},
    };
}

std::vector<std::string> state_of(const Book& book) {
    return dump(book.store().connection().database(), DumpOf::all);
}

struct Count {
    int struck = 0;
    int refused = 0;
    int done_anyway = 0;
};

/// The state before an action and the one it makes when nothing goes wrong.
struct States {
    std::vector<std::string> before;
    std::vector<std::string> after;
};

States states_of(CrashDisk& disk, const CrashDisk::Snapshot& start, const Case& of) {
    disk.go_back_to(start);
    Book book = open(disk);
    States states{state_of(book), {}};
    EXPECT_TRUE(of.act(book)) << of.name;
    states.after = state_of(book);
    return states;
}

/// False when the action was over before the operation at which trouble was to come.
bool try_case(CrashDisk& disk, const CrashDisk::Snapshot& start, const Case& of,
              const States& states, Trouble trouble, Count& count) {
    disk.go_back_to(start);
    bool done = false;
    bool struck = false;
    std::int64_t operations = 0;
    {
        Book book = open(disk);
        disk.set_trouble(trouble);
        operations = disk.operations();
        done = of.act(book);
        operations = disk.operations() - operations;
        struck = disk.trouble_struck();
        disk.clear_trouble();
        // The same open book can be read on, once the trouble is over.
        EXPECT_TRUE(book.log(1).has_value()) << of.name;
    }
    const Book book = open(disk);
    const auto found = state_of(book);
    const auto report = book.check_integrity(true);
    EXPECT_TRUE(report.has_value() && report->sound()) << of.name;
    EXPECT_TRUE(found == states.before || found == states.after)
        << of.name << ", operation " << trouble.from_operation << ": a mixture";
    EXPECT_TRUE(!done || found == states.after) << of.name << ": reported as done and not there";
    count.struck += struck ? 1 : 0;
    count.refused += struck && !done ? 1 : 0;
    count.done_anyway += struck && done ? 1 : 0;
    return operations > trouble.from_operation;
}

void try_everywhere(Trouble::Kind kind, bool lasting, const char* name) {
    CrashDisk disk(std::string("trouble-") + name);
    Ids ids;
    {
        Book book = open(disk, true);
        ids = fill(book);
    }
    const auto start = disk.snapshot();
    static constexpr int most_operations = 300; // an action needs far fewer
    Count count;
    for (const Case& of : cases(ids)) {
        const States states = states_of(disk, *start, of);
        int n = 0;
        while (n < most_operations &&
               try_case(disk, *start, of, states, {kind, n, lasting}, count)) {
            ASSERT_FALSE(::testing::Test::HasFailure());
            ++n;
        }
        EXPECT_LT(n, most_operations) << of.name;
    }
    std::printf("%s: struck %d operations in %zu actions, %d refused, %d done in spite of it\n",
                name, count.struck, cases(ids).size(), count.refused, count.done_anyway);
    EXPECT_GT(count.struck, 60);
    EXPECT_GT(count.refused, 30);
}

} // namespace

TEST(IoTrouble, OneFailedOperationLeavesOldOrNew) {
    try_everywhere(Trouble::Kind::io_error, false, "one I/O error");
}
TEST(IoTrouble, AFailingDiskLeavesOldOrNew) {
    try_everywhere(Trouble::Kind::io_error, true, "I/O errors from there on");
}
TEST(IoTrouble, AFullDiskLeavesOldOrNew) {
    try_everywhere(Trouble::Kind::disk_full, true, "disk full from there on");
}
TEST(IoTrouble, AMomentarilyFullDiskLeavesOldOrNew) {
    try_everywhere(Trouble::Kind::disk_full, false, "disk full once");
}

TEST(IoTrouble, OpeningAndBringingUpToDateFailCleanly) {
    // Making a new book through the file system in which the n-th operation fails: afterwards the
    // same call succeeds, from whatever was left.
    int struck = 0;
    for (int n = 0; n < 400; ++n) {
        CrashDisk disk("opening");
        disk.set_trouble({Trouble::Kind::io_error, n, true});
        const auto failed = Book::open(
            "book", {.now = at_s(test_now_s), .create_if_missing = true, .vfs = disk.name()});
        if (!disk.trouble_struck()) {
            break;
        }
        ++struck;
        disk.clear_trouble();
        auto book = Book::open(
            "book", {.now = at_s(test_now_s), .create_if_missing = true, .vfs = disk.name()});
        ASSERT_TRUE(book.has_value()) << "operation " << n << ": " << book.error().detail;
        EXPECT_TRUE(book->check_integrity(true)->sound());
        EXPECT_TRUE(book->perform(start_batch("B01"), context()).has_value());
    }
    std::printf("opening: struck %d operations\n", struck);
    EXPECT_GT(struck, 20);
}
