#include "core/exchange/reject.h"

#include <fmt/format.h>

namespace core::exchange {

std::string_view reason_code(RejectReason reason) {
    switch (reason) {
    case RejectReason::cell_missing:
        return "cell_missing";
    case RejectReason::too_many_cells:
        return "too_many_cells";
    case RejectReason::time_unreadable:
        return "time_unreadable";
    case RejectReason::time_zone_missing:
        return "time_zone_missing";
    case RejectReason::day_order_unclear:
        return "day_order_unclear";
    case RejectReason::no_such_local_time:
        return "no_such_local_time";
    case RejectReason::mass_unreadable:
        return "mass_unreadable";
    case RejectReason::mass_unit_missing:
        return "mass_unit_missing";
    case RejectReason::mass_ambiguous:
        return "mass_ambiguous";
    case RejectReason::mass_not_positive:
        return "mass_not_positive";
    case RejectReason::mass_out_of_range:
        return "mass_out_of_range";
    case RejectReason::tare_not_below_weight:
        return "tare_not_below_weight";
    case RejectReason::state_unknown:
        return "state_unknown";
    case RejectReason::flag_unreadable:
        return "flag_unreadable";
    case RejectReason::status_unknown:
        return "status_unknown";
    case RejectReason::repeated:
        return "repeated";
    case RejectReason::contradicts:
        return "contradicts";
    case RejectReason::day_unreadable:
        return "day_unreadable";
    case RejectReason::moisture_unreadable:
        return "moisture_unreadable";
    case RejectReason::moisture_out_of_range:
        return "moisture_out_of_range";
    case RejectReason::spread_unreadable:
        return "spread_unreadable";
    }
    return "unknown";
}

model::Finding to_finding(const Reject& reject) {
    model::Finding finding;
    finding.code = fmt::format("import_{}", reason_code(reject.reason));
    finding.severity = model::Severity::caution;
    finding.place = reject.column.empty()
                        ? fmt::format("line {}", reject.line)
                        : fmt::format("line {}, column '{}'", reject.line, reject.column);
    finding.values["line"] = static_cast<double>(reject.line);
    finding.values["column"] = reject.column;
    finding.values["value"] = reject.value;
    if (reject.other_line != 0) {
        finding.values["other_line"] = static_cast<double>(reject.other_line);
    }
    return finding;
}

} // namespace core::exchange
