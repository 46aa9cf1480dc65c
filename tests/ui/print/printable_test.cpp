// What a page prints: lists as tables, a batch's papers out of a real book, tags and sheets by
// one door.
#include "core/services/demo_book.h"
#include "tests/support/temp_folder.h"
#include "tests/support/ui/printed.h"
#include "ui/models/work_model.h"
#include "ui/print/printable.h"

#include <QStandardItemModel>
#include <gtest/gtest.h>

using namespace ui::print;

namespace {

const Table& table_in(const Sheet& sheet, std::size_t block) {
    return std::get<Table>(sheet.blocks.at(block));
}

} // namespace

TEST(TableSheet, SaysTheListAsItStandsWithRoomForThePen) {
    QStandardItemModel model(2, 3);
    model.setHorizontalHeaderLabels({QStringLiteral("Piece"), QString(), QStringLiteral("Net")});
    model.setHeaderData(2, Qt::Horizontal, int(Qt::AlignRight), Qt::TextAlignmentRole);
    model.setItem(0, 0, new QStandardItem(QStringLiteral("07")));
    model.setItem(0, 1, new QStandardItem(QStringLiteral("no head")));
    model.setItem(0, 2, new QStandardItem(QStringLiteral("812 g")));
    model.setItem(1, 0, new QStandardItem(QStringLiteral("<b>08")));
    const Sheet sheet = table_sheet(
        model, {.title = QStringLiteral("Round"), .pen_columns = {QStringLiteral("Scale")}});
    ASSERT_EQ(sheet.blocks.size(), 1U);
    const Table& table = table_in(sheet, 0);
    ASSERT_EQ(table.columns.size(), 3U) << "a column without a heading is for the screen";
    EXPECT_EQ(table.columns[0].head, QStringLiteral("Piece"));
    EXPECT_EQ(table.columns[1].align, Align::right);
    EXPECT_EQ(table.columns[2].head, QStringLiteral("Scale"));
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(table.rows[0][1].text, QStringLiteral("812 g"));
    EXPECT_EQ(table.rows[1][0].text, QStringLiteral("<b>08"));
    EXPECT_TRUE(table.rows[1][2].text.isEmpty());
}

TEST(TableSheet, ATreeIsATableUnderEachHeadingWithBoxes) {
    ui::models::WorkModel model;
    ui::models::WorkLine due{.key = QStringLiteral("a"), .work = QStringLiteral("Turn")};
    ui::models::WorkLine done{.key = QStringLiteral("b"),
                              .group = ui::models::WorkGroup::done,
                              .deed = ui::models::WorkDeed::untick,
                              .work = QStringLiteral("Wipe")};
    model.set_lines({due, done});
    const Sheet sheet = table_sheet(model, {.title = QStringLiteral("Day"), .boxes = true});
    ASSERT_EQ(sheet.blocks.size(), 4U);
    EXPECT_EQ(std::get<Heading>(sheet.blocks[0]).level, 2);
    EXPECT_EQ(table_in(sheet, 1).rows[0][0].text, QStringLiteral("\u2610"));
    EXPECT_EQ(table_in(sheet, 1).rows[0][1].text, QStringLiteral("Turn"));
    EXPECT_EQ(table_in(sheet, 3).rows[0][0].text, QStringLiteral("\u2612")) << "ticked already";
}

TEST(TableSheet, AnEmptyListSaysSo) {
    const QStandardItemModel model(0, 2);
    const Sheet sheet = table_sheet(model, {.empty = QStringLiteral("Nothing hangs.")});
    ASSERT_EQ(sheet.blocks.size(), 1U);
    EXPECT_EQ(table_in(sheet, 0).empty, QStringLiteral("Nothing hangs."));
}
