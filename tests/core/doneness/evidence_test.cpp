#include "core/doneness/evidence.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace core::doneness;
using core::base::Interval;
using core::model::ReferenceWeight;
using core::model::Severity;
using core::model::StageKind;
using core::units::Duration;
using core::units::Instant;
using core::units::Length;
using core::units::Mass;
using core::units::MassShare;
using core::units::RelativeHumidity;
using core::units::Temperature;
using core::units::WaterActivity;

Instant day(double d) {
    return Instant::from_unix_seconds(0) + Duration::days(d);
}

/// A piece hung at 1000 g net, weighed on these days.
EvidenceRequest piece(double target_percent,
                      std::initializer_list<std::pair<double, double>> weights) {
    EvidenceRequest request{.now = day(std::rbegin(weights)->first)};
    request.thickness = Length::millimetres(70);
    request.references.trimmed = Mass::grams(1030);
    request.references.hung = Mass::grams(1000);
    request.target = core::model::Target{MassShare::percent(target_percent), ReferenceWeight::hung};
    request.salt_dose = MassShare::percent(2.75);
    request.fat = MassShare::percent(8);
    for (const auto& [when, grams] : weights) {
        request.weights.push_back({day(when), Mass::grams(grams)});
    }
    return request;
}

EvidenceSheet sheet_of(const EvidenceRequest& request) {
    return evidence_of(request, core::facts::built_in_hurdles());
}

const core::model::Finding* find(const EvidenceSheet& sheet, const std::string& code) {
    const auto at = std::find_if(sheet.findings.begin(), sheet.findings.end(),
                                 [&](const auto& finding) { return finding.code == code; });
    return at == sheet.findings.end() ? nullptr : &*at;
}

// The trade's three cases (practice, no source): 40 % in a month may be raw inside; a belly flat
// at 25 % is finished; lean meat flat at 24 % - ask the humidity first.
TEST(Evidence, FastFortyPercentIsACaution) {
    const auto sheet = sheet_of(piece(40, {{0, 1000}, {7, 880}, {14, 770}, {28, 600}}));
    const auto* finding = find(sheet, "target_reached_fast");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->severity, Severity::caution);
    EXPECT_EQ(std::get<Duration>(finding->values.at("took")), Duration::days(28));
}

TEST(Evidence, SlowFortyPercentOrAThinStripIsNot) {
    EXPECT_EQ(find(sheet_of(piece(40, {{0, 1000}, {30, 800}, {80, 600}})), "target_reached_fast"),
              nullptr);
    auto strip = piece(40, {{0, 1000}, {3, 700}, {6, 590}});
    strip.thickness = Length::millimetres(15);
    EXPECT_EQ(find(sheet_of(strip), "target_reached_fast"), nullptr);
}

TEST(Evidence, FlatBellyIsANote) {
    auto belly = piece(30, {{0, 1000}, {20, 780}, {34, 755}, {48, 750}});
    belly.fat = MassShare::percent(50);
    const auto sheet = sheet_of(belly);
    const auto* finding = find(sheet, "flat_fatty");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->severity, Severity::note);
    EXPECT_EQ(find(sheet, "flat_lean_ask_humidity"), nullptr);
}

TEST(Evidence, FlatLeanAsksForHumidity) {
    auto loin = piece(35, {{0, 1000}, {30, 780}, {44, 763}, {58, 760}});
    loin.chamber_humidity = RelativeHumidity::percent(84);
    const auto sheet = sheet_of(loin);
    const auto* finding = find(sheet, "flat_lean_ask_humidity");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(std::get<RelativeHumidity>(finding->values.at("humidity")).in_percent(), 84);
    loin.centre = CentreFeel::soft;
    EXPECT_NE(find(sheet_of(loin), "flat_soft_centre"), nullptr);
    EXPECT_EQ(find(sheet_of(loin), "flat_lean_ask_humidity"), nullptr);
}

TEST(Evidence, SoftCentreAtTarget) {
    auto request = piece(30, {{0, 1000}, {30, 850}, {60, 690}});
    request.centre = CentreFeel::soft;
    EXPECT_NE(find(sheet_of(request), "target_reached_soft_centre"), nullptr);
    request.centre = CentreFeel::firm;
    EXPECT_EQ(find(sheet_of(request), "target_reached_soft_centre"), nullptr);
}

TEST(Evidence, StillDryingHasNoFlatFinding) {
    const auto sheet = sheet_of(piece(35, {{0, 1000}, {14, 900}, {28, 830}}));
    for (const auto& finding : sheet.findings) {
        EXPECT_EQ(finding.code.rfind("flat", 0), std::string::npos) << finding.code;
    }
    EXPECT_NEAR(sheet.short_of_target->in_percent(), 18, 1e-9);
}

TEST(Evidence, HurdlesStandByTheWholeRange) {
    const auto sheet = sheet_of(piece(35, {{0, 1000}, {40, 640}}));
    const auto check = [&](const std::string& id) {
        return *std::find_if(sheet.hurdles.begin(), sheet.hurdles.end(),
                             [&](const auto& h) { return h.id == id; });
    };
    EXPECT_EQ(check("us_country_ham_loss").stands, HurdleCheck::Stands::met); // 37.9 % of 1030
    EXPECT_EQ(check("clostridium_botulinum_e").stands, HurdleCheck::Stands::met);
    EXPECT_EQ(check("shelf_stable_activity").stands, HurdleCheck::Stands::not_met);
    EXPECT_EQ(check("us_country_ham_salt").stands, HurdleCheck::Stands::undecided);
    EXPECT_FALSE(check("staphylococcus_aureus").measured);
}

TEST(Evidence, AMeasurementStandsInForTheEstimateAndDisagreementIsShown) {
    auto request = piece(35, {{0, 1000}, {40, 640}});
    EXPECT_NE(find(sheet_of(request), "estimate_is_no_measurement"), nullptr);
    request.measured.water_activity = WaterActivity::fraction(0.84);
    const auto sheet = sheet_of(request);
    EXPECT_NE(find(sheet, "measured_activity_off_estimate"), nullptr);
    EXPECT_EQ(find(sheet, "estimate_is_no_measurement"), nullptr);
    for (const auto& check : sheet.hurdles) {
        if (check.id == "shelf_stable_activity") {
            EXPECT_TRUE(check.measured);
            EXPECT_EQ(check.stands, HurdleCheck::Stands::met);
        }
    }
}

TEST(Evidence, StagesKeepTimeAndExposure) {
    auto request = piece(35, {{0, 1000}, {40, 640}});
    request.stages = {
        {StageKind::salt, "cure", day(-14), day(-1),
         Interval<Temperature>{Temperature::celsius(3), Temperature::celsius(4),
                               Temperature::celsius(6)}},
        {StageKind::dry,
         "drying",
         day(0),
         {},
         Interval<Temperature>{Temperature::celsius(11), Temperature::celsius(13),
                               Temperature::celsius(16)},
         Interval<RelativeHumidity>{RelativeHumidity::percent(68), RelativeHumidity::percent(74),
                                    RelativeHumidity::percent(82)}}};
    const auto sheet = sheet_of(request);
    ASSERT_EQ(sheet.stages.size(), 2U);
    EXPECT_EQ(sheet.stages[0].lasted, Duration::days(13));
    EXPECT_EQ(sheet.stages[1].lasted, Duration::days(40));
    EXPECT_EQ(sheet.since_hung, Duration::days(40));
    const auto staph = std::find_if(sheet.exposure.begin(), sheet.exposure.end(),
                                    [](auto& e) { return e.id == "staphylococcus_aureus"; });
    EXPECT_EQ(staph->in_range, Duration::days(40)); // 4 C is below its range
}

TEST(Evidence, SaysWhatIsMissing) {
    EvidenceRequest request{.now = day(3)};
    request.weights = {{day(0), Mass::grams(1000)}};
    const auto sheet = sheet_of(request);
    for (const char* what : {"weights", "start_weight", "salt", "thickness", "fat",
                             "temperature_log", "humidity_log", "water_activity_measurement"}) {
        EXPECT_NE(std::find(sheet.missing.begin(), sheet.missing.end(), what), sheet.missing.end())
            << what;
    }
    EXPECT_EQ(sheet.not_looked_at.size(), 5U);
    request.senses = {{Sense::smell, day(3), "clean, nutty"}};
    EXPECT_EQ(sheet_of(request).not_looked_at.size(), 4U);
}

TEST(Evidence, ImpossibleInputStops) {
    auto request = piece(35, {{0, 1000}, {40, 640}});
    request.fat = MassShare::percent(130);
    request.measured.ph = 20;
    const auto sheet = sheet_of(request);
    EXPECT_EQ(sheet.findings.size(), 2U);
    EXPECT_EQ(sheet.findings[0].severity, Severity::stop);
    EXPECT_FALSE(sheet.composition.has_value());
}

TEST(Evidence, WeightsThatContradictOrGainAreShown) {
    EXPECT_NE(find(sheet_of(piece(35, {{0, 1000}, {40, 220}})), "weights_contradict"), nullptr);
    EXPECT_NE(find(sheet_of(piece(35, {{0, 1000}, {5, 1020}})), "heavier_than_start"), nullptr);
}

TEST(Evidence, ForecastThatCannotReachIsRepeated) {
    auto request = piece(35, {{0, 1000}, {14, 900}, {28, 830}});
    request.forecast = core::model::Forecast{};
    request.forecast->state = core::model::ForecastState::not_reachable;
    request.forecast->levels_off = Interval<MassShare>::exactly(MassShare::percent(27));
    const auto sheet = sheet_of(request);
    const auto* finding = find(sheet, "target_not_reachable");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(std::get<MassShare>(finding->values.at("levels_off")).in_percent(), 27);
}

TEST(Evidence, WeightsAreSortedAndItIsSaid) {
    const auto sheet = sheet_of(piece(35, {{0, 1000}, {40, 640}, {20, 800}}));
    EXPECT_NE(find(sheet, "weights_out_of_order"), nullptr);
    EXPECT_NEAR(sheet.losses.back().loss.in_percent(), 36, 1e-9);
}

} // namespace
