#include "ui/presenters/what_if.h"

#include "ui/presenters/forecasts.h"
#include "ui/presenters/piece_forecast.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace ui::presenters;
using core::model::ForecastState;
using core::units::Duration;
using core::units::Instant;
using core::units::Mass;
using core::units::MassShare;
using core::units::RelativeHumidity;
using core::units::Temperature;

namespace what_if_test {
namespace {

const Instant hung = Instant::from_unix_seconds(1'767'600'000);

/// 1000 g that loses 30 % of what it can still lose each fortnight.
std::vector<PieceRecord> one_piece() {
    PieceRecord record;
    record.history.piece.thickness = core::units::Length::millimetres(60);
    record.history.piece.target =
        core::model::Target{MassShare::percent(35), core::model::ReferenceWeight::hung};
    for (int week = 0; week < 6; ++week) {
        core::model::Weighing w{.taken_at = hung + Duration::days(7 * week),
                                .on_scale =
                                    Mass::grams(std::round(600 + 400 * std::exp(-0.18 * week))),
                                .tare = Mass::grams(0)};
        w.id = core::model::WeighingId::from_row(week + 1);
        w.state = core::model::WeighedState::rinsed;
        record.history.weighings.push_back(w);
    }
    return {record};
}

} // namespace

TEST(WhatIf, NothingChangedIsThePagesForecastAndDrierAirDriesFurther) {
    const auto records = one_piece();
    const auto page = forecast_pieces(records, hung).front();
    const auto same = changed_forecast(records, {});
    ASSERT_TRUE(page.levels_off && same.levels_off);
    EXPECT_EQ(same.levels_off, page.levels_off);
    EXPECT_EQ(same.state, page.state);
    WhatIfChange drier;
    drier.humidity = RelativeHumidity::percent(65);
    WhatIfChange wetter;
    wetter.humidity = RelativeHumidity::percent(88);
    EXPECT_GT(changed_forecast(records, drier).levels_off->best,
              changed_forecast(records, wetter).levels_off->best);
    WhatIfChange far;
    far.target = MassShare::percent(70);
    EXPECT_EQ(changed_forecast(records, far).state, ForecastState::not_reachable)
        << "more than its water";
}

TEST(WhatIf, SamePowerFollowsTheAir) {
    const core::drying::ExpectedAir air{Temperature::celsius(12), RelativeHumidity::percent(70)};
    const auto there = same_power(air, Temperature::celsius(18));
    ASSERT_TRUE(there);
    EXPECT_GT(there->in_percent(), 70);
    EXPECT_NEAR(same_power(air, air.temperature)->in_percent(), 70, 1e-9);
    EXPECT_FALSE(same_power({Temperature::celsius(30), RelativeHumidity::percent(30)},
                            Temperature::celsius(2)));
}

/// FDA, Bad Bug Book, factors table: S. aureus grows from 7 C, C. botulinum A and B from 10 C.
TEST(WhatIf, CautionsNameTheRangesThatAreEntered) {
    const ui::text::Style style;
    const auto entered = range_cautions(Temperature::celsius(8), Temperature::celsius(12), style)
                             .join(QLatin1Char('\n'));
    EXPECT_TRUE(entered.contains(QStringLiteral("Clostridium botulinum A, B")));
    EXPECT_TRUE(entered.contains(QStringLiteral("Bad Bug Book")));
    EXPECT_FALSE(entered.contains(QStringLiteral("Staphylococcus"))) << "it was in that already";
    EXPECT_TRUE(in_range_of_both(Temperature::celsius(8), Temperature::celsius(12))
                    .contains(QStringLiteral("Staphylococcus aureus")));
    EXPECT_TRUE(range_cautions(Temperature::celsius(12), Temperature::celsius(8), style).isEmpty());
}

} // namespace what_if_test
