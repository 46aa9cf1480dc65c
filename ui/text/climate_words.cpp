#include "ui/text/climate_words.h"

#include <QCoreApplication>

namespace ui::text {

namespace {

struct ClimateWords {
    Q_DECLARE_TR_FUNCTIONS(ClimateWords)
};

using core::chamber::DialectField;
using core::chamber::Evidence;
using core::chamber::RejectReason;

QString sign_words(const std::string& code) {
    if (code == "comma") {
        return ClimateWords::tr("comma");
    }
    if (code == "semicolon") {
        return ClimateWords::tr("semicolon");
    }
    if (code == "tab") {
        return ClimateWords::tr("tab");
    }
    return code == "bar" ? ClimateWords::tr("bar") : ClimateWords::tr("point");
}

QString form_words(const std::string& code) {
    if (code == "year_month_day") {
        return ClimateWords::tr("year, month, day");
    }
    if (code == "day_month_year") {
        return ClimateWords::tr("day, month, year");
    }
    if (code == "month_day_year") {
        return ClimateWords::tr("month, day, year");
    }
    if (code == "epoch_seconds") {
        return ClimateWords::tr("seconds since 1970");
    }
    return code == "epoch_milliseconds" ? ClimateWords::tr("milliseconds since 1970")
                                        : ClimateWords::tr("day numbers of a spreadsheet");
}

QString clock_words(const std::string& code) {
    if (code == "in_stamp") {
        return ClimateWords::tr("each time says its own");
    }
    bool is_number = false;
    const int seconds = QString::fromStdString(code).toInt(&is_number);
    if (!is_number) {
        return ClimateWords::tr("local time of %1").arg(QString::fromStdString(code));
    }
    const int minutes = std::abs(seconds) / 60;
    return ClimateWords::tr("%1%2:%3 all year")
        .arg(seconds < 0 ? QStringLiteral("\u2212") : QStringLiteral("+"))
        .arg(minutes / 60, 2, 10, QLatin1Char('0'))
        .arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

QString scale_words(const std::string& code) {
    if (code == "celsius") {
        return QStringLiteral("\u00B0C");
    }
    if (code == "fahrenheit") {
        return QStringLiteral("\u00B0F");
    }
    if (code == "kelvin") {
        return QStringLiteral("K");
    }
    return code == "percent" ? ClimateWords::tr("percent") : ClimateWords::tr("a share of 1");
}

} // namespace

QString words(DialectField field) {
    switch (field) {
    case DialectField::encoding:
        return ClimateWords::tr("Letters");
    case DialectField::separator:
        return ClimateWords::tr("Columns parted by");
    case DialectField::decimal_sign:
        return ClimateWords::tr("Decimal sign");
    case DialectField::stamp_form:
        return ClimateWords::tr("Dates");
    case DialectField::clock:
        return ClimateWords::tr("Clock");
    case DialectField::stamp_column:
        return ClimateWords::tr("Time");
    case DialectField::temperature_column:
        return ClimateWords::tr("Temperature");
    case DialectField::humidity_column:
        return ClimateWords::tr("Humidity");
    case DialectField::temperature_scale:
        return ClimateWords::tr("Temperature in");
    case DialectField::humidity_scale:
        return ClimateWords::tr("Humidity in");
    }
    return {};
}

QString choice_words(DialectField field, const std::string& choice) {
    switch (field) {
    case DialectField::encoding:
        return choice == "utf8"     ? QStringLiteral("UTF-8")
               : choice == "latin1" ? QStringLiteral("Latin-1")
                                    : QStringLiteral("UTF-16");
    case DialectField::separator:
    case DialectField::decimal_sign:
        return sign_words(choice);
    case DialectField::stamp_form:
        return form_words(choice);
    case DialectField::clock:
        return clock_words(choice);
    case DialectField::stamp_column:
    case DialectField::temperature_column:
    case DialectField::humidity_column:
        return ClimateWords::tr("column %1").arg(QString::fromStdString(choice));
    case DialectField::temperature_scale:
    case DialectField::humidity_scale:
        return scale_words(choice);
    }
    return {};
}

QString words(Evidence evidence) {
    switch (evidence) {
    case Evidence::told:
        return ClimateWords::tr("you said so");
    case Evidence::remembered:
        return ClimateWords::tr("as confirmed for this sensor before");
    case Evidence::mark:
        return ClimateWords::tr("the file's own mark");
    case Evidence::heading:
        return ClimateWords::tr("the heading names it");
    case Evidence::only_possible:
        return ClimateWords::tr("nothing else fits the lines");
    case Evidence::even_steps:
        return ClimateWords::tr("otherwise time would jump");
    case Evidence::contents:
        return ClimateWords::tr("the values look like it");
    case Evidence::context:
        return ClimateWords::tr("the rest of the file makes it likely");
    case Evidence::assumed:
        return ClimateWords::tr("nothing in the file says so");
    }
    return {};
}

QString sureness_words(double sureness, const Style& style) {
    const QString percent = style.locale.toString(qRound(sureness * 100)) + QStringLiteral(" %");
    if (sureness >= 0.95) {
        return ClimateWords::tr("sure, %1").arg(percent);
    }
    return sureness >= core::chamber::sure_enough
               ? ClimateWords::tr("fairly sure, %1").arg(percent)
               : ClimateWords::tr("\u25B2 a guess, %1").arg(percent);
}

QString words(RejectReason reason) {
    switch (reason) {
    case RejectReason::bad_stamp:
        return ClimateWords::tr("no date and time");
    case RejectReason::skipped_hour:
        return ClimateWords::tr("an hour the clock skipped in spring");
    case RejectReason::missing_columns:
        return ClimateWords::tr("the line is cut off");
    case RejectReason::bad_number:
        return ClimateWords::tr("no number");
    case RejectReason::out_of_range:
        return ClimateWords::tr("a value no air has");
    case RejectReason::no_values:
        return ClimateWords::tr("neither temperature nor humidity");
    case RejectReason::heading_again:
        return ClimateWords::tr("the heading again");
    case RejectReason::line_too_long:
        return ClimateWords::tr("an endless line");
    case RejectReason::unclosed_quote:
        return ClimateWords::tr("a quote that never closes");
    case RejectReason::binary_data:
        return ClimateWords::tr("not text");
    }
    return {};
}

QString words(core::chamber::OutOfBand side) {
    using core::chamber::OutOfBand;
    switch (side) {
    case OutOfBand::too_cold:
        return ClimateWords::tr("too cold");
    case OutOfBand::too_warm:
        return ClimateWords::tr("too warm");
    case OutOfBand::too_dry:
        return ClimateWords::tr("too dry");
    case OutOfBand::too_damp:
        return ClimateWords::tr("too damp");
    }
    return {};
}

QString words(core::chamber::Exposure::Activity activity) {
    using Activity = core::chamber::Exposure::Activity;
    switch (activity) {
    case Activity::unknown:
        return ClimateWords::tr("not known");
    case Activity::below:
        return ClimateWords::tr("estimate below its bound");
    case Activity::around:
        return ClimateWords::tr("estimate straddles its bound");
    case Activity::above:
        return ClimateWords::tr("estimate above its bound");
    }
    return {};
}

} // namespace ui::text
