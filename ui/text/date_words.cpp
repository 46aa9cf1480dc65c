#include "ui/text/date_words.h"

#include <QCoreApplication>
#include <QTime>

#include <cstdlib>

namespace ui::text {
namespace {

/// The translators' context of this file.
struct DateWords {
    Q_DECLARE_TR_FUNCTIONS(DateWords)
};

} // namespace

QDate to_qdate(core::units::Day day) {
    return QDate(1970, 1, 1).addDays(day.days_since_epoch());
}

core::units::Day to_day(QDate date) {
    return core::units::Day::from_days_since_epoch(
        static_cast<std::int32_t>(QDate(1970, 1, 1).daysTo(date)));
}

QString day_format() {
    //: A calendar day with its year, in Qt's date format; keep the parts, change their order.
    return DateWords::tr("d MMM yyyy");
}

QString short_day_format() {
    //: A calendar day without its year, in Qt's date format.
    return DateWords::tr("ddd d MMM");
}

QString axis_day_format() {
    //: A calendar day of few letters, in Qt's date format.
    return DateWords::tr("d MMM");
}

QString words(core::units::Day day, const Style& style) {
    return style.locale.toString(to_qdate(day), day_format());
}

QString month_words(core::units::Day in_it, const Style& style) {
    //: A month, in Qt's date format.
    return style.locale.toString(to_qdate(in_it), DateWords::tr("MMMM yyyy"));
}

QString short_words(core::units::Day day, const Style& style) {
    return style.locale.toString(to_qdate(day), short_day_format());
}

QString words(core::units::Instant at, const Style& style) {
    const int minute = style.zone.minute_of_day(at);
    const QTime time(minute / 60, minute % 60);
    //: %1 a day, %2 a clock time
    return DateWords::tr("%1, %2").arg(short_words(style.zone.day_of(at), style),
                                       style.locale.toString(time, QLocale::ShortFormat));
}

QString relative_words(core::units::Day day, core::units::Day today, const Style& style) {
    const int ahead = day - today;
    if (ahead == 0) {
        return DateWords::tr("today");
    }
    if (ahead == 1) {
        return DateWords::tr("tomorrow");
    }
    if (ahead == -1) {
        return DateWords::tr("yesterday");
    }
    if (std::abs(ahead) <= 21) {
        return ahead > 0 ? DateWords::tr("in %n day(s)", nullptr, ahead)
                         : DateWords::tr("%n day(s) ago", nullptr, -ahead);
    }
    return words(day, style);
}

QString range_words(core::units::Day first, core::units::Day last, const Style& style) {
    if (first == last) {
        return words(first, style);
    }
    const QDate from = to_qdate(first);
    const QDate to = to_qdate(last);
    QString head;
    if (from.year() == to.year() && from.month() == to.month()) {
        //: The day of the month before "to 20 Mar 2026", in Qt's date format.
        head = style.locale.toString(from, DateWords::tr("d"));
    } else if (from.year() == to.year()) {
        head = style.locale.toString(from, axis_day_format());
    } else {
        head = words(first, style);
    }
    //: a span of days, e.g. "14 to 20 Mar 2026"
    return DateWords::tr("%1 to %2").arg(head, words(last, style));
}

} // namespace ui::text
