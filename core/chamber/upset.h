#pragma once

#include "core/base/interval.h"
#include "core/facts/hurdles.h"
#include "core/model/chamber.h"
#include "core/model/ids.h"
#include "core/model/plan.h"
#include "core/units/mass_share.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// A chamber that failed while nobody looked: what each piece was and how long the air was where
/// what can grow. A record for a person to judge by; it says nothing about whether to eat.
namespace core::chamber {

/// An upset as somebody types it: "off 36 h, reached 21 C".
struct TypedUpset {
    units::Instant from;
    units::Duration lasted;
    units::Temperature usual;   ///< before it
    units::Temperature reached; ///< the highest (or lowest) seen
};

/// Air temperatures over the upset, from the log or from a typed account. `least` and `most` bound
/// what the hours can have been.
struct UpsetCourse {
    units::Instant from;
    units::Instant to;
    std::optional<units::Temperature> highest;
    units::Duration unknown = units::Duration::seconds(0); ///< without a reading
    struct Stretch {
        units::Temperature temperature;
        units::Duration time;
        bool surely; ///< false: counts for the upper bound only
    };
    std::vector<Stretch> stretches;
};

/// A typed account does not say how fast it warmed: at best in a straight line that reached the
/// temperature at the very end, at worst all the time at it. Both bounds are kept.
UpsetCourse course_of(const TypedUpset& upset);

/// From the log: each reading in [from, to) stands until the next but no longer than `hold`;
/// gaps count as unknown and, for the upper bound, as the higher of the readings around them.
UpsetCourse course_of(std::span<const model::ClimateReading> readings, units::Instant from,
                      units::Instant to, units::Duration hold);

/// What is known of a piece at the time of the upset.
struct PieceThen {
    model::PieceId piece;
    std::string code;
    std::string name;
    std::optional<model::StageKind> stage;
    std::optional<units::Duration> in_stage; ///< how long it had been in that stage
    std::optional<units::Duration> hung;     ///< since hanging; absent when not hung yet
    std::optional<units::MassShare> loss;    ///< of the hung net weight
    std::optional<units::MassShare> salt;    ///< of the piece's weight as it was then
    std::optional<units::MassShare> nitrite; ///< ingoing, as sodium nitrite
    std::optional<base::Interval<units::WaterActivity>> water_activity;
};

/// Hours in one organism's growth range.
struct Exposure {
    facts::GrowthRange range; ///< cited; shown as unverified where its source is
    units::Duration least;    ///< by air temperature
    units::Duration most;
    /// How the piece's water activity stands to the table's bound: surely below it the hours are
    /// still counted, and it is said.
    enum class Activity { unknown, below, around, above } activity = Activity::unknown;
};

struct PieceExposure {
    PieceThen piece;
    std::vector<Exposure> exposures; ///< one a growth range, in its order
};

struct UpsetRecord {
    UpsetCourse course;
    /// What to look at first comes first: pieces not salted through or just hung, then by loss,
    /// the wettest first; unknown before known.
    std::vector<PieceExposure> pieces;
};

UpsetRecord upset_record(UpsetCourse course, std::vector<PieceThen> pieces,
                         const facts::Hurdles& hurdles);

/// Hours of the course within [low, high]; least and most.
std::pair<units::Duration, units::Duration> time_within(const UpsetCourse& course,
                                                        std::optional<units::Temperature> low,
                                                        std::optional<units::Temperature> high);

} // namespace core::chamber
