#include "ui/text/quantity_words.h"

#include "ui/text/unit_words.h"

#include <cmath>

namespace ui::text {
namespace {

using namespace core::units;

/// A number and its unit never part at a line's end.
QString joined(const QString& number, const QString& unit) {
    return number + QChar(QChar::Nbsp) + unit;
}

int decimals_of_step(double step) {
    // 1 -> 0, 0.5 -> 1, 0.1 -> 1, 0.05 -> 2, 0.01 -> 2; never more than a hundredth of a gram's
    // tenth, the finest a kitchen jewellery scale shows.
    int decimals = 0;
    while (decimals < 3 && std::abs(step - std::round(step)) > 1e-6) {
        step *= 10;
        ++decimals;
    }
    return decimals;
}

/// Whole pounds and the ounces left, with the rounding carried (15.96 oz is 1 lb, not 16 oz).
QString pounds_and_ounces(Mass mass, int decimals, const Style& style) {
    const double scale = std::pow(10.0, decimals);
    const double ounces = std::round(std::abs(mass.in_ounces()) * scale) / scale;
    const double pounds = std::floor(ounces / 16.0 + 1e-9);
    const double rest = std::max(0.0, ounces - pounds * 16.0);
    const QString sign = mass < Mass::grams(0) && ounces > 0 ? QStringLiteral("\u2212") : QString();
    const QString rest_words = joined(number_words(rest, style, decimals), UnitWords::tr("oz"));
    if (pounds < 1) {
        return sign + rest_words;
    }
    return sign + joined(number_words(pounds, style, 0), UnitWords::tr("lb")) + QChar(QChar::Nbsp) +
           rest_words;
}

} // namespace

QString unknown() {
    return QStringLiteral("\u2014");
}

QString number_words(double value, const Style& style, int decimals) {
    QLocale locale = style.locale;
    // No thousands mark: "1,234" would read as a decimal to half the world (and to our parser).
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    const double scale = std::pow(10.0, decimals);
    double rounded = std::round(value * scale) / scale;
    if (rounded == 0) {
        rounded = 0; // no "-0"
    }
    return locale.toString(rounded, 'f', decimals);
}

QString words(Mass mass, const Style& style, std::optional<Mass> step) {
    switch (style.mass) {
    case MassStyle::kilograms:
        if (std::abs(mass.in_grams()) >= 1000) {
            const int decimals = step ? std::max(2, decimals_of_step(step->in_kilograms())) : 2;
            return joined(number_words(mass.in_kilograms(), style, decimals), UnitWords::tr("kg"));
        }
        [[fallthrough]];
    case MassStyle::grams: {
        const double grams = std::abs(mass.in_grams());
        const int natural = grams < 10 && grams > 0 ? 1 : 0;
        const int decimals = step ? decimals_of_step(step->in_grams()) : natural;
        return joined(number_words(mass.in_grams(), style, decimals), UnitWords::tr("g"));
    }
    case MassStyle::ounces:
        return joined(
            number_words(mass.in_ounces(), style, std::abs(mass.in_ounces()) < 10 ? 2 : 1),
            UnitWords::tr("oz"));
    case MassStyle::pounds:
        return pounds_and_ounces(mass, std::abs(mass.in_ounces()) < 10 ? 2 : 1, style);
    }
    return {};
}

QString dose_words(Mass mass, const Style& style, int decimals) {
    if (style.mass == MassStyle::ounces || style.mass == MassStyle::pounds) {
        // One ounce is 28 g: two more decimals keep the same fineness.
        return joined(number_words(mass.in_ounces(), style, decimals + 2), UnitWords::tr("oz"));
    }
    return joined(number_words(mass.in_grams(), style, decimals), UnitWords::tr("g"));
}

QString words(Length length, const Style& style) {
    if (style.length == LengthStyle::inches) {
        return joined(number_words(length.in_inches(), style, 2), UnitWords::tr("in"));
    }
    return joined(number_words(length.in_millimetres(), style, 0), UnitWords::tr("mm"));
}

QString words(Volume volume, const Style& style) {
    if (style.volume == VolumeStyle::fluid_ounces) {
        return joined(number_words(volume.in_us_fluid_ounces(), style, 2), UnitWords::tr("fl oz"));
    }
    const double ml = volume.in_millilitres();
    return joined(number_words(ml, style, ml < 10 ? 1 : 0), UnitWords::tr("mL"));
}

QString words(Temperature temperature, const Style& style) {
    const bool celsius = style.temperature == TemperatureStyle::celsius;
    const double value = celsius ? temperature.in_celsius() : temperature.in_fahrenheit();
    return joined(number_words(value, style, 1), temperature_unit_name(style));
}

QString words(TemperatureStep step, const Style& style) {
    const bool celsius = style.temperature == TemperatureStyle::celsius;
    const double value = celsius ? step.in_kelvins() : step.in_fahrenheit_degrees();
    return joined(number_words(value, style, 1), temperature_unit_name(style));
}

QString words(RelativeHumidity humidity, const Style& style) {
    return joined(number_words(humidity.in_percent(), style, 0), UnitWords::tr("% RH"));
}

QString words(WaterActivity activity, const Style& style) {
    return number_words(activity.as_fraction(), style, 2);
}

QString words(AlcoholByVolume alcohol, const Style& style) {
    return joined(number_words(alcohol.in_percent(), style, 1), UnitWords::tr("% vol"));
}

QString words(MassShare share, const Style& style, int decimals) {
    if (share.as_fraction() != 0 && std::abs(share.in_percent()) < 0.1) {
        return ppm_words(share, style);
    }
    return joined(number_words(share.in_percent(), style, decimals), QStringLiteral("%"));
}

QString ppm_words(MassShare share, const Style& style) {
    return joined(number_words(share.in_ppm(), style, 0), UnitWords::tr("ppm"));
}

QString words(Duration duration, const Style& style) {
    const double hours = std::abs(duration.in_hours());
    if (hours < 1) {
        return joined(number_words(duration.in_minutes(), style, 0), UnitWords::tr("min"));
    }
    if (hours < 24) {
        return joined(number_words(duration.in_hours(), style, 0), UnitWords::tr("h"));
    }
    const double days = duration.in_days();
    if (std::abs(days) < 7) {
        const double whole = std::trunc(days);
        const double rest = std::round(std::abs(days - whole) * 24.0);
        const QString head = joined(number_words(whole, style, 0), UnitWords::tr("d"));
        return rest < 1 || rest > 23 ? joined(number_words(days, style, 0), UnitWords::tr("d"))
                                     : head + QChar(QChar::Nbsp) +
                                           joined(number_words(rest, style, 0), UnitWords::tr("h"));
    }
    if (std::abs(days) < 70) {
        return joined(number_words(days, style, 0), UnitWords::tr("days"));
    }
    return joined(number_words(duration.in_weeks(), style, 0), UnitWords::tr("weeks"));
}

} // namespace ui::text
