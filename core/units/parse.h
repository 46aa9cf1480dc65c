#pragma once

#include "core/base/result.h"
#include "core/units/alcohol_by_volume.h"
#include "core/units/length.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"
#include "core/units/volume.h"

#include <optional>
#include <string_view>

/// The doors through which typed or filed text becomes a quantity. All accept either decimal
/// sign ("2.5 kg", "2,5 kg"), common fractions ("3 1/2 oz", "3½ oz"), sums of falling units
/// ("1 lb 3 1/2 oz"), any spacing, and unit names in any case where the case carries no meaning.
/// A number that could be read two ways ("1,234" - a thousand or a decimal) fails with
/// ambiguous_number rather than guess, unless it has the decimal sign that `style` names. The other
/// sign stays ambiguous under a style too: "1.234 kg" may be a thousand in German, or copied off a
/// scale. Under DecimalSign::either a single point is the decimal sign, as in files and scripts.
/// Thousands may be set apart by a blank or an apostrophe. NaN and infinities are not_a_number.
/// Whatever is left over is trailing_text with the leftover as detail; a known unit of another kind
/// is wrong_kind.
namespace core::units {

enum class DecimalSign { either, point, comma };

struct ParseStyle {
    DecimalSign decimal = DecimalSign::either;
};

base::Result<double> parse_number(std::string_view text, ParseStyle style = {});

enum class MassUnit { gram, kilogram, milligram, ounce, pound };
enum class TemperatureUnit { celsius, fahrenheit, kelvin };
enum class LengthUnit { millimetre, centimetre, inch };
enum class VolumeUnit { millilitre, litre, us_fluid_ounce, us_gallon };

/// `bare` is the unit of a number written without one; without it such a number is unit_missing.
/// Masses, lengths and volumes must not be negative (out_of_range).
base::Result<Mass> parse_mass(std::string_view text, std::optional<MassUnit> bare = {},
                              ParseStyle style = {});
base::Result<Length> parse_length(std::string_view text, std::optional<LengthUnit> bare = {},
                                  ParseStyle style = {});
base::Result<Volume> parse_volume(std::string_view text, std::optional<VolumeUnit> bare = {},
                                  ParseStyle style = {});
base::Result<Temperature> parse_temperature(std::string_view text,
                                            std::optional<TemperatureUnit> bare = {},
                                            ParseStyle style = {});
/// "2.5 %", "25 g/kg", "156 ppm", "156 mg/kg"; a bare number is unit_missing unless
/// `bare_is_percent`. Also "g/100 g", "oz/100 lb". May exceed 100 % (brine on meat); not negative.
base::Result<MassShare> parse_mass_share(std::string_view text, bool bare_is_percent = false,
                                         ParseStyle style = {});
/// "75 %", "75 % RH", "75"; 0 to 100 %, else out_of_range.
base::Result<RelativeHumidity> parse_relative_humidity(std::string_view text,
                                                       ParseStyle style = {});
/// "40 %", "40 % ABV", "80 proof US", "70 proof UK"; "proof" alone is wrong_kind since the two
/// differ. 0 to 100 % ABV.
base::Result<AlcoholByVolume> parse_alcohol(std::string_view text, ParseStyle style = {});
/// "36 h", "3 d 12 h", "90 min"; 0 to 1000 years, else out_of_range. A month is unknown_unit.
base::Result<Duration> parse_duration(std::string_view text, ParseStyle style = {});
/// ISO 8601 date and time with a zone: "2026-03-01T18:30:00+01:00", "...Z"; seconds optional;
/// a blank may stand for the T. Without a zone: unit_missing.
base::Result<Instant> parse_instant(std::string_view text);
/// ISO 8601 calendar date "2026-03-01"; not a real date: out_of_range.
base::Result<Day> parse_day(std::string_view text);

/// The text forms that the parsers above read back: "2026-03-01T17:30:00Z", "2026-03-01".
std::string to_iso(Instant at);
std::string to_iso(Day day);

} // namespace core::units
