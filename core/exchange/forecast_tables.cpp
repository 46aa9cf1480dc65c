#include "core/exchange/forecast_tables.h"

#include "core/exchange/csv_columns.h"
#include "core/units/parse.h"

#include <set>

namespace core::exchange {
namespace {

using base::ErrorCode;

/// One row being read: cells become values, what is wrong with them is collected.
class RowReader {
  public:
    RowReader(const CsvRow& row, units::ParseStyle style, std::vector<TableFault>& faults)
        : row_(&row), style_(style), faults_(&faults), before_(faults.size()) {}

    [[nodiscard]] bool sound() const { return faults_->size() == before_; }

    void fault(const Column& column, CellFault fault) {
        faults_->push_back({row_->line, column.name, std::string(cell_of(*row_, column)), fault});
    }

    std::string text(const Column& column) {
        const std::string_view cell = cell_of(*row_, column);
        if (cell.empty()) {
            fault(column, CellFault::missing);
        }
        return std::string(cell);
    }

    /// Absent when the column is, when the cell is empty and may be, or when it is at fault.
    std::optional<double> number(const std::optional<Column>& column, double low, double high,
                                 bool may_be_empty) {
        if (!column) {
            return {};
        }
        const std::string_view cell = cell_of(*row_, *column);
        if (cell.empty()) {
            if (!may_be_empty) {
                fault(*column, CellFault::missing);
            }
            return {};
        }
        const auto value = units::parse_number(cell, style_);
        if (!value) {
            fault(*column, value.error().code == ErrorCode::ambiguous_number
                               ? CellFault::ambiguous_number
                               : CellFault::not_a_number);
            return {};
        }
        if (*value < low || *value > high) {
            fault(*column, CellFault::out_of_range);
            return {};
        }
        return *value;
    }

    std::optional<units::Instant> time(const Column& column) {
        const std::string_view cell = cell_of(*row_, column);
        if (cell.empty()) {
            fault(column, CellFault::missing);
            return {};
        }
        const auto at = units::parse_instant(cell);
        if (!at) {
            fault(column, at.error().code == ErrorCode::unit_missing ? CellFault::time_zone_missing
                                                                     : CellFault::time_unreadable);
            return {};
        }
        return *at;
    }

  private:
    const CsvRow* row_;
    units::ParseStyle style_;
    std::vector<TableFault>* faults_;
    std::size_t before_;
};

/// Finds the named columns; fails with the list of those missing.
class Layout {
  public:
    explicit Layout(const CsvTable& table) : columns_(table) {}
    std::optional<Column> optional(std::string_view name) { return columns_.find({name}); }
    std::optional<Column> required(std::string_view name) {
        auto column = columns_.find({name});
        if (!column) {
            missing_ += (missing_.empty() ? "" : ", ") + std::string(name);
        }
        return column;
    }
    [[nodiscard]] base::Status complete() const {
        return missing_.empty() ? base::Status{} : base::fault(ErrorCode::missing_column, missing_);
    }

  private:
    Columns columns_;
    std::string missing_;
};

units::ParseStyle style_of(const CsvTable& table,
                           std::initializer_list<std::optional<Column>> numbers) {
    std::vector<Column> known;
    for (const auto& column : numbers) {
        if (column) {
            known.push_back(*column);
        }
    }
    return {decimal_sign(table, known)};
}

std::optional<model::Form> form_from(std::string_view word) {
    const std::string key = column_key(word);
    if (key == "slab") {
        return model::Form::slab;
    }
    if (key == "cylinder") {
        return model::Form::cylinder;
    }
    if (key == "round") {
        return model::Form::round;
    }
    if (key == "block") {
        return model::Form::block;
    }
    return {};
}

} // namespace

base::Result<Rows<PieceRow>> read_piece_table(std::string_view bytes) {
    const auto table = read_csv(bytes);
    if (!table) {
        return tl::unexpected(table.error());
    }
    Layout layout(*table);
    const auto piece = layout.required("piece");
    const auto thickness = layout.required("thickness_mm");
    const auto form = layout.required("form");
    const auto target = layout.required("target_loss_percent");
    const auto green = layout.optional("green_weight_g");
    const auto fat = layout.optional("fat_percent");
    if (auto complete = layout.complete(); !complete) {
        return tl::unexpected(complete.error());
    }
    const auto style = style_of(*table, {thickness, target, green, fat});
    Rows<PieceRow> out;
    std::set<std::string> seen;
    for (const CsvRow& row : table->rows) {
        RowReader read(row, style, out.faults);
        PieceRow p{.line = row.line, .target = units::MassShare::percent(0)};
        p.piece = read.text(*piece);
        if (const auto mm = read.number(thickness, 2, 1000, true)) {
            p.thickness = units::Length::millimetres(*mm);
        }
        if (const auto f = form_from(read.text(*form))) {
            p.form = *f;
        } else if (!cell_of(row, *form).empty()) {
            read.fault(*form, CellFault::unknown_form);
        }
        if (const auto percent = read.number(target, 0, 85, false)) {
            p.target = units::MassShare::percent(*percent);
            if (*percent <= 1) {
                read.fault(*target,
                           *percent > 0 ? CellFault::looks_like_fraction : CellFault::out_of_range);
            }
        }
        if (const auto g = read.number(green, 1, 1e6, true)) {
            p.green_weight = units::Mass::grams(*g);
        }
        if (const auto percent = read.number(fat, 0, 95, true)) {
            p.fat = units::MassShare::percent(*percent);
        }
        if (read.sound() && !seen.insert(p.piece).second) {
            read.fault(*piece, CellFault::repeated_piece);
        }
        if (read.sound()) {
            out.rows.push_back(std::move(p));
        }
    }
    return out;
}

base::Result<Rows<WeightRow>> read_weight_table(std::string_view bytes) {
    const auto table = read_csv(bytes);
    if (!table) {
        return tl::unexpected(table.error());
    }
    Layout layout(*table);
    const auto piece = layout.required("piece");
    const auto taken = layout.required("taken_at");
    const auto weight = layout.required("weight_g");
    if (auto complete = layout.complete(); !complete) {
        return tl::unexpected(complete.error());
    }
    const auto style = style_of(*table, {weight});
    Rows<WeightRow> out;
    for (const CsvRow& row : table->rows) {
        RowReader read(row, style, out.faults);
        const std::string name = read.text(*piece);
        const auto at = read.time(*taken);
        const auto grams = read.number(weight, 0.1, 1e6, false);
        if (read.sound()) {
            out.rows.push_back({row.line, name, *at, units::Mass::grams(*grams)});
        }
    }
    return out;
}

base::Result<Rows<ClimateRow>> read_climate_table(std::string_view bytes) {
    const auto table = read_csv(bytes);
    if (!table) {
        return tl::unexpected(table.error());
    }
    Layout layout(*table);
    const auto piece = layout.optional("piece");
    const auto taken = layout.required("taken_at");
    const auto celsius = layout.required("temp_c");
    const auto percent = layout.required("rh_percent");
    if (auto complete = layout.complete(); !complete) {
        return tl::unexpected(complete.error());
    }
    const auto style = style_of(*table, {celsius, percent});
    Rows<ClimateRow> out;
    for (const CsvRow& row : table->rows) {
        RowReader read(row, style, out.faults);
        const auto at = read.time(*taken);
        const auto t = read.number(celsius, -40, 90, false);
        const auto rh = read.number(percent, 0, 105, false);
        if (read.sound()) {
            out.rows.push_back({row.line, piece ? std::string(cell_of(row, *piece)) : std::string(),
                                *at, units::Temperature::celsius(*t),
                                units::RelativeHumidity::percent(*rh)});
        }
    }
    return out;
}

} // namespace core::exchange
