#pragma once

#include "core/chamber/log_dialect.h"
#include "core/units/zone.h"

#include <cstdint>
#include <optional>

namespace core::chamber {

/// Turns a log's local stamps into moments, line after line. An hour that comes twice in autumn
/// is told apart by the lines around it: the moment nearest to where the log would go on is
/// taken, so that a log running through the fold keeps both passes, in either direction, and a
/// repeated line stays where its twin is.
class LocalClock {
  public:
    /// For `named_zone` dialects: fails with unknown_zone.
    static base::Result<LocalClock> of(const LogDialect& dialect);

    /// The moment of a stamp on the logger's clock; nothing for an hour the clock skipped in
    /// spring (the logger did not follow summer time, or the zone is the wrong one).
    /// `offset_seconds` is the stamp's own offset, which wins over the dialect's.
    std::optional<units::Instant> moment(std::int64_t local_seconds,
                                         std::optional<int> offset_seconds);

  private:
    LocalClock(std::optional<units::Zone> zone, int offset_seconds, bool newest_first)
        : zone_(std::move(zone)), offset_seconds_(offset_seconds), step_(newest_first ? -1 : 1) {}
    std::optional<units::Instant> in_zone(std::int64_t local_seconds);
    [[nodiscard]] units::Instant nearer_to_course(const units::LocalMoments& two) const;
    void follow(units::Instant at);

    std::optional<units::Zone> zone_; ///< absent for a fixed offset
    int offset_seconds_;
    std::int64_t step_; ///< the log's usual step in seconds, negative when newest first
    std::int64_t step_seen_ = 0;
    std::optional<units::Instant> previous_;
    std::optional<units::Instant> front_; ///< the furthest moment in the log's direction
    std::optional<units::OffsetSpan> span_;
};

} // namespace core::chamber
