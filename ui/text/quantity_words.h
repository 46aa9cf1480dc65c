#pragma once

#include "core/units/alcohol_by_volume.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "ui/text/style.h"

#include <optional>

/// Quantities in the person's own units and number format. `—` stands for what is not known.
/// The forms read back through core/units/parse.h with the same style.
namespace ui::text {

/// As finely as the quantity deserves: 741 g, 1.32 kg, 12.4 oz, 2 lb 3.5 oz. `step`, the
/// resolution of the scale it was read from, adds decimals where the scale has them: 2.47 g.
QString words(core::units::Mass mass, const Style& style,
              std::optional<core::units::Mass> step = {});
/// For small doses weighed on a fine scale: always in grams or ounces with `decimals`.
QString dose_words(core::units::Mass mass, const Style& style, int decimals = 1);
QString words(core::units::Length length, const Style& style);
QString words(core::units::Volume volume, const Style& style);
QString words(core::units::Temperature temperature, const Style& style);
QString words(core::units::TemperatureStep step, const Style& style);
QString words(core::units::RelativeHumidity humidity, const Style& style);
QString words(core::units::WaterActivity activity, const Style& style);
QString words(core::units::AlcoholByVolume alcohol, const Style& style);
/// A share as percent with `decimals`; below a tenth of a percent as ppm.
QString words(core::units::MassShare share, const Style& style, int decimals = 1);
QString ppm_words(core::units::MassShare share, const Style& style);
/// "3 d 4 h", "36 min", "11 weeks": the two largest useful units.
QString words(core::units::Duration duration, const Style& style);
QString number_words(double value, const Style& style, int decimals);

/// Written where nothing is known.
QString unknown();

template <class Q>
QString words_or_unknown(const std::optional<Q>& value, const Style& style) {
    return value ? words(*value, style) : unknown();
}

} // namespace ui::text
