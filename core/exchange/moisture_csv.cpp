#include "core/exchange/moisture_csv.h"

#include "core/exchange/csv_columns.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace core::exchange {
namespace {

using units::Duration;
using units::Mass;
using units::MassShare;

// A century either way: beyond it is another column, and no moment could hold it.
constexpr double most_days = 36525;

struct Layout {
    std::optional<Column> piece, day, moisture, spread, stage;
};

struct Reading {
    std::size_t line;
    std::string piece;
    std::string stage;
    Duration day;
    MassShare moisture;
    std::optional<MassShare> spread;
};

base::Result<Layout> find_columns(Columns& columns) {
    Layout at;
    at.piece = columns.find({"piece", "formulation", "series", "sample"});
    at.day = columns.find({"day", "ripening_day", "drying_day", "days"});
    at.moisture = columns.find({"moisture_percent", "moisture_pct_wb", "moisture"});
    at.spread = columns.find({"sd", "spread", "standard_deviation"});
    at.stage = columns.find({"stage"});
    std::string missing;
    const auto need = [&](const std::optional<Column>& column, std::string_view name) {
        if (!column) {
            missing += (missing.empty() ? "" : ", ") + std::string(name);
        }
    };
    need(at.piece, "piece");
    need(at.day, "day");
    need(at.moisture, "moisture_percent");
    if (!missing.empty()) {
        return base::fault(base::ErrorCode::missing_column, missing);
    }
    return at;
}

std::optional<Reading> read_row(const CsvRow& row, const Layout& at, units::ParseStyle style,
                                RowFaults& faults) {
    Reading reading{
        row.line, plain_text(cell_of(row, *at.piece)), {}, Duration::days(0), MassShare::percent(0),
        {}};
    if (reading.piece.empty()) {
        faults.add(RejectReason::cell_missing, *at.piece);
    }
    const auto day = units::parse_number(cell_of(row, *at.day), style);
    if (day && std::abs(*day) <= most_days) {
        reading.day = Duration::days(*day);
    } else {
        faults.add(RejectReason::day_unreadable, *at.day);
    }
    const auto moisture = units::parse_mass_share(cell_of(row, *at.moisture), true, style);
    if (!moisture) {
        faults.add(RejectReason::moisture_unreadable, *at.moisture);
    } else if (*moisture <= MassShare::percent(0) || *moisture >= MassShare::percent(100)) {
        faults.add(RejectReason::moisture_out_of_range, *at.moisture);
    } else {
        reading.moisture = *moisture;
    }
    if (at.spread && !cell_of(row, *at.spread).empty()) {
        const auto spread = units::parse_mass_share(cell_of(row, *at.spread), true, style);
        if (spread && *spread >= MassShare::percent(0)) {
            reading.spread = *spread;
        } else {
            faults.add(RejectReason::spread_unreadable, *at.spread);
        }
    }
    if (at.stage) {
        reading.stage = plain_text(cell_of(row, *at.stage));
    }
    return faults.any() ? std::nullopt : std::optional(std::move(reading));
}

ImportedWeighing derive(const Reading& reading, const Reading& first,
                        const MoistureImport& import) {
    const double dry_share = 1.0 - reading.moisture.as_fraction();
    const Mass mass = import.start_mass * ((1.0 - first.moisture.as_fraction()) / dry_share);
    const model::Weighing weighing{{},
                                   {},
                                   import.day_zero + reading.day,
                                   mass,
                                   Mass::grams(0),
                                   import.state,
                                   {},
                                   false,
                                   reading.stage,
                                   {},
                                   {},
                                   false};
    ImportedWeighing imported{reading.line, reading.piece, weighing, {}};
    if (reading.spread) {
        imported.spread = mass * (reading.spread->as_fraction() / dry_share);
    }
    return imported;
}

} // namespace

double moisture_dry_basis(MassShare m) {
    return m.as_fraction() / (1.0 - m.as_fraction());
}

base::Result<ImportedWeighings> read_moisture_csv(std::string_view bytes,
                                                  const MoistureImport& import) {
    const auto table = read_csv(bytes, import.limits);
    if (!table) {
        return tl::unexpected(table.error());
    }
    Columns columns(*table);
    const auto at = find_columns(columns);
    if (!at) {
        return tl::unexpected(at.error());
    }
    ImportedWeighings out;
    out.unknown_columns = columns.unused();
    out.decimal = decimal_sign(*table, {*at->moisture});
    std::map<std::string, std::vector<Reading>> series; // by piece
    std::vector<std::string> order;                     // pieces as the file first names them
    for (const CsvRow& row : table->rows) {
        if (cell_of(row, *at->day).empty()) {
            out.set_aside.push_back(row.line);
            continue;
        }
        RowFaults faults(row, out.rejects);
        if (auto reading = read_row(row, *at, {out.decimal}, faults)) {
            const auto [found, is_new] = series.try_emplace(reading->piece);
            if (is_new) {
                order.push_back(reading->piece);
            }
            found->second.push_back(std::move(*reading));
        }
    }
    for (const std::string& piece : order) {
        std::vector<Reading>& readings = series[piece];
        std::stable_sort(readings.begin(), readings.end(),
                         [](const Reading& a, const Reading& b) { return a.day < b.day; });
        for (const Reading& reading : readings) {
            out.weighings.push_back(derive(reading, readings.front(), import));
        }
    }
    return out;
}

} // namespace core::exchange
