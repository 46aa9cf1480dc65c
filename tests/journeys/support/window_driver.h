#pragma once

#include "core/services/book.h"
#include "tests/support/temp_folder.h"
#include "ui/pages/main_window.h"
#include "ui/presenters/workspace.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <QTimer>
#include <functional>
#include <gtest/gtest.h>
#include <memory>

namespace saltloft::testing {

/// A real window over a fresh book, driven by mouse and keys only. The clock is the test's.
class WindowDriver {
  public:
    WindowDriver();
    core::units::Instant now = core::units::Instant::from_unix_seconds(1772352000); // 1 Mar 2026
    void pass_days(double days) { now = now + core::units::Duration::days(days); }

    ui::presenters::Workspace& workspace() { return *workspace_; }
    ui::pages::MainWindow& window() { return *window_; }
    const core::services::Book& book() { return workspace_->book(); }

    /// A widget of the shown page (or of `root`) by name; fails the test when it is not there.
    template <class W>
    W* find(const char* name, QWidget* root = nullptr) {
        auto* found = (root != nullptr ? root : static_cast<QWidget*>(window_->page()))
                          ->findChild<W*>(QString::fromLatin1(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    void click(const char* button, QWidget* root = nullptr);
    /// Replaces the text of a field (object name of the field; its line is NAME_line) by keys.
    void type(const char* field, const char* text, QWidget* root = nullptr);
    void choose(const char* box, int index, QWidget* root = nullptr);
    /// Runs `open`, which opens a dialog, and fills it with `fill`; then it must have closed.
    void in_dialog(const std::function<void()>& open, const std::function<void(QDialog&)>& fill);
    void keep(QDialog& dialog) { click("dialog_keep", &dialog); }
    void go(const char* page, qint64 row = 0);
    void settle(); ///< waits for forecasts and repaints

  private:
    TempFolder folder_;
    std::unique_ptr<ui::presenters::Workspace> workspace_;
    std::unique_ptr<ui::pages::MainWindow> window_;
};

} // namespace saltloft::testing
