#include "ui/edits/day_field.h"

#include "core/units/parse.h"
#include "ui/look/pieces.h"
#include "ui/text/date_words.h"

#include <QAction>
#include <QCalendarWidget>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QRegularExpression>
#include <QTime>
#include <QVBoxLayout>

namespace ui::edits {
namespace {

using core::base::ErrorCode;
using core::units::Day;

/// A day and month without a year: the nearest such day, at most half a year off.
Day nearest(QDate date, Day today) {
    const QDate now = text::to_qdate(today);
    QDate best;
    for (int year = now.year() - 1; year <= now.year() + 1; ++year) {
        const QDate candidate(year, date.month(), date.day());
        if (candidate.isValid() &&
            (!best.isValid() || std::abs(now.daysTo(candidate)) < std::abs(now.daysTo(best)))) {
            best = candidate;
        }
    }
    return text::to_day(best);
}

/// "20 Mar" by `format`. A day of the week must agree with one of the years nearby, and settles
/// which; Qt takes no weekday that contradicts the year it reads.
std::optional<Day> without_its_year(const QString& text, const QString& format, Day today,
                                    const QLocale& locale) {
    const auto in = [&](int year) {
        return locale.toDate(text + QStringLiteral(" %1").arg(year),
                             format + QStringLiteral(" yyyy"));
    };
    if (!format.contains(QLatin1String("ddd"))) {
        // Without a year Qt would take 1900, which had no 29 February: a leap year is put in.
        const QDate date = in(2000);
        return date.isValid() ? std::optional(nearest(date, today)) : std::nullopt;
    }
    const QDate now = text::to_qdate(today);
    QDate best;
    for (int year = now.year() - 1; year <= now.year() + 1; ++year) {
        const QDate date = in(year);
        if (date.isValid() &&
            (!best.isValid() || std::abs(now.daysTo(date)) < std::abs(now.daysTo(best)))) {
            best = date;
        }
    }
    return best.isValid() ? std::optional(text::to_day(best)) : std::nullopt;
}

std::optional<Day> relative(const QString& text, Day today) {
    if (text == DayField::tr("today")) {
        return today;
    }
    if (text == DayField::tr("tomorrow")) {
        return today + 1;
    }
    if (text == DayField::tr("yesterday")) {
        return today - 1;
    }
    static const QRegularExpression offset(QStringLiteral("^([+-]\\d{1,3})$"));
    if (const auto match = offset.match(text); match.hasMatch()) {
        return today + match.captured(1).toInt();
    }
    return {};
}

} // namespace

core::base::Result<Day> read_day(const QString& typed, Day today, const text::Style& style) {
    const QString text = typed.simplified();
    if (const auto day = relative(text.toLower(), today)) {
        return *day;
    }
    if (const auto iso = core::units::parse_day(text.toStdString())) {
        return *iso;
    }
    const QLocale& locale = style.locale;
    const bool month_first = locale.dateFormat(QLocale::ShortFormat).indexOf(QLatin1Char('M')) <
                             locale.dateFormat(QLocale::ShortFormat).indexOf(QLatin1Char('d'));
    QStringList with_year = {text::day_format(),
                             QStringLiteral("d MMM yyyy"),
                             QStringLiteral("d MMMM yyyy"),
                             QStringLiteral("MMM d yyyy"),
                             QStringLiteral("MMM d, yyyy"),
                             QStringLiteral("d.M.yyyy"),
                             QStringLiteral("ddd d MMM yyyy")};
    with_year << (month_first ? QStringLiteral("M/d/yyyy") : QStringLiteral("d/M/yyyy"));
    for (const QString& format : with_year) {
        if (const QDate date = locale.toDate(text, format); date.isValid()) {
            return text::to_day(date);
        }
    }
    QStringList without_year = {text::short_day_format(), text::axis_day_format(),
                                QStringLiteral("d MMM"),  QStringLiteral("d MMMM"),
                                QStringLiteral("MMM d"),  QStringLiteral("d.M."),
                                QStringLiteral("d.M"),    QStringLiteral("ddd d MMM")};
    without_year << (month_first ? QStringLiteral("M/d") : QStringLiteral("d/M"));
    for (const QString& format : without_year) {
        if (const auto day = without_its_year(text, format, today, locale)) {
            return *day;
        }
    }
    return core::base::fault(ErrorCode::bad_format, text.toStdString());
}

DayField::DayField(const char* object_name, const QString& accessible_name,
                   const text::Style& style, Day today, QWidget* parent)
    : EntryField(object_name, accessible_name, parent), style_(style), today_(today) {
    set_placeholder(tr("day, e.g. %1").arg(text::short_words(today, style)));
    auto* calendar = new QAction(tr("…"), this);
    calendar->setToolTip(tr("Pick from a calendar (Alt+Down)"));
    calendar->setShortcut(QKeySequence(QStringLiteral("Alt+Down")));
    calendar->setShortcutContext(Qt::WidgetShortcut);
    connect(calendar, &QAction::triggered, this, &DayField::pick);
    line()->addAction(calendar);
}

std::optional<Day> DayField::value() const {
    const auto day = read_day(text(), today_, style_);
    return day ? std::optional(*day) : std::nullopt;
}

void DayField::set_value(std::optional<Day> value) {
    set_text(value ? text::words(*value, style_) : QString());
}

core::base::Result<QString> DayField::understood(const QString& text) const {
    const auto day = read_day(text, today_, style_);
    if (!day) {
        return tl::unexpected(day.error());
    }
    const QString written = text::words(*day, style_);
    const QString relative = text::relative_words(*day, today_, style_);
    if (text == written && relative != written) {
        return relative;
    }
    return relative == written ? written : tr("%1, %2").arg(written, relative);
}

void DayField::pick() {
    QDialog dialog(this);
    look::named(&dialog, "day_dialog", tr("Pick a day"));
    dialog.setWindowTitle(tr("Pick a day"));
    auto* column = new QVBoxLayout(&dialog);
    auto* calendar = look::named(new QCalendarWidget(&dialog), "calendar", tr("Calendar"));
    calendar->setLocale(style_.locale);
    calendar->setSelectedDate(text::to_qdate(value().value_or(today_)));
    column->addWidget(calendar);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, &dialog);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    connect(calendar, &QCalendarWidget::activated, &dialog, &QDialog::accept);
    if (dialog.exec() == QDialog::Accepted) {
        set_value(text::to_day(calendar->selectedDate()));
        Q_EMIT edited();
    }
}

ClockField::ClockField(const char* object_name, const QString& accessible_name,
                       const text::Style& style, QWidget* parent)
    : EntryField(object_name, accessible_name, parent), style_(style) {
    line()->setMaximumWidth(look::lines(this, 5));
    line()->setMinimumWidth(look::lines(this, 4));
}

std::optional<int> ClockField::value() const {
    static const QRegularExpression clock(
        QStringLiteral("^(\\d{1,2})[:.h]?(\\d{2})\\s*([ap]\\.?m\\.?)?$"),
        QRegularExpression::CaseInsensitiveOption);
    const auto match = clock.match(text());
    if (!match.hasMatch()) {
        return {};
    }
    int hour = match.captured(1).toInt();
    const int minute = match.captured(2).toInt();
    const QString half = match.captured(3).toLower();
    if (!half.isEmpty()) {
        if (hour < 1 || hour > 12) {
            return {};
        }
        hour = hour % 12 + (half.startsWith(QLatin1Char('p')) ? 12 : 0);
    }
    return hour < 24 && minute < 60 ? std::optional(hour * 60 + minute) : std::nullopt;
}

void ClockField::set_value(int minute) {
    set_text(QStringLiteral("%1:%2")
                 .arg(minute / 60, 2, 10, QLatin1Char('0'))
                 .arg(minute % 60, 2, 10, QLatin1Char('0')));
}

core::base::Result<QString> ClockField::understood(const QString& typed) const {
    const auto minute = value();
    if (!minute) {
        return core::base::fault(ErrorCode::out_of_range, typed.toStdString());
    }
    const QTime time(*minute / 60, *minute % 60);
    const QString plain = time.toString(QStringLiteral("hh:mm"));
    return plain == typed ? plain : style_.locale.toString(time, QLocale::ShortFormat);
}

} // namespace ui::edits
