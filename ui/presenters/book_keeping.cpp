#include "ui/presenters/book_keeping.h"

#include <QCoreApplication>
#include <QFutureWatcher>
#include <QtConcurrent>

#include <utility>

namespace ui::presenters {

namespace services = core::services;

struct BookKeeping::Worker {
    QFutureWatcher<std::function<void()>> watcher;
};

BookKeeping::BookKeeping(QObject* parent) : QObject(parent), worker_(std::make_unique<Worker>()) {
    connect(&worker_->watcher, &QFutureWatcherBase::finished, this, &BookKeeping::finish);
}

BookKeeping::~BookKeeping() {
    cancel();
    worker_->watcher.disconnect(this);
    worker_->watcher.waitForFinished();
}

void BookKeeping::run(Work work) {
    if (busy_) {
        waiting_ = std::move(work);
        return;
    }
    busy_ = true;
    stop_ = std::stop_source();
    worker_->watcher.setFuture(QtConcurrent::run(
        [work = std::move(work), token = stop_.get_token()] { return work(token); }));
}

void BookKeeping::finish() {
    busy_ = false;
    const auto deliver = worker_->watcher.result();
    if (waiting_) {
        // The newer one is what the person looks at now.
        run(*std::exchange(waiting_, std::nullopt));
        return;
    }
    deliver();
}

void BookKeeping::check(const std::string& book) {
    run([this, book](const std::stop_token& stop) -> std::function<void()> {
        return [this, report = services::check_book(book, stop)] {
            report_ = report;
            Q_EMIT check_ended();
        };
    });
}

void BookKeeping::rebuild_roll_ups(const std::string& book) {
    run([this, book](const std::stop_token& stop) -> std::function<void()> {
        return [this, status = services::rebuild_roll_ups(book, stop)] {
            rebuilt_ = status;
            Q_EMIT rebuild_ended();
        };
    });
}

void BookKeeping::salvage(const std::string& damaged, const std::string& target,
                          core::units::Instant now) {
    run([this, damaged, target, now](const std::stop_token&) -> std::function<void()> {
        return [this, report = services::salvage(damaged, target, now)] {
            salvaged_ = report;
            Q_EMIT salvage_ended();
        };
    });
}

void BookKeeping::preview(const std::string& book, const std::string& backup) {
    previewed_.reset();
    run([this, book, backup](const std::stop_token&) -> std::function<void()> {
        return [this, preview = services::preview_restore(book, backup)] {
            previewed_ = preview;
            Q_EMIT preview_ended();
        };
    });
}

void BookKeeping::cancel() {
    stop_.request_stop();
}

void BookKeeping::wait() {
    while (busy_) {
        worker_->watcher.waitForFinished();
        QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
    }
}

} // namespace ui::presenters
