#include "tests/support/csv_table.h"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <limits>
#include <stdexcept>

namespace tests::support {

namespace {

std::vector<std::string> split(const std::string& line) {
    std::vector<std::string> fields{""};
    for (const char c : line) {
        if (c == ',') {
            fields.emplace_back();
        } else if (c != '\r') {
            fields.back().push_back(c);
        }
    }
    return fields;
}

} // namespace

CsvTable CsvTable::reference(const std::string& name) {
    const std::string path = std::string(SALTLOFT_TEST_DATA_DIR) + "/" + name;
    std::ifstream file(path);
    if (!file) {
        throw std::runtime_error("no reference table " + path);
    }
    CsvTable table;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#') {
            continue;
        }
        auto fields = split(line);
        if (table.columns_.empty()) {
            table.columns_ = std::move(fields);
        } else if (fields.size() == table.columns_.size()) {
            table.rows_.push_back(std::move(fields));
        } else {
            throw std::runtime_error("ragged row in " + path + ": " + line);
        }
    }
    if (table.rows_.empty()) {
        throw std::runtime_error("empty reference table " + path);
    }
    return table;
}

const std::string& CsvTable::text(std::size_t row, const std::string& column) const {
    const auto at = std::find(columns_.begin(), columns_.end(), column);
    if (at == columns_.end()) {
        throw std::runtime_error("no column " + column);
    }
    return rows_.at(row).at(static_cast<std::size_t>(at - columns_.begin()));
}

double CsvTable::number(std::size_t row, const std::string& column) const {
    const std::string& field = text(row, column);
    if (field == "inf") {
        return std::numeric_limits<double>::infinity();
    }
    char* end = nullptr;
    const double value = std::strtod(field.c_str(), &end);
    if (field.empty() || *end != '\0') {
        throw std::runtime_error("not a number in column " + column + ": '" + field + "'");
    }
    return value;
}

} // namespace tests::support
