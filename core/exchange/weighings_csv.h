#pragma once

#include "core/base/result.h"
#include "core/exchange/csv_table.h"
#include "core/exchange/local_time.h"
#include "core/exchange/reject.h"
#include "core/model/piece.h"
#include "core/units/parse.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::exchange {

/// What a file cannot say about itself. Absent fields make a row that needs them a reject,
/// never a guess.
struct WeighingImport {
    std::optional<units::Zone> zone;          ///< for times written without one
    DayOrder day_order = DayOrder::unknown;   ///< unknown: proved by the file's own dates
    std::optional<units::MassUnit> bare_unit; ///< for weights without a unit anywhere
    model::WeighedState state = model::WeighedState::raw; ///< for rows that do not say
    units::Mass tare = units::Mass::grams(0);             ///< for rows that do not say
    units::Mass max_mass = units::Mass::kilograms(500);   ///< heavier is a typing slip
    CsvLimits limits{};
};

/// A weighing of the piece named `piece` (its code in the file); `weighing.piece` is unassigned
/// until the book's pieces are matched.
struct ImportedWeighing {
    std::size_t line = 0;
    std::string piece;
    model::Weighing weighing;
    std::optional<units::Mass> spread; ///< one standard deviation, where the file tells one
    /// The batch's code where the file tells it: piece codes are used again once a piece is gone.
    std::string batch = {};
};

struct ImportedWeighings {
    std::vector<ImportedWeighing> weighings; ///< in the file's order
    std::vector<Reject> rejects;             ///< all faults of all rows left out
    std::vector<std::size_t> set_aside;      ///< lines that are sound but not for the curve:
                                             ///< amended or withdrawn entries, undated stages
    units::DecimalSign decimal = units::DecimalSign::either; ///< as the file's numbers prove
    DayOrder day_order = DayOrder::unknown;
    std::vector<std::string> unknown_columns; ///< column names that were not read
};

/// Reads a CSV file of weighings. Columns, in any order, by name (upper or lower case, blanks
/// for underscores):
///   piece        the piece's code (or: code, id)                              required
///   batch        its batch's code
///   taken_at     when (or: time, at, date_time; or date and clock)            required
///   weight_g     as the scale shows (or _kg, _oz, _lb; or weight with the unit in the cell)
///                                                                             required
///   tare_g       casing, net and hook on the scale with it (same unit doors)
///   state        raw, trimmed, cured, rinsed, cased, netted or coated
///   scale_step_g the scale's resolution
///   wet_surface  yes or no
///   status       stands, amended or withdrawn; only "stands" is taken
///   note         free text
/// Decimal commas are read where the file proves them (a comma followed by other than three
/// digits, or a file delimited by semicolons with no decimal point in any number). Fails only where
/// the file as a whole cannot be read: the faults of read_csv, and missing_column whose detail
/// lists every missing column.
base::Result<ImportedWeighings> read_weighings_csv(std::string_view bytes,
                                                   const WeighingImport& import = {});

/// One line of the written file.
struct WeighingLine {
    std::string piece;
    std::string batch;
    model::Weighing weighing;
};

/// Writes weighings in the form that read_weighings_csv reads, masses in grams to the milligram,
/// times in UTC, all entries with their status; texts neutralised (neutral_text). `net_g` is for
/// the reader's eyes and not read back.
std::string write_weighings_csv(const std::vector<WeighingLine>& lines);

/// The stable words of the `state` column.
std::string_view state_word(model::WeighedState state);
std::optional<model::WeighedState> state_from_word(std::string_view word);

} // namespace core::exchange
