// Rejects as findings: stable names, and all that a sentence needs.
#include "core/exchange/reject.h"

#include <gtest/gtest.h>

#include <set>

namespace {

using namespace core::exchange;

/// The names are kept in files and scripts of other people: none may change.
const std::vector<std::pair<RejectReason, std::string>> reject_names{
    {RejectReason::cell_missing, "cell_missing"},
    {RejectReason::too_many_cells, "too_many_cells"},
    {RejectReason::time_unreadable, "time_unreadable"},
    {RejectReason::time_zone_missing, "time_zone_missing"},
    {RejectReason::day_order_unclear, "day_order_unclear"},
    {RejectReason::no_such_local_time, "no_such_local_time"},
    {RejectReason::mass_unreadable, "mass_unreadable"},
    {RejectReason::mass_unit_missing, "mass_unit_missing"},
    {RejectReason::mass_ambiguous, "mass_ambiguous"},
    {RejectReason::mass_not_positive, "mass_not_positive"},
    {RejectReason::mass_out_of_range, "mass_out_of_range"},
    {RejectReason::tare_not_below_weight, "tare_not_below_weight"},
    {RejectReason::state_unknown, "state_unknown"},
    {RejectReason::flag_unreadable, "flag_unreadable"},
    {RejectReason::status_unknown, "status_unknown"},
    {RejectReason::repeated, "repeated"},
    {RejectReason::contradicts, "contradicts"},
    {RejectReason::day_unreadable, "day_unreadable"},
    {RejectReason::moisture_unreadable, "moisture_unreadable"},
    {RejectReason::moisture_out_of_range, "moisture_out_of_range"},
    {RejectReason::spread_unreadable, "spread_unreadable"}};

} // namespace

TEST(Reject, EveryReasonKeepsItsName) {
    std::set<std::string_view> seen;
    for (const auto& [reason, name] : reject_names) {
        EXPECT_EQ(reason_code(reason), name);
        EXPECT_TRUE(seen.insert(reason_code(reason)).second) << name << " names two reasons";
        EXPECT_EQ(to_finding({.line = 1, .reason = reason}).code, "import_" + name);
    }
    EXPECT_EQ(seen.size(), static_cast<std::size_t>(RejectReason::spread_unreadable) + 1)
        << "spread_unreadable is the last reason";
}

TEST(Reject, AFindingHasThePlaceAndTheCell) {
    const auto finding = to_finding({14, "Weight (g)", "1,234", RejectReason::mass_ambiguous, 0});
    EXPECT_EQ(finding.code, "import_mass_ambiguous");
    EXPECT_EQ(finding.severity, core::model::Severity::caution) << "other rows can be taken";
    EXPECT_EQ(finding.place, "line 14, column 'Weight (g)'");
    EXPECT_EQ(finding.values.size(), 3U);
    EXPECT_DOUBLE_EQ(std::get<double>(finding.values.at("line")), 14);
    EXPECT_EQ(std::get<std::string>(finding.values.at("column")), "Weight (g)");
    EXPECT_EQ(std::get<std::string>(finding.values.at("value")), "1,234");
}

TEST(Reject, ARowThatContradictsAnEarlierOneNamesIt) {
    const auto finding = to_finding({9, "", "", RejectReason::contradicts, 4});
    EXPECT_EQ(finding.place, "line 9") << "no column is at fault by itself";
    EXPECT_DOUBLE_EQ(std::get<double>(finding.values.at("other_line")), 4);
}
