#include "ui/pages/event_dialog.h"

#include "ui/pages/piece_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

using core::model::EventKind;

bool changes_tare(EventKind kind) {
    return kind == EventKind::dressed || kind == EventKind::re_dressed || kind == EventKind::hung;
}

/// Something was taken off or put on: the net weight jumps and everything is rebased.
bool changes_net(EventKind kind) {
    return kind == EventKind::trimmed || kind == EventKind::sampled || kind == EventKind::coated ||
           kind == EventKind::pressed || kind == EventKind::washed;
}

bool rebases(EventKind kind) {
    return kind == EventKind::trimmed || kind == EventKind::sampled;
}

} // namespace

const std::vector<EventKind>& EventDialog::kinds() {
    static const std::vector<EventKind> all = {
        EventKind::hung,    EventKind::dressed, EventKind::re_dressed, EventKind::coated,
        EventKind::trimmed, EventKind::sampled, EventKind::pressed,    EventKind::washed,
        EventKind::moved,   EventKind::frozen,  EventKind::thawed};
    return all;
}

QString EventDialog::hint(EventKind kind) {
    switch (kind) {
    case EventKind::hung:
        return tr("Drying starts. The net weight now is the hung weight that losses count from.");
    case EventKind::dressed:
        return tr("A casing or net was put on. Its weight is tare from now on.");
    case EventKind::re_dressed:
        return tr("Casing or net was changed. The net weight stays; only the tare changes.");
    case EventKind::coated:
        return tr("Lard, paste or pepper was put on. The added weight is not meat.");
    case EventKind::trimmed:
        return tr("Something was cut off. Start and target shrink in proportion.");
    case EventKind::sampled:
        return tr("A wedge was taken to taste. Start and target shrink in proportion.");
    case EventKind::pressed:
        return tr("The piece was pressed. Water pressed out counts as loss.");
    case EventKind::washed:
        return tr("The piece was washed or soaked. The next weighing may be wet.");
    case EventKind::moved:
        return tr("The piece hangs elsewhere now.");
    case EventKind::frozen:
        return tr("The piece was frozen. The cure clock stops.");
    case EventKind::thawed:
        return tr("The piece is thawed. The cure clock runs again.");
    case EventKind::split:
    case EventKind::merged:
        break;
    }
    return {};
}

QString change_words(const presenters::PieceLine& before, const presenters::PieceLine& after,
                     const text::Style& style) {
    const auto pair = [&](const std::optional<core::units::Mass>& from,
                          const std::optional<core::units::Mass>& to) {
        return EventDialog::tr("%1 → %2").arg(text::words_or_unknown(from, style),
                                              text::words_or_unknown(to, style));
    };
    QStringList parts;
    if (before.towards_target && after.towards_target) {
        parts << EventDialog::tr("%1: %2").arg(
            text::words(after.towards_target->reference),
            pair(before.towards_target->start, after.towards_target->start));
    }
    if (before.target_net || after.target_net) {
        parts << EventDialog::tr("target net: %1").arg(pair(before.target_net, after.target_net));
        parts << EventDialog::tr("target on the scale: %1")
                     .arg(pair(before.target_on_scale(), after.target_on_scale()));
    }
    if (before.tare != after.tare) {
        parts << EventDialog::tr("tare: %1").arg(pair(before.tare, after.tare));
    }
    return parts.isEmpty() ? EventDialog::tr("No number changes.") : parts.join(QLatin1Char('\n'));
}

EventDialog::EventDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                         EventKind kind, QWidget* parent)
    : EntryDialog(workspace, "event_dialog",
                  tr("%1: %2").arg(QString::fromStdString(line.piece().code), text::words(kind)),
                  parent),
      line_(line), kind_(kind) {
    build();
    EventDialog::edited();
}

void EventDialog::build() {
    const auto& style = workspace().style();
    form()->addRow(look::caption(hint(kind_)));
    day_ = new edits::DayField("event_day", tr("Day"), style, workspace().today());
    day_->set_required(true);
    day_->set_value(workspace().today());
    clock_ = new edits::ClockField("event_clock", tr("Time"), style);
    clock_->set_required(true);
    clock_->set_value(style.zone.minute_of_day(workspace().now()));
    add_row(tr("&Day"), day_);
    add_row(tr("Ti&me"), clock_);
    if (changes_net(kind_)) {
        net_before_ = new edits::MassField("event_net_before", tr("Net weight before"), style);
        net_before_->set_value(line_.net);
        net_after_ = new edits::MassField("event_net_after", tr("Net weight after"), style);
        net_after_->set_required(rebases(kind_) || kind_ == EventKind::coated);
        add_row(tr("Net weight &before"), net_before_);
        add_row(tr("Net weight &after"), net_after_);
    }
    if (kind_ == EventKind::hung) {
        net_after_ = new edits::MassField("event_net_after", tr("Net weight as hung"), style);
        net_after_->set_value(line_.net);
        net_after_->set_required(true);
        add_row(tr("&Net weight as hung"), net_after_);
    }
    if (changes_tare(kind_)) {
        tare_after_ = new edits::MassField("event_tare", tr("Tare from now on"), style);
        tare_after_->set_required(kind_ != EventKind::hung);
        tare_after_->set_value(kind_ == EventKind::hung ? std::optional(line_.tare) : std::nullopt);
        add_row(tr("&Tare from now on"), tare_after_);
    }
    if (rebases(kind_)) {
        start_ = new edits::MassField("event_start", tr("New start weight"), style);
        start_->set_placeholder(tr("in proportion"));
        add_row(tr("New &start, if not in proportion"), start_);
    }
    if (kind_ == EventKind::moved || kind_ == EventKind::hung) {
        chamber_ = chamber_box(workspace(), "event_chamber", line_.piece().chamber);
        add_row(tr("&Chamber"), chamber_);
    }
    note_ = look::named(new QLineEdit, "event_note", tr("Note"));
    add_row(tr("N&ote"), note_);
    preview_ = look::paragraph({});
    preview_->setObjectName(QStringLiteral("event_preview"));
    below()->addWidget(look::section_title(tr("What changes")));
    below()->addWidget(preview_);
}

std::optional<core::model::PieceEvent> EventDialog::entered() const {
    const auto day = day_->value();
    const auto minute = clock_->value();
    if (!day || !minute) {
        return {};
    }
    const auto& zone = workspace().style().zone;
    core::model::PieceEvent event{
        .piece = line_.piece().id, .kind = kind_, .at = zone.instant_at(*day, *minute)};
    // The current minute means now, so that the event does not fall before a weighing just made.
    if (*day == workspace().today() && *minute == zone.minute_of_day(workspace().now())) {
        event.at = workspace().now();
    }
    const auto take = [](const edits::MassField* field) {
        return field == nullptr ? std::nullopt : field->value();
    };
    event.net_before = take(net_before_);
    event.net_after = take(net_after_);
    event.tare_after = take(tare_after_);
    event.start_override = take(start_);
    if (chamber_ != nullptr) {
        event.chamber = chosen_chamber(chamber_);
    }
    event.note = note_->text().trimmed().toStdString();
    return event;
}

void EventDialog::edited() {
    if (preview_ == nullptr) {
        return;
    }
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

std::optional<core::actions::Command> EventDialog::command() {
    const auto event = entered();
    if (!event) {
        return {};
    }
    return core::actions::RecordEvent{*event};
}

} // namespace ui::pages
