#include "core/exchange/weighings_csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace core::exchange;
using core::base::ErrorCode;
using core::model::WeighedState;
using core::model::Weighing;
using core::units::Mass;
using core::units::parse_instant;
using testing::ElementsAre;

ImportedWeighings read(std::string_view text, const WeighingImport& import = {}) {
    auto result = read_weighings_csv(text, import);
    EXPECT_TRUE(result) << (result ? "" : result.error().detail);
    return result ? *result : ImportedWeighings{};
}

WeighingImport in_rome() {
    WeighingImport import;
    import.zone = *core::units::Zone::named("Europe/Rome");
    return import;
}

TEST(WeighingsCsv, ReadsEveryColumn) {
    const auto out =
        read("Piece,Taken at,Weight (g),Tare (g),State,Scale step (g),Wet surface,Note\n"
             "K7,2026-03-01T18:30:00+01:00,1140.5,100,netted,0.5,yes,\"soft, cold\"\n");
    ASSERT_EQ(out.weighings.size(), 1U);
    EXPECT_TRUE(out.rejects.empty());
    EXPECT_TRUE(out.unknown_columns.empty());
    const ImportedWeighing& row = out.weighings[0];
    EXPECT_EQ(row.line, 2U);
    EXPECT_EQ(row.piece, "K7");
    EXPECT_EQ(row.weighing.taken_at, *parse_instant("2026-03-01T17:30:00Z"));
    EXPECT_EQ(row.weighing.on_scale, Mass::grams(1140.5));
    EXPECT_EQ(row.weighing.net(), Mass::grams(1040.5));
    EXPECT_EQ(row.weighing.state, WeighedState::netted);
    EXPECT_EQ(row.weighing.scale_step, Mass::grams(0.5));
    EXPECT_TRUE(row.weighing.wet_surface);
    EXPECT_EQ(row.weighing.note, "soft, cold");
    EXPECT_TRUE(row.weighing.stands());
}

TEST(WeighingsCsv, ReadsAFileFromACommaCountry) {
    const auto out = read("\xEF\xBB\xBFpiece;date;clock;weight\r\nK7;1.3.2026;18:30;1,140 kg\r\n"
                          "K7;8.3.2026;18:30;981,5 g\r\n",
                          in_rome());
    EXPECT_EQ(out.decimal, core::units::DecimalSign::comma);
    ASSERT_EQ(out.weighings.size(), 2U);
    EXPECT_DOUBLE_EQ(out.weighings[0].weighing.on_scale.in_grams(), 1140);
    EXPECT_DOUBLE_EQ(out.weighings[1].weighing.on_scale.in_grams(), 981.5);
    EXPECT_EQ(out.weighings[1].weighing.taken_at, *parse_instant("2026-03-08T17:30:00Z"));
}

TEST(WeighingsCsv, TakesUnitsFromCellColumnOrImport) {
    const auto grams_of = [](std::string_view header, std::string_view cell,
                             const WeighingImport& import = {}) {
        const std::string text = "piece,taken_at," + std::string(header) +
                                 "\nK7,2026-03-01T18:30Z," + std::string(cell) + "\n";
        return read(text, import).weighings.at(0).weighing.on_scale.in_grams();
    };
    EXPECT_DOUBLE_EQ(grams_of("weight_kg", "1.25"), 1250);
    EXPECT_DOUBLE_EQ(grams_of("weight_lb", "2"), 907.18474);
    EXPECT_DOUBLE_EQ(grams_of("weight", "14 5/8 oz"), 14.625 * 28.349523125);
    EXPECT_DOUBLE_EQ(grams_of("weight_g", "1.5 kg"), 1500); // the cell's own unit wins
    WeighingImport import;
    import.bare_unit = core::units::MassUnit::ounce;
    EXPECT_DOUBLE_EQ(grams_of("weight", "16", import), 453.59237);
}

TEST(WeighingsCsv, NamesEveryFaultOfEveryRow) {
    const auto out = read("piece,taken_at,weight,tare_g,state,wet_surface,status\n"
                          ",2026-03-01T18:30Z,800 g,0,raw,no,stands\n"
                          "K7,yesterday,heavy,0,baked,maybe,gone\n"
                          "K7,2026-03-02 10:00,800 g,0,raw,,\n"
                          "K7,2026-03-03T10:00Z,800,0,raw,,\n"
                          "K7,2026-03-04T10:00Z,\"1,234 g\",0,raw,,\n"
                          "K7,2026-03-05T10:00Z,0 g,0,raw,,\n"
                          "K7,2026-03-06T10:00Z,800 kg,0,raw,,\n"
                          "K7,2026-03-07T10:00Z,80 g,100,raw,,\n"
                          "K7,2026-03-08T10:00Z,800 g,0,raw,,,5\n"
                          "K7,2026-03-09T10:00Z\n");
    EXPECT_TRUE(out.weighings.empty());
    const auto is = [](std::size_t line, const char* column, const char* value, RejectReason why) {
        return Reject{line, column, value, why, 0};
    };
    EXPECT_THAT(out.rejects,
                ElementsAre(is(2, "piece", "", RejectReason::cell_missing),
                            is(3, "status", "gone", RejectReason::status_unknown),
                            is(3, "taken_at", "yesterday", RejectReason::time_unreadable),
                            is(3, "weight", "heavy", RejectReason::mass_unreadable),
                            is(3, "state", "baked", RejectReason::state_unknown),
                            is(3, "wet_surface", "maybe", RejectReason::flag_unreadable),
                            is(4, "taken_at", "2026-03-02 10:00", RejectReason::time_zone_missing),
                            is(5, "weight", "800", RejectReason::mass_unit_missing),
                            is(6, "weight", "1,234 g", RejectReason::mass_ambiguous),
                            is(7, "weight", "0 g", RejectReason::mass_not_positive),
                            is(8, "weight", "800 kg", RejectReason::mass_out_of_range),
                            is(9, "tare_g", "100", RejectReason::tare_not_below_weight),
                            is(10, "", "5", RejectReason::too_many_cells),
                            is(11, "weight", "", RejectReason::cell_missing)));
}

TEST(WeighingsCsv, DoesNotDoubleRepeatedRows) {
    const auto out = read("piece,taken_at,weight_g\nK7,2026-03-01T18:30Z,800\n"
                          "K8,2026-03-01T18:30Z,800\nK7,2026-03-01T19:30+01:00,800.0\n"
                          "K7,2026-03-01T18:30Z,790\n");
    EXPECT_EQ(out.weighings.size(), 2U);
    EXPECT_THAT(out.rejects,
                ElementsAre(Reject{4, "weight_g", "800.0", RejectReason::repeated, 2},
                            Reject{5, "weight_g", "790", RejectReason::contradicts, 2}));
}

TEST(WeighingsCsv, ListsAllMissingColumns) {
    const auto missing = read_weighings_csv("code,colour\nK7,blue\n");
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().code, ErrorCode::missing_column);
    EXPECT_EQ(missing.error().detail, "taken_at, weight_g");
    EXPECT_THAT(read("piece,taken_at,weight_g,colour\n").unknown_columns, ElementsAre("colour"));
}

TEST(WeighingsCsv, LearnsTheDayOrderFromTheFile) {
    const auto out =
        read("piece,taken_at,weight_g\nK7,3/4/2026 18:00,800\nK7,17/4/2026 18:00,760\n", in_rome());
    EXPECT_EQ(out.day_order, DayOrder::day_first);
    ASSERT_EQ(out.weighings.size(), 2U);
    EXPECT_EQ(out.weighings[0].weighing.taken_at, *parse_instant("2026-04-03T16:00:00Z"));
    const auto unclear = read("piece,taken_at,weight_g\nK7,3/4/2026 18:00,800\n", in_rome());
    EXPECT_EQ(unclear.rejects.at(0).reason, RejectReason::day_order_unclear);
}

Weighing weighing(double on_scale, double tare) {
    return {{},
            {},
            *parse_instant("2026-03-01T17:30:00Z"),
            Mass::grams(on_scale),
            Mass::grams(tare),
            WeighedState::netted,
            Mass::grams(0.1),
            true,
            "=cmd, \"said\"\nK7",
            {},
            {},
            false};
}

TEST(WeighingsCsv, WhatIsWrittenReadsBackTheSame) {
    const Weighing standing = weighing(1140.123, 100.001);
    Weighing amended = weighing(11400, 100);
    amended.amended_by = core::model::WeighingId::from_row(2);
    Weighing withdrawn = weighing(900, 100);
    withdrawn.withdrawn = true;
    const std::string text = write_weighings_csv(
        {{"-K7", "B07", standing}, {"-K7", "B07", amended}, {"-K7", "B07", withdrawn}});
    EXPECT_EQ(text.find(",=cmd"), std::string::npos);
    const auto out = read(text);
    EXPECT_TRUE(out.rejects.empty());
    EXPECT_TRUE(out.unknown_columns.empty());
    EXPECT_EQ(out.set_aside.size(), 2U);
    ASSERT_EQ(out.weighings.size(), 1U);
    const Weighing& back = out.weighings[0].weighing;
    EXPECT_EQ(out.weighings[0].piece, "-K7");
    EXPECT_EQ(back.taken_at, standing.taken_at);
    EXPECT_NEAR(back.on_scale.in_grams(), standing.on_scale.in_grams(), 1e-9);
    EXPECT_NEAR(back.tare.in_grams(), standing.tare.in_grams(), 1e-9);
    EXPECT_EQ(back.state, standing.state);
    EXPECT_EQ(back.scale_step, standing.scale_step);
    EXPECT_EQ(back.wet_surface, standing.wet_surface);
    EXPECT_EQ(back.note, standing.note);
}

TEST(WeighingsCsv, RejectBecomesAFinding) {
    const auto finding = to_finding({14, "weight", "1,234", RejectReason::mass_ambiguous});
    EXPECT_EQ(finding.code, "import_mass_ambiguous");
    EXPECT_EQ(finding.place, "line 14, column 'weight'");
    EXPECT_EQ(finding.severity, core::model::Severity::caution);
    EXPECT_EQ(std::get<std::string>(finding.values.at("value")), "1,234");
    EXPECT_EQ(finding.values.count("other_line"), 0U);
}

} // namespace
