#pragma once

#include "core/model/finding.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace core::exchange {

/// Why a row of a file was left out. `reason_code` is the stable name; the sentence with the way
/// to mend it is made from that name (app/cli/reject_words.h, ui/text).
enum class RejectReason {
    cell_missing,   ///< the row ends before this column, or the cell is empty
    too_many_cells, ///< more cells than the header has: a delimiter inside a number or note
    time_unreadable,
    time_zone_missing,  ///< a local time, and no zone was given for the import
    day_order_unclear,  ///< 03/04/2026: day first or month first?
    no_such_local_time, ///< inside the hour that the clocks skip in spring
    mass_unreadable,
    mass_unit_missing, ///< neither the cell nor the column name says g, kg, oz or lb
    mass_ambiguous,    ///< "1,234": a thousand or a decimal?
    mass_not_positive,
    mass_out_of_range, ///< heavier than `max_mass`
    tare_not_below_weight,
    state_unknown,
    flag_unreadable,
    status_unknown,
    repeated,    ///< the same piece, time and weight as an earlier row
    contradicts, ///< the same piece and time as an earlier row, another weight
    day_unreadable,
    moisture_unreadable,
    moisture_out_of_range, ///< not above 0 and below 100 % of the wet mass
    spread_unreadable,
};

/// One cell at fault. A row may have several: all are told, not only the first.
struct Reject {
    std::size_t line = 0; ///< line of the file, from 1
    std::string column;   ///< column name as the file writes it
    std::string value;    ///< the cell as the file writes it
    RejectReason reason{};
    std::size_t other_line = 0; ///< repeated, contradicts: the earlier row; else 0
    friend bool operator==(const Reject&, const Reject&) = default;
};

/// "mass_ambiguous" and so on.
std::string_view reason_code(RejectReason reason);

/// The reject as a finding: code "import_" + reason_code, place "line N, column 'X'", values
/// line, column, value and, where there is one, other_line. Severity caution: the other rows
/// can still be taken.
model::Finding to_finding(const Reject& reject);

} // namespace core::exchange
