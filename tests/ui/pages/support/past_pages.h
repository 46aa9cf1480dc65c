#pragma once

#include "tests/support/ui/past_book.h"
#include "ui/pages/page_registry.h"

#include <QTest>

#include <memory>

namespace saltloft::testing {

/// A page of the window over a book with a past.
class PastPages : public PastBook {
  protected:
    ui::pages::Page* show(const char* id, const ui::pages::Place& place = {},
                          QSize size = {1000, 760}) {
        for (const auto& entry : ui::pages::all_pages()) {
            if (QLatin1String(entry.id) == QLatin1String(id)) {
                page.reset(entry.make(*workspace, nullptr));
            }
        }
        page->resize(size);
        page->show();
        page->arrive(place);
        page->refresh();
        QObject::connect(workspace.get(), &ui::presenters::Workspace::changed, page.get(),
                         [this] { page->refresh(); });
        EXPECT_TRUE(QTest::qWaitForWindowExposed(page.get()));
        return page.get();
    }
    template <class W>
    W* find(const char* name) {
        auto* widget = page->findChild<W*>(QLatin1String(name));
        EXPECT_NE(widget, nullptr) << name;
        return widget;
    }

    std::unique_ptr<ui::pages::Page> page;
};

} // namespace saltloft::testing
