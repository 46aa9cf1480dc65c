#pragma once

#include "core/base/interval.h"
#include "ui/presenters/forecasts.h"
#include "ui/presenters/latest.h"

#include <QObject>
#include <optional>
#include <vector>

namespace ui::presenters {

class Workspace;

/// What the siblings and the air say of a start weight that was never written down.
struct LostWeightAnswer {
    std::optional<core::base::Interval<core::units::Mass>> weight; ///< 10th, 50th, 90th percentile
    int siblings = 0; ///< pieces of the batch that it leans on; 0: the air and the form alone
};

/// Everything an estimate is made from, by value. `which` is raw or hung.
struct LostWeightQuestion {
    PieceRecord piece;
    std::vector<PieceRecord> siblings;
    core::model::ReferenceWeight which = core::model::ReferenceWeight::hung;
    core::units::Instant hung; ///< when drying started
    bool hung_is_known = false;
};
/// Pure and slow. Absent weight: no weighing since hanging or, for the raw weight, fewer than two
/// siblings with a raw and a hung weight.
LostWeightAnswer estimate_lost_weight(const LostWeightQuestion& question);

/// A start weight of one piece that is lost: which it may be, what it is estimated at, and the
/// weighing that an estimate is kept as.
class LostWeight : public QObject {
    Q_OBJECT
  public:
    LostWeight(const Workspace& workspace, const PieceLine& line, QObject* parent = nullptr);
    ~LostWeight() override;

    /// Raw and hung, as far as nobody weighed them; the target's own first.
    [[nodiscard]] const std::vector<core::model::ReferenceWeight>& missing() const {
        return missing_;
    }
    /// When that weight should have been taken; absent where the book does not say.
    [[nodiscard]] std::optional<core::units::Instant>
    usual_time(core::model::ReferenceWeight which) const;

    /// `at` is when the weight should have been taken. arrived() follows.
    void ask(core::model::ReferenceWeight which, core::units::Instant at);
    [[nodiscard]] bool is_busy() const { return latest_.is_busy(); }
    [[nodiscard]] const std::optional<LostWeightAnswer>& answer() const { return answer_; }
    void wait() { latest_.wait(); }

    /// The estimate as a weighing: on the scale as the piece was next weighed, with a note that
    /// says it is estimated, and its interval as the scale's step so that no curve leans on it
    /// (core/drying/net_series.h, "rough").
    [[nodiscard]] core::model::Weighing
    weighing(core::model::ReferenceWeight which, core::units::Instant at, core::units::Mass net,
             const core::base::Interval<core::units::Mass>& between,
             const text::Style& style) const;

  Q_SIGNALS:
    void arrived();

  private:
    void find_missing(const PieceLine& line);
    [[nodiscard]] const core::model::Weighing* first_since(core::units::Instant at) const;

    PieceRecord record_;
    std::vector<PieceRecord> siblings_;
    std::vector<core::model::ReferenceWeight> missing_;
    std::optional<core::units::Instant> hung_at_;
    std::optional<core::units::Instant> salted_at_;
    bool hung_is_known_ = false;
    std::optional<LostWeightAnswer> answer_;
    Latest<LostWeightAnswer> latest_;
};

} // namespace ui::presenters
