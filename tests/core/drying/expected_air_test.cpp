#include "core/drying/expected_air.h"

#include <gtest/gtest.h>

namespace core::drying::expected_air_test {
namespace {

using units::Duration;
using units::Instant;
using units::Mass;

const Instant start = Instant::from_unix_seconds(1'700'000'000);

ForecastRequest weighed() {
    ForecastRequest r;
    r.weighings = {{start + Duration::days(10), Mass::grams(900), {}},
                   {start, Mass::grams(1000), {}}};
    return r;
}

TEST(ExpectedAir, WithoutALogItIsTheUsualAir) {
    const auto air = expected_air(weighed());
    EXPECT_FALSE(air.from_log);
    EXPECT_DOUBLE_EQ(air.temperature.in_celsius(), UsualAir{}.temperature_c);
    EXPECT_DOUBLE_EQ(air.humidity.in_percent(), UsualAir{}.humidity_percent);
    EXPECT_FALSE(expected_air({}).from_log);
}

TEST(ExpectedAir, AfterAStepTheLaterStretchGoesOn) {
    auto request = weighed();
    for (int day = 0; day < 20; ++day) {
        request.air.push_back({start + Duration::days(day), units::Temperature::celsius(12),
                               units::RelativeHumidity::percent(day < 10 ? 85 : 72)});
    }
    const auto air = expected_air(request);
    EXPECT_TRUE(air.from_log);
    EXPECT_NEAR(air.temperature.in_celsius(), 12, 1e-9);
    EXPECT_NEAR(air.humidity.in_percent(), 72, 1e-9);
}

} // namespace
} // namespace core::drying::expected_air_test
