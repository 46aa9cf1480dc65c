#include "core/exchange/csv_columns.h"

#include "core/base/ascii.h"

#include <algorithm>

namespace core::exchange {
namespace {

struct SignEvidence {
    bool comma = false; ///< a comma in some number
    bool point = false;
    bool comma_decimal = false; ///< one that can only be a decimal sign
    bool point_decimal = false;
};

/// Whether the sign at `at` cannot separate thousands: not exactly three digits follow, or only
/// a zero stands before it.
bool must_be_decimal(std::string_view text, std::size_t at) {
    std::size_t after = at + 1;
    while (after < text.size() && base::is_digit(text[after])) {
        ++after;
    }
    std::size_t before = at;
    while (before > 0 && base::is_digit(text[before - 1])) {
        --before;
    }
    return after - at - 1 != 3 || (at - before == 1 && text[before] == '0');
}

void see(SignEvidence& evidence, std::string_view text) {
    const std::size_t comma = text.rfind(',');
    const std::size_t point = text.rfind('.');
    const bool has_comma = comma != std::string_view::npos;
    const bool has_point = point != std::string_view::npos;
    evidence.comma = evidence.comma || has_comma;
    evidence.point = evidence.point || has_point;
    if (has_comma && has_point) { // the later one is the decimal sign
        (comma > point ? evidence.comma_decimal : evidence.point_decimal) = true;
    } else if (has_comma && must_be_decimal(text, comma)) {
        evidence.comma_decimal = true;
    } else if (has_point && must_be_decimal(text, point)) {
        evidence.point_decimal = true;
    }
}

} // namespace

Columns::Columns(const CsvTable& table) : table_(&table), used_(table.header.cells.size(), false) {
    for (const std::string& name : table.header.cells) {
        keys_.push_back(column_key(name));
    }
}

std::optional<Column> Columns::find(std::initializer_list<std::string_view> keys) {
    for (const std::string_view key : keys) {
        const auto found = std::find(keys_.begin(), keys_.end(), key);
        if (found != keys_.end()) {
            const auto index = static_cast<std::size_t>(found - keys_.begin());
            used_[index] = true;
            return Column{index, table_->header.cells[index], keys_[index]};
        }
    }
    return {};
}

std::vector<std::string> Columns::unused() const {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < used_.size(); ++i) {
        if (!used_[i] && !table_->header.cells[i].empty()) {
            names.push_back(table_->header.cells[i]);
        }
    }
    return names;
}

std::string_view cell_of(const CsvRow& row, const Column& column) {
    return column.index < row.cells.size() ? std::string_view(row.cells[column.index])
                                           : std::string_view();
}

units::DecimalSign decimal_sign(const CsvTable& table, const std::vector<Column>& numbers) {
    SignEvidence evidence;
    for (const CsvRow& row : table.rows) {
        for (const Column& column : numbers) {
            see(evidence, cell_of(row, column));
        }
    }
    if (evidence.comma_decimal != evidence.point_decimal) {
        return evidence.comma_decimal ? units::DecimalSign::comma : units::DecimalSign::point;
    }
    if (evidence.comma_decimal) {
        return units::DecimalSign::either; // both in one file: each number for itself
    }
    if (table.delimiter == ';' && evidence.comma && !evidence.point) {
        return units::DecimalSign::comma;
    }
    if (table.delimiter == ',' && evidence.point && !evidence.comma) {
        return units::DecimalSign::point;
    }
    return units::DecimalSign::either;
}

void RowFaults::add(RejectReason reason, const Column& column) {
    add_value(reason, column, std::string(cell_of(*row_, column)));
}

void RowFaults::add_value(RejectReason reason, const Column& column, std::string value) {
    rejects_->push_back({row_->line, column.name, std::move(value), reason});
    ++count_;
}

} // namespace core::exchange
