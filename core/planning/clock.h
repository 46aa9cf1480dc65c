#pragma once

#include "core/model/chamber.h"
#include "core/model/piece.h"
#include "core/model/plan.h"
#include "core/units/time.h"

#include <optional>
#include <vector>

namespace core::planning {

struct TimeSpan {
    units::Instant from;
    units::Instant to;
};

/// How far a stage has come for one piece. `ran` counts towards the stage, the pauses do not.
struct StageClock {
    units::Duration ran;
    units::Duration frozen;      ///< paused because the piece was frozen
    units::Duration out_of_band; ///< paused because the air was, frozen time not counted again
    bool paused_now = false;
};

/// Absent when the stage has not started. `events` are the piece's own; withdrawn ones do not
/// count. `out_of_band` is used only where the template pauses for it.
std::optional<StageClock> read_clock(const model::Stage& stage,
                                     const std::vector<model::PieceEvent>& events,
                                     const std::vector<TimeSpan>& out_of_band, units::Instant now);

/// The band that holds at a moment of a stage: ramps between start and end over `length`, and
/// pulses. Absent where the template sets none.
struct BandNow {
    template <class Q>
    struct Range {
        Q low;
        Q high;
    };
    std::optional<Range<units::Temperature>> temperature;
    std::optional<Range<units::RelativeHumidity>> humidity;
};
BandNow band_at(const model::StageTemplate& stage, units::Duration since_start,
                units::Duration length);

/// When the readings (in time order) left the stage's band. A reading holds until the next one,
/// but no longer than `longest_gap`: a silent logger is not evidence.
std::vector<TimeSpan> spans_out_of_band(const model::StageTemplate& stage, units::Instant start,
                                        units::Duration length,
                                        const std::vector<model::ClimateReading>& readings,
                                        units::Duration longest_gap = units::Duration::hours(2));

} // namespace core::planning
