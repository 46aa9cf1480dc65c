// Every spoon of the catalogue against its defined size. Sources as named beside each; the
// measures were read as quoted by others, so the catalogue shows them as unverified.
#include "core/facts/facts.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

namespace {

struct Defined {
    const char* id;
    double least_ml; ///< 0: the definition gives one size only
    double ml;
    double most_ml;
};

constexpr double us_fluid_ounce_ml = 3785.411784 / 128; // NIST Handbook 44, Appendix C

const Defined defined[] = {
    {"us_tablespoon", 0, us_fluid_ounce_ml / 2, 0}, // 1/2 US fl oz: 14.787 mL
    {"us_teaspoon", 0, us_fluid_ounce_ml / 6, 0},   // a third of it: 4.929 mL
    {"label_tablespoon", 0, 15, 0},                 // 21 CFR 101.9(b)(5)(viii)
    {"metric_tablespoon", 0, 15, 0},                // United Kingdom, Canada, New Zealand
    {"metric_teaspoon", 0, 5, 0},
    {"au_tablespoon", 0, 20, 0},             // four teaspoons
    {"gb_tablespoon", 14.2, 16, 17.8},       // traditional British, a range
    {"imperial_tablespoon", 0, 17.758, 0},   // some references
    {"us_cup", 0, 8 * us_fluid_ounce_ml, 0}, // half a US pint
    {"metric_cup", 0, 250, 0},               // from memory
};

TEST(SpoonSizes, EveryMeasureHasItsDefinedSizeInsideItsSpread) {
    const auto facts = core::facts::built_in_facts();
    std::set<std::string> seen;
    for (const Defined& d : defined) {
        const auto* measure = facts.measures.find(d.id);
        ASSERT_NE(measure, nullptr) << d.id;
        seen.insert(d.id);
        EXPECT_NEAR(measure->volume.best.in_millilitres(), d.ml, 0.0006) << d.id;
        EXPECT_LT(measure->volume.low, measure->volume.best) << d.id;
        EXPECT_GT(measure->volume.high, measure->volume.best) << d.id;
        if (d.least_ml > 0) {
            EXPECT_DOUBLE_EQ(measure->volume.low.in_millilitres(), d.least_ml);
            EXPECT_DOUBLE_EQ(measure->volume.high.in_millilitres(), d.most_ml);
        }
        EXPECT_NE(measure->source.sureness, core::base::Sureness::verified) << d.id;
    }
    for (const auto& measure : facts.measures.all()) {
        EXPECT_EQ(seen.count(measure.id), 1U) << measure.id << " is checked against nothing";
    }
}

TEST(SpoonSizes, ATablespoonIsFourteenToTwentyMillilitresByCountry) {
    double least = 1e9, most = 0;
    const auto facts = core::facts::built_in_facts();
    for (const auto& measure : facts.measures.all()) {
        if (measure.is_tablespoon) {
            least = std::min(least, measure.volume.best.in_millilitres());
            most = std::max(most, measure.volume.best.in_millilitres());
        }
    }
    EXPECT_NEAR(least, 14.787, 1e-3);
    EXPECT_DOUBLE_EQ(most, 20);
}

} // namespace
