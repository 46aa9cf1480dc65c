#pragma once

#include "core/base/interval.h"
#include "core/model/finding.h"
#include "core/model/forecast.h"
#include "core/model/piece.h"

#include <optional>
#include <vector>

namespace core::planning {

/// A piece of the round, as the book knows it.
struct RoundPiece {
    model::Piece piece;
    std::optional<model::Weighing> last; ///< the last standing weighing
    std::optional<units::Mass> tare;     ///< casing, net and hook now on it
    /// The net weight that the forecast's losses count from.
    std::optional<units::Mass> reference;
    std::optional<model::Forecast> forecast;
};

enum class ExpectedFrom {
    forecast,
    last_weighing, ///< how far meat usually gets from its last weight in that time
};

struct RoundRow {
    model::PieceId piece;
    std::optional<units::Mass> last_on_scale;
    std::optional<units::Instant> last_at;
    units::Mass tare; ///< to be taken off; zero when bare
    /// What the scale should show now; absent when nothing is known. From a forecast the bounds
    /// are p50 -/+ twice the distance to p10 and p90 (for a bell curve 99 in 100 fall inside), so
    /// that an ordinary round asks nothing.
    std::optional<base::Interval<units::Mass>> expected;
    std::optional<ExpectedFrom> expected_from;
};

/// The pieces in hanging order (chamber, hanging order, position, code).
std::vector<RoundRow> weigh_round(std::vector<RoundPiece> pieces, units::Instant now);

/// What to ask about an entry before it is taken, once. Codes: not_above_tare (stop),
/// weight_tenfold (caution; ten times or a tenth of the last: a slip of the decimal sign),
/// weight_outside_expected (caution; values low, high), weight_unchanged (note; the same number as
/// last time: done, a coarse scale, or a wet chamber).
model::Findings judge_entry(const RoundRow& row, units::Mass on_scale,
                            std::optional<units::Mass> scale_step);

} // namespace core::planning
