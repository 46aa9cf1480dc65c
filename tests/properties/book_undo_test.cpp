// Whatever is done to a book, undoing it all gives the book before, and redoing it all the book
// after; the log and the codes of entries stay whole on the way.
#include "core/services/book.h"
#include "core/store/connection.h"
#include "core/store/store.h"
#include "tests/support/book_dump.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

using namespace core;
using namespace saltloft::testing;
using model::EntryKind;
using services::Book;
using units::Mass;

namespace {

/// What a sequence may refer to: whatever was ever made, also what is undone by now.
struct Made {
    std::vector<model::BatchId> batches;
    std::vector<model::PieceId> pieces;
    std::vector<model::WeighingId> weighings;
    std::vector<model::StageId> stages;
    std::vector<model::PackId> packs;
    std::vector<model::EventId> events;
    std::vector<model::PersonId> people;

    void add(const actions::Performed& performed) {
        for (const auto& [kind, row] : performed.created) {
            switch (kind) {
            case EntryKind::batch:
                batches.push_back(model::BatchId::from_row(row));
                break;
            case EntryKind::piece:
                pieces.push_back(model::PieceId::from_row(row));
                break;
            case EntryKind::weighing:
                weighings.push_back(model::WeighingId::from_row(row));
                break;
            case EntryKind::stage:
                stages.push_back(model::StageId::from_row(row));
                break;
            case EntryKind::pack:
                packs.push_back(model::PackId::from_row(row));
                break;
            case EntryKind::event:
                events.push_back(model::EventId::from_row(row));
                break;
            case EntryKind::person:
                people.push_back(model::PersonId::from_row(row));
                break;
            default:
                break;
            }
        }
    }
};

template <class Id>
Id any_of(const std::vector<Id>& ids) {
    return ids.empty() ? Id::from_row(1) : *rc::gen::elementOf(ids);
}
double grams() {
    return *rc::gen::inRange(1, 3000000) / 1000.0;
}
std::string code() {
    return "c" + std::to_string(*rc::gen::inRange(0, 40));
}

/// Any command; many are refused (codes taken, ids undone), which must leave no trace.
actions::Command any_command(const Made& made) {
    const auto now = at_s(test_now_s);
    switch (*rc::gen::inRange(0, 16)) {
    case 0:
        return start_batch(code());
    case 1:
        return actions::AddWeighing{weighing(any_of(made.pieces), grams())};
    case 2:
        return actions::AmendWeighing{any_of(made.weighings), weighing({}, grams())};
    case 3:
        return actions::WithdrawWeighing{any_of(made.weighings)};
    case 4:
        return actions::RecordEvent{
            {.piece = any_of(made.pieces),
             .kind = *rc::gen::element(model::EventKind::hung, model::EventKind::washed,
                                       model::EventKind::trimmed),
             .at = now}};
    case 5: {
        actions::SplitPiece split{.piece = any_of(made.pieces), .at = now};
        split.children = {new_piece(code(), grams()), new_piece(code(), grams())};
        return split;
    }
    case 6:
        return actions::StartStage{any_of(made.stages), now, {}};
    case 7:
        return actions::EndStage{any_of(made.stages), now, "done"};
    case 8:
        return actions::AddPerson{{.name = code()}};
    case 9:
        return actions::SignDecision{
            {.piece = any_of(made.pieces),
             .at = now,
             .verdict = *rc::gen::element(model::Verdict::done, model::Verdict::not_yet),
             .signed_by = any_of(made.people)}};
    case 10:
        return actions::AddPack{{.piece = any_of(made.pieces),
                                 .code = code(),
                                 .packed_weight = Mass::grams(grams()),
                                 .weight_left = Mass::grams(0),
                                 .packed_on = units::Day::from_days_since_epoch(20600)}};
    case 11:
        return actions::MovePack{
            {.pack = any_of(made.packs),
             .kind = *rc::gen::element(model::MoveKind::sold, model::MoveKind::re_hung),
             .amount = Mass::grams(grams()),
             .at = now,
             .to_whom = code()}};
    case 12:
        return actions::SetStages{any_of(made.batches), {}};
    case 13:
        return actions::WithdrawEvent{any_of(made.events)};
    case 14:
        return actions::RecordOutcome{{.batch = any_of(made.batches),
                                       .salt = *rc::gen::inRange(-2, 3),
                                       .change_next_time = code()}};
    default:
        return actions::AddNote{{.piece = any_of(made.pieces), .at = now, .text = code()}};
    }
}

} // namespace

RC_GTEST_PROP(BookUndo, ToTheStartAndBackAgain, ()) {
    const TempFolder folder;
    const std::string path = folder.file("book.saltloft");
    auto book = Book::create(path, {.now = at_s(test_now_s)});
    RC_ASSERT(book.has_value());
    const store::LazyWriting lazy(book->store().connection());
    Made made;
    std::vector<std::vector<std::string>> states{dump(path)}; // after each standing action
    const int length = *rc::gen::inRange(1, 30);
    int refused = 0;
    int undone_last = 0; // since something was performed: these can be redone beyond the end
    for (int i = 0; i < length; ++i) {
        // Now and then a step back or forth among the new entries.
        const int move = *rc::gen::inRange(0, 10);
        if (move == 0 && states.size() > 1) {
            RC_ASSERT(book->undo(context()).has_value());
            states.pop_back();
            ++undone_last;
            RC_ASSERT(dump(path) == states.back());
            continue;
        }
        const auto done = book->perform(any_command(made), context("why"));
        if (done) {
            made.add(*done);
            states.push_back(dump(path));
            undone_last = 0;
        } else {
            ++refused;
            RC_ASSERT(dump(path) == states.back()); // a refused command leaves no trace
        }
    }
    for (std::size_t i = states.size(); i-- > 1;) {
        RC_ASSERT(book->undo(context()).has_value());
        RC_ASSERT(dump(path) == states[i - 1]);
    }
    RC_ASSERT(book->undo(context()).error().code == base::ErrorCode::nothing_to_undo);
    for (std::size_t i = 1; i < states.size(); ++i) {
        RC_ASSERT(book->redo(context()).has_value());
        RC_ASSERT(dump(path) == states[i]);
    }
    for (int i = 0; i < undone_last; ++i) {
        RC_ASSERT(book->redo(context()).has_value());
    }
    RC_ASSERT(book->redo(context()).error().code == base::ErrorCode::nothing_to_redo);
    RC_ASSERT(book->check_integrity(true)->sound());
    RC_TAG(refused > 0 ? "some refused" : "none refused");
}
