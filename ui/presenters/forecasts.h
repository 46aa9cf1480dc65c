#pragma once

#include "core/drying/air_path.h"
#include "core/model/forecast.h"
#include "ui/presenters/piece_line.h"

#include <QHash>
#include <QObject>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace ui::presenters {

class Lesson;

/// A piece with all that its forecast is made from, carried to the worker by value.
struct PieceRecord {
    core::services::PieceHistory history;
    Kin kin;
    std::vector<core::drying::AirReading> air; ///< where it hung; empty where no log says
    std::shared_ptr<const Lesson> lesson = {}; ///< of own finished pieces; null: none
};

/// Enough company to tell a shifted scale from one piece, few enough to stay quick.
inline constexpr std::size_t most_company = 24;
/// Whether two pieces were last weighed in one round: then a scale that shifted shows in both.
bool in_one_round(core::units::Instant one, core::units::Instant other);

/// Forecasts for the pages, computed off the GUI thread. A result is kept as long as its piece's
/// revision (and that of those hanging with it) stays; it is never stored in the book, so a
/// corrected weighing cannot leave a stale one behind.
class Forecasts : public QObject {
    Q_OBJECT
  public:
    /// What is computed for a set of pieces: one forecast each, in their order. Pure, called
    /// on a worker. Pieces are given together because a scale that shifted shows only in all.
    using Compute = std::function<std::vector<core::model::Forecast>(
        const std::vector<PieceRecord>&, core::units::Instant now)>;

    explicit Forecasts(Compute compute, QObject* parent = nullptr);
    ~Forecasts() override;

    /// What is known now; null when it is being computed or was never asked for.
    [[nodiscard]] const core::model::Forecast* find(core::model::PieceId piece,
                                                    std::int64_t revision) const;
    /// How many of the user's own finished pieces the forecast at hand has learnt from.
    [[nodiscard]] int learnt_from(core::model::PieceId piece) const;
    /// Computes what is missing or out of date; arrived() follows, also when nothing was. A newer
    /// ask replaces one that waits.
    void ask(std::vector<PieceRecord> records, core::units::Instant now);
    [[nodiscard]] bool is_busy() const { return busy_; }
    /// Waits for what is under way (tests, printing, rendered screens).
    void wait();

  Q_SIGNALS:
    void arrived();

  private:
    struct Kept {
        std::int64_t revision = 0;
        std::int64_t hour = 0; ///< "now" moves the not-drying judgement: kept for an hour
        std::size_t air = 0;   ///< a log came in, was taken back, or its sensor was corrected
        std::shared_ptr<const Lesson> lesson; ///< a finished piece came in or was corrected
        core::model::Forecast forecast;
    };
    struct Asked {
        std::vector<PieceRecord> records;
        core::units::Instant now;
    };
    void start(Asked asked);
    void finish(const Asked& asked, std::vector<core::model::Forecast> forecasts);
    [[nodiscard]] bool is_current(const PieceRecord& record, core::units::Instant now) const;

    Compute compute_;
    QHash<qint64, Kept> kept_;
    std::optional<Asked> waiting_;
    bool busy_ = false;
    struct Worker;
    std::unique_ptr<Worker> worker_;
};

} // namespace ui::presenters
