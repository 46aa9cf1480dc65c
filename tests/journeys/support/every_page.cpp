#include "tests/journeys/support/every_page.h"

#include "core/services/demo_book.h"
#include "ui/look/theme.h"
#include "ui/pages/main_window.h"
#include "ui/pages/page_registry.h"

#include <QAbstractButton>
#include <QApplication>
#include <QLabel>
#include <QScrollArea>
#include <QTest>

namespace saltloft::testing {
namespace {

const auto story_end = core::units::Instant::from_unix_seconds(1794646800);

} // namespace

void EveryPage::SetUp() {
    font_ = QApplication::font();
    auto book = core::services::Book::create(folder_.file("demo.saltloft"), {story_end});
    ASSERT_TRUE(book.has_value());
    ASSERT_TRUE(core::services::fill_demo_book(*book, {story_end}).has_value());
    workspace_ = std::make_unique<ui::presenters::Workspace>(
        std::move(*book), ui::presenters::Preferences{}, QLocale(QStringLiteral("en-GB")),
        [] { return story_end; });
}

void EveryPage::TearDown() {
    QApplication::setFont(font_);
}

void EveryPage::prefer(const ui::presenters::Preferences& preferences) {
    workspace_->set_preferences(preferences);
}

void EveryPage::visit(QSize size, double font,
                      const std::function<void(ui::pages::Page&, const std::string&)>& look) {
    QFont scaled = font_;
    scaled.setPointSizeF(font_.pointSizeF() * font);
    QApplication::setFont(scaled);
    ui::look::apply_theme(*qApp, ui::look::Mode::light);
    ui::pages::MainWindow window(*workspace_);
    window.resize(size);
    window.show();
    core::services::PieceFilter drying;
    drying.states = {core::model::PieceState::drying};
    const auto row = workspace_->book().pieces(drying)->front().id.row();
    for (const auto& entry : ui::pages::all_pages()) {
        const bool inner = entry.side == ui::pages::Side::inner;
        window.show_place({QString::fromLatin1(entry.id), inner ? row : 0, {}});
        workspace_->forecasts().wait();
        QTest::qWait(30);
        look(*window.page(), entry.id);
    }
}

bool is_inside_a_control(const QWidget* widget) {
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

void expect_whole_buttons(const ui::pages::Page& page, const std::string& id) {
    for (const auto* button : page.findChildren<QAbstractButton*>()) {
        if (!button->isVisible() || button->text().isEmpty() || is_inside_a_control(button)) {
            continue;
        }
        EXPECT_GE(button->width() + 1, button->minimumSizeHint().width())
            << id << ": " << button->text().toStdString();
    }
}

void expect_whole_labels(const ui::pages::Page& page, const std::string& id) {
    for (const auto* label : page.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty() || is_inside_a_control(label)) {
            continue;
        }
        if (label->wordWrap()) {
            EXPECT_GE(label->height() + 1, label->heightForWidth(label->width()))
                << id << ": " << label->text().toStdString();
        } else {
            EXPECT_GE(label->width() + 1, label->minimumSizeHint().width())
                << id << ": " << label->text().toStdString();
        }
    }
}

void expect_no_sideways_scrolling(const ui::pages::Page& page, const std::string& id, double font) {
    EXPECT_LE(page.width(), 1024) << id;
    if (const auto* scroll = page.findChild<QScrollArea*>(QStringLiteral("page_scroll"))) {
        EXPECT_LE(scroll->widget()->minimumSizeHint().width(), scroll->viewport()->width())
            << id << " at font x " << font;
    }
}

} // namespace saltloft::testing
