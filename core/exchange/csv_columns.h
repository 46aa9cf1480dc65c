#pragma once

#include "core/exchange/csv_table.h"
#include "core/exchange/reject.h"
#include "core/units/parse.h"

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::exchange {

/// A column of a table found by one of its names. `name` is as the file writes it.
struct Column {
    std::size_t index = 0;
    std::string name;
    std::string key; ///< column_key(name)
};

/// The named columns of a table and which of them nobody asked for.
class Columns {
  public:
    explicit Columns(const CsvTable& table);
    /// The first column whose key is one of `keys`, in the order of `keys`.
    std::optional<Column> find(std::initializer_list<std::string_view> keys);
    [[nodiscard]] std::vector<std::string> unused() const;

  private:
    const CsvTable* table_;
    std::vector<std::string> keys_;
    std::vector<bool> used_;
};

/// The cell of `column` in `row`; empty where the row ends before it.
std::string_view cell_of(const CsvRow& row, const Column& column);

/// What a file's number cells prove about its decimal sign. `delimiter` decides where the cells
/// themselves do not: numbers with commas only in a file of semicolons have decimal commas,
/// numbers with points only in a file of commas have decimal points.
units::DecimalSign decimal_sign(const CsvTable& table, const std::vector<Column>& numbers);

/// Collects the rejects of one row.
class RowFaults {
  public:
    RowFaults(const CsvRow& row, std::vector<Reject>& rejects) : row_(&row), rejects_(&rejects) {}
    void add(RejectReason reason, const Column& column);
    void add_value(RejectReason reason, const Column& column, std::string value);
    [[nodiscard]] bool any() const { return count_ > 0; }

  private:
    const CsvRow* row_;
    std::vector<Reject>* rejects_;
    std::size_t count_ = 0;
};

} // namespace core::exchange
