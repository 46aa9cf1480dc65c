#include "core/drying/piece_fit.h"

#include "tests/support/forecast_trial.h"

#include <cmath>
#include <gtest/gtest.h>

namespace core::drying::piece_fit_test {
namespace {

using units::Duration;
using units::Instant;
using units::Mass;

const Instant start = Instant::from_unix_seconds(1'767'600'000);

TEST(Prepare, LeavesOutWhatIsNoWeightAndSorts) {
    ForecastRequest r;
    r.weighings = {{start + Duration::days(4), Mass::grams(950), {}},
                   {start, Mass::grams(1000), {}},
                   {start + Duration::days(2), Mass::grams(0), {}},
                   {start + Duration::days(3), Mass::grams(std::nan("")), {}}};
    const auto p = prepare(r);
    ASSERT_TRUE(p);
    ASSERT_EQ(p->input.points.size(), 2u);
    EXPECT_EQ(p->start, start);
    EXPECT_EQ(p->input.points[1].day, 4);
    r.weighings.clear();
    EXPECT_FALSE(prepare(r));
}

TEST(Prepare, ReadsTheScaleStepFromTheNumbers) {
    ForecastRequest r;
    for (const double g : {1500.0, 1445.0, 1400.0, 1365.0}) {
        r.weighings.push_back({start + Duration::days((1500 - g) / 20), Mass::grams(g), {}});
    }
    EXPECT_DOUBLE_EQ(prepare(r)->input.scale_step_g, 5);
    r.weighings[1].net = Mass::grams(1444.5);
    EXPECT_DOUBLE_EQ(prepare(r)->input.scale_step_g, 0.5);
    r.weighings[1].scale_step = Mass::grams(2);
    EXPECT_DOUBLE_EQ(prepare(r)->input.scale_step_g, 2);
}

TEST(Prepare, AGreenWeightThatIsTheFirstWeighingAgainIsTakenAsThat) {
    ForecastRequest r;
    r.weighings = {{start, Mass::grams(1002), {}},
                   {start + Duration::days(4), Mass::grams(950), {}}};
    r.reference = Mass::grams(1000);
    EXPECT_EQ(prepare(r)->input.start, StartKind::hung);
    r.reference = Mass::grams(1060);
    EXPECT_EQ(prepare(r)->input.start, StartKind::cured);
}

/// The meter reads 20 points high: the losses speak for drier air than the log.
TEST(PieceFit, TheMeatContradictsAWrongMeter) {
    using namespace tests::support;
    VirtualPieceSpec s;
    s.form = VirtualForm::slab;
    s.thickness_m = 0.03;
    s.hang_weight_g = 1200;
    s.fat_share = 0.05;
    s.target_loss = 0.5;
    s.noise_g = 1;
    s.weather = {std::vector<double>(400, 13.0), {}};
    for (int d = 0; d < 400; ++d) {
        s.weather.rh_percent.push_back(62 + 2 * std::sin(0.9 * d));
    }
    const VirtualCourse course = run_explicit(s, 200);
    ForecastRequest right;
    right.traits = {.form = model::Form::slab,
                    .thickness = units::Length::millimetres(30),
                    .fat = units::MassShare::percent(5)};
    for (int i = 0; i <= 14; ++i) {
        const double day = 6.0 * i;
        right.weighings.push_back({start + Duration::days(day),
                                   Mass::grams(std::round(1200 * (1 - course.loss_at(day)))),
                                   {}});
    }
    ForecastRequest wrong = right;
    for (int d = 0; d <= 84; ++d) {
        const double rh = s.weather.rh_percent[static_cast<std::size_t>(d)];
        const auto at = start + Duration::days(d + 0.5);
        right.air.push_back(
            {at, units::Temperature::celsius(13), units::RelativeHumidity::percent(rh)});
        wrong.air.push_back(
            {at, units::Temperature::celsius(13), units::RelativeHumidity::percent(rh + 28)});
    }
    EXPECT_FALSE(fit_piece(*prepare(right)).humidity_contradiction);
    const auto contradiction = fit_piece(*prepare(wrong)).humidity_contradiction;
    ASSERT_TRUE(contradiction);
    EXPECT_LT(*contradiction, -0.08);
}

} // namespace
} // namespace core::drying::piece_fit_test
