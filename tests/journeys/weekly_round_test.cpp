// The weekly round of twenty pieces, with keys only: how many it takes, and that every number
// lands on its piece. Time is counted by the keystroke-level model of Card, Moran and Newell
// (Communications of the ACM 23(7), 1980; operators from memory): 0.5 s a key for random
// characters, 1.35 s to make up one's mind before each number.
#include "tests/journeys/support/window_driver.h"

#include <QLineEdit>
#include <cstdio>

using namespace saltloft::testing;
using core::model::EventKind;
using core::model::WeighedState;
using core::units::Duration;
using core::units::Mass;

namespace {

constexpr int pieces = 20;
constexpr double seconds_a_key = 0.5;
constexpr double seconds_to_decide = 1.35;

Mass hung_weight(int n) {
    return Mass::grams(1000 + 20 * n);
}

/// Twenty pieces hung three weeks ago, each weighed weekly with 60 g of net and string.
void hang_twenty(WindowDriver& driver) {
    auto& work = driver.workspace();
    core::actions::StartBatch start{
        .batch = {.code = "B01",
                  .name = "Twenty",
                  .started = core::units::Day::from_days_since_epoch(20'480)}};
    const auto hung = driver.now - Duration::days(21);
    for (int n = 0; n < pieces; ++n) {
        core::actions::NewPiece made;
        made.piece.code = "P" + std::to_string(10 + n);
        made.piece.name = "piece";
        made.piece.form = core::model::Form::cylinder;
        made.piece.thickness = core::units::Length::millimetres(70);
        made.piece.hanging_order = n + 1;
        made.piece.target = core::model::Target{core::units::MassShare::percent(35)};
        start.pieces.push_back(made);
    }
    ASSERT_TRUE(work.perform(start));
    const auto hanging = driver.book().pieces();
    for (const auto& piece : *hanging) {
        const int n = piece.hanging_order - 1;
        const core::model::PieceEvent event{.piece = piece.id,
                                            .kind = EventKind::hung,
                                            .at = hung,
                                            .net_after = hung_weight(n),
                                            .tare_after = Mass::grams(60)};
        ASSERT_TRUE(work.perform(core::actions::RecordEvent{event}));
        for (const auto& [week, share] : {std::pair{1, 0.90}, std::pair{2, 0.85}}) {
            const core::model::Weighing weighing{.piece = piece.id,
                                                 .taken_at = hung + Duration::days(7 * week),
                                                 .on_scale =
                                                     share * hung_weight(n) + Mass::grams(60),
                                                 .tare = Mass::grams(60),
                                                 .state = WeighedState::netted};
            ASSERT_TRUE(work.perform(core::actions::AddWeighing{weighing}));
        }
    }
}

} // namespace

TEST(Journey, AWeeklyRoundOfTwentyPiecesIsUnderTwoMinutesOfKeys) {
    WindowDriver driver;
    hang_twenty(driver);
    driver.go("weigh_in");
    driver.settle();
    int keys = 0;
    const auto press = [&](const QString& typed) {
        QWidget* focus = QApplication::focusWidget();
        ASSERT_NE(focus, nullptr) << "a key goes nowhere";
        typed.isEmpty() ? QTest::keyClick(focus, Qt::Key_Return) : QTest::keyClicks(focus, typed);
        keys += typed.isEmpty() ? 1 : static_cast<int>(typed.size());
    };
    driver.find<QLineEdit>("round_entry_line")->setFocus(); // where the page puts it by itself
    for (int n = 0; n < pieces; ++n) {
        const Mass on_scale = 0.815 * hung_weight(n) + Mass::grams(60);
        press(QString::number(qRound(on_scale.in_grams())));
        press({});
    }
    driver.settle();
    const double seconds = keys * seconds_a_key + pieces * seconds_to_decide;
    std::printf("%d pieces: %d keys, %.0f s by the keystroke-level model\n", pieces, keys, seconds);
    EXPECT_LT(seconds, 120);
    const auto hanging = driver.book().pieces();
    for (const auto& piece : *hanging) {
        const auto weighings = *driver.book().weighings(piece.id);
        ASSERT_EQ(weighings.size(), 3U) << piece.code;
        const double expected = 0.815 * hung_weight(piece.hanging_order - 1).in_grams();
        EXPECT_NEAR(weighings.back().net().in_grams(), expected, 0.51) << piece.code;
        EXPECT_EQ(weighings.back().tare, Mass::grams(60)) << "the tare is remembered";
    }
}
