#pragma once

#include <string>
#include <vector>

namespace tests::support {

/// A small comma-separated reference table: lines starting with # are notes, the first other
/// line names the columns. For test data of our own only (no quoting).
class CsvTable {
  public:
    /// Reads tests/reference/data/NAME; fails the running test when it is missing or ragged.
    static CsvTable reference(const std::string& name);

    [[nodiscard]] std::size_t rows() const { return rows_.size(); }
    [[nodiscard]] const std::vector<std::string>& columns() const { return columns_; }
    [[nodiscard]] const std::string& text(std::size_t row, const std::string& column) const;
    [[nodiscard]] bool has(std::size_t row, const std::string& column) const {
        return !text(row, column).empty();
    }
    [[nodiscard]] double number(std::size_t row, const std::string& column) const;

  private:
    std::vector<std::string> columns_;
    std::vector<std::vector<std::string>> rows_;
};

} // namespace tests::support
