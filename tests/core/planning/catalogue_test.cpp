#include "core/planning/catalogue.h"

#include "core/model/plan_document.h"
#include "core/planning/dated_plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace {

using namespace core;
using planning::Catalogue;

const Catalogue& built_in() {
    static const Catalogue catalogue = Catalogue::built_in();
    return catalogue;
}

std::string text_of(const std::vector<base::Error>& faults) {
    std::string out;
    for (const auto& fault : faults) {
        out += fault.where + ": " + fault.detail + "\n";
    }
    return out;
}

TEST(Catalogue, EveryBuiltInTemplateReadsAndPassesTheCheck) {
    const auto read = Catalogue::read(planning::built_in_plan_files());
    ASSERT_TRUE(read.has_value()) << text_of(read.error());
    EXPECT_GE(read->templates().size(), 20U);
    for (const auto& plan : read->templates()) {
        for (const auto& finding : planning::check_template(plan)) {
            ADD_FAILURE() << plan.id << ": " << finding.code << " at " << finding.place;
        }
    }
}

TEST(Catalogue, HoldsEveryFamily) {
    EXPECT_THAT(built_in().families(),
                testing::IsSupersetOf({"Italian whole muscle", "Italian and Spanish leg",
                                       "Spanish loin", "French", "Central European smoked",
                                       "Chinese wind-dried", "South African",
                                       "Turkish and Armenian pressed", "American country"}));
}

TEST(Catalogue, EveryTemplateSaysWhereItComesFrom) {
    for (const auto& plan : built_in().templates()) {
        const bool lore = plan.source == "common practice, no source";
        EXPECT_EQ(lore, plan.sureness == base::Sureness::common_practice) << plan.id;
    }
}

TEST(Catalogue, EveryTemplateCanBeDatedWithoutGuessing) {
    for (const auto& plan : built_in().templates()) {
        const auto dated = planning::date_plan(
            {plan, {planning::usual_piece(plan)}, units::Day::from_days_since_epoch(20000), {}});
        EXPECT_GE(planning::days_of(dated), 3) << plan.id;
        for (const auto& finding : dated.findings) {
            EXPECT_NE(finding.code, "stage_length_unknown") << plan.id << " " << finding.place;
            EXPECT_NE(finding.code, "rule_for_other_method") << plan.id << " " << finding.place;
        }
    }
}

// The trade's totals, from cure to ready (common practice, no source); the plan for the usual
// piece must fall into them.
TEST(Catalogue, TotalsAgreeWithWhatPracticeNames) {
    struct Total {
        const char* id;
        int shortest;
        int longest;
    };
    for (const Total& total :
         {Total{"bresaola", 10 + 28, 21 + 84}, Total{"loin", 14 + 42, 14 + 49 + 28},
          Total{"coppa", 7 + 60, 25 + 180}, Total{"pancetta-flat", 7 + 21, 15 + 120},
          Total{"guanciale", 4 + 21, 14 + 42}, Total{"magret", 7, 44}, Total{"biltong", 4, 23},
          Total{"wind-dried-belly", 8, 27}, Total{"pastirma", 16, 56},
          Total{"country-ham", 115 - 20, 365}, Total{"speck", 10 + 21 + 140, 20 + 21 + 168},
          Total{"leg-air-dried", 365, 600}}) {
        const auto* plan = built_in().find(total.id);
        ASSERT_NE(plan, nullptr) << total.id;
        const int days = planning::days_of(
            planning::date_plan({*plan, {}, units::Day::from_days_since_epoch(20000), {}}));
        EXPECT_GE(days, total.shortest) << total.id;
        EXPECT_LE(days, total.longest) << total.id;
    }
}

TEST(Catalogue, FaultsNameTheirFileAndTwoOfOneIdConflict) {
    const std::string good = model::write_plan_template(*built_in().find("magret"));
    const std::array files{base::EmbeddedFile{"a.json", good}, base::EmbeddedFile{"b.json", good},
                           base::EmbeddedFile{"c.json", "{}"}};
    const auto read = Catalogue::read(files);
    ASSERT_FALSE(read.has_value());
    EXPECT_EQ(read.error().front().where, "b.json");
    EXPECT_EQ(read.error().front().code, base::ErrorCode::conflict);
    EXPECT_EQ(read.error().back().where.substr(0, 8), "c.json: ");
}

TEST(CheckTemplate, FindsWhatCannotBePlanned) {
    model::PlanTemplate plan;
    model::StageTemplate feel;
    feel.name = "Hang";
    feel.kind = model::StageKind::dry;
    feel.ends = {{.kind = model::EndCondition::Kind::feel}};
    feel.repeat_with_next = 3;
    feel.same_room_as = "Nowhere";
    plan.stages = {feel};
    plan.minima = {{"cure", {"Salt"}, units::Duration::days(45), {}}};
    std::set<std::string> codes;
    for (const auto& finding : planning::check_template(plan)) {
        codes.insert(finding.code);
    }
    EXPECT_THAT(codes, testing::UnorderedElementsAre("stage_without_length", "repeat_past_end",
                                                     "same_room_unknown", "minimum_names_no_stage",
                                                     "no_salt_stage"));
}

} // namespace
