#include "core/units/zone.h"

#include <date/tz.h>

#include <stdexcept>

namespace core::units {
namespace {

const date::time_zone& zone_of(const void* opaque) {
    return *static_cast<const date::time_zone*>(opaque);
}

date::sys_seconds sys(Instant at) {
    return date::sys_seconds(std::chrono::seconds(at.unix_seconds()));
}

} // namespace

base::Result<Zone> Zone::named(std::string_view name) {
    try {
        return Zone(std::string(name), date::locate_zone(std::string(name)));
    } catch (const std::runtime_error&) {
        return base::fault(base::ErrorCode::unknown_zone, std::string(name));
    }
}

Zone Zone::utc() {
    return Zone("UTC", date::locate_zone("UTC"));
}

int Zone::offset_seconds(Instant at) const {
    return static_cast<int>(zone_of(zone_).get_info(sys(at)).offset.count());
}

OffsetSpan Zone::offset_span(Instant at) const {
    const auto info = zone_of(zone_).get_info(sys(at));
    return {static_cast<int>(info.offset.count()),
            Instant::from_unix_seconds(info.begin.time_since_epoch().count()),
            Instant::from_unix_seconds(info.end.time_since_epoch().count())};
}

LocalMoments Zone::moments_at(std::int64_t local_seconds) const {
    const date::local_seconds local{std::chrono::seconds(local_seconds)};
    const auto info = zone_of(zone_).get_info(local);
    const auto with = [&](const date::sys_info& period) {
        return Instant::from_unix_seconds((local.time_since_epoch() - period.offset).count());
    };
    switch (info.result) {
    case date::local_info::nonexistent: {
        const auto after = Instant::from_unix_seconds(info.second.begin.time_since_epoch().count());
        return {LocalMoments::Kind::never, after, after};
    }
    case date::local_info::ambiguous:
        return {LocalMoments::Kind::twice, with(info.first), with(info.second)};
    default:
        return {LocalMoments::Kind::once, with(info.first), with(info.first)};
    }
}

Day Zone::day_of(Instant at) const {
    const auto local = zone_of(zone_).to_local(sys(at));
    return Day::from_days_since_epoch(
        static_cast<std::int32_t>(date::floor<date::days>(local).time_since_epoch().count()));
}

int Zone::minute_of_day(Instant at) const {
    const auto local = zone_of(zone_).to_local(sys(at));
    const auto since_midnight = local - date::floor<date::days>(local);
    return static_cast<int>(
        std::chrono::duration_cast<std::chrono::minutes>(since_midnight).count());
}

Instant Zone::instant_at(Day day, int minute) const {
    const date::local_seconds local(std::chrono::seconds(
        static_cast<std::int64_t>(day.days_since_epoch()) * 86400 + std::int64_t{minute} * 60));
    const auto info = zone_of(zone_).get_info(local);
    // In a gap the clock jumps over `local`: info.second begins exactly where the gap ends.
    if (info.result == date::local_info::nonexistent) {
        return Instant::from_unix_seconds(info.second.begin.time_since_epoch().count());
    }
    return Instant::from_unix_seconds((local.time_since_epoch() - info.first.offset).count());
}

} // namespace core::units
