// Walks the widgets of every page over the invented demonstration book: names for assistive
// technology, and nothing cut off in a small window or with a doubled font.
#include "tests/journeys/support/every_page.h"

#include <QAccessible>
#include <QWidget>
#include <gtest/gtest.h>
#include <set>

using saltloft::testing::EveryPage;
using saltloft::testing::is_inside_a_control;
using ui::pages::Page;

TEST_F(EveryPage, WhatCanBeReachedHasANameForTestsAndForReaders) {
    visit({1180, 760}, 1, [](Page& page, const std::string& id) {
        int reached = 0;
        for (const auto* widget : page.findChildren<QWidget*>()) {
            if (widget->focusPolicy() == Qt::NoFocus || is_inside_a_control(widget) ||
                widget->inherits("QTabBar")) {
                continue;
            }
            ++reached;
            const std::string what = id + ": " + widget->metaObject()->className() + " '" +
                                     widget->objectName().toStdString() + "'";
            EXPECT_FALSE(widget->objectName().isEmpty()) << what;
            auto* face = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(widget));
            ASSERT_NE(face, nullptr) << what;
            EXPECT_FALSE(face->text(QAccessible::Name).isEmpty()) << what;
        }
        EXPECT_FALSE(page.accessibleName().isEmpty()) << id;
        if (id != "cautions") {
            EXPECT_GT(reached, 0) << id;
        }
    });
}

TEST_F(EveryPage, NamesOfReachableWidgetsAreNotShared) {
    visit({1180, 760}, 1, [](Page& page, const std::string& id) {
        std::set<QString> seen;
        for (const auto* widget : page.findChildren<QWidget*>()) {
            if (widget->focusPolicy() == Qt::NoFocus || is_inside_a_control(widget)) {
                continue;
            }
            EXPECT_TRUE(seen.insert(widget->objectName()).second)
                << id << ": two widgets are called " << widget->objectName().toStdString();
        }
    });
}

TEST_F(EveryPage, NoButtonIsCutOffInASmallWindowWithADoubledFont) {
    visit({1024, 640}, 2, [](Page& page, const std::string& id) {
        saltloft::testing::expect_whole_buttons(page, id);
    });
}

TEST_F(EveryPage, NoPageScrollsSidewaysInASmallWindow) {
    for (const double font : {1.0, 2.0}) {
        visit({1024, 640}, font, [&](Page& page, const std::string& id) {
            saltloft::testing::expect_no_sideways_scrolling(page, id, font);
        });
    }
}

TEST_F(EveryPage, TabGoesThroughThePageAndComesBack) {
    visit({1180, 760}, 1, [](Page& page, const std::string& id) {
        auto* first = page.nextInFocusChain();
        int steps = 0;
        for (auto* at = first; at != nullptr && steps < 2000; at = at->nextInFocusChain()) {
            if (++steps > 1 && at == first) {
                break;
            }
        }
        EXPECT_LT(steps, 2000) << id << ": the focus chain does not close";
    });
}
