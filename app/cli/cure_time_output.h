#pragma once

#include "app/cli/finding_text.h"
#include "core/uptake/cure_time.h"

#include <string>

namespace app::cli {

/// One piece cured two ways; the question to the other way is which days are meant.
struct CureAnswer {
    core::uptake::CureRequest request;
    core::uptake::CureEstimate weighed;
    core::uptake::CureEstimate excess_salt;
    bool salt_given;
};

/// One JSON object: the request; for "weighed" and "excess_salt" salt_in_days and even_days
/// ({p10, p50, p90} or null), final_salt_percent, findings; "rules" [{id, method, low_days,
/// high_days, source, verified}]; "curve" of the weighed cure [{day, mean_percent,
/// centre_percent {p10, p50, p90}}].
std::string cure_time_json(const CureAnswer& answer);
std::string cure_time_words(const CureAnswer& answer);

} // namespace app::cli
