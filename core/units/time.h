#pragma once

#include "core/units/quantity.h"

#include <chrono>
#include <compare>
#include <cstdint>

namespace core::units {

/// An elapsed time. Base unit: second (double). A day here is always 86,400 s: a physical
/// duration, not a calendar day.
class Duration : public Quantity<Duration> {
  public:
    static constexpr Duration seconds(double v) { return Duration(v); }
    static constexpr Duration minutes(double v) { return Duration(v * 60.0); }
    static constexpr Duration hours(double v) { return Duration(v * 3600.0); }
    static constexpr Duration days(double v) { return Duration(v * 86400.0); }
    static constexpr Duration weeks(double v) { return Duration(v * 604800.0); }
    [[nodiscard]] constexpr double in_seconds() const { return base_; }
    [[nodiscard]] constexpr double in_minutes() const { return base_ / 60.0; }
    [[nodiscard]] constexpr double in_hours() const { return base_ / 3600.0; }
    [[nodiscard]] constexpr double in_days() const { return base_ / 86400.0; }
    [[nodiscard]] constexpr double in_weeks() const { return base_ / 604800.0; }

  private:
    friend class Quantity<Duration>;
    explicit constexpr Duration(double seconds) : Quantity(seconds) {}
};

/// A moment, counted in whole seconds from 1970-01-01T00:00:00Z without leap seconds (as on
/// disk, `at_s`). It meets a calendar Day only where a time zone is given: core/units/zone.h.
class Instant {
  public:
    static constexpr Instant from_unix_seconds(std::int64_t s) { return Instant(s); }
    [[nodiscard]] constexpr std::int64_t unix_seconds() const { return seconds_; }
    friend constexpr Instant operator+(Instant t, Duration d) {
        // Rounded half away from zero: seconds are the grain of the book.
        const double s = d.in_seconds();
        return Instant(t.seconds_ + static_cast<std::int64_t>(s < 0 ? s - 0.5 : s + 0.5));
    }
    friend constexpr Instant operator-(Instant t, Duration d) { return t + (-d); }
    friend constexpr Duration operator-(Instant a, Instant b) {
        return Duration::seconds(static_cast<double>(a.seconds_ - b.seconds_));
    }
    // clang-tidy 14 takes what this compares with for a null pointer.
    friend constexpr auto operator<=>(Instant, Instant) = default; // NOLINT(modernize-use-nullptr)

  private:
    explicit constexpr Instant(std::int64_t seconds) : seconds_(seconds) {}
    std::int64_t seconds_;
};

/// A calendar day in the proleptic Gregorian calendar, with no time zone of its own. Day
/// arithmetic counts civil days, so it does not care about summer time.
class Day {
  public:
    static constexpr Day from_days_since_epoch(std::int32_t days) { return Day(days); }
    /// `date` must be a real date (`date.ok()`).
    static constexpr Day from_date(std::chrono::year_month_day date) {
        return Day(static_cast<std::int32_t>( // a calendar's days fit
            std::chrono::sys_days(date).time_since_epoch().count()));
    }
    [[nodiscard]] constexpr std::int32_t days_since_epoch() const { return days_; }
    [[nodiscard]] constexpr std::chrono::year_month_day date() const {
        return std::chrono::sys_days(std::chrono::days(days_));
    }
    [[nodiscard]] constexpr std::chrono::weekday weekday() const {
        return std::chrono::weekday(std::chrono::sys_days(std::chrono::days(days_)));
    }
    friend constexpr Day operator+(Day d, int days) { return Day(d.days_ + days); }
    friend constexpr Day operator-(Day d, int days) { return Day(d.days_ - days); }
    friend constexpr int operator-(Day a, Day b) { return a.days_ - b.days_; }
    // clang-tidy 14 takes what this compares with for a null pointer.
    friend constexpr auto operator<=>(Day, Day) = default; // NOLINT(modernize-use-nullptr)

  private:
    explicit constexpr Day(std::int32_t days) : days_(days) {}
    std::int32_t days_;
};

} // namespace core::units
