#include "ui/presenters/compare.h"

#include "tests/support/ui/past_book.h"

using namespace ui::presenters;

namespace {

class CompareTest : public saltloft::testing::PastBook {
  protected:
    core::model::Piece piece(core::model::PieceId id) { return *workspace->book().piece(id); }
    static QStringList codes(const std::vector<PieceLine>& lines) {
        QStringList all;
        for (const auto& line : lines) {
            all << QString::fromStdString(line.piece().code);
        }
        return all;
    }
};

} // namespace

TEST_F(CompareTest, ByProductOnlyWhatDriesTheNewestFirst) {
    const auto one = dry("P1", "Coppa", -60, 3);
    dry("P2", "coppa", -50, 3);
    dry("P3", "Coppa ", -40, 3);
    dry("P4", "Loin", -40, 3);
    finish("P5", "Coppa", -200, 7);
    const auto company = company_of(workspace->book(), piece(one.piece), CompareWith::product);
    EXPECT_EQ(codes(company.lines), (QStringList{QStringLiteral("P3"), QStringLiteral("P2")}));
    EXPECT_EQ(company.left_out, 0);
    EXPECT_TRUE(company_of(workspace->book(), piece(one.piece), CompareWith::alone).lines.empty());
    EXPECT_TRUE(company_of(workspace->book(), piece(one.piece), CompareWith::chamber).lines.empty())
        << "it hangs in no chamber that is known";
}

TEST_F(CompareTest, ChosenOnesMayBeFinishedAndMoreThanFitAreCounted) {
    const auto one = dry("P1", "Coppa", -60, 3);
    std::vector<core::model::PieceId> chosen{finish("DONE", "Loin", -200, 7).piece};
    for (int n = 0; n < 12; ++n) {
        chosen.push_back(dry("M" + std::to_string(n), "Ham", -50 + n, 2).piece);
    }
    const auto company =
        company_of(workspace->book(), piece(one.piece), CompareWith::chosen, chosen);
    EXPECT_EQ(company.lines.size(), most_compared);
    EXPECT_EQ(company.left_out, 2);
    const auto few =
        company_of(workspace->book(), piece(one.piece), CompareWith::chosen, {chosen.front()});
    EXPECT_EQ(codes(few.lines), QStringList{QStringLiteral("DONE")});
}

TEST_F(CompareTest, EarlierOnesAreOwnFinishedOfTheSameShape) {
    const auto now = dry("P1", "Coppa", -20, 2);
    EXPECT_FALSE(has_earlier(workspace->book(), piece(now.piece)));
    coppa_past();
    finish("HAM", "Ham", -200, 7);
    const auto flat = finish("FLAT", "Coppa", -250, 7);
    auto changed = piece(flat.piece);
    changed.form = core::model::Form::slab;
    must(core::actions::ChangePiece{changed});
    EXPECT_TRUE(has_earlier(workspace->book(), piece(now.piece)));
    EXPECT_EQ(codes(earlier_of(workspace->book(), piece(now.piece))),
              (QStringList{QStringLiteral("OLD2"), QStringLiteral("OLD1")}));
    EXPECT_EQ(earlier_of(workspace->book(), piece(now.piece), 1).size(), 1U);
}
