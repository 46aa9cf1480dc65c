// Walks the widgets of every page over the invented demonstration book: names for assistive
// technology, and nothing cut off in a small window or with a doubled font.
#include "core/services/demo_book.h"
#include "tests/support/temp_folder.h"
#include "ui/look/theme.h"
#include "ui/pages/main_window.h"
#include "ui/pages/page_registry.h"
#include "ui/presenters/workspace.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAccessible>
#include <QApplication>
#include <QLabel>
#include <QScrollArea>
#include <QTest>
#include <gtest/gtest.h>
#include <set>

using namespace ui::pages;

namespace {

const core::units::Instant story_end = core::units::Instant::from_unix_seconds(1794646800);

class EveryPage : public ::testing::Test {
  protected:
    void SetUp() override {
        font_ = QApplication::font();
        auto book = core::services::Book::create(folder_.file("demo.saltloft"), {story_end});
        ASSERT_TRUE(book.has_value());
        ASSERT_TRUE(core::services::fill_demo_book(*book, {story_end}).has_value());
        workspace_ = std::make_unique<ui::presenters::Workspace>(
            std::move(*book), ui::presenters::Preferences{}, QLocale(QStringLiteral("en-GB")),
            [] { return story_end; });
    }
    void TearDown() override { QApplication::setFont(font_); }
    /// Calls `look` with each page of a window of that size.
    void visit(QSize size, double font,
               const std::function<void(Page&, const std::string&)>& look) {
        QFont scaled = font_;
        scaled.setPointSizeF(font_.pointSizeF() * font);
        QApplication::setFont(scaled);
        ui::look::apply_theme(*qApp, ui::look::Mode::light);
        MainWindow window(*workspace_);
        window.resize(size);
        window.show();
        core::services::PieceFilter drying;
        drying.states = {core::model::PieceState::drying};
        const auto row = workspace_->book().pieces(drying)->front().id.row();
        for (const auto& entry : all_pages()) {
            window.show_place(
                {QString::fromLatin1(entry.id), entry.side == Side::inner ? row : 0, {}});
            workspace_->forecasts().wait();
            QTest::qWait(30);
            look(*window.page(), entry.id);
        }
    }
    saltloft::testing::TempFolder folder_;
    std::unique_ptr<ui::presenters::Workspace> workspace_;
    QFont font_;
};

bool is_inside_a_control(const QWidget* widget) {
    // Parts that Qt makes inside a combo box, a table or a calendar speak through their owner.
    for (const QWidget* up = widget->parentWidget(); up != nullptr; up = up->parentWidget()) {
        const QByteArray name = up->metaObject()->className();
        if (name == "QComboBox" || up->inherits("QComboBox") || up->inherits("QCalendarWidget") ||
            name == "QComboBoxPrivateContainer" || up->inherits("QAbstractItemView") ||
            up->inherits("QTabBar")) {
            return true;
        }
    }
    return widget->objectName().startsWith(QLatin1String("qt_"));
}

} // namespace

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
        for (const auto* button : page.findChildren<QAbstractButton*>()) {
            if (!button->isVisible() || button->text().isEmpty() || is_inside_a_control(button)) {
                continue;
            }
            EXPECT_GE(button->width() + 1, button->minimumSizeHint().width())
                << id << ": " << button->text().toStdString();
        }
    });
}

TEST_F(EveryPage, NoPageScrollsSidewaysInASmallWindow) {
    for (const double font : {1.0, 2.0}) {
        visit({1024, 640}, font, [&](Page& page, const std::string& id) {
            EXPECT_LE(page.width(), 1024) << id;
            if (const auto* scroll = page.findChild<QScrollArea*>(QStringLiteral("page_scroll"))) {
                EXPECT_LE(scroll->widget()->minimumSizeHint().width(), scroll->viewport()->width())
                    << id << " at font x " << font;
            }
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
