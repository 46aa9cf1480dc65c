#pragma once

#include "core/base/result.h"
#include "core/services/batch_record.h"
#include "core/services/book.h"

#include <string>

namespace app::window {

/// Writes one sheet of the record as PDF in the person's own units, language and time zone. Works
/// without a display. Returns the number of pages.
core::base::Result<int> print_batch(const core::services::BatchRecord& record,
                                    const std::string& sheet, const std::string& path);

/// Likewise, the calibration sheet of the month that `month` lies in.
core::base::Result<int> print_calibration(const core::services::Book& book, core::units::Day month,
                                          core::units::Instant now, const std::string& path);

} // namespace app::window
