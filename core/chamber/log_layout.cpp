#include "core/chamber/log_layout.h"

#include "core/chamber/log_cell.h"
#include "core/chamber/log_row.h"
#include "core/chamber/log_stamp.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>

namespace core::chamber {
namespace {

constexpr StampForm all_forms[] = {StampForm::year_month_day,     StampForm::day_month_year,
                                   StampForm::month_day_year,     StampForm::epoch_seconds,
                                   StampForm::epoch_milliseconds, StampForm::spreadsheet_days};

bool is_cell(const std::vector<std::string>& row, std::size_t column) {
    return column < row.size() && !row[column].empty();
}

/// Share of the regular rows for which `holds`.
template <class Holds>
double share_of_rows(const SampleTable& table, const Holds& holds) {
    int regular = 0;
    int held = 0;
    for (const auto& row : table.rows) {
        if (row.size() == table.columns) {
            ++regular;
            held += holds(row) ? 1 : 0;
        }
    }
    return regular == 0 ? 0.0 : static_cast<double>(held) / regular;
}

/// The column that holds times alone, best first; none below half of the rows.
std::optional<std::pair<std::size_t, double>> time_column(const SampleTable& table) {
    std::optional<std::pair<std::size_t, double>> best;
    for (std::size_t c = 0; c < table.columns; ++c) {
        const double share = share_of_rows(
            table, [&](const auto& row) { return read_time_of_day(row[c]).has_value(); });
        if (share > 0.5 && (!best || share > best->second)) {
            best = {c, share};
        }
    }
    return best;
}

std::optional<std::int64_t> local_seconds(const std::vector<std::string>& row,
                                          const StampPlace& place) {
    if (!is_cell(row, place.column)) {
        return std::nullopt;
    }
    const auto stamp = read_stamp(row[place.column], place.form);
    if (!stamp) {
        return std::nullopt;
    }
    if (!place.time_column) {
        return stamp->seconds - stamp->offset_seconds.value_or(0);
    }
    if (!is_cell(row, *place.time_column)) {
        return std::nullopt;
    }
    const auto time = read_time_of_day(row[*place.time_column]);
    return time ? std::optional(stamp->seconds + *time) : std::nullopt;
}

bool is_decimal(std::string_view text, char sign) {
    const auto at = text.find(sign);
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    return at != std::string_view::npos && at > 0 && digit(text[at - 1]) && at + 1 < text.size() &&
           digit(text[at + 1]) && cell_number(text, sign).has_value();
}

} // namespace

SampleTable cut_sample(const std::vector<std::vector<std::string_view>>& pieces, char separator) {
    SampleTable table;
    table.separator = separator;
    LogRow cutter(separator);
    std::map<std::size_t, int> counts;
    for (const auto& piece : pieces) {
        bool first = true;
        for (const auto line : piece) {
            cutter.cut(line);
            const auto& cells = cutter.cells();
            table.rows.emplace_back(cells.begin(), cells.end());
            table.starts_piece.push_back(first);
            first = false;
            if (!cells.empty()) {
                ++counts[cells.size()];
            }
        }
        if (&piece == &pieces.front()) {
            table.head_rows = table.rows.size();
        }
    }
    int most = 0;
    int all = 0;
    for (const auto& [size, count] : counts) {
        all += count;
        if (count >= most) { // of equals the wider: a short log may have as long a preamble
            most = count;
            table.columns = size;
        }
    }
    table.regularity = all == 0 ? 0.0 : static_cast<double>(most) / all;
    return table;
}

std::vector<StampPlace> stamp_places(const SampleTable& table) {
    std::vector<StampPlace> places;
    const auto time = time_column(table);
    for (std::size_t c = 0; c < table.columns; ++c) {
        for (const StampForm form : all_forms) {
            const double whole = share_of_rows(table, [&](const auto& row) {
                const auto stamp = read_stamp(row[c], form);
                return stamp && stamp->has_time;
            });
            if (whole > 0) {
                places.push_back({form, c, std::nullopt, whole});
            }
            if (!time || time->first == c) {
                continue;
            }
            const StampPlace split{form, c, time->first, 0};
            const double both = share_of_rows(table, [&](const auto& row) {
                const auto stamp = read_stamp(row[c], form);
                return stamp && !stamp->has_time && is_data_row(row, split);
            });
            if (both > 0) {
                places.push_back({form, c, time->first, both});
            }
        }
    }
    std::stable_sort(places.begin(), places.end(),
                     [](const auto& a, const auto& b) { return a.share > b.share; });
    const double least = places.empty() ? 0.0 : places.front().share * 0.9;
    std::erase_if(places, [&](const StampPlace& place) { return place.share < least; });
    return places;
}

bool is_data_row(const std::vector<std::string>& row, const StampPlace& place) {
    return local_seconds(row, place).has_value();
}

StepCount count_steps(const SampleTable& table, const StampPlace& place) {
    std::vector<std::int64_t> steps;
    // Not an optional: GCC 12 takes its unset value for used and warns.
    std::int64_t previous = 0;
    bool has_previous = false;
    StepCount count;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        if (table.starts_piece[i]) {
            has_previous = false;
        }
        const auto at = local_seconds(table.rows[i], place);
        if (!at) {
            continue;
        }
        count.latest = std::max(count.latest, *at);
        if (has_previous && *at != previous) {
            steps.push_back(*at - previous);
            ++(*at > previous ? count.forward : count.backward);
        }
        previous = *at;
        has_previous = true;
    }
    if (steps.empty()) {
        return count;
    }
    std::vector<std::int64_t> sizes(steps.size());
    std::transform(steps.begin(), steps.end(), sizes.begin(),
                   [](std::int64_t s) { return std::llabs(s); });
    std::nth_element(sizes.begin(), sizes.begin() + static_cast<std::ptrdiff_t>(sizes.size() / 2),
                     sizes.end());
    const std::int64_t usual = sizes[sizes.size() / 2];
    const bool down = count.backward > count.forward;
    for (const std::int64_t step : steps) {
        constexpr std::int64_t half_a_day = 43200;
        const bool far = std::llabs(step) > half_a_day && std::llabs(step) > 50 * usual;
        count.jumps += (step < 0) != down || far ? 1 : 0;
    }
    return count;
}

ColumnProfile profile(const SampleTable& table, const StampPlace& place, std::size_t column,
                      char decimal_sign) {
    ColumnProfile p;
    std::vector<double> numbers;
    int by_one = 0;
    for (const auto& row : table.rows) {
        // Ragged lines are the reader's to judge: their cells may be another column's.
        if (row.size() != table.columns || !is_data_row(row, place)) {
            continue;
        }
        ++p.cells;
        if (is_blank_cell(row[column])) {
            ++p.blanks;
            continue;
        }
        if (const auto number = cell_number(row[column], decimal_sign)) {
            if (!numbers.empty() && std::fabs(std::fabs(*number - numbers.back()) - 1.0) < 1e-9) {
                ++by_one;
            }
            numbers.push_back(*number);
        }
    }
    p.numbers = static_cast<int>(numbers.size());
    if (!numbers.empty()) {
        p.counter = p.numbers >= 3 && by_one * 10 >= (p.numbers - 1) * 9;
        std::sort(numbers.begin(), numbers.end());
        p.low = numbers.front();
        p.high = numbers.back();
        p.median = numbers[numbers.size() / 2];
    }
    return p;
}

double share_after_heading(const SampleTable& table, const StampPlace& place) {
    int rows = 0;
    int data = 0;
    for (const auto& row : table.rows) {
        const bool is_data = row.size() == table.columns && is_data_row(row, place);
        rows += is_data || (rows > 0 && row.size() == table.columns) ? 1 : 0;
        data += is_data ? 1 : 0;
    }
    return rows == 0 ? 0.0 : static_cast<double>(data) / rows;
}

DecimalCount count_decimals(const SampleTable& table, const StampPlace& place) {
    DecimalCount count;
    for (const auto& row : table.rows) {
        if (!is_data_row(row, place)) {
            continue;
        }
        for (std::size_t c = 0; c < row.size(); ++c) {
            if (c != place.column && c != place.time_column) {
                count.points += is_decimal(row[c], '.') ? 1 : 0;
                count.commas += is_decimal(row[c], ',') ? 1 : 0;
            }
        }
    }
    return count;
}

} // namespace core::chamber
