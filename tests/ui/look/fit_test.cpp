#include "ui/look/fit.h"

#include "ui/look/pieces.h"

#include <QApplication>
#include <QDialog>
#include <QScreen>
#include <gtest/gtest.h>

TEST(Fit, AWindowIsAsLargeAsAskedForButNotLargerThanItsScreen) {
    const QSize screen = QApplication::primaryScreen()->availableSize();
    QDialog small;
    ui::look::resize_in_lines(&small, 10, 5);
    EXPECT_EQ(small.size(), QSize(ui::look::lines(&small, 10), ui::look::lines(&small, 5)));
    QDialog large;
    ui::look::resize_in_lines(&large, 500, 500);
    EXPECT_LT(large.width(), screen.width());
    EXPECT_LT(large.height(), screen.height());
    EXPECT_GT(large.width(), screen.width() * 3 / 4);
    // On a second form of a window: the window's screen counts.
    QDialog over(&large);
    ui::look::resize_in_lines(&over, 500, 5);
    EXPECT_LT(over.width(), screen.width());
    EXPECT_EQ(over.height(), ui::look::lines(&over, 5));
}
