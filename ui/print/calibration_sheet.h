#pragma once

#include "core/model/batch.h"
#include "core/model/chamber.h"
#include "ui/print/sheet.h"
#include "ui/text/style.h"

#include <vector>

namespace ui::print {

struct CalibrationMonth {
    std::vector<core::model::Instrument> instruments;
    std::vector<core::model::CalibrationCheck> checks; ///< all there are; the month's are picked
    std::vector<core::model::Person> people;
    core::units::Day month; ///< any day of it, in the style's time zone
};

/// A month's sheet for the wall: every active instrument with how it is checked, the checks the
/// book holds for the month, when it was last checked before, and empty lines for the pen.
Sheet calibration_sheet(const CalibrationMonth& of, const text::Style& style);

} // namespace ui::print
