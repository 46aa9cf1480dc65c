#include "core/chamber/local_clock.h"

#include <cmath>
#include <cstdlib>

namespace core::chamber {

using units::Instant;

base::Result<LocalClock> LocalClock::of(const LogDialect& dialect) {
    if (dialect.clock != ClockKind::named_zone) {
        return LocalClock(std::nullopt,
                          dialect.clock == ClockKind::fixed_offset ? dialect.offset_seconds : 0,
                          dialect.newest_first);
    }
    auto zone = units::Zone::named(dialect.zone);
    if (!zone) {
        return tl::unexpected(zone.error());
    }
    return LocalClock(std::move(*zone), 0, dialect.newest_first);
}

std::optional<Instant> LocalClock::moment(std::int64_t local_seconds,
                                          std::optional<int> offset_seconds) {
    std::optional<Instant> at;
    if (offset_seconds || !zone_) {
        at = Instant::from_unix_seconds(local_seconds - offset_seconds.value_or(offset_seconds_));
    } else {
        at = in_zone(local_seconds);
    }
    if (at) {
        follow(*at);
    }
    return at;
}

std::optional<Instant> LocalClock::in_zone(std::int64_t local_seconds) {
    // Away from changes of the clock the offset of the last stamp still holds: one comparison
    // instead of a search of the zone's rules. Two days are more than any change shifts.
    constexpr std::int64_t margin = std::int64_t{2} * 86400;
    if (span_) {
        const std::int64_t guess = local_seconds - span_->offset_seconds;
        // Not `begin + margin`: a zone's first span begins at the lowest number there is.
        if (guess > span_->begin.unix_seconds() && guess < span_->end.unix_seconds() &&
            guess - margin > span_->begin.unix_seconds() &&
            guess + margin < span_->end.unix_seconds()) {
            return Instant::from_unix_seconds(guess);
        }
    }
    const auto moments = zone_->moments_at(local_seconds);
    span_ = zone_->offset_span(moments.first);
    switch (moments.kind) {
    case units::LocalMoments::Kind::never:
        return std::nullopt;
    case units::LocalMoments::Kind::twice:
        return nearer_to_course(moments);
    default:
        return moments.first;
    }
}

Instant LocalClock::nearer_to_course(const units::LocalMoments& two) const {
    if (!previous_) {
        return step_ < 0 ? two.second : two.first;
    }
    // A line out of order must not pull its successors back an hour, hence the front; a second
    // log pasted behind a later one has a front far away, hence the previous line.
    constexpr std::int64_t near = std::int64_t{3} * 3600;
    const auto from_front = std::llabs(front_->unix_seconds() - two.first.unix_seconds()) < near;
    const std::int64_t course = (from_front ? *front_ : *previous_).unix_seconds() + step_;
    const auto distance = [&](Instant at) { return std::llabs(at.unix_seconds() - course); };
    return distance(two.second) < distance(two.first) ? two.second : two.first;
}

void LocalClock::follow(Instant at) {
    if (previous_) {
        const std::int64_t step = at.unix_seconds() - previous_->unix_seconds();
        // The usual step is one seen twice running, in the log's direction.
        if (step != 0 && step == step_seen_ && (step < 0) == (step_ < 0)) {
            step_ = step;
        }
        step_seen_ = step;
    }
    previous_ = at;
    if (!front_ || (step_ < 0 ? at < *front_ : at > *front_)) {
        front_ = at;
    }
}

} // namespace core::chamber
