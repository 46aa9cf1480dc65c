#include "core/chamber/load.h"

#include <gtest/gtest.h>

#include <algorithm>

// The paces are common practice, no source; the cases are invented.

namespace {

using namespace core::chamber;
using core::units::Duration;
using core::units::Mass;
using core::units::MassShare;

core::model::Chamber cabinet() {
    core::model::Chamber chamber;
    chamber.name = "cabinet";
    chamber.water_capacity_per_day = Mass::grams(200);
    chamber.places = 6;
    return chamber;
}

LoadPiece piece(int row, double grams, double days, std::optional<double> water = {},
                std::optional<double> loss = {}) {
    LoadPiece p{core::model::PieceId::from_row(row),
                "P" + std::to_string(row),
                "",
                Mass::grams(grams),
                Duration::days(days),
                {},
                {},
                {}};
    p.target_loss = MassShare::percent(35);
    if (water) {
        p.water_per_day = Mass::grams(*water);
    }
    if (loss) {
        p.loss = MassShare::percent(*loss);
    }
    return p;
}

bool has(const core::model::Findings& findings, const std::string& code) {
    return std::any_of(findings.begin(), findings.end(),
                       [&](const auto& f) { return f.code == code; });
}

TEST(ChamberLoad, AFreshPieceGivesTwoPerCentAndAnOldOneAThirdOfOne) {
    const std::vector<LoadPiece> pieces{piece(1, 2000, 60), piece(2, 1000, 0), piece(3, 1000, 14)};
    const auto load = load_of(cabinet(), pieces);
    ASSERT_EQ(load.pieces.size(), 3U);
    EXPECT_EQ(load.pieces[0].piece.code, "P2");
    EXPECT_NEAR(load.pieces[0].water_per_day.in_grams(), 20, 1e-9);
    EXPECT_NEAR(load.water_per_day.in_grams(), 20 + 9 + 6, 1e-9);
    EXPECT_NEAR(*load.share_of_capacity, 0.175, 1e-9);
    EXPECT_EQ(load.free_places, 3);
    EXPECT_TRUE(load.findings.empty());
}

TEST(ChamberLoad, ItsOwnWeighingsWinOverTheUsualPace) {
    const std::vector<LoadPiece> pieces{piece(1, 1000, 2, 31.0)};
    const auto load = load_of(cabinet(), pieces);
    EXPECT_TRUE(load.pieces[0].measured);
    EXPECT_NEAR(load.water_per_day.in_grams(), 31, 1e-9);
}

TEST(ChamberLoad, SaysTooMuchTooLittleAndTooMany) {
    std::vector<LoadPiece> pieces(7, piece(1, 2000, 1));
    auto load = load_of(cabinet(), pieces);
    EXPECT_TRUE(has(load.findings, "load_over_capacity"));
    EXPECT_TRUE(has(load.findings, "places_over"));
    EXPECT_EQ(load.free_places, 0);
    load = load_of(cabinet(), std::vector<LoadPiece>{piece(1, 500, 60)});
    EXPECT_TRUE(has(load.findings, "load_small"));
    EXPECT_TRUE(load_of(cabinet(), {}).findings.empty());
    auto unknown = cabinet();
    unknown.water_capacity_per_day.reset();
    unknown.places = 0;
    load = load_of(unknown, pieces);
    EXPECT_FALSE(load.share_of_capacity.has_value());
    EXPECT_FALSE(load.free_places.has_value());
    EXPECT_TRUE(load.findings.empty());
}

TEST(ChamberLoad, AWetBatchIsWarnedAwayFromNearlyDryPieces) {
    const std::vector<LoadPiece> dry{piece(1, 700, 60, {}, 30), piece(2, 700, 60, {}, 29)};
    const std::vector<LoadPiece> young{piece(1, 950, 5, {}, 8)};
    const std::vector<LoadPiece> fresh{piece(3, 1500, 0), piece(4, 1500, 0)};
    EXPECT_TRUE(has(before_hanging(cabinet(), dry, fresh), "wet_batch_joins_dry"));
    EXPECT_FALSE(has(before_hanging(cabinet(), young, fresh), "wet_batch_joins_dry"));
    EXPECT_FALSE(has(before_hanging(cabinet(), dry, std::vector<LoadPiece>{piece(5, 100, 0)}),
                     "wet_batch_joins_dry"));
}

TEST(ChamberLoad, SwapsTheFastWithTheSlowOfTheSameAge) {
    const std::vector<LoadPiece> pieces{piece(1, 1000, 10, 20.0), piece(2, 1000, 11, 9.0),
                                        piece(3, 1000, 10, 14.0), piece(4, 1000, 60, 2.0)};
    const auto load = load_of(cabinet(), pieces);
    ASSERT_EQ(load.rotation.size(), 1U);
    EXPECT_EQ(load.rotation[0].fast.row(), 1);
    EXPECT_EQ(load.rotation[0].slow.row(), 2);
}

} // namespace
