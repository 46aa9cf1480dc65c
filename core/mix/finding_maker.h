#pragma once

#include "core/model/finding.h"

#include <map>
#include <string>
#include <utility>

namespace core::mix {

/// A finding without a moment; `place` is a field of the recipe document or empty for the whole.
inline model::Finding make_finding(std::string code, model::Severity severity, std::string place,
                                   std::map<std::string, model::FindingValue> values = {}) {
    return {std::move(code),   severity,     std::move(place),
            std::move(values), std::nullopt, std::nullopt};
}

/// The place of a line: "lines[2]".
inline std::string place_of_line(std::size_t index) {
    return "lines[" + std::to_string(index) + "]";
}

} // namespace core::mix
