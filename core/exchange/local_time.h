#pragma once

#include "core/units/time.h"
#include "core/units/zone.h"

#include <optional>
#include <string_view>

namespace core::exchange {

/// How a file writes days with the year last.
enum class DayOrder { unknown, day_first, month_first };

enum class TimeFault { unreadable, zone_missing, order_unclear, no_such_local_time };

/// A moment or what is wrong with its text.
struct ReadTime {
    std::optional<units::Instant> at;
    TimeFault fault = TimeFault::unreadable; ///< only when `at` is absent
};

/// Reads a moment as files write them: ISO 8601 with a zone ("2026-03-01T18:30:00+01:00"), and,
/// where `zone` is given, local forms: "2026-03-01 18:30[:15]", "1.3.2026 18:30" (dots: day
/// first), "3/1/2026 6:30 PM" (slashes or hyphens: as `order` says, or as only one reading is a
/// date). A date alone is taken at noon. The hour that clocks show twice in autumn is its first
/// showing.
ReadTime read_time(std::string_view text, const std::optional<units::Zone>& zone,
                   DayOrder order = DayOrder::unknown);

/// Which order a column's dates prove: one date with a first number above 12 proves day first,
/// and so on; unknown when none does or they contradict each other.
class DayOrderEvidence {
  public:
    void see(std::string_view text);
    [[nodiscard]] DayOrder verdict() const;

  private:
    bool day_first_ = false;
    bool month_first_ = false;
};

} // namespace core::exchange
