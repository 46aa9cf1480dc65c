#include "ui/presenters/day_work.h"

#include "ui/presenters/hanging.h"
#include "ui/presenters/workspace.h"
#include "ui/text/data_name.h"
#include "ui/text/date_words.h"
#include "ui/text/plan_words.h"

#include <QHash>
#include <QStringList>

#include <algorithm>
#include <array>

namespace ui::presenters {

using core::planning::DayTask;

/// Codes and names by row, read once a sheet.
struct DayWork::Names {
    QHash<qint64, QString> pieces;
    QHash<qint64, QString> batches;
    QHash<qint64, QString> chambers;
    QHash<qint64, QString> instruments;
    QHash<qint64, QString> sensors;
    QHash<qint64, QString> packs;
};

namespace {

constexpr qsizetype most_codes = 8; ///< more pieces are counted instead

bool done_elsewhere(const std::string& verb) {
    static constexpr std::array<std::string_view, 5> verbs{"weigh", "weigh_again", "review",
                                                           "calibrate", "eat_first"};
    return std::find(verbs.begin(), verbs.end(), verb) != verbs.end();
}

QString batch_words(const core::model::Batch& batch) {
    const QString code = QString::fromStdString(batch.code);
    const QString name = QString::fromStdString(batch.name.empty() ? batch.product : batch.name);
    return name.isEmpty() ? code : code + QLatin1Char(' ') + name;
}

} // namespace

DayWork::DayWork(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace), sheet_{workspace.today(), {}, {}, {}, {}} {}

core::services::ForecastSource DayWork::at_hand(Workspace& workspace) {
    return [&workspace](const core::services::PieceHistory& history) {
        const auto* found = workspace.forecasts().find(history.piece.id, history.revision);
        return found != nullptr ? std::optional(*found) : std::nullopt;
    };
}

void DayWork::ask_forecasts() {
    std::vector<PieceRecord> records;
    for (const auto& hanging : hanging_lines(workspace_.book())) {
        records.push_back({hanging.line.history, hanging.line.kin, {}});
    }
    workspace_.ask_forecasts(std::move(records));
}

void DayWork::load() {
    const auto& book = workspace_.book();
    lines_.clear();
    auto sheet =
        workspace_.one(core::services::day_sheet(book, {.now = workspace_.now(),
                                                        .zone = workspace_.style().zone,
                                                        .horizon_days = horizon_days_,
                                                        .forecast_of = at_hand(workspace_)}));
    if (!sheet) {
        sheet_ = {workspace_.today(), {}, {}, {}, {}};
        return;
    }
    sheet_ = *std::move(sheet);
    auto names = std::make_shared<Names>();
    for (const auto& piece : workspace_.rows(book.pieces())) {
        names->pieces.insert(piece.id.row(), QString::fromStdString(piece.code));
    }
    for (const auto& batch : workspace_.rows(book.batches())) {
        names->batches.insert(batch.id.row(), batch_words(batch));
    }
    for (const auto& chamber : workspace_.rows(book.chambers())) {
        names->chambers.insert(chamber.id.row(), QString::fromStdString(chamber.name));
    }
    for (const auto& instrument : workspace_.rows(book.instruments())) {
        names->instruments.insert(instrument.id.row(), QString::fromStdString(instrument.name));
    }
    for (const auto& sensor : workspace_.rows(book.sensors())) {
        names->sensors.insert(sensor.id.row(), QString::fromStdString(sensor.name));
    }
    for (const auto& pack : workspace_.rows(book.packs())) {
        names->packs.insert(pack.id.row(), QString::fromStdString(pack.code));
    }
    names_ = std::move(names);
    for (const auto& task : sheet_.overdue) {
        write(task, WorkGroup::overdue);
    }
    for (const auto& task : sheet_.due) {
        write(task, WorkGroup::due);
    }
    for (const auto& task : sheet_.coming) {
        write(task, WorkGroup::coming);
    }
    for (const auto& task : sheet_.done) {
        write(task, WorkGroup::done);
    }
}

QString DayWork::what_of(const DayTask& task) const {
    QStringList parts;
    if (task.batch) {
        parts << names_->batches.value(task.batch->row());
    }
    if (task.instrument) {
        parts << names_->instruments.value(task.instrument->row());
    }
    if (task.sensor) {
        parts << names_->sensors.value(task.sensor->row());
    }
    if (!task.packs.empty()) {
        QStringList codes;
        for (const auto& pack : task.packs) {
            codes << names_->packs.value(pack.row());
        }
        parts << (codes.size() <= most_codes
                      ? codes.join(QLatin1Char(' '))
                      : tr("%n pack(s)", nullptr, static_cast<int>(codes.size())));
    }
    const auto count = static_cast<qsizetype>(task.pieces.size());
    // One look at a chamber needs no list of what hangs in it.
    if (count > 0 && task.verb != "check") {
        QStringList codes;
        for (const auto& piece : task.pieces) {
            codes << names_->pieces.value(piece.row());
        }
        parts << (count <= most_codes ? codes.join(QLatin1Char(' '))
                                      : tr("%n piece(s)", nullptr, static_cast<int>(count)));
    }
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

QString DayWork::when_of(const DayTask& task, WorkGroup group) const {
    switch (group) {
    case WorkGroup::overdue: {
        const QString late = tr("%n day(s) late", nullptr, task.days_overdue);
        //: %1 how late, %n how often it was not done
        return task.missed > 0 ? tr("%1, %n time(s) missed", nullptr, task.missed).arg(late) : late;
    }
    case WorkGroup::due:
        return tr("today");
    case WorkGroup::coming:
        return text::short_words(task.due, workspace_.style());
    case WorkGroup::done:
        return tr("done");
    }
    return {};
}

void DayWork::write_target(const DayTask& task, WorkLine& line) const {
    const bool one = task.pieces.size() == 1;
    if (task.verb == "weigh" || task.verb == "weigh_again") {
        line.page = QStringLiteral("weigh_in");
        line.row = task.chamber ? task.chamber->row() : 0;
        line.hint = tr("Opens the weigh-in. The line goes when the weight is in the book.");
    } else if (task.verb == "review") {
        line.page = QStringLiteral("review");
        line.row = one ? task.pieces.front().row() : 0;
        line.hint = tr("Opens the evidence for this piece.");
    } else if (task.verb == "eat_first") {
        line.page = QStringLiteral("stock");
        line.row = task.packs.empty() ? 0 : task.packs.front().row();
        line.hint = tr("Opens the stock. The line goes when the packs are gone.");
    } else if (task.verb == "calibrate") {
        line.page = QStringLiteral("instruments");
        line.row = task.instrument ? task.instrument->row() : 0;
        line.hint = tr("Opens the instruments. The line goes when a check is entered.");
    }
}

void DayWork::write(const DayTask& task, WorkGroup group) {
    WorkLine line{.key = QString::fromStdString(task.key),
                  .group = group,
                  .work = group == WorkGroup::done ? text::task_done_words(task.verb)
                                                   : text::task_words(task.verb),
                  .what = what_of(task),
                  .where = task.chamber ? names_->chambers.value(task.chamber->row()) : QString(),
                  .when = when_of(task, group),
                  .due = task.due,
                  .batch = task.batch ? task.batch->row() : 0};
    if (task.verb == "start_stage" || task.verb == "end_stage") {
        line.work += QStringLiteral(": ") + text::data_name(task.stage_name);
        line.deed = WorkDeed::stage;
        line.hint =
            task.verb == "start_stage" ? tr("Begins the stage now.") : tr("Ends the stage now.");
    } else if (group == WorkGroup::done) {
        line.deed = WorkDeed::untick;
        line.hint = tr("Takes the tick back.");
    } else if (done_elsewhere(task.verb)) {
        line.deed = WorkDeed::open;
        write_target(task, line);
    } else {
        line.hint = tr("Ticks it off as done.");
    }
    lines_.push_back(std::move(line));
}

int DayWork::count(WorkGroup group) const {
    return static_cast<int>(std::count_if(
        lines_.begin(), lines_.end(), [&](const WorkLine& line) { return line.group == group; }));
}

QString DayWork::headline() const {
    QStringList parts;
    if (const int late = count(WorkGroup::overdue); late > 0) {
        parts << tr("%1 overdue").arg(late);
    }
    parts << tr("%1 for today").arg(count(WorkGroup::due));
    if (const int done = count(WorkGroup::done); done > 0) {
        parts << tr("%1 done").arg(done);
    }
    return parts.join(QStringLiteral(", "));
}

const DayTask* DayWork::task(const QString& key) const {
    const std::string wanted = key.toStdString();
    for (const auto* list : {&sheet_.overdue, &sheet_.due, &sheet_.coming, &sheet_.done}) {
        for (const auto& task : *list) {
            if (task.key == wanted) {
                return &task;
            }
        }
    }
    return nullptr;
}

bool DayWork::tick(const DayTask& task) {
    core::model::TaskTick tick{.key = task.key, .at = workspace_.now(), .by = workspace_.who()};
    tick.due = task.due;
    tick.batch = task.batch;
    if (task.pieces.size() == 1) {
        tick.piece = task.pieces.front();
    }
    return workspace_.perform(core::actions::TickTask{std::move(tick)}).has_value();
}

bool DayWork::do_line(const QString& key) {
    const auto line =
        std::find_if(lines_.begin(), lines_.end(), [&](const WorkLine& l) { return l.key == key; });
    const DayTask* found = task(key);
    if (line == lines_.end() || found == nullptr) {
        return false;
    }
    const DayTask task = *found; // perform() announces a change, which reloads the sheet
    switch (line->deed) {
    case WorkDeed::tick:
        return tick(task);
    case WorkDeed::untick:
        return task.tick && workspace_.perform(core::actions::UntickTask{*task.tick}).has_value();
    case WorkDeed::stage:
        if (!task.stage) {
            return false;
        }
        return task.verb == "start_stage"
                   ? workspace_
                         .perform(
                             core::actions::StartStage{*task.stage, workspace_.now(), task.chamber})
                         .has_value()
                   : workspace_
                         .perform(
                             core::actions::EndStage{*task.stage, workspace_.now(), "day_sheet"})
                         .has_value();
    case WorkDeed::open:
        return false;
    }
    return false;
}

bool DayWork::leave_out(const QString& key) {
    const DayTask* found = task(key);
    if (found == nullptr || found->tick) {
        return false;
    }
    const DayTask task = *found;
    return tick(task);
}

} // namespace ui::presenters
