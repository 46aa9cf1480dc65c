#include "core/exchange/weighings_csv.h"

#include "core/exchange/csv_columns.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <map>
#include <tuple>
#include <utility>

namespace core::exchange {
namespace {

using base::ErrorCode;
using model::WeighedState;
using model::Weighing;
using units::Mass;
using units::MassUnit;

constexpr std::array<std::pair<WeighedState, std::string_view>, 7> state_words = {{
    {WeighedState::raw, "raw"},
    {WeighedState::trimmed, "trimmed"},
    {WeighedState::cured, "cured"},
    {WeighedState::rinsed, "rinsed"},
    {WeighedState::cased, "cased"},
    {WeighedState::netted, "netted"},
    {WeighedState::coated, "coated"},
}};

/// A mass column and the unit its name says, if any.
struct MassColumn {
    Column column;
    std::optional<MassUnit> unit;
};

std::optional<MassUnit> unit_of(std::string_view key) {
    const std::size_t last = key.rfind('_');
    const std::string_view unit = last == std::string_view::npos ? "" : key.substr(last + 1);
    if (unit == "g" || unit == "grams")
        return MassUnit::gram;
    if (unit == "kg")
        return MassUnit::kilogram;
    if (unit == "mg")
        return MassUnit::milligram;
    if (unit == "oz")
        return MassUnit::ounce;
    if (unit == "lb" || unit == "lbs")
        return MassUnit::pound;
    return {};
}

std::optional<MassColumn> as_mass(std::optional<Column> column, std::optional<MassUnit> bare) {
    if (!column) {
        return {};
    }
    const auto said = unit_of(column->key);
    return MassColumn{std::move(*column), said ? said : bare};
}

struct Layout {
    std::optional<Column> piece, batch, time, clock, state, flag, status, note;
    std::optional<MassColumn> weight, tare, step;
};

Layout find_columns(Columns& columns, const WeighingImport& import) {
    Layout at;
    at.piece = columns.find({"piece", "piece_code", "code", "id"});
    at.time =
        columns.find({"taken_at", "time_taken", "date_time", "datetime", "timestamp", "when"});
    if (!at.time) {
        at.time = columns.find({"date", "day"});
        at.clock = columns.find({"clock", "time", "hour"});
        if (!at.time) {
            at.time = std::exchange(at.clock, std::nullopt);
        }
    }
    at.weight = as_mass(
        columns.find({"weight_g", "weight_kg", "weight_oz", "weight_lb", "weight", "on_scale_g",
                      "on_scale_kg", "on_scale", "mass_g", "mass_kg", "mass"}),
        import.bare_unit);
    at.tare = as_mass(columns.find({"tare_g", "tare_kg", "tare_oz", "tare_lb", "tare"}),
                      at.weight ? at.weight->unit : import.bare_unit);
    at.step =
        as_mass(columns.find({"scale_step_g", "scale_step_kg", "scale_step_oz", "scale_step"}),
                at.weight ? at.weight->unit : import.bare_unit);
    at.state = columns.find({"state", "weighed_state"});
    at.flag = columns.find({"wet_surface", "wet"});
    at.status = columns.find({"status"});
    at.note = columns.find({"note", "notes", "remark"});
    at.batch = columns.find({"batch", "batch_code"});
    columns.find({"net_g"}); // of our own files, for the reader's eyes
    return at;
}

base::Status check_required(const Layout& at) {
    std::string missing;
    const auto need = [&](bool there, std::string_view name) {
        if (!there) {
            missing += (missing.empty() ? "" : ", ") + std::string(name);
        }
    };
    need(at.piece.has_value(), "piece");
    need(at.time.has_value(), "taken_at");
    need(at.weight.has_value(), "weight_g");
    if (!missing.empty()) {
        return base::fault(ErrorCode::missing_column, missing);
    }
    return {};
}

RejectReason reason_of(ErrorCode code) {
    switch (code) {
    case ErrorCode::unit_missing:
        return RejectReason::mass_unit_missing;
    case ErrorCode::ambiguous_number:
        return RejectReason::mass_ambiguous;
    case ErrorCode::out_of_range:
        return RejectReason::mass_out_of_range;
    default:
        return RejectReason::mass_unreadable;
    }
}

RejectReason reason_of(TimeFault fault) {
    switch (fault) {
    case TimeFault::zone_missing:
        return RejectReason::time_zone_missing;
    case TimeFault::order_unclear:
        return RejectReason::day_order_unclear;
    case TimeFault::no_such_local_time:
        return RejectReason::no_such_local_time;
    case TimeFault::unreadable:
        break;
    }
    return RejectReason::time_unreadable;
}

std::optional<bool> flag_from(std::string_view cell) {
    const std::string word = column_key(cell);
    if (word == "yes" || word == "y" || word == "true" || word == "1")
        return true;
    if (word == "no" || word == "n" || word == "false" || word == "0" || word.empty())
        return false;
    return {};
}

Weighing blank_weighing(const WeighingImport& import) {
    return {{},
            {},
            units::Instant::from_unix_seconds(0),
            Mass::grams(0),
            import.tare,
            import.state,
            {},
            false,
            {},
            {},
            {},
            false};
}

/// Reads the rows of one table; keeps what the rows share.
class Reader {
  public:
    Reader(const CsvTable& table, Layout layout, const WeighingImport& import,
           ImportedWeighings& out)
        : table_(table), at_(std::move(layout)), import_(import), out_(out) {}

    void run() {
        learn_conventions();
        for (const CsvRow& row : table_.rows) {
            read_row(row);
        }
    }

  private:
    void learn_conventions() {
        std::vector<Column> numbers{at_.weight->column};
        if (at_.tare)
            numbers.push_back(at_.tare->column);
        if (at_.step)
            numbers.push_back(at_.step->column);
        out_.decimal = decimal_sign(table_, numbers);
        out_.day_order = import_.day_order;
        if (out_.day_order == DayOrder::unknown) {
            DayOrderEvidence evidence;
            for (const CsvRow& row : table_.rows) {
                evidence.see(cell_of(row, *at_.time));
            }
            out_.day_order = evidence.verdict();
        }
    }

    std::optional<Mass> mass(const CsvRow& row, const MassColumn& from, RowFaults& faults) {
        const auto read = units::parse_mass(cell_of(row, from.column), from.unit, {out_.decimal});
        if (!read) {
            faults.add(reason_of(read.error().code), from.column);
            return {};
        }
        if (*read > import_.max_mass) {
            faults.add(RejectReason::mass_out_of_range, from.column);
            return {};
        }
        return *read;
    }

    std::optional<Mass> weight(const CsvRow& row, RowFaults& faults) {
        if (cell_of(row, at_.weight->column).empty()) {
            faults.add(RejectReason::cell_missing, at_.weight->column);
            return {};
        }
        const auto read = mass(row, *at_.weight, faults);
        if (read && *read <= Mass::grams(0)) {
            faults.add(RejectReason::mass_not_positive, at_.weight->column);
        }
        return read;
    }

    std::optional<units::Instant> time(const CsvRow& row, RowFaults& faults) {
        std::string text(cell_of(row, *at_.time));
        if (text.empty()) {
            faults.add(RejectReason::cell_missing, *at_.time);
            return {};
        }
        if (at_.clock && !cell_of(row, *at_.clock).empty()) {
            text += " " + std::string(cell_of(row, *at_.clock));
        }
        const ReadTime read = read_time(text, import_.zone, out_.day_order);
        if (!read.at) {
            faults.add_value(reason_of(read.fault), *at_.time, text);
        }
        return read.at;
    }

    void optional_cells(const CsvRow& row, Weighing& weighing, RowFaults& faults) {
        if (at_.state && !cell_of(row, *at_.state).empty()) {
            if (const auto state = state_from_word(cell_of(row, *at_.state))) {
                weighing.state = *state;
            } else {
                faults.add(RejectReason::state_unknown, *at_.state);
            }
        }
        if (at_.flag) {
            if (const auto flag = flag_from(cell_of(row, *at_.flag))) {
                weighing.wet_surface = *flag;
            } else {
                faults.add(RejectReason::flag_unreadable, *at_.flag);
            }
        }
        if (at_.step && !cell_of(row, at_.step->column).empty()) {
            weighing.scale_step = mass(row, *at_.step, faults);
        }
        if (at_.note) {
            weighing.note = plain_text(cell_of(row, *at_.note));
        }
        if (at_.tare && !cell_of(row, at_.tare->column).empty()) {
            weighing.tare = mass(row, *at_.tare, faults).value_or(import_.tare);
        }
    }

    bool is_set_aside(const CsvRow& row, RowFaults& faults) {
        const std::string word = at_.status ? column_key(cell_of(row, *at_.status)) : "";
        if (word == "amended" || word == "withdrawn") {
            out_.set_aside.push_back(row.line);
            return true;
        }
        if (!word.empty() && word != "stands") {
            faults.add(RejectReason::status_unknown, *at_.status);
        }
        return false;
    }

    void read_row(const CsvRow& row) {
        RowFaults faults(row, out_.rejects);
        if (is_set_aside(row, faults)) {
            return;
        }
        if (row.cells.size() > table_.header.cells.size()) {
            faults.add_value(RejectReason::too_many_cells, {}, row.cells.back());
        }
        std::string piece = plain_text(cell_of(row, *at_.piece));
        if (piece.empty()) {
            faults.add(RejectReason::cell_missing, *at_.piece);
        }
        const auto at = time(row, faults);
        const auto on_scale = weight(row, faults);
        Weighing weighing = blank_weighing(import_);
        optional_cells(row, weighing, faults);
        if (on_scale && *on_scale > Mass::grams(0) && weighing.tare >= *on_scale) {
            faults.add(RejectReason::tare_not_below_weight,
                       at_.tare ? at_.tare->column : at_.weight->column);
        }
        if (faults.any() || !at || !on_scale) {
            return;
        }
        weighing.taken_at = *at;
        weighing.on_scale = *on_scale;
        keep_once(row, std::move(piece), std::move(weighing));
    }

    /// A file exported twice and pasted together must not double its weighings.
    void keep_once(const CsvRow& row, std::string piece, Weighing weighing) {
        std::string batch = at_.batch ? plain_text(cell_of(row, *at_.batch)) : std::string();
        const auto key = std::tuple(batch, piece, weighing.taken_at.unix_seconds());
        const auto [seen, is_new] = seen_.try_emplace(key, out_.weighings.size());
        if (is_new) {
            out_.weighings.push_back(
                {row.line, std::move(piece), std::move(weighing), {}, std::move(batch)});
            return;
        }
        const ImportedWeighing& earlier = out_.weighings[seen->second];
        const bool same = earlier.weighing.on_scale == weighing.on_scale &&
                          earlier.weighing.tare == weighing.tare;
        out_.rejects.push_back(
            {row.line, at_.weight->column.name, std::string(cell_of(row, at_.weight->column)),
             same ? RejectReason::repeated : RejectReason::contradicts, earlier.line});
    }

    const CsvTable& table_;
    Layout at_;
    const WeighingImport& import_;
    ImportedWeighings& out_;
    std::map<std::tuple<std::string, std::string, std::int64_t>, std::size_t> seen_;
};

std::string grams(Mass mass) {
    return fmt::format("{}", std::round(mass.in_milligrams()) / 1000.0);
}

std::string_view status_of(const Weighing& weighing) {
    if (weighing.withdrawn) {
        return "withdrawn";
    }
    return weighing.stands() ? "stands" : "amended";
}

} // namespace

base::Result<ImportedWeighings> read_weighings_csv(std::string_view bytes,
                                                   const WeighingImport& import) {
    const auto table = read_csv(bytes, import.limits);
    if (!table) {
        return tl::unexpected(table.error());
    }
    Columns columns(*table);
    Layout layout = find_columns(columns, import);
    if (const auto complete = check_required(layout); !complete) {
        return tl::unexpected(complete.error());
    }
    ImportedWeighings out;
    out.unknown_columns = columns.unused();
    Reader(*table, std::move(layout), import, out).run();
    return out;
}

std::string write_weighings_csv(const std::vector<WeighingLine>& lines) {
    std::string out;
    append_csv_row(out, {"piece", "batch", "taken_at", "weight_g", "tare_g", "net_g", "state",
                         "scale_step_g", "wet_surface", "status", "note"});
    for (const WeighingLine& line : lines) {
        const Weighing& w = line.weighing;
        append_csv_row(out, {neutral_text(line.piece), neutral_text(line.batch),
                             units::to_iso(w.taken_at), grams(w.on_scale), grams(w.tare),
                             grams(w.net()), std::string(state_word(w.state)),
                             w.scale_step ? grams(*w.scale_step) : "", w.wet_surface ? "yes" : "no",
                             std::string(status_of(w)), neutral_text(w.note)});
    }
    return out;
}

std::string_view state_word(WeighedState state) {
    for (const auto& [value, word] : state_words) {
        if (value == state) {
            return word;
        }
    }
    return "raw";
}

std::optional<WeighedState> state_from_word(std::string_view word) {
    const std::string key = column_key(word);
    for (const auto& [value, name] : state_words) {
        if (name == key) {
            return value;
        }
    }
    return {};
}

} // namespace core::exchange
