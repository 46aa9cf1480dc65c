#include "tests/support/run_program.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <unistd.h>

namespace {

using Json = nlohmann::json;
using tests::support::run_program;

class MixCommand : public ::testing::Test {
  protected:
    void SetUp() override {
        path_ = (std::filesystem::temp_directory_path() /
                 ("saltloft_mix_" + std::to_string(::getpid()) + ".json"))
                    .string();
    }
    void TearDown() override { std::filesystem::remove(path_); }

    void recipe(const std::string& lines, const std::string& more = {}) const {
        std::ofstream(path_) << R"({"saltloft_recipe":1,"name":"Coppa","method":"dry",)" << more
                             << R"("lines":[)" << lines << "]}";
    }
    std::string path_;
};

const char* const salt_and_cure =
    R"({"ingredient":"table_salt","amount":"2.5 %"},
       {"ingredient":"cure_no2","amount":"2.5 g/kg","label":{"nitrite":"6.25 %","nitrate":"4 %"}})";

// 2.5 g/kg of cure No. 2 (6.25 and 4 %): 156.25 ppm nitrite and 100 ppm nitrate, limits sheet
// section 9, vector 15.
TEST_F(MixCommand, JsonHoldsTheSheet) {
    recipe(salt_and_cure, R"("limits":"us-fsis-dry-cured",)");
    const auto run = run_program(
        {"mix", "--recipe", path_, "--meat", "1500g", "--scale-step", "0.1g", "--json"});
    EXPECT_EQ(run.exit_code, 0) << run.err;
    const auto json = Json::parse(run.out);
    EXPECT_DOUBLE_EQ(json["meat_g"], 1500);
    EXPECT_DOUBLE_EQ(json["lines"][0]["weigh_out_g"], 37.5);
    EXPECT_DOUBLE_EQ(json["lines"][1]["grams"], 3.75);
    EXPECT_DOUBLE_EQ(json["lines"][1]["weigh_out_g"], 3.8);
    EXPECT_DOUBLE_EQ(json["dose"]["nitrite_ppm"]["best"], 156.25);
    EXPECT_DOUBLE_EQ(json["dose"]["nitrate_ppm"]["best"], 100);
    EXPECT_NEAR(json["dose"]["nitrite_ion_mg_per_kg"]["best"], 104.2, 0.05);
    EXPECT_EQ(json["limits"][0]["outcome"], "within");
    EXPECT_EQ(json["limits"][0]["verified"], false);
    EXPECT_DOUBLE_EQ(json["limits"][0]["maximum_ppm"], 625);
}

TEST_F(MixCommand, WordsNameTheLinesAndNeverGiveAVerdict) {
    recipe(salt_and_cure, R"("limits":"us-fsis-dry-cured",)");
    const auto run = run_program({"mix", "--recipe", path_, "--meat", "3 lb 4 oz"});
    EXPECT_EQ(run.exit_code, 0) << run.err;
    EXPECT_NE(run.out.find("Table salt"), std::string::npos);
    EXPECT_NE(run.out.find("156.2"), std::string::npos);
    EXPECT_NE(run.out.find("unverified"), std::string::npos);
    EXPECT_EQ(run.out.find("safe"), std::string::npos);
    EXPECT_EQ(run.out.find("{"), std::string::npos) << "an unfilled blank: " << run.out;
    EXPECT_EQ(run.out.find("?"), run.out.find("Is ")) << run.out;
}

TEST_F(MixCommand, AStopFindingIsExitCodeOne) {
    recipe(R"({"ingredient":"cure_no1","amount":"3.2 %"})");
    const auto run = run_program({"mix", "--recipe", path_, "--meat", "1 kg"});
    EXPECT_EQ(run.exit_code, 1);
    EXPECT_NE(run.out.find("STOP"), std::string::npos);
    EXPECT_NE(run.out.find("2000 ppm"), std::string::npos);
}

TEST_F(MixCommand, SeveralPieces) {
    recipe(salt_and_cure);
    const auto run =
        run_program({"mix", "--recipe", path_, "--meat", "800g", "--meat", "1200g", "--json"});
    EXPECT_EQ(run.exit_code, 0) << run.err;
    const auto json = Json::parse(run.out);
    ASSERT_EQ(json["pieces"].size(), 2U);
    EXPECT_DOUBLE_EQ(json["pieces"][1]["lines"][0]["weigh_out_g"], 30);
    EXPECT_DOUBLE_EQ(json["meat_g"], 2000);
}

TEST_F(MixCommand, LimitsOnTheCommandLineOverrideTheRecipes) {
    recipe(salt_and_cure, R"("limits":"us-fsis-dry-cured",)");
    const auto run =
        run_program({"mix", "--recipe", path_, "--meat", "1kg", "--limits", "eu-raw", "--json"});
    EXPECT_EQ(run.exit_code, 1) << "104 mg/kg of the ion is above 80";
    EXPECT_EQ(Json::parse(run.out)["limit_set"], "eu-raw");
}

TEST_F(MixCommand, WrongUseIsExitCodeTwoWithTheWayToMendIt) {
    recipe(salt_and_cure);
    for (const auto& arguments : std::vector<std::vector<std::string>>{
             {"mix"},
             {"mix", "--recipe", path_},
             {"mix", "--recipe", path_, "--meat", "1500"},
             {"mix", "--recipe", path_, "--meat", "1,500 g"},
             {"mix", "--recipe", path_, "--meat", "0 g"},
             {"mix", "--recipe", path_, "--meat", "2 L"},
             {"mix", "--recipe", path_, "--meat", "1 kg", "--scale-step", "0 g"},
             {"mix", "--recipe", path_, "--meat", "1 kg", "--limits", "nowhere"},
             {"mix", "--recipe", path_, "--meat", "1 kg", "--nonsense"},
         }) {
        const auto run = run_program(arguments);
        EXPECT_EQ(run.exit_code, 2) << arguments.back() << ": " << run.out;
        EXPECT_FALSE(run.err.empty()) << arguments.back();
    }
}

TEST_F(MixCommand, UnreadableRecipesAreExitCodeThree) {
    auto run = run_program({"mix", "--recipe", "/no/such/recipe.json", "--meat", "1kg"});
    EXPECT_EQ(run.exit_code, 3);
    EXPECT_NE(run.err.find("/no/such/recipe.json"), std::string::npos);

    std::ofstream(path_) << "salt 25 g";
    run = run_program({"mix", "--recipe", path_, "--meat", "1kg"});
    EXPECT_EQ(run.exit_code, 3);

    recipe(R"({"ingredient":"table_salt","amount":"2,500 g"},{"amount":"3 tbsp"})");
    run = run_program({"mix", "--recipe", path_, "--meat", "1kg"});
    EXPECT_EQ(run.exit_code, 3);
    EXPECT_NE(run.err.find("lines[0].amount"), std::string::npos) << "all faults are told";
    EXPECT_NE(run.err.find("lines[1].ingredient"), std::string::npos) << run.err;
    EXPECT_NE(run.err.find("lines[1].amount"), std::string::npos);
}

} // namespace
