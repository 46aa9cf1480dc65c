#pragma once

#include "core/model/finding.h"

#include <nlohmann/json.hpp>
#include <string>

namespace app::cli {

/// A finding as one English sentence. A code without words of its own comes out as the code and
/// its quantities, so nothing is ever hidden.
std::string words_for(const core::model::Finding& finding);

/// {"code", "severity", "place", "values": {...}, "source": {"title", "verified"} or null}.
/// Temperatures in C, shares and humidities in percent, durations in days, masses in g.
nlohmann::ordered_json json_of(const core::model::Finding& finding);
nlohmann::ordered_json json_of(const core::model::Findings& findings);

const char* severity_name(core::model::Severity severity);

/// "FDA, Bad Bug Book (1992)", with "unverified" behind where nobody read the issuer's text.
std::string source_words(const core::base::Source& source);
bool is_verified(const core::base::Source& source);

/// A number with at most `digits` significant digits and no trailing zeros: "9.6", "0.93".
std::string number(double value, int digits = 3);

} // namespace app::cli
