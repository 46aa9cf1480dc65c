#include "core/chamber/detect_dialect.h"

#include "core/chamber/detect_columns.h"
#include "core/chamber/log_cell.h"
#include "core/chamber/log_layout.h"
#include "core/chamber/log_stamp.h"
#include "core/chamber/text_encoding.h"

#include <algorithm>
#include <cmath>

namespace core::chamber {
namespace {

constexpr std::size_t lines_looked_at = 2000; ///< of the start; the other pieces are short

using Lines = std::vector<std::string_view>;

/// Lines of a piece. The line cut by the piece's start or end is left out.
Lines lines_of(std::string_view text, char end_of_line, bool is_start, bool may_be_cut) {
    Lines lines;
    bool first = !is_start;
    while (!text.empty() && lines.size() < lines_looked_at) {
        const auto end = text.find(end_of_line);
        if (end == std::string_view::npos && may_be_cut) {
            break;
        }
        auto line = text.substr(0, end);
        if (!line.empty() && line.back() == '\r') {
            line.remove_suffix(1);
        }
        if (!first) {
            lines.push_back(line);
        }
        first = false;
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return lines;
}

/// A table together with the readings of its moments, and how well it explains the sample.
struct Layout {
    SampleTable table;
    std::vector<StampPlace> places;
    double score = 0;
};

/// Columns other than the stamp's that hold numbers, in whichever decimal sign.
int numeric_columns(const SampleTable& table, const StampPlace& place) {
    int count = 0;
    for (std::size_t c = 0; c < table.columns; ++c) {
        if (c != place.column && c != place.time_column &&
            (profile(table, place, c, '.').is_numeric() ||
             profile(table, place, c, ',').is_numeric())) {
            ++count;
        }
    }
    return count;
}

Layout layout_with(const std::vector<Lines>& pieces, char separator) {
    Layout layout{cut_sample(pieces, separator), {}, 0};
    if (layout.table.columns < 2) {
        return layout;
    }
    layout.places = stamp_places(layout.table);
    if (!layout.places.empty() && numeric_columns(layout.table, layout.places.front()) > 0) {
        layout.score = layout.table.regularity * layout.places.front().share;
    }
    return layout;
}

std::optional<Layout> choose_separator(const std::vector<Lines>& pieces, const DialectHints& hints,
                                       Detection& found) {
    constexpr char separators[] = {';', ',', '\t', '|'};
    std::optional<Layout> best;
    std::vector<Rival> scores;
    for (const char separator : separators) {
        if (hints.separator && separator != *hints.separator) {
            continue;
        }
        auto layout = layout_with(pieces, separator);
        if (layout.score > 0) {
            scores.push_back({code_of_sign(separator), layout.score});
            if (!best || layout.score > best->score) {
                best = std::move(layout);
            }
        }
    }
    if (!best) {
        return best;
    }
    found.dialect.separator = best->table.separator;
    const std::string chosen = code_of_sign(best->table.separator);
    std::erase_if(scores, [&](const Rival& r) { return r.choice == chosen; });
    double next = 0;
    for (const auto& rival : scores) {
        next = std::max(next, rival.sureness);
    }
    const double sureness = hints.separator ? 1.0 : best->score / (best->score + next);
    found.parts.push_back({DialectField::separator, chosen, sureness,
                           hints.separator  ? Evidence::told
                           : scores.empty() ? Evidence::only_possible
                                            : Evidence::contents,
                           scores});
    return best;
}

struct FormChoice {
    StampPlace place;
    double sureness = 1.0;
    Evidence why = Evidence::only_possible;
    std::vector<Rival> rivals;
};

/// What the neighbourhood of the date says about day and month when the dates do not.
std::pair<StampForm, double> order_by_context(const SampleTable& table, const StampPlace& place,
                                              char decimal_sign, bool fahrenheit) {
    bool stops = false;
    bool halves = false;
    for (const auto& row : table.rows) {
        if (!is_data_row(row, place)) {
            continue;
        }
        const auto& date = row[place.column];
        const auto& time = place.time_column ? row[*place.time_column] : date;
        const auto first = date.find_first_of("./-");
        stops = stops || (first != std::string::npos && date[first] == '.');
        halves = halves || time.find_first_of("Mm") != std::string::npos;
    }
    if (stops) {
        return {StampForm::day_month_year, 0.95}; // no country writes month.day.year
    }
    if (fahrenheit) {
        return {StampForm::month_day_year, 0.85};
    }
    if (decimal_sign == ',' || table.separator == ';') {
        return {StampForm::day_month_year, 0.9};
    }
    return halves ? std::pair(StampForm::month_day_year, 0.7)
                  : std::pair(StampForm::day_month_year, 0.5);
}

/// Chooses between day/month and month/day when both read.
FormChoice choose_order(const Layout& layout, const StampPlace& dmy, const StampPlace& mdy,
                        const DialectHints& hints, char decimal_sign, bool fahrenheit) {
    const auto choice = [&](StampForm form, double sureness, Evidence why) {
        const bool day_first = form == StampForm::day_month_year;
        const auto& other = day_first ? mdy : dmy;
        return FormChoice{day_first ? dmy : mdy,
                          sureness,
                          why,
                          {{std::string(code_of(other.form)), 1.0 - sureness}}};
    };
    const auto day_steps = count_steps(layout.table, dmy);
    const auto month_steps = count_steps(layout.table, mdy);
    if (day_steps.jumps != month_steps.jumps) {
        // One line out of order is common; three jumps fewer are a calendar read right.
        const int fewer = std::abs(day_steps.jumps - month_steps.jumps);
        const double sureness = fewer >= 3 ? 0.99 : fewer == 2 ? 0.95 : 0.85;
        return choice(day_steps.jumps < month_steps.jumps ? StampForm::day_month_year
                                                          : StampForm::month_day_year,
                      sureness, Evidence::even_steps);
    }
    if (hints.remembered && (hints.remembered->stamp == StampForm::day_month_year ||
                             hints.remembered->stamp == StampForm::month_day_year)) {
        return choice(hints.remembered->stamp, 0.95, Evidence::remembered);
    }
    if (hints.not_after) {
        constexpr std::int64_t slack = std::int64_t{2} * 86400; // zones, and clocks a little fast
        const auto limit = hints.not_after->unix_seconds() + slack;
        if ((day_steps.latest > limit) != (month_steps.latest > limit)) {
            return choice(day_steps.latest > limit ? StampForm::month_day_year
                                                   : StampForm::day_month_year,
                          0.9, Evidence::context);
        }
    }
    const auto [form, sureness] = order_by_context(layout.table, dmy, decimal_sign, fahrenheit);
    return choice(form, sureness, sureness > 0.5 ? Evidence::context : Evidence::assumed);
}

std::optional<FormChoice> choose_form(const Layout& layout, const DialectHints& hints,
                                      char decimal_sign, bool fahrenheit) {
    auto places = layout.places;
    if (hints.stamp_column) {
        std::erase_if(places, [&](const StampPlace& p) { return p.column != *hints.stamp_column; });
    }
    if (hints.stamp) {
        std::erase_if(places, [&](const StampPlace& p) { return p.form != *hints.stamp; });
    }
    if (places.empty()) {
        return std::nullopt;
    }
    const StampPlace& first = places.front();
    if (hints.stamp) {
        return FormChoice{first, 1.0, Evidence::told, {}};
    }
    const auto with_form = [&](StampForm form) {
        return std::find_if(places.begin(), places.end(), [&](const StampPlace& p) {
            return p.form == form && p.column == first.column;
        });
    };
    const auto dmy = with_form(StampForm::day_month_year);
    const auto mdy = with_form(StampForm::month_day_year);
    if (dmy != places.end() && mdy != places.end() && std::fabs(dmy->share - mdy->share) < 1e-9) {
        return choose_order(layout, *dmy, *mdy, hints, decimal_sign, fahrenheit);
    }
    FormChoice choice{first, 0.99, Evidence::only_possible, {}};
    for (const auto& place : places) {
        if (place.column == first.column && place.form != first.form) {
            // The other order fails on some lines of the sample: those are the proof.
            choice.rivals.push_back({std::string(code_of(place.form)), 0.01});
        }
    }
    return choice;
}

/// The heading: the nearest line above the data with as many cells, none of them a number.
void find_heading(const SampleTable& table, const StampPlace& place, char decimal_sign,
                  Detection& found) {
    std::size_t first = 0;
    while (first < table.head_rows && !is_data_row(table.rows[first], place)) {
        ++first;
    }
    found.dialect.lines_before_data = static_cast<int>(first);
    for (std::size_t i = first; i-- > 0;) {
        const auto& row = table.rows[i];
        const bool wide_enough = row.size() + 1 >= table.columns && row.size() >= 2;
        if (wide_enough && std::none_of(row.begin(), row.end(), [&](const std::string& cell) {
                return cell_number(cell, decimal_sign).has_value();
            })) {
            found.heading = row;
            return;
        }
    }
}

void put_decimal(const Layout& layout, const DialectHints& hints, Detection& found) {
    const auto count = count_decimals(layout.table, layout.places.front());
    const int all = count.points + count.commas;
    char sign = count.commas > count.points ? ',' : '.';
    double sureness =
        all == 0 ? 0.8 : static_cast<double>(std::max(count.points, count.commas)) / all;
    auto why = all == 0 ? Evidence::assumed : Evidence::contents;
    if (all == 0 && hints.remembered) {
        sign = hints.remembered->decimal_sign;
        why = Evidence::remembered;
    }
    if (hints.decimal_sign) {
        sign = *hints.decimal_sign;
        sureness = 1.0;
        why = Evidence::told;
    }
    found.dialect.decimal_sign = sign;
    Detected part{
        DialectField::decimal_sign, code_of_sign(sign), std::min(sureness, 0.99), why, {}};
    if (all > 0 && sureness < 1.0) {
        part.rivals.push_back({code_of_sign(sign == ',' ? '.' : ','), 1.0 - sureness});
    }
    found.parts.push_back(std::move(part));
}

/// Commas both as separator and as decimal sign: more cells than names, all in whole numbers.
bool commas_do_both(const SampleTable& table, const StampPlace& place, const Detection& found) {
    if (table.separator != ',') {
        return false;
    }
    std::size_t head_cells = 0;
    for (std::size_t i = 0; i < table.head_rows; ++i) {
        if (is_data_row(table.rows[i], place)) {
            break;
        }
        const auto& row = table.rows[i];
        const auto words = std::count_if(row.begin(), row.end(), [](const std::string& cell) {
            return read_heading(cell).meaning != ColumnMeaning::unknown;
        });
        head_cells = words >= 2 ? row.size() : head_cells;
    }
    const auto decimals = count_decimals(table, place);
    return head_cells >= 2 && table.columns > head_cells && found.heading.size() != table.columns &&
           decimals.points == 0 && decimals.commas == 0;
}

void put_clock(const SampleTable& table, const StampPlace& place,
               const std::vector<HeadingCell>& heading, const DialectHints& hints,
               Detection& found) {
    auto& dialect = found.dialect;
    int stamps = 0;
    int with_offset = 0;
    for (const auto& row : table.rows) {
        if (is_data_row(row, place)) {
            ++stamps;
            with_offset += read_stamp(row[place.column], place.form)->offset_seconds ? 1 : 0;
        }
    }
    std::optional<int> named;
    for (const auto& cell : heading) {
        named = named ? named : cell.offset_seconds;
    }
    Detected part{DialectField::clock, {}, 1.0, Evidence::told, {}};
    const auto fixed = [&](int offset) {
        dialect.clock = ClockKind::fixed_offset;
        dialect.offset_seconds = offset;
    };
    const auto in_zone = [&](const std::string& zone) {
        dialect.clock = ClockKind::named_zone;
        dialect.zone = zone;
    };
    if (hints.told_offset_seconds) {
        fixed(*hints.told_offset_seconds);
    } else if (hints.told_zone) {
        in_zone(*hints.told_zone);
    } else if (with_offset * 10 >= stamps * 9) {
        dialect.clock = ClockKind::in_stamp;
        part.why = Evidence::only_possible;
    } else if (named) {
        fixed(*named);
        part.sureness = 0.95;
        part.why = Evidence::heading;
    } else if (hints.remembered && hints.remembered->clock != ClockKind::in_stamp) {
        dialect.clock = hints.remembered->clock;
        dialect.offset_seconds = hints.remembered->offset_seconds;
        dialect.zone = hints.remembered->zone;
        part.sureness = 0.95;
        part.why = Evidence::remembered;
    } else {
        in_zone(hints.zone);
        part.sureness = 0.8;
        part.why = Evidence::assumed;
        part.rivals.push_back({"UTC", 0.15});
    }
    part.choice = dialect.clock == ClockKind::named_zone ? dialect.zone
                  : dialect.clock == ClockKind::fixed_offset
                      ? std::to_string(dialect.offset_seconds)
                      : std::string(code_of(dialect.clock));
    found.parts.push_back(std::move(part));
}

Detected stamp_column_part(const SampleTable& table, const StampPlace& place,
                           const std::vector<HeadingCell>& heading, const DialectHints& hints) {
    Detected part{DialectField::stamp_column,
                  std::to_string(place.column + 1),
                  std::min(share_after_heading(table, place), 0.99),
                  Evidence::contents,
                  {}};
    const auto meaning =
        place.column < heading.size() ? heading[place.column].meaning : ColumnMeaning::unknown;
    if (hints.stamp_column) {
        part.sureness = 1.0;
        part.why = Evidence::told;
    } else if (meaning == ColumnMeaning::stamp || meaning == ColumnMeaning::date ||
               meaning == ColumnMeaning::time) {
        part.sureness = std::max(part.sureness, 0.97);
        part.why = Evidence::heading;
    }
    return part;
}

std::vector<HeadingCell> meanings(const std::vector<std::string>& heading) {
    std::vector<HeadingCell> cells;
    cells.reserve(heading.size());
    for (const auto& cell : heading) {
        cells.push_back(read_heading(cell));
    }
    return cells;
}

/// Splits the pieces into lines after decoding; `texts` owns what the lines point into.
std::vector<Lines> decoded_lines(std::span<const std::string_view> pieces, Detection& found,
                                 std::vector<std::string>& texts) {
    for (const auto piece : pieces) {
        Transcoder(found.dialect.encoding).feed(piece, texts.emplace_back());
    }
    const auto& head = texts.front();
    found.dialect.carriage_return_ends_line =
        head.find('\n') == std::string::npos && head.find('\r') != std::string::npos;
    const char end = found.dialect.carriage_return_ends_line ? '\r' : '\n';
    std::vector<Lines> lines;
    for (const auto& text : texts) {
        const bool is_start = lines.empty();
        // A short start is the whole file, so its last line counts though nothing ends it.
        const bool may_be_cut = !is_start || text.size() > std::size_t{16} * 1024;
        lines.push_back(lines_of(text, end, is_start, may_be_cut));
    }
    return lines;
}

base::Status put_encoding(std::string_view head, const DialectHints& hints, Detection& found) {
    const auto guess = guess_encoding(head);
    if (!guess && !hints.encoding) {
        return base::fault(base::ErrorCode::bad_format, "binary");
    }
    found.dialect.encoding = hints.encoding ? *hints.encoding : guess->encoding;
    found.parts.push_back({DialectField::encoding,
                           std::string(code_of(found.dialect.encoding)),
                           hints.encoding ? 1.0 : guess->sureness,
                           hints.encoding  ? Evidence::told
                           : guess->marked ? Evidence::mark
                                           : Evidence::contents,
                           {}});
    return {};
}

} // namespace

std::vector<Detected> Detection::guesses() const {
    std::vector<Detected> unsure;
    std::copy_if(parts.begin(), parts.end(), std::back_inserter(unsure),
                 [](const Detected& part) { return part.sureness < sure_enough; });
    return unsure;
}

base::Result<Detection> detect_dialect(std::span<const std::string_view> pieces,
                                       const DialectHints& hints) {
    if (pieces.empty() || pieces.front().empty()) {
        return base::fault(base::ErrorCode::empty_input);
    }
    Detection found;
    if (auto done = put_encoding(pieces.front(), hints, found); !done) {
        return tl::unexpected(done.error());
    }
    std::vector<std::string> texts;
    texts.reserve(pieces.size());
    const auto lines = decoded_lines(pieces, found, texts);
    auto layout = choose_separator(lines, hints, found);
    if (!layout) {
        return base::fault(base::ErrorCode::bad_format, "no_readings");
    }
    put_decimal(*layout, hints, found);
    find_heading(layout->table, layout->places.front(), found.dialect.decimal_sign, found);
    if (!hints.decimal_sign && commas_do_both(layout->table, layout->places.front(), found)) {
        return base::fault(base::ErrorCode::ambiguous_number, ",");
    }
    const auto heading = meanings(found.heading);
    const bool fahrenheit = std::any_of(heading.begin(), heading.end(), [](const HeadingCell& c) {
        return c.temperature == TemperatureScale::fahrenheit;
    });
    const auto form = choose_form(*layout, hints, found.dialect.decimal_sign, fahrenheit);
    if (!form) {
        return base::fault(base::ErrorCode::bad_format, "no_readings");
    }
    const StampPlace& place = form->place;
    auto& dialect = found.dialect;
    dialect.stamp = place.form;
    dialect.columns.stamp = place.column;
    dialect.columns.time_of_day = place.time_column;
    const auto steps = count_steps(layout->table, place);
    dialect.newest_first = steps.backward > steps.forward;
    found.parts.push_back({DialectField::stamp_form, std::string(code_of(place.form)),
                           form->sureness, form->why, form->rivals});
    put_clock(layout->table, place, heading, hints, found);
    found.parts.push_back(stamp_column_part(layout->table, place, heading, hints));
    const StampedTable stamped{layout->table, place, dialect.decimal_sign, heading};
    if (!choose_value_columns(stamped, hints, found)) {
        return base::fault(base::ErrorCode::bad_format, "no_readings");
    }
    choose_scales(stamped, hints, found);
    std::stable_sort(found.parts.begin(), found.parts.end(),
                     [](const Detected& a, const Detected& b) { return a.field < b.field; });
    return found;
}

} // namespace core::chamber
