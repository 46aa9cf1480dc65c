#pragma once

#include "core/drying/forecast.h"
#include "core/model/finding.h"
#include "core/model/piece.h"

#include <optional>
#include <vector>

/// From what the scale showed to what the meat lost: tare off, named reference weights, and the
/// events that change what later numbers mean.
namespace core::drying {

/// One believed net weight, as a weight of the piece as it is today: weights from before a cut are
/// scaled down to the part that is left.
struct NetPoint {
    model::WeighingId weighing;
    units::Instant at;
    units::Mass net;
    std::optional<units::Mass> scale_step;
};

/// The weights that losses are counted from, each as a weight of the piece as it is today.
struct References {
    std::optional<units::Mass> raw;
    std::optional<units::Mass> trimmed;
    std::optional<units::Mass> cured; ///< after the cure, rinsed or not
    std::optional<units::Mass> hung;  ///< net, when drying started
    [[nodiscard]] std::optional<units::Mass> of(model::ReferenceWeight which) const;
};

struct NetSeries {
    References references;
    /// From hanging on (or from the last pressing): what the curve is fitted to. Wet weighings and
    /// the first within a day of a wash are left out.
    std::vector<NetPoint> points;
    bool pressed = false; ///< the points begin at a pressing: the reference lies before them
    /// The hung weight is known but no point of the curve (wet, or rough): it lies before them.
    bool hung_aside = false;
    std::optional<units::Mass> last_net;
    units::Mass tare = units::Mass::grams(0); ///< what hangs with the piece now
    units::Mass coat = units::Mass::grams(0); ///< lard or paste on it now, not meat
    /// The target, net and as the scale will show it (coat and tare on). Absent without a target
    /// or without its reference weight.
    std::optional<units::Mass> target_net;
    std::optional<units::Mass> target_on_scale;
    /// reference_missing (reference), event_weight_missing (event; at), tare_missing (at): with
    /// what was assumed stated in the header of net_series().
    model::Findings findings;

    /// Loss of the last net weight from a reference; absent where either is unknown.
    [[nodiscard]] std::optional<units::MassShare> loss_from(model::ReferenceWeight which) const;
};

struct PieceHistory {
    std::vector<model::Weighing> weighings; ///< any order; only those that stand() count
    std::vector<model::PieceEvent> events;  ///< any order; withdrawn ones do not count
    std::optional<model::Target> target;
    const NetSeries* parent = nullptr;     ///< of the piece this was split from, up to the split
    std::vector<const NetSeries*> members; ///< of pieces merged into this one, up to the merge
};

/// Rules:
/// - net = on the scale - tare of the weighing; a cased or netted weighing without tare takes the
///   tare of the last dressing. Re-dressed without a known tare: the last net before is the first
///   net after.
/// - trimmed, sampled, split: net W of start G cut to w makes the new start G * w / W, unless the
///   event has `start_override` (for the target's reference). W and w come from the event, else
///   from the weighings around it.
/// - coated: what the coat adds is not meat: taken off from then on.
/// - washed: the first weighing within 24 h is left out, as is any marked wet.
/// - pressed: the water pressed out counts as lost; the curve starts anew.
/// - rough: a weight read four times as coarsely as the piece's other weighings, and by more than
///   1 % of itself (an estimate), can be a reference but is no point of the curve.
/// - frozen to thawed: time stands still; earlier points are moved later by as much, so that
///   forecasts made from the points fall on the right dates.
/// - merged: references add up; the curve goes on with the loss of this piece.
/// - hung weight: of the `hung` event, else the weighing nearest to it within 12 h, else the next
///   one; without such an event the first cased or netted weighing, else the first of all.
NetSeries net_series(const PieceHistory& history);

/// The forecast's request for a piece of the book. `air` are readings around it. Absent when the
/// piece has no target or the target's reference weight is unknown.
std::optional<ForecastRequest> forecast_request(const model::Piece& piece, const NetSeries& series,
                                                std::vector<AirReading> air);

} // namespace core::drying
