#include "ui/presenters/plan_calendar.h"

#include "ui/presenters/workspace.h"
#include "ui/text/data_name.h"

#include <QUuid>

#include <algorithm>

namespace ui::presenters {

using core::units::Day;

namespace {

QString code_of(const core::model::Batch& batch) {
    return QString::fromStdString(batch.code);
}

QString name_of(const core::model::Batch& batch) {
    const QString name = QString::fromStdString(batch.name.empty() ? batch.product : batch.name);
    return name.isEmpty() ? code_of(batch) : code_of(batch) + QLatin1Char(' ') + name;
}

} // namespace

PlanCalendar::PlanCalendar(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace) {}

void PlanCalendar::load(Day until) {
    days_.clear();
    lines_.clear();
    batches_.clear();
    const auto& book = workspace_.book();
    for (auto& batch : workspace_.rows(book.batches())) {
        batches_.emplace(batch.id, std::move(batch));
    }
    core::services::DeskView view{.now = workspace_.now(),
                                  .zone = workspace_.style().zone,
                                  .horizon_days = std::max(0, until - workspace_.today()),
                                  .forecast_of = DayWork::at_hand(workspace_)};
    if (const auto stages = workspace_.one(core::services::current_stages(book, view))) {
        add_stages(*stages);
    }
    DayWork work(workspace_);
    work.set_horizon(view.horizon_days);
    work.load();
    add_work(work);
}

void PlanCalendar::add_stages(const std::vector<core::model::Stage>& stages) {
    for (const auto& stage : stages) {
        const auto batch = batches_.find(stage.batch);
        if (batch == batches_.end() || stage.end_reason == "skipped") {
            continue;
        }
        const auto& zone = workspace_.style().zone;
        const Day first = stage.started_at ? zone.day_of(*stage.started_at) : stage.planned_start;
        const Day last =
            std::max(first, stage.ended_at ? zone.day_of(*stage.ended_at) : stage.planned_end);
        const QString name = text::data_name(stage.what.name);
        models::DayEntry entry{.title = tr("%1: %2").arg(name_of(batch->second), name),
                               .short_title = code_of(batch->second) + QLatin1Char(' ') + name,
                               .series = static_cast<int>(batch->first.row()),
                               .begins = true,
                               .span = stage.id.row(),
                               .batch = batch->first.row()};
        for (Day day = first; day <= last; day = day + 1) {
            entry.ends = day == last;
            days_[day].push_back(entry);
            entry.begins = false;
        }
        lines_.push_back({.kind = "stage",
                          .key = std::to_string(stage.id.row()),
                          .title = entry.title.toStdString(),
                          .text = text::data_name(stage.what.note).toStdString(),
                          .first = first,
                          .last = last});
    }
}

void PlanCalendar::add_work(const DayWork& work) {
    for (const auto& line : work.lines()) {
        if (line.deed == WorkDeed::stage || line.deed == WorkDeed::untick || !line.due) {
            continue; // a stage's own band says when it begins and ends
        }
        const auto batch = batches_.find(core::model::BatchId::from_row(line.batch));
        // What is late is work of today: it cannot be done on the day it was due.
        const Day day = std::max(*line.due, workspace_.today());
        models::DayEntry entry{
            .title = line.what.isEmpty() ? line.work : tr("%1: %2").arg(line.work, line.what),
            .short_title = batch == batches_.end()
                               ? line.work
                               : code_of(batch->second) + QLatin1Char(' ') + line.work,
            .series = static_cast<int>(line.batch),
            .task = true,
            .batch = line.batch};
        lines_.push_back({.kind = "task",
                          .key = line.key.toStdString(),
                          .title = entry.title.toStdString(),
                          .text = line.where.toStdString(),
                          .first = day,
                          .last = day});
        days_[day].push_back(std::move(entry));
    }
}

const std::vector<models::DayEntry>& PlanCalendar::entries(Day day) const {
    static const std::vector<models::DayEntry> none;
    const auto found = days_.find(day);
    return found == days_.end() ? none : found->second;
}

std::optional<QByteArray> PlanCalendar::file() const {
    const auto text = workspace_.one(core::services::calendar_file(
        lines_, mark_of(workspace_).toStdString(), tr("Saltloft").toStdString(),
        workspace_.style().zone, workspace_.now()));
    return text ? std::optional(QByteArray::fromStdString(*text)) : std::nullopt;
}

QString PlanCalendar::mark_of(Workspace& workspace) {
    constexpr const char* key = "calendar_mark";
    const auto kept = workspace.one(workspace.book().preference(key)).value_or(std::nullopt);
    if (kept && !kept->empty()) {
        return QString::fromStdString(*kept);
    }
    QString made = QUuid::createUuid().toString(QUuid::WithoutBraces).left(13);
    if (workspace.is_read_only()) {
        return QStringLiteral("read-only");
    }
    workspace.perform(core::actions::SetPreference{key, made.toStdString()});
    return made;
}

} // namespace ui::presenters
