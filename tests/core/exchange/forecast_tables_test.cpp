// The three tables of `saltloft forecast`: what a row means, and what is told of a faulty one.
#include "core/exchange/forecast_tables.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <tuple>

namespace {

using namespace core::exchange;
using core::base::ErrorCode;
using core::model::Form;
using core::units::Instant;
using core::units::Length;
using core::units::Mass;

const std::string piece_header =
    "piece,thickness_mm,form,target_loss_percent,green_weight_g,fat_percent\n";

struct ToldFault {
    std::size_t line;
    std::string column;
    std::string value;
    CellFault fault;
    friend bool operator==(const ToldFault&, const ToldFault&) = default;
    friend void PrintTo(const ToldFault& f, std::ostream* out) {
        *out << f.line << " " << f.column << " '" << f.value << "' " << static_cast<int>(f.fault);
    }
};

template <class Row>
std::vector<ToldFault> told(const Rows<Row>& rows) {
    std::vector<ToldFault> out;
    for (const auto& f : rows.faults) {
        out.push_back({f.line, f.column, f.value, f.fault});
    }
    return out;
}

std::vector<ToldFault> faults_of_piece(const std::string& row) {
    const auto table = read_piece_table(piece_header + row + "\n");
    EXPECT_TRUE(table);
    EXPECT_EQ(table->rows.empty(), !table->faults.empty()) << row;
    return told(*table);
}

} // namespace

TEST(ForecastTables, APieceRowIsReadWhole) {
    const auto table = read_piece_table(piece_header + "K1,70,cylinder,35,1500.5,12\n"
                                                       "K2,,slab,30,,\n");
    ASSERT_TRUE(table);
    EXPECT_TRUE(table->faults.empty());
    ASSERT_EQ(table->rows.size(), 2U);
    const PieceRow& first = table->rows[0];
    EXPECT_EQ(first.line, 2U);
    EXPECT_EQ(first.piece, "K1");
    EXPECT_EQ(first.thickness, Length::millimetres(70));
    EXPECT_EQ(first.form, Form::cylinder);
    EXPECT_DOUBLE_EQ(first.target.in_percent(), 35);
    EXPECT_EQ(first.green_weight, Mass::grams(1500.5));
    EXPECT_DOUBLE_EQ(first.fat->in_percent(), 12);
    const PieceRow& second = table->rows[1];
    EXPECT_EQ(second.form, Form::slab);
    EXPECT_FALSE(second.thickness || second.green_weight || second.fat);
}

TEST(ForecastTables, OptionalColumnsMayBeMissingAndOthersAreIgnored) {
    const auto table = read_piece_table("colour\tForm\ttarget loss percent\tPiece\tThickness-mm\n"
                                        "red\tBLOCK\t40\tK1\t55\n"
                                        "red\tround\t40\tK2\t55\n");
    ASSERT_TRUE(table);
    EXPECT_TRUE(table->faults.empty());
    ASSERT_EQ(table->rows.size(), 2U);
    EXPECT_EQ(table->rows[0].piece, "K1");
    EXPECT_EQ(table->rows[0].form, Form::block);
    EXPECT_EQ(table->rows[1].form, Form::round);
    EXPECT_FALSE(table->rows[0].green_weight || table->rows[0].fat);
}

TEST(ForecastTables, AMarkCrlfSemicolonsAndDecimalCommasAreRead) {
    const auto table =
        read_piece_table("\xEF\xBB\xBFpiece;thickness_mm;form;target_loss_percent\r\n"
                         "K1;62,5;slab;32,25\r\n");
    ASSERT_TRUE(table);
    EXPECT_TRUE(table->faults.empty());
    ASSERT_EQ(table->rows.size(), 1U);
    EXPECT_EQ(table->rows[0].thickness, Length::millimetres(62.5));
    EXPECT_DOUBLE_EQ(table->rows[0].target.in_percent(), 32.25);
}

TEST(ForecastTables, AllMissingColumnsAreNamedAtOnce) {
    const auto missing = [](const auto& table) {
        EXPECT_FALSE(table);
        EXPECT_EQ(table.error().code, ErrorCode::missing_column);
        return table.error().detail;
    };
    EXPECT_EQ(missing(read_piece_table("piece,form\nK1,slab\n")),
              "thickness_mm, target_loss_percent");
    EXPECT_EQ(missing(read_weight_table("piece\nK1\n")), "taken_at, weight_g");
    EXPECT_EQ(missing(read_climate_table("piece,temp_c\nK1,3\n")), "taken_at, rh_percent");
}

TEST(ForecastTables, AFileThatIsNoTableFailsAsCsvDoes) {
    EXPECT_EQ(read_piece_table("").error().code, ErrorCode::empty_input);
    EXPECT_EQ(read_weight_table(" \n").error().code, ErrorCode::empty_input);
    EXPECT_EQ(read_climate_table("taken_at,\"temp_c\n").error().code, ErrorCode::bad_format);
}

TEST(ForecastTables, EachFaultOfAPieceIsToldWithItsCell) {
    using F = CellFault;
    const auto one = [](const char* column, const char* value, F fault) {
        return std::vector<ToldFault>{{2, column, value, fault}};
    };
    EXPECT_EQ(faults_of_piece(",70,slab,35,,"), one("piece", "", F::missing));
    EXPECT_EQ(faults_of_piece("K1,70,,35,,"), one("form", "", F::missing));
    EXPECT_EQ(faults_of_piece("K1,70,wedge,35,,"), one("form", "wedge", F::unknown_form));
    EXPECT_EQ(faults_of_piece("K1,thick,slab,35,,"), one("thickness_mm", "thick", F::not_a_number));
    EXPECT_EQ(faults_of_piece("K1,1.9,slab,35,,"), one("thickness_mm", "1.9", F::out_of_range));
    EXPECT_EQ(faults_of_piece("K1,1001,slab,35,,"), one("thickness_mm", "1001", F::out_of_range));
    EXPECT_EQ(faults_of_piece("K1,70,slab,,,"), one("target_loss_percent", "", F::missing));
    EXPECT_EQ(faults_of_piece("K1,70,slab,0.35,,"),
              one("target_loss_percent", "0.35", F::looks_like_fraction));
    EXPECT_EQ(faults_of_piece("K1,70,slab,1,,"),
              one("target_loss_percent", "1", F::looks_like_fraction));
    EXPECT_EQ(faults_of_piece("K1,70,slab,0,,"), one("target_loss_percent", "0", F::out_of_range));
    EXPECT_EQ(faults_of_piece("K1,70,slab,86,,"),
              one("target_loss_percent", "86", F::out_of_range));
    EXPECT_EQ(faults_of_piece("K1,70,slab,35,0,"), one("green_weight_g", "0", F::out_of_range));
    EXPECT_EQ(faults_of_piece("K1,70,slab,35,,96"), one("fat_percent", "96", F::out_of_range));
    EXPECT_EQ(faults_of_piece("K1,70,slab"), one("target_loss_percent", "", F::missing))
        << "a row that ends early";
}

TEST(ForecastTables, TheBoundsThemselvesAreTaken) {
    EXPECT_TRUE(faults_of_piece("K1,2,slab,85,1,0").empty());
    EXPECT_TRUE(faults_of_piece("K1,1000,slab,1.1,1,95").empty());
}

TEST(ForecastTables, ARowTellsAllItsFaultsAndTheOthersAreStillTaken) {
    const auto table =
        read_piece_table(piece_header + "K1,x,wedge,0.3,,\nK2,70,slab,35,,\nK2,80,slab,35,,\n");
    ASSERT_TRUE(table);
    const std::vector<ToldFault> expected{
        {2, "thickness_mm", "x", CellFault::not_a_number},
        {2, "form", "wedge", CellFault::unknown_form},
        {2, "target_loss_percent", "0.3", CellFault::looks_like_fraction},
        {4, "piece", "K2", CellFault::repeated_piece}};
    EXPECT_EQ(told(*table), expected);
    ASSERT_EQ(table->rows.size(), 1U);
    EXPECT_EQ(table->rows[0].thickness, Length::millimetres(70)) << "the first K2 stands";
}

TEST(ForecastTables, APieceWhoseFirstRowWasFaultyMayBeNamedAgain) {
    const auto table = read_piece_table(piece_header + "K1,70,slab,0.3,,\nK1,70,slab,30,,\n");
    ASSERT_TRUE(table);
    EXPECT_EQ(table->faults.size(), 1U);
    ASSERT_EQ(table->rows.size(), 1U);
    EXPECT_EQ(table->rows[0].line, 3U);
}

TEST(ForecastTables, WeightsAreReadInTheFilesOrder) {
    const auto table = read_weight_table("taken_at,piece,weight_g\n"
                                         "2026-03-02T09:00:00+01:00,K1,1400\n"
                                         "2026-03-01T08:00:00Z,K1,1500.5\n");
    ASSERT_TRUE(table);
    EXPECT_TRUE(table->faults.empty());
    ASSERT_EQ(table->rows.size(), 2U);
    EXPECT_EQ(table->rows[0].at, Instant::from_unix_seconds(1772438400));
    EXPECT_EQ(table->rows[0].weight, Mass::grams(1400));
    EXPECT_EQ(table->rows[1].at, Instant::from_unix_seconds(1772352000));
    EXPECT_EQ(table->rows[1].weight, Mass::grams(1500.5));
    EXPECT_EQ(table->rows[1].line, 3U);
}

TEST(ForecastTables, AFaultyWeightIsLeftOutAndTold) {
    const auto table = read_weight_table("piece,taken_at,weight_g\n"
                                         "K1,2026-03-01T08:00:00,1500\n"
                                         "K1,last Sunday,1500\n"
                                         "K1,,1500\n"
                                         "K1,2026-03-01T08:00:00Z,heavy\n"
                                         "K1,2026-03-01T08:00:00Z,-5\n"
                                         ",2026-03-01T08:00:00Z,\n"
                                         "K1,2026-03-01T08:00:00Z,1500\n");
    ASSERT_TRUE(table);
    using F = CellFault;
    const std::vector<ToldFault> expected{
        {2, "taken_at", "2026-03-01T08:00:00", F::time_zone_missing},
        {3, "taken_at", "last Sunday", F::time_unreadable},
        {4, "taken_at", "", F::missing},
        {5, "weight_g", "heavy", F::not_a_number},
        {6, "weight_g", "-5", F::out_of_range},
        {7, "piece", "", F::missing},
        {7, "weight_g", "", F::missing}};
    EXPECT_EQ(told(*table), expected);
    ASSERT_EQ(table->rows.size(), 1U);
    EXPECT_EQ(table->rows[0].line, 8U);
}

TEST(ForecastTables, AThousandOrADecimalIsAskedAndNotGuessed) {
    const auto table =
        read_weight_table("piece\ttaken_at\tweight_g\nK1\t2026-03-01T08:00:00Z\t1,234\n");
    ASSERT_TRUE(table);
    const std::vector<ToldFault> expected{{2, "weight_g", "1,234", CellFault::ambiguous_number}};
    EXPECT_EQ(told(*table), expected);
    EXPECT_TRUE(table->rows.empty());
}

TEST(ForecastTables, ClimateIsForOnePieceOrForAll) {
    const auto all = read_climate_table("taken_at,temp_c,rh_percent\n"
                                        "2026-03-01T08:00:00Z,-2.5,105\n");
    ASSERT_TRUE(all);
    ASSERT_EQ(all->rows.size(), 1U);
    EXPECT_EQ(all->rows[0].piece, "");
    EXPECT_EQ(all->rows[0].at, Instant::from_unix_seconds(1772352000));
    EXPECT_NEAR(all->rows[0].temperature.in_celsius(), -2.5, 1e-9);
    EXPECT_NEAR(all->rows[0].humidity.in_percent(), 105, 1e-9);
    const auto some = read_climate_table("piece,taken_at,temp_c,rh_percent\n"
                                         "K1,2026-03-01T08:00:00Z,12,75\n"
                                         ",2026-03-01T08:00:00Z,13,76\n");
    ASSERT_TRUE(some);
    EXPECT_TRUE(some->faults.empty());
    ASSERT_EQ(some->rows.size(), 2U);
    EXPECT_EQ(some->rows[0].piece, "K1");
    EXPECT_EQ(some->rows[1].piece, "") << "an empty cell is for all";
}

TEST(ForecastTables, AirThatCannotBeIsTold) {
    const auto table = read_climate_table("taken_at,temp_c,rh_percent\n"
                                          "2026-03-01T08:00:00Z,-41,75\n"
                                          "2026-03-01T08:00:00Z,91,106\n"
                                          "2026-03-01T08:00:00Z,,-1\n");
    ASSERT_TRUE(table);
    using F = CellFault;
    const std::vector<ToldFault> expected{{2, "temp_c", "-41", F::out_of_range},
                                          {3, "temp_c", "91", F::out_of_range},
                                          {3, "rh_percent", "106", F::out_of_range},
                                          {4, "temp_c", "", F::missing},
                                          {4, "rh_percent", "-1", F::out_of_range}};
    EXPECT_EQ(told(*table), expected);
    EXPECT_TRUE(table->rows.empty());
}
