#include "ui/presenters/forecasts.h"

#include "ui/presenters/background.h"
#include "ui/presenters/own_lessons.h"

#include <QFutureWatcher>

#include <cmath>

namespace ui::presenters {
namespace {

std::int64_t hour_of(core::units::Instant at) {
    return at.unix_seconds() / 3600;
}

/// Tells one air from another; a collision only shows an hour-old forecast for an hour more.
std::size_t mark_of(const std::vector<core::drying::AirReading>& air) {
    std::size_t mark = air.size();
    for (const auto& reading : air) {
        mark = qHashMulti(mark, reading.at.unix_seconds(), reading.temperature.in_celsius(),
                          reading.humidity.in_percent());
    }
    return mark;
}

} // namespace

namespace {

std::optional<core::units::Instant> last_weighed(const PieceRecord& record) {
    std::optional<core::units::Instant> last;
    for (const auto& weighing : record.history.weighings) {
        if (weighing.stands() && (!last || weighing.taken_at > *last)) {
            last = weighing.taken_at;
        }
    }
    return last;
}

/// A scale that shifted shows only in several pieces weighed in the same round: pieces that were
/// weighed within half a day of a stale one are computed again with it.
void add_company(std::vector<PieceRecord>& stale, std::vector<PieceRecord>& current) {
    const auto when = last_weighed(stale.front());
    if (!when) {
        return;
    }
    std::size_t added = 0;
    for (auto& record : current) {
        const auto other = last_weighed(record);
        if (added < most_company && other && in_one_round(*other, *when)) {
            stale.push_back(std::move(record));
            ++added;
        }
    }
}

} // namespace

bool in_one_round(core::units::Instant one, core::units::Instant other) {
    return std::abs((one - other).in_hours()) <= 12;
}

struct Forecasts::Worker {
    QFutureWatcher<std::vector<core::model::Forecast>> watcher;
};

Forecasts::Forecasts(Compute compute, QObject* parent)
    : QObject(parent), compute_(std::move(compute)), worker_(std::make_unique<Worker>()) {}

Forecasts::~Forecasts() {
    worker_->watcher.disconnect(this);
    worker_->watcher.waitForFinished();
}

const core::model::Forecast* Forecasts::find(core::model::PieceId piece,
                                             std::int64_t revision) const {
    const auto kept = kept_.constFind(piece.row());
    return kept != kept_.constEnd() && kept->revision == revision ? &kept->forecast : nullptr;
}

int Forecasts::learnt_from(core::model::PieceId piece) const {
    const auto kept = kept_.constFind(piece.row());
    // The worker has learnt it by now: this does not wait.
    return kept != kept_.constEnd() && kept->lesson ? kept->lesson->learnt().pieces : 0;
}

bool Forecasts::is_current(const PieceRecord& record, core::units::Instant now) const {
    const auto kept = kept_.constFind(record.history.piece.id.row());
    return kept != kept_.constEnd() && kept->revision == record.history.revision &&
           kept->hour == hour_of(now) && kept->air == mark_of(record.air) &&
           kept->lesson == record.lesson;
}

void Forecasts::ask(std::vector<PieceRecord> records, core::units::Instant now) {
    Asked asked{std::move(records), now};
    if (busy_) {
        waiting_ = std::move(asked);
        return;
    }
    start(std::move(asked));
}

void Forecasts::start(Asked asked) {
    std::vector<PieceRecord> stale;
    std::vector<PieceRecord> current;
    for (auto& record : asked.records) {
        (is_current(record, asked.now) ? current : stale).push_back(std::move(record));
    }
    if (stale.empty()) {
        QMetaObject::invokeMethod(this, &Forecasts::arrived, Qt::QueuedConnection);
        return;
    }
    add_company(stale, current);
    busy_ = true;
    Asked work{std::move(stale), asked.now};
    auto& watcher = worker_->watcher;
    watcher.disconnect(this);
    connect(&watcher, &QFutureWatcherBase::finished, this,
            [this, work] { finish(work, worker_->watcher.result()); });
    watcher.setFuture(
        in_background([compute = compute_, work] { return compute(work.records, work.now); }));
}

void Forecasts::finish(const Asked& asked, std::vector<core::model::Forecast> forecasts) {
    busy_ = false;
    for (std::size_t i = 0; i < asked.records.size() && i < forecasts.size(); ++i) {
        const auto& history = asked.records[i].history;
        kept_.insert(history.piece.id.row(),
                     {history.revision, hour_of(asked.now), mark_of(asked.records[i].air),
                      asked.records[i].lesson, std::move(forecasts[i])});
    }
    if (waiting_) {
        Asked next = std::move(*waiting_);
        waiting_.reset();
        start(std::move(next));
        if (busy_) {
            return;
        }
    }
    Q_EMIT arrived();
}

void Forecasts::wait() {
    while (busy_) {
        worker_->watcher.waitForFinished();
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
}

} // namespace ui::presenters
