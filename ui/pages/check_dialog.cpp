#include "ui/pages/check_dialog.h"

#include "ui/look/fit.h"
#include "ui/look/pieces.h"
#include "ui/presenters/keeping_words.h"
#include "ui/text/error_words.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::pages {

CheckDialog::CheckDialog(Subject subject, text::Style style, QWidget* parent)
    : QDialog(parent), subject_(std::move(subject)), style_(std::move(style)),
      keeping_(new presenters::BookKeeping(this)) {
    look::named(this, "check_dialog", tr("Check the book"));
    setWindowTitle(tr("Check the book"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(look::paragraph(
        tr("Reads %1 from end to end: pages, indexes, links between entries and the sums of "
           "climate readings. It changes nothing.")
            .arg(QFileInfo(QString::fromStdString(subject_.book)).fileName())));
    busy_ = look::named(new QProgressBar, "check_busy", tr("The book is being read"));
    busy_->setRange(0, 0);
    column->addWidget(busy_);
    banner_ = new look::Banner("check_banner");
    column->addWidget(banner_);
    problems_ = look::named(new QPlainTextEdit, "check_problems", tr("What was found"));
    problems_->setReadOnly(true);
    problems_->setTabChangesFocus(true);
    problems_->hide();
    column->addWidget(problems_, 1);
    column->addStretch(0);
    auto* row = new QHBoxLayout;
    build_buttons(row);
    column->addLayout(row);
    connect(keeping_, &presenters::BookKeeping::check_ended, this, &CheckDialog::show_report);
    connect(keeping_, &presenters::BookKeeping::rebuild_ended, this, &CheckDialog::show_rebuilt);
    look::resize_in_lines(this, 36, 16);
    start();
}

void CheckDialog::build_buttons(QHBoxLayout* row) {
    rebuild_ = look::button("check_rebuild", tr("Make the climate roll-ups a&new"),
                            look::ButtonLook::primary);
    salvage_ = look::button("check_salvage", tr("&Salvage into a new book…"));
    restore_ = look::button("check_restore", tr("&Restore a backup…"), look::ButtonLook::primary);
    close_ = look::button("check_close", tr("&Close"));
    row->addStretch(1);
    for (auto* button : {close_, salvage_, restore_, rebuild_}) {
        row->addWidget(button);
    }
    connect(rebuild_, &QPushButton::clicked, this, &CheckDialog::rebuild);
    connect(salvage_, &QPushButton::clicked, this, [this] { choose(Wish::salvage); });
    connect(restore_, &QPushButton::clicked, this, [this] { choose(Wish::restore); });
    connect(close_, &QPushButton::clicked, this, &CheckDialog::reject);
}

void CheckDialog::begin(const QString& what) {
    for (auto* button : {rebuild_, salvage_, restore_}) {
        button->hide();
    }
    problems_->hide();
    close_->setText(tr("&Cancel"));
    close_->setAccessibleName(tr("Cancel"));
    busy_->show();
    banner_->say(QStringLiteral("note"), what);
}

void CheckDialog::start() {
    begin(tr("The check is under way. A book with years of climate readings takes a while."));
    keeping_->check(subject_.book);
}

void CheckDialog::rebuild() {
    begin(tr("The climate roll-ups are being made anew from the readings."));
    keeping_->rebuild_roll_ups(subject_.book);
}

void CheckDialog::show_rebuilt() {
    const auto& status = *keeping_->rebuilt();
    if (!status) {
        busy_->hide();
        close_->setText(tr("&Close"));
        close_->setAccessibleName(tr("Close"));
        banner_->say(QStringLiteral("stop"), text::error_words(status.error()));
        return;
    }
    Q_EMIT mended();
    start(); // says by itself whether all agrees now
}

void CheckDialog::show_report() {
    busy_->hide();
    close_->setText(tr("&Close"));
    close_->setAccessibleName(tr("Close"));
    const auto& report = *keeping_->report();
    if (!report) {
        banner_->say(QStringLiteral("stop"), text::error_words(report.error()));
        const bool damaged = report.error().code == core::base::ErrorCode::damaged;
        salvage_->setVisible(damaged);
        restore_->setVisible(damaged && subject_.may_restore);
        return;
    }
    const bool sums = report->only_roll_ups();
    const bool damaged = !report->report.sound() && !sums;
    QString words = presenters::check_words(*report, style_);
    if (sums && !subject_.may_write) {
        words += QLatin1Char(' ') +
                 tr("This book is open for reading only: open it for writing to do that.");
    }
    banner_->say(report->report.sound() ? QStringLiteral("done")
                 : sums                 ? QStringLiteral("caution")
                                        : QStringLiteral("stop"),
                 words);
    QStringList found;
    for (const auto& problem : report->report.problems) {
        found << QString::fromStdString(problem);
    }
    problems_->setPlainText(found.join(QLatin1Char('\n')));
    problems_->setVisible(!found.isEmpty());
    rebuild_->setVisible(sums && subject_.may_write);
    salvage_->setVisible(damaged);
    restore_->setVisible(damaged && subject_.may_restore);
    close_->setFocus();
}

void CheckDialog::choose(Wish wish) {
    wish_ = wish;
    accept();
}

void CheckDialog::reject() {
    if (keeping_->is_busy()) {
        keeping_->cancel(); // the end of it is shown; what was is left
        return;
    }
    QDialog::reject();
}

} // namespace ui::pages
