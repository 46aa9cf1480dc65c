#pragma once

#include "tests/support/temp_folder.h"
#include "ui/pages/page.h"
#include "ui/presenters/workspace.h"

#include <QFont>
#include <QSize>
#include <functional>
#include <gtest/gtest.h>
#include <memory>

namespace saltloft::testing {

/// Walks every page of a window over the invented demonstration book.
class EveryPage : public ::testing::Test {
  protected:
    void SetUp() override;
    void TearDown() override;
    /// Calls `look` with each page of a window of that size and font scale. The texts are those
    /// of the language in force when this is called.
    void visit(QSize size, double font,
               const std::function<void(ui::pages::Page&, const std::string&)>& look);
    /// The same book for another person: language, units.
    void prefer(const ui::presenters::Preferences& preferences);

  private:
    TempFolder folder_;
    std::unique_ptr<ui::presenters::Workspace> workspace_;
    QFont font_;
};

/// Parts that Qt makes inside a combo box, a table or a calendar speak through their owner.
bool is_inside_a_control(const QWidget* widget);

/// Every button shows its whole text.
void expect_whole_buttons(const ui::pages::Page& page, const std::string& id);
/// Every label shows its whole text.
void expect_whole_labels(const ui::pages::Page& page, const std::string& id);
/// The page is no wider than its window.
void expect_no_sideways_scrolling(const ui::pages::Page& page, const std::string& id, double font);

} // namespace saltloft::testing
