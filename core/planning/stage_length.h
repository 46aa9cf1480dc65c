#pragma once

#include "core/base/interval.h"
#include "core/planning/piece_spec.h"
#include "core/units/time.h"

#include <functional>
#include <optional>
#include <vector>

namespace core::planning {

/// What a stage's planned length rests on, from the firmest to none.
enum class LengthBasis {
    fixed,          ///< a time written in the template
    weight_rule,    ///< days per kilogram
    thickness_rule, ///< days per centimetre
    date,           ///< until a named day
    own_history,    ///< the user's own finished pieces
    typical,        ///< the template's usual spread, scaled to the piece
    drying_model,   ///< the drying model before the first weighing
    unknown,        ///< nothing says; planned as no time at all, with a finding
};

struct StageLength {
    base::Interval<units::Duration> lasts; ///< low and high as sure as the basis is
    LengthBasis basis = LengthBasis::unknown;
    std::size_t slowest_piece = 0; ///< index of the piece that decides
};

/// Where the length of an open-ended stage (by loss, flat curve, feel or measurement) may come
/// from. Each answers for the time from hanging to the piece's target, or has no answer.
struct LengthSources {
    using Answer = std::optional<base::Interval<units::Duration>>;
    std::function<Answer(const PieceSpec&)> own_drying;
    std::function<Answer(const PieceSpec&, const model::StageTemplate&)> modelled_drying;
};

/// What a stage's length is asked for.
struct LengthQuestion {
    const model::StageTemplate& stage;
    const std::vector<PieceSpec>& pieces; ///< gaps filled; at least one
    const PieceSpec& usual;               ///< the template's usual piece, which `typical` is about
    units::Day start;                     ///< for an end on a date
    units::Duration already_dried;        ///< earlier drying since hanging
};

/// The length for the slowest of the pieces. Conditions combine by `ends_by_all`: the longest of
/// all, or the shortest of any. Lengths of a day and more are rounded up to whole days, so that a
/// rule is never ended early by the calendar.
StageLength stage_length(const LengthQuestion& question, const LengthSources& sources);

/// Drying time grows with thickness where the surface decides and with its square where the
/// inside does (Fick's second law for a plane sheet, Crank, The Mathematics of Diffusion). The
/// spread covers both: for a thinner piece `high` shrinks least.
base::Interval<units::Duration> scaled_to_thickness(const base::Interval<units::Duration>& usual,
                                                    double thickness_ratio);

/// Up to whole days from one day on; shorter times are kept.
units::Duration whole_days_up(units::Duration time);

} // namespace core::planning
