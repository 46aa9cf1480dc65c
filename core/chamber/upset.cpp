#include "core/chamber/upset.h"

#include <algorithm>
#include <utility>

namespace core::chamber {
namespace {

using units::Duration;
using units::Temperature;

/// Steps in which a straight rise is counted: fine enough that a range's bound is met within 1 %.
constexpr int rise_steps = 200;

/// Stages in which salt is not through the piece yet.
bool is_before_drying(const PieceThen& piece) {
    if (!piece.stage) {
        return false;
    }
    switch (*piece.stage) {
    case model::StageKind::salt:
    case model::StageKind::rest:
    case model::StageKind::equalise:
    case model::StageKind::marinate:
    case model::StageKind::wash:
    case model::StageKind::soak:
        return true;
    default:
        return false;
    }
}

/// Smaller is looked at first.
std::pair<int, double> urgency(const PieceThen& piece) {
    if (is_before_drying(piece)) {
        return {0, piece.in_stage ? piece.in_stage->in_hours() : 0.0};
    }
    return {1, piece.loss ? piece.loss->as_fraction() : -1.0};
}

Exposure::Activity activity_of(const PieceThen& piece, const facts::GrowthRange& range) {
    if (!piece.water_activity || !range.lowest_activity) {
        return Exposure::Activity::unknown;
    }
    if (piece.water_activity->high <= *range.lowest_activity) {
        return Exposure::Activity::below;
    }
    return piece.water_activity->low > *range.lowest_activity ? Exposure::Activity::above
                                                              : Exposure::Activity::around;
}

} // namespace

UpsetCourse course_of(const TypedUpset& upset) {
    UpsetCourse course{upset.from,
                       upset.from + upset.lasted,
                       std::max(upset.usual, upset.reached),
                       Duration::seconds(0),
                       {}};
    const auto slice = upset.lasted / rise_steps;
    for (int i = 0; i < rise_steps; ++i) {
        const double share = (i + 0.5) / rise_steps;
        course.stretches.push_back(
            {upset.usual + (upset.reached - upset.usual) * share, slice, true});
    }
    course.stretches.push_back({upset.reached, upset.lasted, false});
    return course;
}

UpsetCourse course_of(std::span<const model::ClimateReading> readings, units::Instant from,
                      units::Instant to, Duration hold) {
    UpsetCourse course{from, to, std::nullopt, Duration::seconds(0), {}};
    std::optional<model::ClimateReading> previous;
    const auto stretch = [&](const model::ClimateReading& r, units::Instant until,
                             std::optional<Temperature> next) {
        const Duration whole = until - r.at;
        const Duration stands = std::min(whole, hold);
        course.stretches.push_back({*r.temperature, stands, true});
        if (whole > stands) {
            course.unknown += whole - stands;
            course.stretches.push_back(
                {std::max(*r.temperature, next.value_or(*r.temperature)), whole - stands, false});
        }
    };
    for (const auto& reading : readings) {
        if (reading.at < from || reading.at >= to || !reading.temperature) {
            continue;
        }
        course.highest =
            std::max(course.highest.value_or(*reading.temperature), *reading.temperature);
        if (previous) {
            stretch(*previous, reading.at, reading.temperature);
        } else {
            // Before the first reading nothing is known; it may have been as warm as then.
            course.unknown += reading.at - from;
            course.stretches.push_back({*reading.temperature, reading.at - from, false});
        }
        previous = reading;
    }
    if (previous) {
        stretch(*previous, to, std::nullopt);
    } else {
        course.unknown = to - from;
    }
    return course;
}

std::pair<Duration, Duration> time_within(const UpsetCourse& course, std::optional<Temperature> low,
                                          std::optional<Temperature> high) {
    auto sure = Duration::seconds(0);
    auto possible = Duration::seconds(0);
    for (const auto& stretch : course.stretches) {
        if ((!low || stretch.temperature >= *low) && (!high || stretch.temperature <= *high)) {
            (stretch.surely ? sure : possible) += stretch.time;
        }
    }
    // A typed account's worst case stands beside its straight rise, not on top of it, hence the
    // cap; from a log the two are different hours and their sum never reaches it.
    return {sure, std::min(sure + possible, course.to - course.from)};
}

UpsetRecord upset_record(UpsetCourse course, std::vector<PieceThen> pieces,
                         const facts::Hurdles& hurdles) {
    std::stable_sort(pieces.begin(), pieces.end(), [](const PieceThen& a, const PieceThen& b) {
        return urgency(a) < urgency(b);
    });
    UpsetRecord record{std::move(course), {}};
    for (auto& piece : pieces) {
        PieceExposure exposure{piece, {}};
        for (const auto& range : hurdles.organisms) {
            const auto [least, most] = time_within(record.course, range.lowest, range.highest);
            exposure.exposures.push_back({range, least, most, activity_of(piece, range)});
        }
        record.pieces.push_back(std::move(exposure));
    }
    return record;
}

} // namespace core::chamber
