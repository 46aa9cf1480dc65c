#include "core/services/salt_dose.h"

#include <gtest/gtest.h>

namespace {

using core::services::salt_dose_of;

const core::facts::Facts& facts() {
    static const auto all = core::facts::built_in_facts();
    return all;
}

TEST(SaltDose, CountsTheSaltInsideTheCuringSalt) {
    // By hand: 2.5 % table salt and 0.25 % of a mixture of 6.25 % nitrite and 93.75 % salt.
    const auto dose = salt_dose_of(
        R"({"saltloft_recipe": 1, "name": "Coppa", "method": "dry", "lines": [
            {"ingredient": "table_salt", "amount": "2.5 %", "of": "meat"},
            {"ingredient": "cure_no1", "amount": "0.25 %", "of": "meat"}]})",
        facts());
    ASSERT_TRUE(dose);
    EXPECT_NEAR(dose->in_percent(), 2.5 + 0.25 * 0.9375, 0.01);
}

TEST(SaltDose, AFixedAmountNeedsItsMeat) {
    const std::string lines = R"("lines": [{"ingredient": "table_salt", "amount": "30 g"}]})";
    const std::string start = R"({"saltloft_recipe": 1, "name": "Loin", "method": "dry", )";
    EXPECT_FALSE(salt_dose_of(start + lines, facts()));
    const auto dose = salt_dose_of(start + R"("for_meat": "1 kg", )" + lines, facts());
    ASSERT_TRUE(dose);
    EXPECT_NEAR(dose->in_percent(), 3.0, 0.01);
}

TEST(SaltDose, WhatGoesInOfABoxIsNotKnown) {
    EXPECT_FALSE(salt_dose_of(
        R"({"saltloft_recipe": 1, "name": "Box", "method": "box", "lines": [
            {"ingredient": "table_salt", "amount": "8 %", "of": "meat"}]})",
        facts()));
    EXPECT_FALSE(salt_dose_of("no recipe", facts()));
}

} // namespace
