#include "core/chamber/detect_columns.h"

#include <algorithm>
#include <tuple>

namespace core::chamber {
namespace {

struct Candidate {
    std::size_t column;
    double sureness;
    Evidence why;
};

std::string code_of_column(std::size_t column) {
    return std::to_string(column + 1);
}

bool taken_by_stamp(const StampedTable& in, std::size_t column) {
    return column == in.place.column || column == in.place.time_column;
}

ColumnProfile profile_of(const StampedTable& in, std::size_t column) {
    return profile(in.table, in.place, column, in.decimal_sign);
}

/// Columns the heading names as `wanted`, those with numbers first.
std::vector<Candidate> named_columns(const StampedTable& in, ColumnMeaning wanted) {
    std::vector<Candidate> named;
    for (std::size_t c = 0; c < in.heading.size() && c < in.table.columns; ++c) {
        if (in.heading[c].meaning == wanted && !taken_by_stamp(in, c) &&
            profile_of(in, c).is_numeric()) {
            named.push_back({c, 0.97, Evidence::heading});
        }
    }
    if (named.size() > 1) { // several probes in one log: which one is meant is not in the file
        for (auto& candidate : named) {
            candidate.sureness = candidate.column == named.front().column ? 0.6 : 0.3;
        }
    }
    return named;
}

/// Numeric columns that the heading does not explain away.
std::vector<std::size_t> open_columns(const StampedTable& in,
                                      const std::vector<std::size_t>& taken) {
    std::vector<std::size_t> open;
    for (std::size_t c = 0; c < in.table.columns; ++c) {
        const bool explained =
            c < in.heading.size() && in.heading[c].meaning != ColumnMeaning::unknown;
        const auto p = profile_of(in, c);
        if (!explained && !taken_by_stamp(in, c) && p.is_numeric() && !p.counter &&
            std::find(taken.begin(), taken.end(), c) == taken.end()) {
            open.push_back(c);
        }
    }
    return open;
}

bool may_be_temperature(const ColumnProfile& p) {
    return p.low >= -40 && p.high <= 140;
}
bool may_be_humidity(const ColumnProfile& p) {
    return p.low >= 0 && p.high <= 105;
}

/// Without a heading: two neighbouring numbers, the colder first, is how most loggers write.
void guess_columns(const StampedTable& in, std::vector<Candidate>& temperature,
                   std::vector<Candidate>& humidity) {
    std::vector<std::size_t> taken;
    taken.reserve(temperature.size() + humidity.size());
    for (const auto& c : temperature) {
        taken.push_back(c.column);
    }
    for (const auto& c : humidity) {
        taken.push_back(c.column);
    }
    const auto open = open_columns(in, taken);
    if (temperature.empty() && humidity.empty() && open.size() >= 2) {
        const auto first = profile_of(in, open[0]);
        const auto second = profile_of(in, open[1]);
        if (may_be_temperature(first) && may_be_humidity(second)) {
            // Curing rooms are 0-30 C and 40-100 %; of 12 and 75 there is one likely reading.
            const bool apart = first.median <= 30 && second.median >= 40 && second.median <= 100;
            const double sureness = apart && open.size() == 2 ? 0.8 : 0.5;
            temperature.push_back({open[0], sureness, Evidence::contents});
            humidity.push_back({open[1], sureness, Evidence::contents});
            return;
        }
        if (may_be_humidity(first) && may_be_temperature(second) && first.median > second.median) {
            temperature.push_back({open[1], 0.6, Evidence::contents});
            humidity.push_back({open[0], 0.6, Evidence::contents});
            return;
        }
    }
    if (open.size() == 1 && temperature.empty() != humidity.empty()) {
        auto& missing = temperature.empty() ? temperature : humidity;
        const auto p = profile_of(in, open[0]);
        if (temperature.empty() ? may_be_temperature(p) : may_be_humidity(p)) {
            missing.push_back({open[0], 0.6, Evidence::contents});
        }
    } else if (temperature.empty() && humidity.empty() && !open.empty()) {
        const auto p = profile_of(in, open[0]);
        if (may_be_temperature(p)) {
            temperature.push_back({open[0], p.median <= 30 ? 0.7 : 0.5, Evidence::contents});
        }
    }
}

std::optional<std::size_t> put_column(DialectField field, const std::vector<Candidate>& candidates,
                                      Detection& found) {
    if (candidates.empty()) {
        return std::nullopt;
    }
    Detected part{
        field, code_of_column(candidates[0].column), candidates[0].sureness, candidates[0].why, {}};
    for (std::size_t i = 1; i < candidates.size(); ++i) {
        part.rivals.push_back({code_of_column(candidates[i].column), candidates[i].sureness});
    }
    found.parts.push_back(std::move(part));
    return candidates[0].column;
}

/// Told and remembered columns win over what the file suggests.
void prefer(std::vector<Candidate>& candidates, std::optional<std::size_t> column, Evidence why,
            double sureness) {
    if (!column) {
        return;
    }
    std::erase_if(candidates, [&](const Candidate& c) { return c.column == *column; });
    candidates.insert(candidates.begin(), {*column, sureness, why});
}

/// The scale a unit written in the cells themselves names.
std::optional<TemperatureScale> scale_in_cells(const StampedTable& in, std::size_t column) {
    for (const auto& row : in.table.rows) {
        if (column < row.size() && is_data_row(row, in.place)) {
            if (const auto scale = scale_in_cell(row[column])) {
                return scale;
            }
        }
    }
    return std::nullopt;
}

Detected temperature_part(TemperatureScale scale, double sureness, Evidence why,
                          std::vector<Rival> rivals = {}) {
    return {DialectField::temperature_scale, std::string(code_of(scale)), sureness, why,
            std::move(rivals)};
}

/// By the size of the values: a curing room is -5 to 32 C, that is 23 to 90 F.
Detected scale_by_size(const ColumnProfile& p) {
    const std::string celsius(code_of(TemperatureScale::celsius));
    const std::string fahrenheit(code_of(TemperatureScale::fahrenheit));
    if (p.median >= 230) {
        return temperature_part(TemperatureScale::kelvin, 0.95, Evidence::contents);
    }
    if (p.median > 45) {
        return temperature_part(TemperatureScale::fahrenheit, 0.92, Evidence::contents,
                                {{celsius, 0.05}});
    }
    if (p.median >= 30) { // a fridge at 36 F, or a warm start at 36 C
        return temperature_part(TemperatureScale::fahrenheit, 0.6, Evidence::contents,
                                {{celsius, 0.4}});
    }
    return temperature_part(TemperatureScale::celsius, 0.9, Evidence::contents,
                            {{fahrenheit, 0.08}});
}

} // namespace

bool choose_value_columns(const StampedTable& in, const DialectHints& hints, Detection& found) {
    auto temperature = named_columns(in, ColumnMeaning::temperature);
    auto humidity = named_columns(in, ColumnMeaning::humidity);
    guess_columns(in, temperature, humidity);
    const auto& remembered = hints.remembered;
    if (remembered && remembered->columns.stamp == in.place.column &&
        remembered->separator == in.table.separator) {
        // Only where the file still has numbers there.
        const auto still = [&](std::optional<std::size_t> c) {
            return c && *c < in.table.columns && profile_of(in, *c).is_numeric() ? c : std::nullopt;
        };
        prefer(temperature, still(remembered->columns.temperature), Evidence::remembered, 0.95);
        prefer(humidity, still(remembered->columns.humidity), Evidence::remembered, 0.95);
    }
    for (const auto& [told, candidates, other] :
         {std::tuple(hints.temperature_column, &temperature, &humidity),
          std::tuple(hints.humidity_column, &humidity, &temperature)}) {
        if (told) { // only this one, and it is not the other quantity too
            candidates->clear();
            prefer(*candidates, told, Evidence::told, 1.0);
            std::erase_if(*other, [at = *told](const Candidate& c) { return c.column == at; });
        }
    }
    auto& columns = found.dialect.columns;
    columns.temperature = put_column(DialectField::temperature_column, temperature, found);
    columns.humidity = put_column(DialectField::humidity_column, humidity, found);
    return columns.temperature.has_value() || columns.humidity.has_value();
}

void choose_scales(const StampedTable& in, const DialectHints& hints, Detection& found) {
    auto& dialect = found.dialect;
    if (const auto column = dialect.columns.temperature) {
        const HeadingCell named = *column < in.heading.size() ? in.heading[*column] : HeadingCell{};
        const auto in_cells = scale_in_cells(in, *column);
        Detected part = scale_by_size(profile_of(in, *column));
        if (hints.temperature) {
            part = temperature_part(*hints.temperature, 1.0, Evidence::told);
        } else if (in_cells) {
            part = temperature_part(*in_cells, 0.99, Evidence::heading);
        } else if (named.temperature) {
            part = temperature_part(*named.temperature, 0.99, Evidence::heading);
        } else if (hints.remembered && hints.remembered->columns.temperature) {
            part = temperature_part(hints.remembered->temperature, 0.95, Evidence::remembered);
        }
        dialect.temperature = *temperature_scale_from(part.choice);
        found.parts.push_back(std::move(part));
    }
    if (const auto column = dialect.columns.humidity) {
        const auto p = profile_of(in, *column);
        // 1 % is air no chamber has: values up to 1 are fractions even under a "%" heading.
        const bool small = p.numbers > 0 && p.high <= 1.1 && p.median > 0.05;
        auto scale = small ? HumidityScale::fraction : HumidityScale::percent;
        double sureness = small ? 0.95 : 0.99;
        auto why = Evidence::contents;
        if (hints.humidity) {
            scale = *hints.humidity;
            sureness = 1.0;
            why = Evidence::told;
        } else if (!small && *column < in.heading.size() && in.heading[*column].humidity) {
            why = Evidence::heading;
        }
        dialect.humidity = scale;
        found.parts.push_back(
            {DialectField::humidity_scale, std::string(code_of(scale)), sureness, why, {}});
    }
}

} // namespace core::chamber
