#include "ui/pages/open_trouble_dialog.h"

#include "ui/look/pieces.h"
#include "ui/text/error_words.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

using core::base::ErrorCode;

struct WayWords {
    const char* name;
    QString button;
    QString what;
};

WayWords words_of(WayOut way) {
    switch (way) {
    case WayOut::restore:
        return {"trouble_restore", OpenTroubleDialog::tr("&Restore a backup…"),
                OpenTroubleDialog::tr("Puts an earlier copy in its place; the file as it is now is "
                                      "kept under another name.")};
    case WayOut::salvage:
        return {"trouble_salvage", OpenTroubleDialog::tr("&Salvage into a new book…"),
                OpenTroubleDialog::tr("Carries every entry that can still be read into a new book; "
                                      "this one is not changed.")};
    case WayOut::open_another:
        return {"trouble_open", OpenTroubleDialog::tr("&Open another book…"),
                OpenTroubleDialog::tr("Leaves this file as it is.")};
    case WayOut::make_new:
        break;
    }
    return {"trouble_new", OpenTroubleDialog::tr("Make a &new book…"),
            OpenTroubleDialog::tr("Starts an empty book in another file.")};
}

} // namespace

std::vector<WayOut> ways_out(const core::base::Error& error, bool has_backups, bool has_window) {
    std::vector<WayOut> ways;
    const bool is_broken = error.code == ErrorCode::damaged || error.code == ErrorCode::io_failure;
    const bool is_other = error.code == ErrorCode::not_a_book ||
                          error.code == ErrorCode::newer_book || error.code == ErrorCode::not_found;
    if (is_broken || (is_other && has_backups)) {
        ways.push_back(WayOut::restore);
    }
    if (is_broken) {
        ways.push_back(WayOut::salvage);
    }
    if (!has_window) {
        ways.push_back(WayOut::open_another);
        ways.push_back(WayOut::make_new);
    }
    return ways;
}

OpenTroubleDialog::OpenTroubleDialog(const core::base::Error& error,
                                     const std::vector<WayOut>& ways, QWidget* parent)
    : QDialog(parent) {
    look::named(this, "trouble_dialog", tr("The book did not open"));
    setWindowTitle(tr("The book did not open"));
    auto* column = new QVBoxLayout(this);
    auto* banner = new look::Banner("trouble_banner");
    banner->say(QStringLiteral("stop"), text::error_words(error));
    column->addWidget(banner);
    for (const WayOut way : ways) {
        const WayWords words = words_of(way);
        auto* button = look::button(words.name, words.button,
                                    way == ways.front() ? look::ButtonLook::primary
                                                        : look::ButtonLook::ordinary);
        button->setAccessibleDescription(words.what);
        column->addWidget(button);
        column->addWidget(look::caption(words.what));
        connect(button, &QPushButton::clicked, this, [this, way] {
            way_ = way;
            accept();
        });
    }
    column->addStretch(1);
    auto* close = look::button("trouble_close", tr("&Close"));
    column->addWidget(close, 0, Qt::AlignRight);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    resize(look::lines(this, 26), sizeHint().height());
}

} // namespace ui::pages
