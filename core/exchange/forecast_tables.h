#pragma once

#include "core/base/result.h"
#include "core/exchange/csv_table.h"
#include "core/model/piece.h"
#include "core/units/length.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The three files that `saltloft forecast` reads. Columns are found by name, in any order; other
/// columns are ignored. Decimal points or commas as the file proves; comma, semicolon or tab
/// between cells; any line ends; a byte-order mark is dropped. A faulty row is left out and told;
/// a file as a whole fails only as read_csv does, or with missing_column (detail: all of them).
namespace core::exchange {

/// What is wrong with one cell. The sentence is made by the caller.
enum class CellFault {
    missing,
    not_a_number,
    ambiguous_number, ///< "1,234": a thousand or a decimal?
    out_of_range,
    looks_like_fraction, ///< 0.35 where percent is asked
    unknown_form,
    time_unreadable,
    time_zone_missing,
    repeated_piece, ///< the piece was named in an earlier row
};

struct TableFault {
    std::size_t line = 0;
    std::string column;
    std::string value;
    CellFault fault{};
};

/// piece, thickness_mm, form, target_loss_percent [, green_weight_g] [, fat_percent]
struct PieceRow {
    std::size_t line = 0;
    std::string piece;
    std::optional<units::Length> thickness;  ///< 2 to 1000 mm; the cell may be empty
    model::Form form{};                      ///< slab, cylinder, round or block
    units::MassShare target;                 ///< above 1 to 85 %
    std::optional<units::Mass> green_weight; ///< above 0 g
    std::optional<units::MassShare> fat;     ///< 0 to 95 %
};

/// piece, taken_at, weight_g
struct WeightRow {
    std::size_t line = 0;
    std::string piece;
    units::Instant at;
    units::Mass weight; ///< above 0 g
};

/// [piece,] taken_at, temp_c, rh_percent
struct ClimateRow {
    std::size_t line = 0;
    std::string piece; ///< empty: for all pieces
    units::Instant at;
    units::Temperature temperature;   ///< -40 to 90 C
    units::RelativeHumidity humidity; ///< 0 to 105 %
};

template <class Row>
struct Rows {
    std::vector<Row> rows; ///< in the file's order
    std::vector<TableFault> faults;
};

base::Result<Rows<PieceRow>> read_piece_table(std::string_view bytes);
base::Result<Rows<WeightRow>> read_weight_table(std::string_view bytes);
base::Result<Rows<ClimateRow>> read_climate_table(std::string_view bytes);

} // namespace core::exchange
