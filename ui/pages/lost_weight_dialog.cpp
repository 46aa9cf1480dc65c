#include "ui/pages/lost_weight_dialog.h"

#include "ui/pages/event_dialog.h"
#include "ui/presenters/lost_weight.h"
#include "ui/presenters/workspace.h"
#include "ui/text/quantity_words.h"

#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace ui::pages {

LostWeightDialog::LostWeightDialog(presenters::Workspace& workspace,
                                   const presenters::PieceLine& line, QWidget* parent)
    : EntryDialog(workspace, "lost_weight_dialog",
                  tr("%1: the start weight is lost").arg(QString::fromStdString(line.piece().code)),
                  parent),
      line_(line) {
    const auto& style = workspace.style();
    form()->addRow(look::caption(
        tr("Say when it was hung. What it weighed then is estimated from the pieces hung with it, "
           "or from its own course; enter your own figure if you know better.")));
    day_ = new edits::DayField("lost_day", tr("Hung on"), style, workspace.today());
    day_->set_required(true);
    if (line.hung_at) {
        day_->set_value(style.zone.day_of(*line.hung_at));
    } else if (!line.history.weighings.empty()) {
        day_->set_value(style.zone.day_of(line.history.weighings.front().taken_at) - 1);
    }
    net_ = new edits::MassField("lost_net", tr("Net weight as hung"), style);
    net_->set_required(true);
    add_row(tr("&Hung on"), day_);
    add_row(tr("&Net weight as hung"), net_);
    estimate_ = look::paragraph({});
    estimate_->setObjectName(QStringLiteral("lost_estimate"));
    below()->addWidget(estimate_);
    preview_ = look::paragraph({});
    preview_->setObjectName(QStringLiteral("lost_preview"));
    below()->addWidget(look::section_title(tr("What changes")));
    below()->addWidget(preview_);
    for (const auto& loss : line_.losses) {
        if (loss.reference == core::model::ReferenceWeight::hung) {
            say(QStringLiteral("note"), tr("Its hung weight is in the book: %1. What you keep here "
                                           "takes its place.")
                                            .arg(text::words(loss.start, style)));
        }
    }
    edited();
}

void LostWeightDialog::estimate() {
    const auto day = day_->value();
    if (day == asked_) {
        return;
    }
    asked_ = day;
    words_.clear();
    if (!day) {
        estimate_->setText(tr("Enter the day it was hung."));
        return;
    }
    const auto& style = workspace().style();
    constexpr int noon = 12 * 60; // the hour is not known: the middle of the day
    const auto found =
        presenters::lost_weight(workspace().book(), line_, style.zone.instant_at(*day, noon));
    if (!found) {
        estimate_->setText(tr("It has not been weighed since that day, so nothing can be "
                              "estimated. Weigh it first, or enter what you remember."));
        return;
    }
    const auto& weight = found->weight;
    const QString from = found->siblings > 0
                             ? tr("from %n piece(s) hung with it", nullptr, found->siblings)
                             : tr("from its own course only, with a wide range");
    words_ = tr("Estimated %1 (8 in 10: %2 to %3), %4.")
                 .arg(text::words(weight.best, style), text::words(weight.low, style),
                      text::words(weight.high, style), from);
    estimate_->setText(words_);
    net_->set_value(weight.best);
}

std::optional<core::model::PieceEvent> LostWeightDialog::entered() const {
    const auto day = day_->value();
    const auto net = net_->value();
    if (!day || !net) {
        return {};
    }
    constexpr int noon = 12 * 60;
    auto event =
        presenters::lost_weight_event(line_, workspace().style().zone.instant_at(*day, noon), *net);
    event.note =
        (words_.isEmpty() ? tr("Start weight entered from memory.") : words_).toStdString();
    return event;
}

void LostWeightDialog::edited() {
    if (preview_ == nullptr) {
        return;
    }
    estimate();
    const auto event = entered();
    if (!event) {
        preview_->setText(text::unknown());
        return;
    }
    auto with = line_.history;
    with.events.push_back(*event);
    std::stable_sort(with.events.begin(), with.events.end(),
                     [](const auto& a, const auto& b) { return a.at < b.at; });
    preview_->setText(
        change_words(line_, presenters::line_of(std::move(with), line_.kin), workspace().style()));
}

std::optional<core::actions::Command> LostWeightDialog::command() {
    const auto event = entered();
    if (!event) {
        return {};
    }
    return core::actions::RecordEvent{*event};
}

} // namespace ui::pages
