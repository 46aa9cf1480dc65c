#pragma once

#include "core/services/chamber_desk.h"

#include <QObject>
#include <memory>
#include <optional>
#include <string>

namespace ui::presenters {

/// A chamber's air, read off the GUI thread on a connection of its own. Only the newest question
/// is answered.
class ChamberAirDesk : public QObject {
    Q_OBJECT
  public:
    explicit ChamberAirDesk(QObject* parent = nullptr);
    ~ChamberAirDesk() override;

    /// arrived() follows. A newer ask replaces one that waits.
    void ask(const std::string& book_path, core::services::ChamberAirRequest request);
    [[nodiscard]] bool is_busy() const { return busy_; }
    /// Absent until the first answer.
    [[nodiscard]] const std::optional<core::base::Result<core::services::ChamberAir>>&
    answer() const {
        return answer_;
    }
    /// Waits for what is under way (tests, rendered screens).
    void wait();

  Q_SIGNALS:
    void arrived();

  private:
    struct Asked {
        std::string book_path;
        core::services::ChamberAirRequest request;
    };
    void start(Asked asked);
    void finish();

    struct Worker;
    std::unique_ptr<Worker> worker_;
    std::optional<Asked> waiting_;
    std::optional<core::base::Result<core::services::ChamberAir>> answer_;
    bool busy_ = false;
};

} // namespace ui::presenters
