#include "core/facts/embedded.h"
#include "core/facts/hurdles.h"

#include <gtest/gtest.h>

namespace {

using namespace core::facts;
using core::base::ErrorCode;
using core::base::Sureness;
using core::units::Temperature;
using core::units::WaterActivity;

// FDA, Bad Bug Book, factors table (1992/1999).
TEST(Hurdles, CitedGrowthRanges) {
    const auto loaded = load_hurdles(embedded("hurdles.json"));
    ASSERT_TRUE(loaded.has_value()) << loaded.error().where << ": " << loaded.error().detail;
    const auto* staph = loaded->organism("staphylococcus_aureus");
    ASSERT_NE(staph, nullptr);
    EXPECT_EQ(*staph->lowest, Temperature::celsius(7));
    EXPECT_EQ(*staph->highest, Temperature::celsius(45));
    EXPECT_EQ(*staph->lowest_activity, WaterActivity::fraction(0.86));
    EXPECT_EQ(staph->source.sureness, Sureness::verified);
    const auto* listeria = loaded->organism("listeria_monocytogenes");
    ASSERT_NE(listeria, nullptr);
    EXPECT_EQ(*listeria->lowest, Temperature::celsius(0));
    EXPECT_EQ(*listeria->lowest_activity, WaterActivity::fraction(0.92));
    EXPECT_EQ(listeria->lowest_ph, 4.4);
    EXPECT_EQ(*loaded->organism("clostridium_botulinum_e")->lowest, Temperature::celsius(3.3));
    EXPECT_FALSE(loaded->organism("yersinia_enterocolitica")->lowest_activity.has_value());
    EXPECT_EQ(loaded->organism("nobody"), nullptr);
}

TEST(Hurdles, EveryEntryHasASourceAndMemoryIsMarked) {
    const auto hurdles = built_in_hurdles();
    for (const auto& organism : hurdles.organisms) {
        EXPECT_FALSE(organism.source.title.empty()) << organism.id;
    }
    for (const auto& hurdle : hurdles.hurdles) {
        EXPECT_FALSE(hurdle.source.title.empty()) << hurdle.id;
        if (hurdle.id == "us_country_ham_loss" || hurdle.id == "eu_listeria_activity") {
            EXPECT_EQ(hurdle.source.sureness, Sureness::memory) << hurdle.id;
        }
    }
}

ErrorCode fault_of(const std::string& text) {
    const auto loaded = load_hurdles(text);
    EXPECT_FALSE(loaded.has_value());
    return loaded ? ErrorCode::conflict : loaded.error().code;
}

TEST(Hurdles, FaultsAreNamed) {
    const std::string head =
        R"({"sources": {"s": {"title": "t", "edition": "", "sureness": "verified"}}, )";
    EXPECT_EQ(fault_of("no json"), ErrorCode::bad_format);
    EXPECT_EQ(fault_of(head + R"("organisms": [{"id": "a", "name": "A", "lowest_c": 20,
                                "highest_c": 10, "source": "s"}], "hurdles": []})"),
              ErrorCode::out_of_range);
    EXPECT_EQ(fault_of(head + R"("organisms": [], "hurdles": [{"id": "a", "name": "A",
                                "quantity": "water_activity_at_most", "source": "s"}]})"),
              ErrorCode::missing_column);
    EXPECT_EQ(fault_of(head + R"("organisms": [], "hurdles": [{"id": "a", "name": "A",
                                "quantity": "luck", "value": 0.5, "source": "s"}]})"),
              ErrorCode::bad_format);
    EXPECT_EQ(fault_of(head + R"("organisms": [{"id": "a", "name": "A", "source": "s"},
                                {"id": "a", "name": "B", "source": "s"}], "hurdles": []})"),
              ErrorCode::conflict);
}

} // namespace
