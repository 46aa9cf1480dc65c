#include "ui/presenters/chamber_air.h"

#include <QFutureWatcher>
#include <QtConcurrent>

namespace ui::presenters {

namespace {

using Answer = core::base::Result<core::services::ChamberAir>;

/// Shared, because QFuture wants a type with a default.
std::shared_ptr<Answer> read_air(const std::string& book_path,
                                 const core::services::ChamberAirRequest& request) {
    const auto reader = core::services::ClimateReader::open(book_path);
    if (!reader) {
        return std::make_shared<Answer>(tl::unexpected<core::base::Error>(reader.error()));
    }
    return std::make_shared<Answer>(core::services::chamber_air(*reader, request));
}

} // namespace

struct ChamberAirDesk::Worker {
    QFutureWatcher<std::shared_ptr<Answer>> watcher;
};

ChamberAirDesk::ChamberAirDesk(QObject* parent)
    : QObject(parent), worker_(std::make_unique<Worker>()) {
    connect(&worker_->watcher, &QFutureWatcherBase::finished, this, &ChamberAirDesk::finish);
}

ChamberAirDesk::~ChamberAirDesk() {
    worker_->watcher.disconnect(this);
    worker_->watcher.waitForFinished();
}

void ChamberAirDesk::ask(const std::string& book_path, core::services::ChamberAirRequest request) {
    Asked asked{book_path, std::move(request)};
    if (busy_) {
        waiting_ = std::move(asked);
        return;
    }
    start(std::move(asked));
}

void ChamberAirDesk::start(Asked asked) {
    busy_ = true;
    worker_->watcher.setFuture(QtConcurrent::run(
        [asked = std::move(asked)] { return read_air(asked.book_path, asked.request); }));
}

void ChamberAirDesk::finish() {
    busy_ = false;
    answer_ = *worker_->watcher.result();
    if (waiting_) {
        Asked next = std::move(*waiting_);
        waiting_.reset();
        start(std::move(next));
        return;
    }
    Q_EMIT arrived();
}

void ChamberAirDesk::wait() {
    while (busy_) {
        worker_->watcher.waitForFinished();
        QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
    }
}

} // namespace ui::presenters
