#pragma once

#include "core/services/chamber_desk.h"
#include "ui/presenters/latest.h"

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
    [[nodiscard]] bool is_busy() const { return latest_.is_busy(); }
    /// Absent until the first answer.
    [[nodiscard]] const std::optional<core::base::Result<core::services::ChamberAir>>&
    answer() const {
        return answer_;
    }
    /// Waits for what is under way (tests, rendered screens).
    void wait() { latest_.wait(); }

  Q_SIGNALS:
    void arrived();

  private:
    using Answer = core::base::Result<core::services::ChamberAir>;
    std::optional<Answer> answer_;
    Latest<std::shared_ptr<Answer>> latest_; ///< shared, because QFuture wants a default
};

} // namespace ui::presenters
