// Published day rules and minima, planned with the templates that carry them.
#include "core/planning/catalogue.h"
#include "core/planning/dated_plan.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace core;
using planning::Catalogue;
using planning::DatedPlan;
using units::Day;
using units::Mass;

constexpr Day start = Day::from_days_since_epoch(20600);

const Catalogue& catalogue() {
    static const Catalogue built_in = Catalogue::built_in();
    return built_in;
}

DatedPlan plan_for(const char* id, Mass weight) {
    return planning::date_plan({*catalogue().find(id),
                                {{.form = model::Form::round,
                                  .thickness = units::Length::millimetres(150),
                                  .raw_weight = weight}},
                                start,
                                {}});
}

int days_of(const DatedPlan& plan, const char* stage) {
    int days = 0;
    for (const auto& planned : plan.stages) {
        if (planned.stage.what.name == stage) {
            days += planned.end - planned.start;
        }
    }
    return days;
}

// Regulation (EC) No 1333/2008, Annex II, category 08.3.4 before Regulation (EU) 2023/2108 (read
// second hand): jambon sec "dry cured for 3 days + 1 day/kg followed by a 1-week post-salting
// period and an ageing/ripening period of 45 days to 18 months".
TEST(PublishedRules, JambonSec) {
    const auto ten = plan_for("jambon-sec", Mass::kilograms(10));
    EXPECT_EQ(days_of(ten, "Salt"), 13);
    EXPECT_EQ(days_of(ten, "After salting"), 7);
    EXPECT_GE(days_of(ten, "Hang"), 45);
    EXPECT_EQ(days_of(plan_for("jambon-sec", Mass::kilograms(8.4)), "Salt"), 12); // 11.4 up
}

// The same annex: raw ham cured in brine "approximately 2 days/kg".
TEST(PublishedRules, RawHamInBrine) {
    EXPECT_EQ(days_of(plan_for("raw-ham-brine", Mass::kilograms(3)), "Brine"), 6);
}

// USDA, Pork Slaughtering, Cutting, Preserving, and Cooking on the Farm (Cross et al.): "3 1/2 to
// 4 days per pound"; worked there: 6-lb shoulder 24 days, 15-lb ham 60 days.
TEST(PublishedRules, SweetPickle) {
    EXPECT_EQ(days_of(plan_for("farm-pickle", Mass::pounds(6)), "Pickle"), 24);
    EXPECT_EQ(days_of(plan_for("farm-pickle", Mass::pounds(15)), "Pickle"), 60);
}

// 9 CFR 319.106: hams at least 45 days for curing and salt equalisation together, at least 70 days
// with drying; shoulders 25 and 50 days. A small piece does not make them shorter.
TEST(PublishedRules, CountryHamMinimaHoldForEveryWeight) {
    for (const double kilograms : {3.0, 5.0, 9.0, 14.0}) {
        const auto ham = plan_for("country-ham", Mass::kilograms(kilograms));
        EXPECT_GE(days_of(ham, "Cure") + days_of(ham, "Equalise"), 45) << kilograms;
        EXPECT_GE(planning::days_of(ham), 70) << kilograms;
        const auto shoulder = plan_for("country-shoulder", Mass::kilograms(kilograms / 2));
        EXPECT_GE(days_of(shoulder, "Cure") + days_of(shoulder, "Equalise"), 25) << kilograms;
        EXPECT_GE(planning::days_of(shoulder), 50) << kilograms;
    }
}

TEST(PublishedRules, LengtheningToAMinimumIsSaidWithItsSource) {
    const auto ham = plan_for("country-ham", Mass::kilograms(3));
    const auto found =
        std::find_if(ham.findings.begin(), ham.findings.end(), [](const model::Finding& finding) {
            return finding.code == "lengthened_to_minimum";
        });
    ASSERT_NE(found, ham.findings.end());
    ASSERT_TRUE(found->source);
    EXPECT_EQ(found->source->title, "9 CFR 319.106");
    const auto heavy = plan_for("country-ham", Mass::kilograms(14));
    EXPECT_TRUE(std::none_of(heavy.findings.begin(), heavy.findings.end(),
                             [](const auto& f) { return f.code == "lengthened_to_minimum"; }));
}

// University of Kentucky Cooperative Extension (Rentfrow): bag cure 2 days per pound, equalisation
// 2 to 3 weeks.
TEST(PublishedRules, KentuckyBagCure) {
    const auto ham = plan_for("country-ham", Mass::pounds(20));
    EXPECT_EQ(days_of(ham, "Cure"), 40);
    EXPECT_GE(days_of(ham, "Equalise"), 14);
    EXPECT_LE(days_of(ham, "Equalise"), 21);
}

// The same annex: jamon and lomo "stabilisation period of at least 10 days and a maturation period
// of more than 45 days"; dry cured bacon "maturation for at least 4 days".
TEST(PublishedRules, SpanishMinimaAndBaconMaturation) {
    for (const char* id : {"leg-mountain-air", "lomo"}) {
        const auto plan = plan_for(id, Mass::kilograms(2));
        EXPECT_GE(days_of(plan, "Settle"), 10) << id;
        EXPECT_GT(days_of(plan, "Dry") + days_of(plan, "Cellar"), 45) << id;
    }
    EXPECT_GE(days_of(plan_for("bacon-dry", Mass::kilograms(2)), "Equalise and dry the surface"),
              4);
}

} // namespace
