#pragma once

#include "core/model/finding.h"
#include "core/services/book.h"
#include "ui/presenters/piece_line.h"

#include <QObject>
#include <optional>
#include <vector>

namespace ui::presenters {

class Workspace;

/// One piece of a weigh-in round and what became of it in this round.
struct RoundLine {
    PieceLine line;
    QString chamber;
    std::optional<core::units::Mass> last_on_scale;
    std::optional<core::units::Instant> last_at;
    std::optional<core::base::Interval<core::units::Mass>> expected; ///< on the scale, now
    bool expected_from_forecast = false;
    std::optional<core::units::Mass> entered; ///< in this round
    bool passed_over = false;
};

/// The weigh-in round: pieces in hanging order, one entry each, asked once where the number is
/// surprising. Knows no widgets; the page only shows it.
class WeighRound : public QObject {
    Q_OBJECT
  public:
    explicit WeighRound(Workspace& workspace, QObject* parent = nullptr);

    /// Reads the hanging pieces of a chamber (absent: all) and keeps what was entered already.
    void load(std::optional<core::model::ChamberId> chamber);
    [[nodiscard]] const std::vector<RoundLine>& lines() const { return lines_; }
    [[nodiscard]] int current() const { return current_; } ///< -1 when there are none
    void set_current(int row);
    [[nodiscard]] int entered_count() const;

    struct Answer {
        bool kept = false;               ///< the weighing is in the book
        core::model::Findings questions; ///< what to ask; entering the same again keeps it
        bool stopped = false;            ///< a stop: cannot be kept as it is
    };
    /// Enters the number on the scale for the current piece. `tare` replaces the remembered one.
    Answer enter(core::units::Mass on_scale, std::optional<core::units::Mass> tare,
                 std::optional<core::units::Mass> scale_step, bool wet, const QString& note);
    /// To the next piece that has not been weighed; wraps once.
    void advance();
    void pass_over();

  Q_SIGNALS:
    void changed();

  private:
    void judge_expected();
    Workspace& workspace_;
    std::vector<RoundLine> lines_;
    std::optional<core::model::ChamberId> chamber_;
    int current_ = -1;
    std::optional<core::units::Mass> asked_; ///< the surprising number already asked about
    core::model::PieceId asked_for_;
};

} // namespace ui::presenters
