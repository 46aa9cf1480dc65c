#pragma once

#include "core/base/interval.h"
#include "core/units/time.h"
#include "ui/text/style.h"

#include <QDate>
#include <optional>

/// Days and moments in the person's language and time zone.
namespace ui::text {

QDate to_qdate(core::units::Day day);
/// `date` must be valid.
core::units::Day to_day(QDate date);

/// Qt's date formats of the language: "d MMM yyyy", "ddd d MMM", and "d MMM" for the marks of an
/// axis. What `words` writes reads back with them.
QString day_format();
QString short_day_format();
QString axis_day_format();

/// "14 Mar 2026" in the language's own order.
QString words(core::units::Day day, const Style& style);
/// "March 2026" in the language's own order.
QString month_words(core::units::Day in_it, const Style& style);
/// "Sat 14 Mar": for lists where the year is plain.
QString short_words(core::units::Day day, const Style& style);
/// "Sat 14 Mar, 18:30".
QString words(core::units::Instant at, const Style& style);
/// "today", "yesterday", "in 3 days", "5 days ago", else the day itself.
QString relative_words(core::units::Day day, core::units::Day today, const Style& style);
/// "14 to 20 Mar 2026"; the ends may lie in one month, one year or neither.
QString range_words(core::units::Day first, core::units::Day last, const Style& style);

} // namespace ui::text
