// The invented book: whole, marked as invented, the same every time, and sound.
#include "core/services/demo_book.h"

#include "core/store/climate.h"
#include "core/store/store.h"
#include "tests/support/sample_entries.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>
#include <set>

using namespace core;
using core::services::Book;
using saltloft::testing::at_s;
using saltloft::testing::take;
using saltloft::testing::TempFolder;
using saltloft::testing::test_now_s;

namespace {

Book make(const TempFolder& folder, const char* name, std::uint64_t seed = 7,
          std::int64_t now = test_now_s) {
    auto book = Book::create(folder.file(name), {.now = at_s(now)});
    EXPECT_TRUE(book.has_value()) << book.error().detail;
    const auto filled = services::fill_demo_book(*book, {at_s(now), seed});
    EXPECT_TRUE(filled.has_value()) << filled.error().detail << " " << filled.error().where;
    return std::move(*book);
}

} // namespace

TEST(DemoBook, HasBatchesAtAllStagesAndSaysItIsInvented) {
    const TempFolder folder;
    const Book book = make(folder, "demo.saltloft");
    EXPECT_EQ(*book.preference("demo"), "1");
    EXPECT_NE(book.preference("title")->value().find("Invented"), std::string::npos);
    EXPECT_EQ(book.chambers()->size(), 2U);
    EXPECT_GE(book.batches()->size(), 9U);
    const auto pieces = book.pieces();
    EXPECT_GE(pieces->size(), 24U);
    std::set<model::PieceState> states;
    for (const auto& piece : *pieces) {
        states.insert(piece.state);
    }
    using model::PieceState;
    EXPECT_EQ(states, (std::set<PieceState>{PieceState::planned, PieceState::curing,
                                            PieceState::drying, PieceState::finished,
                                            PieceState::discarded, PieceState::split_up}));
    std::set<model::BatchState> batch_states;
    for (const auto& batch : take(book.batches())) {
        batch_states.insert(batch.state);
    }
    EXPECT_EQ(batch_states.size(), 3U) << "planned, in progress, finished";
    for (const auto& person : take(book.people())) {
        EXPECT_NE(person.name.find("invented"), std::string::npos);
    }
    EXPECT_GE(book.packs()->size(), 8U);
    EXPECT_GE(book.all_pack_moves()->size(), 5U);
    EXPECT_GE(book.notes()->size(), 12U);
    EXPECT_GE(book.all_decisions()->size(), 10U);
    EXPECT_GE(book.all_checks()->size(), 12U);
    EXPECT_TRUE(book.check_integrity(true)->sound());
}

TEST(DemoBook, WeighingsLookLikeDrying) {
    const TempFolder folder;
    const Book book = make(folder, "demo.saltloft");
    std::size_t weighings = 0;
    std::size_t amended = 0;
    for (const auto& history : take(book.piece_histories())) {
        weighings += history.weighings.size();
        for (const auto& weighing : take(book.weighings(history.piece.id))) {
            amended += weighing.amended_by ? 1U : 0U;
            EXPECT_GT(weighing.net().in_grams(), 0);
        }
        if (history.piece.state == model::PieceState::finished) {
            ASSERT_GE(history.weighings.size(), 3U) << history.piece.code;
            EXPECT_LT(history.weighings.back().net(), history.weighings.front().net() * 0.85)
                << history.piece.code;
        }
    }
    EXPECT_GE(weighings, 150U);
    EXPECT_EQ(amended, 1U);
}

TEST(DemoBook, LoggersCoverTheWholeStoryAndShowTheUpset) {
    const TempFolder folder;
    const Book book = make(folder, "demo.saltloft");
    int over_20_degrees = 0;
    for (const auto& sensor : take(book.sensors())) {
        const auto readings = take(book.store().read([&](store::Connection& connection) {
            return store::climate_readings(connection, sensor.id, at_s(0), at_s(test_now_s));
        }));
        EXPECT_GT(readings.size(), 240U * 24 - 20);
        for (const auto& reading : readings) {
            over_20_degrees += reading.temperature->in_celsius() > 20 ? 1 : 0;
        }
    }
    EXPECT_GE(over_20_degrees, 12) << "hours";
    EXPECT_LE(over_20_degrees, 40);
    EXPECT_TRUE(book.check_integrity(true)->sound()) << "roll-ups agree with readings";
}

TEST(DemoBook, TheSameSeedTellsTheSameStory) {
    const TempFolder folder;
    const Book one = make(folder, "one.saltloft");
    const Book two = make(folder, "two.saltloft");
    const Book other = make(folder, "other.saltloft", 8);
    const auto weights = [](const Book& book) {
        std::vector<double> all;
        for (const auto& history : take(book.piece_histories())) {
            for (const auto& weighing : history.weighings) {
                all.push_back(weighing.on_scale.in_grams());
            }
        }
        return all;
    };
    EXPECT_EQ(weights(one), weights(two));
    EXPECT_NE(weights(one), weights(other));
}

TEST(DemoBook, ARealBookIsNotFilled) {
    const TempFolder folder;
    auto book = Book::create(folder.file("real.saltloft"), {.now = at_s(test_now_s)});
    ASSERT_TRUE(book->perform(saltloft::testing::start_batch("B01"), saltloft::testing::context())
                    .has_value());
    const auto refused = services::fill_demo_book(*book, {at_s(test_now_s)});
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, base::ErrorCode::conflict);
    EXPECT_EQ(book->batches()->size(), 1U);
}

TEST(DemoBook, TellsTheStoryFromAnyDayAndHour) {
    const TempFolder folder;
    for (int i = 0; i < 4; ++i) {
        const std::int64_t now = test_now_s + i * (86400 * 5 + 4 * 3600 + 77);
        const Book book = make(folder, ("d" + std::to_string(i)).c_str(), 7, now);
        EXPECT_GE(book.batches()->size(), 11U);
        for (const auto& step : take(book.log(3000))) {
            EXPECT_LE(step.at.unix_seconds(), now) << step.verb;
        }
    }
}
