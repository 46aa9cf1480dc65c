#include "ui/edits/quantity_fields.h"

#include "core/units/parse.h"
#include "ui/text/quantity_words.h"
#include "ui/text/unit_words.h"

namespace ui::edits {
namespace {

using namespace core::units;
using core::base::Result;
using text::Style;

// How each kind is read, written and labelled. One row a kind.
template <class Quantity>
struct Kind;

template <>
struct Kind<Mass> {
    static Result<Mass> parse(const std::string& t, const Style& s) {
        return parse_mass(t, bare_mass_unit(s), parse_style(s));
    }
    static QString unit(const Style& s) { return mass_unit_name(s); }
    static QString write(Mass v, const Style& s) { return text::words(v, s); }
};
template <>
struct Kind<Length> {
    static Result<Length> parse(const std::string& t, const Style& s) {
        return parse_length(t, bare_length_unit(s), parse_style(s));
    }
    static QString unit(const Style& s) { return length_unit_name(s); }
    static QString write(Length v, const Style& s) { return text::words(v, s); }
};
template <>
struct Kind<Volume> {
    static Result<Volume> parse(const std::string& t, const Style& s) {
        return parse_volume(t, bare_volume_unit(s), parse_style(s));
    }
    static QString unit(const Style& s) { return volume_unit_name(s); }
    static QString write(Volume v, const Style& s) { return text::words(v, s); }
};
template <>
struct Kind<Temperature> {
    static Result<Temperature> parse(const std::string& t, const Style& s) {
        return parse_temperature(t, bare_temperature_unit(s), parse_style(s));
    }
    static QString unit(const Style& s) { return temperature_unit_name(s); }
    static QString write(Temperature v, const Style& s) { return text::words(v, s); }
};
template <>
struct Kind<RelativeHumidity> {
    static Result<RelativeHumidity> parse(const std::string& t, const Style& s) {
        return parse_relative_humidity(t, parse_style(s));
    }
    static QString unit(const Style&) { return text::humidity_unit_name(); }
    static QString write(RelativeHumidity v, const Style& s) { return text::words(v, s); }
};
template <>
struct Kind<Duration> {
    static Result<Duration> parse(const std::string& t, const Style& s) {
        return parse_duration(t, parse_style(s));
    }
    static QString unit(const Style&) { return {}; }
    static QString write(Duration v, const Style& s) { return text::words(v, s); }
};
template <>
struct Kind<MassShare> {
    static Result<MassShare> parse(const std::string& t, const Style& s) {
        return parse_mass_share(t, true, parse_style(s));
    }
    static QString unit(const Style&) { return QStringLiteral("%"); }
    static QString write(MassShare v, const Style& s) {
        // As few decimals as say the same: "35 %", "2.75 %", "0.25 %".
        for (int decimals = 0; decimals < 3; ++decimals) {
            const double scale = decimals == 0 ? 1 : decimals == 1 ? 10 : 100;
            const double percent = v.in_percent() * scale;
            if (std::abs(percent - std::round(percent)) < 1e-6) {
                return text::number_words(v.in_percent(), s, decimals) + QChar(QChar::Nbsp) +
                       QLatin1Char('%');
            }
        }
        return text::number_words(v.in_percent(), s, 3) + QChar(QChar::Nbsp) + QLatin1Char('%');
    }
};
template <>
struct Kind<double> {
    static Result<double> parse(const std::string& t, const Style& s) {
        return parse_number(t, parse_style(s));
    }
    static QString unit(const Style&) { return {}; }
    static QString write(double v, const Style& s) {
        const bool whole = v == std::round(v);
        return text::number_words(v, s, whole ? 0 : 2);
    }
};

/// The parsers split on plain blanks; fields may hold the no-break blanks our own words use.
std::string plain(QString text) {
    text.replace(QChar(QChar::Nbsp), QLatin1Char(' '));
    return text::in_parsed_units(text.trimmed()).toStdString();
}

} // namespace

template <class Quantity>
QuantityField<Quantity>::QuantityField(const char* object_name, const QString& accessible_name,
                                       const Style& style, QWidget* parent)
    : EntryField(object_name, accessible_name, parent), style_(style) {
    set_unit(Kind<Quantity>::unit(style_));
}

template <class Quantity>
std::optional<Quantity> QuantityField<Quantity>::value() const {
    if (is_empty()) {
        return {};
    }
    const auto parsed = Kind<Quantity>::parse(plain(text()), style_);
    return parsed ? std::optional<Quantity>(*parsed) : std::nullopt;
}

template <class Quantity>
void QuantityField<Quantity>::set_value(std::optional<Quantity> value) {
    if (!value) {
        set_text({});
        return;
    }
    // Without the unit when it is the one beside the field.
    QString written = Kind<Quantity>::write(*value, style_);
    const QString unit = QChar(QChar::Nbsp) + Kind<Quantity>::unit(style_);
    if (unit.size() > 1 && written.endsWith(unit) &&
        written.count(QChar(QChar::Nbsp)) == unit.count(QChar(QChar::Nbsp))) {
        written.chop(unit.size());
    }
    set_text(written.replace(QChar(QChar::Nbsp), QLatin1Char(' ')));
}

template <class Quantity>
void QuantityField<Quantity>::set_style(const Style& style) {
    const auto held = value();
    style_ = style;
    set_unit(Kind<Quantity>::unit(style_));
    if (held) {
        set_value(held);
    }
}

template <class Quantity>
Result<QString> QuantityField<Quantity>::understood(const QString& text) const {
    const auto parsed = Kind<Quantity>::parse(plain(text), style_);
    if (!parsed) {
        return tl::unexpected(parsed.error());
    }
    return Kind<Quantity>::write(*parsed, style_);
}

template class QuantityField<Mass>;
template class QuantityField<Length>;
template class QuantityField<Volume>;
template class QuantityField<Temperature>;
template class QuantityField<RelativeHumidity>;
template class QuantityField<Duration>;
template class QuantityField<MassShare>;
template class QuantityField<double>;

} // namespace ui::edits
