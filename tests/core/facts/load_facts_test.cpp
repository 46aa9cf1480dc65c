#include "core/facts/embedded.h"
#include "core/facts/facts.h"

#include <gtest/gtest.h>
#include <string>

namespace {

using namespace core::facts;
using core::base::ErrorCode;
using core::base::Sureness;

std::string replaced(std::string_view text, const std::string& from, const std::string& to) {
    std::string out(text);
    const auto at = out.find(from);
    EXPECT_NE(at, std::string::npos) << "nothing to replace: " << from;
    return out.replace(at, from.size(), to);
}

core::base::Error fault_with(const FactTexts& texts) {
    const auto facts = load_facts(texts);
    EXPECT_FALSE(facts.has_value());
    return facts ? core::base::Error{} : facts.error();
}

TEST(BuiltInFacts, AreGood) {
    const auto facts = load_facts(built_in_fact_texts());
    ASSERT_TRUE(facts.has_value()) << facts.error().where << ": " << facts.error().detail;
    EXPECT_GE(facts->catalogue.entries().size(), 45U);
    EXPECT_GE(facts->limit_sets.sets().size(), 18U);
    EXPECT_GE(facts->measures.all().size(), 10U);
}

TEST(BuiltInFacts, EveryValueHasASource) {
    const auto facts = built_in_facts();
    for (const auto& entry : facts.catalogue.entries()) {
        for (std::size_t i = 0; i < component_count; ++i) {
            const auto component = static_cast<Component>(i);
            const auto share = entry.composition.of(component);
            if (share && share->high > core::units::MassShare::fraction(0)) {
                ASSERT_TRUE(entry.sources.contains(component)) << entry.id;
                EXPECT_FALSE(entry.sources.at(component).title.empty()) << entry.id;
            }
        }
        if (entry.density) {
            EXPECT_FALSE(entry.density->source.title.empty()) << entry.id;
        }
    }
    for (const auto& set : facts.limit_sets.sets()) {
        for (const auto& limit : set.limits) {
            EXPECT_FALSE(limit.source.title.empty()) << set.id;
        }
    }
}

TEST(BuiltInFacts, UnreadLimitsAreUnverified) {
    const auto facts = built_in_facts();
    const auto* eu = facts.limit_sets.find("eu-raw");
    ASSERT_NE(eu, nullptr);
    EXPECT_FALSE(is_verified(eu->limits.front().source)) << "read at second hand only";
    const auto* home = facts.limit_sets.find("us-home");
    ASSERT_NE(home, nullptr);
    EXPECT_TRUE(is_verified(home->limits.front().source)) << "21 CFR 172.170 was read";
    const auto* anz = facts.limit_sets.find("anz-cured");
    ASSERT_NE(anz, nullptr);
    EXPECT_EQ(anz->limits.front().source.sureness, Sureness::memory);
}

TEST(BuiltInFacts, EuSetsChangeOverOn9October2025) {
    const auto facts = built_in_facts();
    const auto* old_set = facts.limit_sets.find("eu-raw-until-2025-10");
    const auto* new_set = facts.limit_sets.find("eu-raw");
    ASSERT_TRUE(old_set != nullptr && new_set != nullptr);
    EXPECT_EQ(*new_set->in_force_from - *old_set->in_force_until, 1);
}

TEST(Embedded, UnknownFileIsEmpty) {
    EXPECT_TRUE(embedded("no_such_file.json").empty());
    EXPECT_FALSE(embedded("limits.json").empty());
}

TEST(LoadFacts, FaultsNameTheirPlace) {
    const auto good = built_in_fact_texts();
    auto texts = good;
    texts.limits = "{not json";
    EXPECT_EQ(fault_with(texts).code, ErrorCode::bad_format);
    EXPECT_EQ(fault_with(texts).where, "limits.json");

    const auto typo = replaced(good.limits, "\"maximum_ppm\": 625", "\"maxmum_ppm\": 625");
    texts.limits = typo;
    EXPECT_EQ(fault_with(texts).code, ErrorCode::bad_format) << "a misspelt field is no limit";
    EXPECT_EQ(fault_with(texts).where, "limits.json.sets.us-fsis-dry-cured.limits[0].maxmum_ppm");

    const auto word = replaced(good.limits, "\"basis\": \"ingoing\"", "\"basis\": \"incoming\"");
    texts.limits = word;
    EXPECT_EQ(fault_with(texts).code, ErrorCode::bad_format);
    EXPECT_EQ(fault_with(texts).detail, "incoming");

    const auto source = replaced(good.limits, "\"source\": \"cfr_424_21\"", "\"source\": \"x\"");
    texts.limits = source;
    EXPECT_EQ(fault_with(texts).code, ErrorCode::bad_format);

    const auto date = replaced(good.limits, "2025-10-08", "2025-02-30");
    texts.limits = date;
    EXPECT_EQ(fault_with(texts).code, ErrorCode::out_of_range);
}

TEST(LoadFacts, CompositionsMustBePossible) {
    const auto good = built_in_fact_texts();
    auto texts = good;
    const auto over = replaced(good.ingredients, "\"percent\": 93.75", "\"percent\": 99");
    texts.ingredients = over;
    EXPECT_EQ(fault_with(texts).code, ErrorCode::out_of_range);
    EXPECT_EQ(fault_with(texts).where, "ingredients.json.ingredients.cure_no1.composition");

    const auto order = replaced(good.ingredients, "[1, 4, 4]", "[4, 4, 1]");
    texts.ingredients = order;
    EXPECT_EQ(fault_with(texts).code, ErrorCode::out_of_range);

    const auto twice = replaced(good.ingredients, "\"id\": \"cure_no2\"", "\"id\": \"cure_no1\"");
    texts.ingredients = twice;
    EXPECT_EQ(fault_with(texts).code, ErrorCode::conflict);

    const auto unknown = replaced(good.ingredients, "{\"sodium_nitrite\"", "{\"sodium_nitrit\"");
    texts.ingredients = unknown;
    EXPECT_EQ(fault_with(texts).code, ErrorCode::bad_format);
}

} // namespace
