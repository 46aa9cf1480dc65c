#include "app/cli/reject_words.h"

namespace app::cli {
namespace {

using core::exchange::RejectReason;

/// What is wrong and how to mend it; the value stands before.
const char* fault_and_mending(RejectReason reason) {
    switch (reason) {
    case RejectReason::cell_missing:
        return "is missing; fill the cell in or remove the line";
    case RejectReason::too_many_cells:
        return "is one cell too many; put text or numbers that hold the delimiter in quotes";
    case RejectReason::time_unreadable:
        return "is no moment; write it like 2026-03-01T18:30+01:00";
    case RejectReason::time_zone_missing:
        return "has no time zone; add one like +01:00, or give --zone Europe/Rome";
    case RejectReason::day_order_unclear:
        return "could be day first or month first; write 2026-03-04, or give --day-order";
    case RejectReason::no_such_local_time:
        return "does not exist: the clocks skip that hour in spring; correct the hour";
    case RejectReason::mass_unreadable:
        return "is no weight; write it like 812.5, 812,5 g or 1 lb 12 oz";
    case RejectReason::mass_unit_missing:
        return "has no unit; name the column weight_g, write 812 g, or give --unit g";
    case RejectReason::mass_ambiguous:
        return "could be a thousand or a decimal; write 1234 or 1.234";
    case RejectReason::mass_not_positive:
        return "is not above zero; correct the weight";
    case RejectReason::mass_out_of_range:
        return "is heavier than any piece; check the unit";
    case RejectReason::tare_not_below_weight:
        return "is a tare as heavy as the weight; check which is which";
    case RejectReason::state_unknown:
        return "is no state; use raw, trimmed, cured, rinsed, cased, netted or coated";
    case RejectReason::flag_unreadable:
        return "is neither yes nor no";
    case RejectReason::status_unknown:
        return "is no status; use stands, amended or withdrawn";
    case RejectReason::repeated:
        return "repeats an earlier line and was not taken twice";
    case RejectReason::contradicts:
        return "contradicts an earlier line of the same piece and moment; keep the right one";
    case RejectReason::day_unreadable:
        return "is no number of days";
    case RejectReason::moisture_unreadable:
        return "is no moisture; write percent of the wet weight, like 57.2";
    case RejectReason::moisture_out_of_range:
        return "is not above 0 and below 100 %";
    case RejectReason::spread_unreadable:
        return "is no standard deviation; write it in percentage points, like 1.9";
    }
    return "could not be read";
}

} // namespace

std::string words_for(const core::exchange::Reject& reject) {
    std::string text = "line " + std::to_string(reject.line);
    if (!reject.column.empty()) {
        text += ", column '" + reject.column + "'";
    }
    text += ": '" + reject.value + "' " + fault_and_mending(reject.reason);
    if (reject.other_line != 0) {
        text += " (line " + std::to_string(reject.other_line) + ")";
    }
    return text + ".";
}

} // namespace app::cli
