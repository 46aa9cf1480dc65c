#include "tests/journeys/support/window_driver.h"

#include "ui/look/theme.h"

namespace saltloft::testing {

WindowDriver::WindowDriver() {
    ui::look::apply_theme(*qApp, ui::look::Mode::light);
    auto book = core::services::Book::create(folder_.file("journey.saltloft"), {now});
    if (!book) {
        ADD_FAILURE() << "no book";
        std::abort();
    }
    ui::presenters::Preferences preferences;
    preferences.time_zone = QStringLiteral("UTC");
    preferences.language = QStringLiteral("en-GB");
    workspace_ = std::make_unique<ui::presenters::Workspace>(
        std::move(*book), preferences, QLocale(QStringLiteral("en-GB")), [this] { return now; });
    QObject::connect(workspace_.get(), &ui::presenters::Workspace::problem,
                     [](const QString& sentence) { ADD_FAILURE() << sentence.toStdString(); });
    window_ = std::make_unique<ui::pages::MainWindow>(*workspace_);
    window_->resize(1180, 760);
    window_->show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
    window_->activateWindow();
    if (!QTest::qWaitForWindowActive(window_.get(), 500)) {
        QApplication::setActiveWindow(window_.get()); // a bare X server has nobody who would
    }
}

void WindowDriver::click(const char* button, QWidget* root) {
    auto* found = find<QAbstractButton>(button, root);
    if (found == nullptr) {
        return;
    }
    EXPECT_TRUE(found->isEnabled()) << button << " is grey";
    QTest::mouseClick(found, Qt::LeftButton);
}

void WindowDriver::type(const char* field, const char* text, QWidget* root) {
    QWidget* under = root != nullptr ? root : window_->page();
    auto* line = under->findChild<QLineEdit*>(QString::fromLatin1(field) + QStringLiteral("_line"));
    if (line == nullptr) {
        line = under->findChild<QLineEdit*>(QString::fromLatin1(field));
    }
    ASSERT_NE(line, nullptr) << field;
    line->setFocus();
    QTest::keyClick(line, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClick(line, Qt::Key_Delete);
    QTest::keyClicks(line, QString::fromUtf8(text));
}

void WindowDriver::choose(const char* box, int index, QWidget* root) {
    auto* found = find<QComboBox>(box, root);
    ASSERT_NE(found, nullptr);
    ASSERT_LT(index, found->count()) << box;
    found->setFocus();
    QTest::keyClick(found, Qt::Key_Home);
    for (int i = 0; i < index; ++i) {
        QTest::keyClick(found, Qt::Key_Down);
    }
    EXPECT_EQ(found->currentIndex(), index) << box;
}

void WindowDriver::in_dialog(const std::function<void()>& open,
                             const std::function<void(QDialog&)>& fill) {
    bool opened = false;
    QTimer when_open; // dies with this call: a dialog that never opened leaves nothing behind
    when_open.setSingleShot(true);
    QObject::connect(&when_open, &QTimer::timeout, [&] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        opened = true;
        fill(*dialog);
        if (dialog->isVisible()) {
            for (auto* label : dialog->findChildren<QLabel*>()) {
                if (label->isVisible()) {
                    ADD_FAILURE() << "left open: " << label->text().toStdString();
                }
            }
            dialog->reject();
        }
    });
    when_open.start(0);
    open();
    EXPECT_TRUE(opened);
}

void WindowDriver::go(const char* page, qint64 row) {
    window_->show_place({QString::fromLatin1(page), row, {}});
    settle();
}

void WindowDriver::settle() {
    QCoreApplication::processEvents();
    workspace_->forecasts().wait();
    QCoreApplication::processEvents();
}

} // namespace saltloft::testing
