#pragma once

#include "core/exchange/reject.h"

#include <string>

namespace app::cli {

/// "line 14, column 'weight': '1,234' could be a thousand or a decimal; write 1234 or 1.234."
std::string words_for(const core::exchange::Reject& reject);

} // namespace app::cli
