#pragma once

#include "core/services/climate.h"

#include <QObject>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>

namespace ui::presenters {

/// Looks at a climate log and takes it into the book, off the GUI thread.
class LogImport : public QObject {
    Q_OBJECT
  public:
    explicit LogImport(QObject* parent = nullptr);
    /// Cancels what runs, and waits for its last chunk.
    ~LogImport() override;

    /// previewed() follows.
    void preview(const std::string& log_path, const core::chamber::DialectHints& hints);
    [[nodiscard]] const std::optional<core::base::Result<core::services::LogPreview>>&
    looked() const {
        return preview_;
    }

    /// progressed() and finished() follow. The book must be open for writing in this program.
    void start(const std::string& book_path, core::services::ClimateImportRequest request);
    void cancel();
    [[nodiscard]] bool is_running() const { return running_; }
    [[nodiscard]] const std::optional<core::base::Result<core::services::ClimateImportReport>>&
    report() const {
        return report_;
    }
    /// Waits for what is under way (tests).
    void wait();

  Q_SIGNALS:
    void previewed();
    /// 0 to 1000, and the readings so far.
    void progressed(int per_mille, qint64 readings);
    void finished();

  private:
    struct Worker;
    std::unique_ptr<Worker> worker_;
    std::stop_source stop_;
    bool running_ = false;
    bool looking_ = false;
    std::optional<core::base::Result<core::services::LogPreview>> preview_;
    std::optional<core::base::Result<core::services::ClimateImportReport>> report_;
};

} // namespace ui::presenters
