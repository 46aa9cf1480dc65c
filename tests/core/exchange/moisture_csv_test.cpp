#include "core/exchange/moisture_csv.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <map>

namespace {

using namespace core::exchange;
using core::units::Mass;
using core::units::MassShare;

std::string read_file(const std::string& name) {
    std::ifstream file(std::string(SALTLOFT_TEST_DATA_DIR) + "/" + name, std::ios::binary);
    EXPECT_TRUE(file) << name;
    return {std::istreambuf_iterator<char>(file), {}};
}

// Dry matter is what stays: 1000 g at 75 % water hold 250 g dry; at 50 % water that is 500 g.
TEST(MoistureCsv, KeepsTheDryMass) {
    const auto out = read_moisture_csv("piece,day,moisture_percent,sd\nK7,2,50,1\nK7,0,75,\n");
    ASSERT_TRUE(out);
    ASSERT_EQ(out->weighings.size(), 2U);
    EXPECT_EQ(out->weighings[0].weighing.on_scale, Mass::kilograms(1)); // in time order
    EXPECT_DOUBLE_EQ(out->weighings[1].weighing.on_scale.in_grams(), 500);
    EXPECT_EQ(out->weighings[1].weighing.taken_at.unix_seconds(), 2 * 86400);
    // One point of moisture at m = 50 % moves the mass by 500 g x 0.01 / 0.5.
    EXPECT_DOUBLE_EQ(out->weighings[1].spread->in_grams(), 10);
    EXPECT_FALSE(out->weighings[0].spread);
}

TEST(MoistureCsv, NamesWhatIsWrong) {
    const auto out = read_moisture_csv("piece;day;moisture_percent;sd;colour\n"
                                       ";1;60;1;\nK7;soon;60;1;\nK7;1;100;1;\nK7;1;0;1;\n"
                                       "K7;1;wet;x;\nK7;;60;1;\nK7;1;59,5;1;\n");
    ASSERT_TRUE(out);
    const auto is = [](std::size_t line, const char* column, const char* value, RejectReason why) {
        return Reject{line, column, value, why, 0};
    };
    const std::vector<Reject> expected{
        is(2, "piece", "", RejectReason::cell_missing),
        is(3, "day", "soon", RejectReason::day_unreadable),
        is(4, "moisture_percent", "100", RejectReason::moisture_out_of_range),
        is(5, "moisture_percent", "0", RejectReason::moisture_out_of_range),
        is(6, "moisture_percent", "wet", RejectReason::moisture_unreadable),
        is(6, "sd", "x", RejectReason::spread_unreadable)};
    EXPECT_EQ(out->rejects, expected);
    EXPECT_EQ(out->set_aside, std::vector<std::size_t>{7});
    EXPECT_EQ(out->weighings.size(), 1U);
    EXPECT_EQ(read_moisture_csv("a,b\n1,2\n").error().detail, "piece, day, moisture_percent");
}

TEST(MoistureCsv, ADayThatNoMomentCanHoldIsRefused) {
    const auto out = read_moisture_csv("piece,day,moisture_percent\n"
                                       "K7,1888888888888888888888888888844444.63,60\n"
                                       "K7,-36526,60\nK7,36525,60\nK7,0,75\n");
    ASSERT_TRUE(out);
    ASSERT_EQ(out->rejects.size(), 2U);
    EXPECT_EQ(out->rejects[0].reason, RejectReason::day_unreadable);
    EXPECT_EQ(out->rejects[1].line, 3U);
    ASSERT_EQ(out->weighings.size(), 2U);
    EXPECT_EQ(out->weighings[1].weighing.taken_at.unix_seconds(), 36525LL * 86400);
}

// doi:10.1007/s13197-016-2366-x, Table 1 (read in a stored copy of the table). The water contents
// on a dry basis and losses since the end of salting are derived from its moistures by
// X = m / (1 - m): formulation I 2.48 -> 1.34 -> 0.713, 32.9 % at 6 d, 50.8 % at 12 d.
TEST(MoistureCsv, PublishedBaconSeriesGivesItsDerivedLosses) {
    EXPECT_NEAR(moisture_dry_basis(MassShare::percent(71.28)), 2.48, 0.005);
    EXPECT_NEAR(moisture_dry_basis(MassShare::percent(57.19)), 1.34, 0.005);
    EXPECT_NEAR(moisture_dry_basis(MassShare::percent(41.63)), 0.713, 0.0005);

    const auto out = read_moisture_csv(read_file("bacon_drycured_moisture_PMC5147706.csv"));
    ASSERT_TRUE(out);
    EXPECT_TRUE(out->rejects.empty());
    EXPECT_EQ(out->set_aside.size(), 16U); // raw and three packed stages of four formulations
    ASSERT_EQ(out->weighings.size(), 12U);
    std::map<std::string, std::vector<double>> loss_percent;
    for (const ImportedWeighing& row : out->weighings) {
        loss_percent[row.piece].push_back(100 - row.weighing.on_scale.in_grams() / 10.0);
    }
    const std::vector<double>& first = loss_percent.at("I");
    EXPECT_DOUBLE_EQ(first[0], 0);
    EXPECT_NEAR(first[1], 32.9, 0.05);
    EXPECT_NEAR(first[2], 50.8, 0.05);
    for (const auto& [name, losses] : loss_percent) {
        printf("formulation %-3s loss since end of salting: %.2f %% at 6 d, %.2f %% at 12 d\n",
               name.c_str(), losses.at(1), losses.at(2));
    }
}

} // namespace
