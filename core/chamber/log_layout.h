#pragma once

#include "core/chamber/log_dialect.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The steps of detect_dialect that look at a sample as a table. Not for other callers.
namespace core::chamber {

/// A sample cut into cells by one separator. Ragged and unreadable lines are among the rows.
struct SampleTable {
    char separator = ',';
    std::vector<std::vector<std::string>> rows; ///< all lines, in order
    std::vector<bool> starts_piece; ///< row begins a piece of the file: no step to the row before
    std::size_t head_rows = 0;      ///< rows of the file's start: only they hold a heading
    std::size_t columns = 0;        ///< the commonest number of cells, at least 1
    double regularity = 0;          ///< share of the rows that have it
};

/// Where and how the moments are written.
struct StampPlace {
    StampForm form = StampForm::year_month_day;
    std::size_t column = 0;
    std::optional<std::size_t> time_column;
    double share = 0; ///< of the table's regular rows that read so
};

SampleTable cut_sample(const std::vector<std::vector<std::string_view>>& pieces, char separator);

/// All readings of the moments that hold for at least 0.9 times as many rows as the best one,
/// best first. Empty when no column holds moments.
std::vector<StampPlace> stamp_places(const SampleTable& table);

/// Whether the rows' cells in `place` read as a moment.
bool is_data_row(const std::vector<std::string>& row, const StampPlace& place);

/// Of the regular rows from the first with a moment on, the share that has one.
double share_after_heading(const SampleTable& table, const StampPlace& place);

/// Steps between neighbouring rows under one reading of the moments.
struct StepCount {
    int forward = 0;
    int backward = 0;
    int jumps = 0; ///< against the log's direction, or 50 times the usual step and over 12 h
    std::int64_t latest = 0; ///< the latest local second read
};
StepCount count_steps(const SampleTable& table, const StampPlace& place);

/// What a column's cells hold, over the data rows.
struct ColumnProfile {
    int cells = 0;
    int blanks = 0;
    int numbers = 0; ///< with the chosen decimal sign
    double low = 0;
    double high = 0;
    double median = 0;
    bool counter = false; ///< each number one more (or less) than the last: a line number
    [[nodiscard]] bool is_numeric() const {
        return numbers > 0 && (numbers + blanks) * 10 >= cells * 6;
    }
};
ColumnProfile profile(const SampleTable& table, const StampPlace& place, std::size_t column,
                      char decimal_sign);

/// Cells, outside the stamp, with a decimal point and with a decimal comma.
struct DecimalCount {
    int points = 0;
    int commas = 0;
};
DecimalCount count_decimals(const SampleTable& table, const StampPlace& place);

} // namespace core::chamber
