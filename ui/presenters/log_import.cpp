#include "ui/presenters/log_import.h"

#include "ui/presenters/background.h"

#include <QFutureWatcher>

#include <chrono>

namespace ui::presenters {

namespace {

using Preview = core::base::Result<core::services::LogPreview>;
using Report = core::base::Result<core::services::ClimateImportReport>;

} // namespace

struct LogImport::Worker {
    QFutureWatcher<std::shared_ptr<Preview>> preview;
    QFutureWatcher<std::shared_ptr<Report>> import;
};

LogImport::LogImport(QObject* parent) : QObject(parent), worker_(std::make_unique<Worker>()) {
    connect(&worker_->preview, &QFutureWatcherBase::finished, this, [this] {
        looking_ = false;
        preview_ = *worker_->preview.result();
        Q_EMIT previewed();
    });
    connect(&worker_->import, &QFutureWatcherBase::finished, this, [this] {
        running_ = false;
        report_ = *worker_->import.result();
        Q_EMIT finished();
    });
}

LogImport::~LogImport() {
    cancel();
    worker_->preview.disconnect(this);
    worker_->import.disconnect(this);
    worker_->preview.waitForFinished();
    worker_->import.waitForFinished();
}

void LogImport::preview(const std::string& log_path, const core::chamber::DialectHints& hints) {
    looking_ = true;
    worker_->preview.setFuture(in_background([log_path, hints] {
        return std::make_shared<Preview>(core::services::preview_climate_log(log_path, hints));
    }));
}

void LogImport::start(const std::string& book_path, core::services::ClimateImportRequest request) {
    stop_ = std::stop_source();
    running_ = true;
    report_.reset();
    // Short transactions with a gap after each: what the person saves meanwhile waits for one of
    // them at most, and a window that waits longer than a frame is felt.
    request.readings_per_chunk = 2'000;
    request.pause_between_chunks = std::chrono::milliseconds(2);
    const auto progress = [this](const core::services::ClimateImportProgress& so_far) {
        const int share =
            so_far.bytes == 0 ? 0 : static_cast<int>(so_far.bytes_read * 1000 / so_far.bytes);
        QMetaObject::invokeMethod(
            this, [this, share, readings = so_far.readings] { Q_EMIT progressed(share, readings); },
            Qt::QueuedConnection);
    };
    worker_->import.setFuture(
        in_background([book_path, request, progress, token = stop_.get_token()] {
            return std::make_shared<Report>(
                core::services::import_climate_log(book_path, request, progress, token));
        }));
}

void LogImport::cancel() {
    stop_.request_stop();
}

void LogImport::wait() {
    while (running_ || looking_) {
        worker_->preview.waitForFinished();
        worker_->import.waitForFinished();
        QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
    }
}

} // namespace ui::presenters
