#include "ui/presenters/forecasts.h"
#include "ui/presenters/preferences.h"
#include "ui/presenters/stock.h"

#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <atomic>
#include <gtest/gtest.h>
#include <thread>

using namespace ui::presenters;
using core::units::Day;
using core::units::Instant;
using core::units::Mass;

namespace {

const Instant now = Instant::from_unix_seconds(1772352000);

PieceRecord record(std::int64_t piece, std::int64_t revision, int weighed_days_ago = 1) {
    PieceRecord made;
    made.history.piece.id = core::model::PieceId::from_row(piece);
    made.history.revision = revision;
    core::model::Weighing weighing{.taken_at = now - core::units::Duration::days(weighed_days_ago),
                                   .on_scale = Mass::grams(900),
                                   .tare = Mass::grams(0)};
    made.history.weighings = {weighing};
    return made;
}

} // namespace

TEST(Forecasts, ComputesOffTheGuiThreadAndKeepsByRevision) {
    std::atomic<int> computed = 0;
    std::atomic<bool> on_gui_thread = false;
    const auto gui = std::this_thread::get_id();
    Forecasts forecasts([&](const std::vector<PieceRecord>& records, Instant) {
        computed += static_cast<int>(records.size());
        on_gui_thread = on_gui_thread || std::this_thread::get_id() == gui;
        return std::vector<core::model::Forecast>(records.size());
    });
    QSignalSpy arrived(&forecasts, &Forecasts::arrived);
    forecasts.ask({record(1, 5), record(2, 7)}, now);
    ASSERT_TRUE(arrived.wait(2000));
    EXPECT_EQ(computed, 2);
    EXPECT_FALSE(on_gui_thread);
    EXPECT_NE(forecasts.find(core::model::PieceId::from_row(1), 5), nullptr);
    EXPECT_EQ(forecasts.find(core::model::PieceId::from_row(1), 6), nullptr) << "not that revision";
    forecasts.ask({record(1, 5), record(2, 7)}, now);
    ASSERT_TRUE(arrived.wait(2000)) << "announced even when nothing had to be computed";
    EXPECT_EQ(computed, 2);
}

TEST(Forecasts, AChangedPieceIsComputedWithThoseWeighedInTheSameRound) {
    std::vector<std::size_t> asked;
    Forecasts forecasts([&](const std::vector<PieceRecord>& records, Instant) {
        asked.push_back(records.size());
        return std::vector<core::model::Forecast>(records.size());
    });
    forecasts.ask({record(1, 1), record(2, 1), record(3, 1, 9)}, now);
    forecasts.wait();
    forecasts.ask({record(1, 2), record(2, 1), record(3, 1, 9)}, now);
    forecasts.wait();
    ASSERT_EQ(asked.size(), 2U);
    EXPECT_EQ(asked[1], 2U) << "pieces 1 and 2; piece 3 hung untouched for a week";
}

TEST(Preferences, EveryRowSurvivesTheRoundTrip) {
    QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("p.ini")), QSettings::IniFormat);
    Preferences told;
    told.mass = ui::text::MassStyle::pounds;
    told.temperature = ui::text::TemperatureStyle::fahrenheit;
    told.length = ui::text::LengthStyle::inches;
    told.volume = ui::text::VolumeStyle::fluid_ounces;
    told.language = QStringLiteral("de");
    told.time_zone = QStringLiteral("Europe/Rome");
    told.limit_set = QStringLiteral("eu-raw");
    told.theme = ThemeChoice::dark;
    told.person = QStringLiteral("TP");
    save_preferences(settings, told);
    EXPECT_EQ(load_preferences(settings, QLocale::c()), told);
    for (const auto& row : setting_rows()) {
        Preferences fresh;
        row.write(fresh, row.read(told));
        EXPECT_EQ(row.read(fresh), row.read(told)) << row.key;
        EXPECT_FALSE(row.read(told).isEmpty()) << row.key;
    }
}

TEST(Preferences, AnUnknownZoneFallsBackInsteadOfFailing) {
    Preferences preferences;
    preferences.time_zone = QStringLiteral("Nowhere/Atall");
    EXPECT_FALSE(style_of(preferences, QLocale::c()).zone.name().empty());
}

TEST(Stock, OpenPacksComeFirstThenTheNearestDay) {
    const Day day = Day::from_days_since_epoch(20500);
    const auto line = [&](const char* code, bool gone, std::optional<Day> opened,
                          std::optional<Day> keep) {
        StockLine made{
            {.packed_weight = Mass::grams(1), .weight_left = Mass::grams(1), .packed_on = day},
            {},
            {},
            {},
            0};
        made.pack.code = code;
        made.pack.gone = gone;
        made.pack.opened_on = opened;
        made.pack.keep_by = keep;
        return made;
    };
    std::vector<StockLine> lines = {line("late", false, {}, day + 90), line("gone", true, day, day),
                                    line("never", false, {}, {}), line("soon", false, {}, day + 9),
                                    line("open", false, day, day + 200)};
    rank_for_eating(lines);
    std::string order;
    for (const auto& l : lines) {
        order += l.pack.code + " ";
    }
    EXPECT_EQ(order, "open soon late never gone ");
}

// 1000 g raw and never weighed since, 650 g packed, meat at 10.00 a kilogram: 10 / 0.65 = 15.38 a
// finished kilogram.
TEST(Stock, YieldAndCostAtTheLossItReallyHad) {
    core::services::PieceHistory history;
    core::model::Weighing raw{
        .taken_at = now, .on_scale = Mass::grams(1000), .tare = Mass::grams(0)};
    history.weighings = {raw};
    core::model::Batch batch{.started = Day::from_days_since_epoch(20500)};
    batch.price_per_kilogram = 10.0;
    core::model::Pack pack{.packed_weight = Mass::grams(650),
                           .weight_left = Mass::grams(100),
                           .packed_on = Day::from_days_since_epoch(20600)};
    const auto yield = yield_of(line_of(history), batch, {pack}, {}, {});
    ASSERT_TRUE(yield.has_value());
    EXPECT_NEAR(yield->share.in_percent(), 65, 1e-9);
    EXPECT_NEAR(*yield->cost_per_kilogram, 15.3846, 1e-3);
}
