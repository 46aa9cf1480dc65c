#include "app/cli/forecast_input.h"

#include "core/exchange/forecast_tables.h"

#include <cerrno>
#include <cstring>
#include <fmt/format.h>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <sys/stat.h>

namespace app::cli {

namespace {

namespace exchange = core::exchange;
using exchange::CellFault;

tl::expected<std::string, std::string> read_file(const std::string& path) {
    struct stat info {};
    if (::stat(path.c_str(), &info) == 0 && S_ISDIR(info.st_mode)) {
        return tl::unexpected(fmt::format("'{}' is a folder; give the CSV file itself.", path));
    }
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        return tl::unexpected(fmt::format("cannot open '{}' ({}); check the name and that you may "
                                          "read it.",
                                          path, std::strerror(errno)));
    }
    std::ostringstream bytes;
    bytes << file.rdbuf();
    if (file.bad()) {
        return tl::unexpected(
            fmt::format("reading '{}' failed half-way; copy the file again.", path));
    }
    return bytes.str();
}

std::string file_sentence(const std::string& path, const core::base::Error& error) {
    using core::base::ErrorCode;
    switch (error.code) {
    case ErrorCode::empty_input:
        return fmt::format("'{}' is empty; it needs a header line and a line a row.", path);
    case ErrorCode::missing_column:
        return fmt::format("'{}' lacks the column {}; name it in the header line.", path,
                           error.detail);
    case ErrorCode::out_of_range:
        return fmt::format("'{}' is larger than can be read in one go; split it.", path);
    default:
        return fmt::format("'{}' is not a readable CSV file ({}{}{}); save it as CSV in UTF-8.",
                           path, error.where, error.where.empty() ? "" : ": ", error.detail);
    }
}

/// What was wrong and how to mend it, after "line N, column 'X': ".
std::string fault_words(const exchange::TableFault& f) {
    std::string cell = fmt::format("'{}'", f.value);
    switch (f.fault) {
    case CellFault::missing:
        return "the cell is empty; fill it in or remove the line.";
    case CellFault::not_a_number:
        return cell + " is not a number; write digits only, as in 1234.5.";
    case CellFault::ambiguous_number:
        return cell + " could be a thousand or a decimal; write it without a thousands mark.";
    case CellFault::out_of_range:
        return cell + (f.column.find("weight") != std::string::npos
                           ? " cannot be a weight; it must be above 0 g."
                           : " is outside what can be; check the number and its unit.");
    case CellFault::looks_like_fraction:
        return cell + " looks like a fraction; write percent, as in 35.";
    case CellFault::unknown_form:
        return cell + " is no form; write slab, cylinder, round or block.";
    case CellFault::time_unreadable:
        return cell + " is not a time; write ISO 8601, as in 2026-03-01T18:30:00+01:00.";
    case CellFault::time_zone_missing:
        return cell + " has no zone; add it, as in 2026-03-01T18:30:00+01:00 or ...Z.";
    case CellFault::repeated_piece:
        return cell + " was named in an earlier line; keep one line a piece.";
    }
    return cell;
}

/// Reads one table; its faulty rows become complaints.
template <class Row, class Reader>
tl::expected<std::vector<Row>, std::string> rows_of(const std::string& path, Reader reader,
                                                    std::vector<std::string>& complaints) {
    const auto bytes = read_file(path);
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    auto table = reader(*bytes);
    if (!table) {
        return tl::unexpected(file_sentence(path, table.error()));
    }
    for (const exchange::TableFault& f : table->faults) {
        complaints.push_back(
            fmt::format("'{}' line {}, column '{}': {}", path, f.line, f.column, fault_words(f)));
    }
    return std::move(table->rows);
}

/// Rows that name a piece which the pieces file does not have: told once a piece.
template <class Row>
void tell_strangers(const std::string& path, const std::vector<Row>& rows,
                    const std::map<std::string, std::size_t>& index,
                    std::vector<std::string>& complaints) {
    std::set<std::string> told;
    for (const Row& r : rows) {
        if (!r.piece.empty() && !index.contains(r.piece) && told.insert(r.piece).second) {
            complaints.push_back(fmt::format("'{}' line {}: piece '{}' is not in the pieces file; "
                                             "add it there or remove its lines.",
                                             path, r.line, r.piece));
        }
    }
}

} // namespace

tl::expected<ForecastInput, std::string> read_forecast_input(const std::string& pieces,
                                                             const std::string& weights,
                                                             const std::string& climate) {
    ForecastInput input;
    const auto piece_rows =
        rows_of<exchange::PieceRow>(pieces, exchange::read_piece_table, input.complaints);
    if (!piece_rows) {
        return tl::unexpected(piece_rows.error());
    }
    const auto weight_rows =
        rows_of<exchange::WeightRow>(weights, exchange::read_weight_table, input.complaints);
    if (!weight_rows) {
        return tl::unexpected(weight_rows.error());
    }
    std::vector<exchange::ClimateRow> climate_rows;
    if (!climate.empty()) {
        auto rows =
            rows_of<exchange::ClimateRow>(climate, exchange::read_climate_table, input.complaints);
        if (!rows) {
            return tl::unexpected(rows.error());
        }
        climate_rows = std::move(*rows);
    }
    std::map<std::string, std::size_t> index;
    for (const exchange::PieceRow& p : *piece_rows) {
        index.emplace(p.piece, input.names.size());
        input.names.push_back(p.piece);
        core::drying::ForecastRequest r;
        r.traits = {.form = p.form, .thickness = p.thickness, .fat = p.fat};
        r.target = p.target;
        r.reference = p.green_weight;
        input.requests.push_back(std::move(r));
    }
    tell_strangers(weights, *weight_rows, index, input.complaints);
    tell_strangers(climate, climate_rows, index, input.complaints);
    for (const exchange::WeightRow& w : *weight_rows) {
        if (const auto at = index.find(w.piece); at != index.end()) {
            input.requests[at->second].weighings.push_back({w.at, w.weight, {}});
        }
    }
    for (const exchange::ClimateRow& c : climate_rows) {
        const core::drying::AirReading reading{c.at, c.temperature, c.humidity};
        if (c.piece.empty()) {
            for (auto& request : input.requests) {
                request.air.push_back(reading);
            }
        } else if (const auto at = index.find(c.piece); at != index.end()) {
            input.requests[at->second].air.push_back(reading);
        }
    }
    return input;
}

} // namespace app::cli
