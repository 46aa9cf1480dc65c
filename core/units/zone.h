#pragma once

#include "core/base/result.h"
#include "core/units/time.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace core::units {

/// A stretch of time over which a zone's offset does not change: [begin, end).
struct OffsetSpan {
    int offset_seconds; ///< local time minus UTC
    Instant begin;
    Instant end;
};

/// What a local clock time means: it comes once, twice (the hour repeated in autumn) or never
/// (the hour skipped in spring; both moments are then the first one after the gap).
struct LocalMoments {
    enum class Kind { once, twice, never };
    Kind kind;
    Instant first;
    Instant second; ///< the later one when `twice`, else equal to `first`
};

/// A named IANA time zone ("Europe/Rome", "UTC"). The only place where an Instant becomes a
/// calendar Day. Reads the system's zone files on first use.
class Zone {
  public:
    /// Fails with unknown_zone when the system does not know `name`.
    static base::Result<Zone> named(std::string_view name);
    static Zone utc();

    [[nodiscard]] const std::string& name() const { return name_; }
    /// The calendar day on which `at` falls here.
    [[nodiscard]] Day day_of(Instant at) const;
    /// Minutes after local midnight at `at`, 0 to 1439.
    [[nodiscard]] int minute_of_day(Instant at) const;
    /// The moment the local clock shows `day` and `minute` (0 to 1439). In a spring gap the first
    /// moment after the gap; in an autumn fold the earlier of the two.
    [[nodiscard]] Instant instant_at(Day day, int minute = 0) const;
    /// Local time minus UTC at `at`, in seconds.
    [[nodiscard]] int offset_seconds(Instant at) const;
    /// The offset in force at `at`, and for how long: lets a reader of millions of lines ask once.
    [[nodiscard]] OffsetSpan offset_span(Instant at) const;
    /// The moments at which the local clock shows `local_seconds` (seconds since 1970-01-01 00:00
    /// on the local clock).
    [[nodiscard]] LocalMoments moments_at(std::int64_t local_seconds) const;

  private:
    explicit Zone(std::string name, const void* zone) : name_(std::move(name)), zone_(zone) {}
    std::string name_;
    const void* zone_; ///< date::time_zone, kept opaque so that few files include the library
};

} // namespace core::units
