#include "ui/presenters/book_keeping.h"

#include "ui/presenters/latest.h"

#include <utility>

namespace ui::presenters {

namespace services = core::services;

struct BookKeeping::Worker {
    Latest<std::function<void()>> latest{[](const std::function<void()>& deliver) { deliver(); }};
};

BookKeeping::BookKeeping(QObject* parent) : QObject(parent), worker_(std::make_unique<Worker>()) {}

BookKeeping::~BookKeeping() {
    cancel();
}

void BookKeeping::run(Work work) {
    if (!is_busy()) {
        stop_ = std::stop_source();
    }
    worker_->latest.ask(
        [work = std::move(work), token = stop_.get_token()] { return work(token); });
}

bool BookKeeping::is_busy() const {
    return worker_->latest.is_busy();
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
    worker_->latest.wait();
}

} // namespace ui::presenters
