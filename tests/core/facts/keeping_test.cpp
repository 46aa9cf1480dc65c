#include "core/facts/keeping.h"

#include "core/facts/embedded.h"
#include "core/facts/facts.h"

#include <gtest/gtest.h>

namespace keeping_test {
namespace {

using namespace core::facts;
using core::base::ErrorCode;
using core::base::Sureness;

TEST(Keeping, TheFileIsGoodAndEveryRuleHasASource) {
    const auto loaded = load_keep_rules(embedded("keeping.json"));
    ASSERT_TRUE(loaded.has_value()) << loaded.error().where << ": " << loaded.error().detail;
    EXPECT_GE(loaded->rules.size(), 6U);
    for (const auto& rule : loaded->rules) {
        EXPECT_FALSE(rule.source.title.empty()) << rule.id;
        EXPECT_FALSE(is_verified(rule.source)) << rule.id << ": no issuer's text has been read";
    }
}

// From memory: USDA FSIS, Hams and Food Safety, gives dry-cured ham, cut, two to three months in
// the refrigerator and one month in the freezer, and whole country ham a year. The least counts.
TEST(Keeping, TheChartsLeastDayIsTaken) {
    const auto rules = built_in_keep_rules();
    ASSERT_NE(rules.find("dry_ham_cut_cold"), nullptr);
    EXPECT_EQ(rules.find("dry_ham_cut_cold")->days, 60);
    EXPECT_EQ(rules.find("dry_ham_cut_cold")->source.sureness, Sureness::memory);
    EXPECT_EQ(rules.find("dry_ham_frozen")->days, 30);
    EXPECT_EQ(rules.find("dry_ham_whole_cool")->days, 365);
    EXPECT_EQ(rules.find("nothing"), nullptr);
}

TEST(Keeping, EveryFormHasARuleFromPackingAndOneFromOpening) {
    const auto rules = built_in_keep_rules();
    for (const auto form : {PackForm::whole, PackForm::cut, PackForm::vacuum, PackForm::frozen}) {
        const auto packing = rules.rules_for(form, KeepRule::From::packing);
        const auto opening = rules.rules_for(form, KeepRule::From::opening);
        ASSERT_FALSE(packing.empty());
        ASSERT_FALSE(opening.empty());
        EXPECT_LT(opening.front().days, packing.front().days) << "opening never lengthens";
        for (const auto& rule : packing) {
            EXPECT_TRUE(rule.is_for(form));
        }
    }
}

ErrorCode fault_of(const std::string& rule) {
    const auto loaded = load_keep_rules(
        R"({"sources": {"s": {"title": "t", "edition": "", "sureness": "memory"}}, "rules": [)" +
        rule + "]}");
    EXPECT_FALSE(loaded.has_value());
    return loaded ? ErrorCode::cancelled : loaded.error().code;
}

TEST(Keeping, FaultsAreNamed) {
    const std::string good =
        R"({"id": "a", "name": "A", "packs": ["cut"], "counts_from": "packing", "days": 9, "source": "s"})";
    EXPECT_EQ(fault_of(good + "," + good), ErrorCode::conflict);
    EXPECT_EQ(fault_of(R"({"id": "a", "name": "A", "packs": [], "counts_from": "packing",
                           "days": 9, "source": "s"})"),
              ErrorCode::missing_column);
    EXPECT_EQ(fault_of(R"({"id": "a", "name": "A", "packs": ["tin"], "counts_from": "packing",
                           "days": 9, "source": "s"})"),
              ErrorCode::bad_format);
    EXPECT_EQ(fault_of(R"({"id": "a", "name": "A", "packs": ["cut"], "counts_from": "packing",
                           "days": 0, "source": "s"})"),
              ErrorCode::out_of_range);
    EXPECT_EQ(fault_of(R"({"id": "a", "name": "A", "packs": ["cut"], "counts_from": "packing",
                           "days": 9.5, "source": "s"})"),
              ErrorCode::out_of_range);
    EXPECT_EQ(fault_of(R"({"id": "a", "name": "A", "packs": ["cut"], "counts_from": "packing",
                           "days": 9, "source": "s", "best": 3})"),
              ErrorCode::bad_format);
    EXPECT_EQ(load_keep_rules("no json").error().code, ErrorCode::bad_format);
}

} // namespace

} // namespace keeping_test
