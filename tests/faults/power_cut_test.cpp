// The power goes at a random operation of the disk, again and again; whatever was acknowledged is
// there afterwards, and what was under way is there whole or not at all.
#include "core/services/book.h"
#include "core/store/store.h"
#include "tests/faults/support/crash_vfs.h"
#include "tests/support/sample_entries.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <random>

using namespace core;
using namespace saltloft::testing;
using services::Book;

namespace power_cut_test {
namespace {

int how_many(const char* variable, int otherwise) {
    const char* text = std::getenv(variable);
    return text == nullptr ? otherwise : std::atoi(text);
}

using Weights = std::vector<std::int64_t>; // milligrams of a piece's weighings, by time

Weights weights_of(const Book& book, model::PieceId piece) {
    Weights weights;
    const auto all = book.weighings(piece);
    EXPECT_TRUE(all.has_value());
    if (all) {
        for (const model::Weighing& weighing : *all) {
            weights.push_back(std::llround(weighing.on_scale.in_milligrams()));
        }
    }
    return weights;
}

/// A book on a disk that loses power: what it has acknowledged, and what was under way.
class Session {
  public:
    Session(std::uint64_t seed, const std::string& name) : disk(name), chance(seed) {
        Book book = open(true);
        const auto made = book.perform(start_batch("B01"), context());
        EXPECT_TRUE(made.has_value());
        piece = made->id<model::PieceId>(model::EntryKind::piece);
        acknowledged = weights_of(book, piece);
    }

    Book open(bool create = false) {
        auto book = Book::open(
            "book", {.now = at_s(test_now_s), .create_if_missing = create, .vfs = disk.name()});
        if (!book) {
            throw std::runtime_error("the book does not open: " + book.error().detail);
        }
        // Checkpoints every few commits: the moments at which the main file is written.
        book->store().connection().run("PRAGMA wal_autocheckpoint=30");
        return std::move(*book);
    }

    /// Enters things until the power goes; then the disk is as it came back.
    void run_until_power_cut() {
        under_way = acknowledged;
        try {
            disk.lose_power_at(static_cast<std::int64_t>(chance() % 600));
            Book book = open();
            while (step(book)) {
                ++entries;
            }
        } catch (const std::runtime_error&) {
            // It went while the book was opening.
        }
        disk.cut_power(chance);
    }

    /// One change; false when the power went.
    bool step(Book& book) {
        under_way = acknowledged;
        const std::uint64_t what = chance() % 10;
        if (what == 0 && acknowledged.size() > 2) {
            under_way.pop_back();
            const auto undone = book.undo(context());
            if (!undone) {
                return false;
            }
        } else {
            static constexpr std::int64_t step_s = 60;
            const double grams = 500 + static_cast<double>(chance() % 400000) / 1000;
            under_way.push_back(std::llround(grams * 1000));
            const auto at = test_now_s + step_s * static_cast<std::int64_t>(under_way.size());
            if (!book.perform(actions::AddWeighing{weighing(piece, grams, at)}, context())) {
                return false;
            }
        }
        acknowledged = under_way;
        return true;
    }

    CrashDisk disk;
    std::mt19937_64 chance;
    model::PieceId piece;
    Weights acknowledged;
    Weights under_way; ///< what the change under way when the power went would have made
    std::int64_t entries = 0;
};

} // namespace

TEST(PowerCut, NothingAcknowledgedIsLostAndNothingIsHalfDone) {
    const int cuts = how_many("SALTLOFT_POWER_CUTS", 100);
    static constexpr int cuts_per_book = 25;
    std::int64_t entries = 0;
    int done = 0;
    for (int round = 0; done < cuts; ++round) {
        Session session(static_cast<std::uint64_t>(round) + 1, "crash" + std::to_string(round));
        for (int i = 0; i < cuts_per_book && done < cuts; ++i, ++done) {
            session.run_until_power_cut();
            const Book book = session.open();
            const Weights found = weights_of(book, session.piece);
            ASSERT_TRUE(found == session.acknowledged || found == session.under_way)
                << "cut " << done << ": " << found.size() << " weighings found, "
                << session.acknowledged.size() << " acknowledged";
            session.acknowledged = found;
            const auto report = book.check_integrity(true);
            ASSERT_TRUE(report.has_value()) << report.error().detail;
            ASSERT_TRUE(report->sound()) << "cut " << done << ": " << report->problems.front();
        }
        entries += session.entries;
    }
    std::printf("power cuts: %d, entries acknowledged between them: %lld\n", done,
                static_cast<long long>(entries));
    EXPECT_GT(entries, done) << "most cuts came after something was acknowledged";
}

TEST(PowerCut, TheDiskReallyForgetsWhatWasNotForcedToIt) {
    // The same session without forcing anything to the disk must lose something, or the test
    // above could not fail.
    int lost = 0;
    for (int round = 0; round < 20; ++round) {
        Session session(static_cast<std::uint64_t>(round) + 1, "careless" + std::to_string(round));
        try {
            session.disk.lose_power_at(150 + static_cast<std::int64_t>(session.chance() % 100));
            Book book = session.open();
            book.store().connection().run("PRAGMA synchronous=OFF");
            while (session.step(book)) {
            }
        } catch (const std::runtime_error&) {
        }
        session.disk.cut_power(session.chance);
        auto book = Book::open("book", {.now = at_s(test_now_s), .vfs = session.disk.name()});
        if (!book || book->is_read_only() || !book->check_integrity(true)->sound()) {
            ++lost;
        } else {
            const Weights found = weights_of(*book, session.piece);
            lost += found != session.acknowledged && found != session.under_way ? 1 : 0;
        }
    }
    EXPECT_GT(lost, 5);
}

} // namespace power_cut_test
