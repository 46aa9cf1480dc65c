#include "core/exchange/csv_table.h"

#include <csv.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <memory>

namespace core::exchange {
namespace {

using base::ErrorCode;

constexpr std::string_view utf8_mark = "\xEF\xBB\xBF";

std::string line_place(std::size_t line) {
    return fmt::format("line {}", line);
}

/// Length of the well-formed UTF-8 sequence at the start of `s`, 0 if there is none (Unicode
/// Standard, table 3-7: no overlong forms, no surrogates, nothing above U+10FFFF).
std::size_t utf8_sequence(std::string_view s) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(s[i]); };
    const auto tail = [&](std::size_t i, unsigned low = 0x80, unsigned high = 0xBF) {
        return i < s.size() && byte(i) >= low && byte(i) <= high;
    };
    const unsigned lead = byte(0);
    if (lead < 0x80) {
        return 1;
    }
    if (lead >= 0xC2 && lead <= 0xDF) {
        return tail(1) ? 2 : 0;
    }
    if (lead >= 0xE0 && lead <= 0xEF) {
        const unsigned low = lead == 0xE0 ? 0xA0 : 0x80;
        const unsigned high = lead == 0xED ? 0x9F : 0xBF;
        return tail(1, low, high) && tail(2) ? 3 : 0;
    }
    if (lead >= 0xF0 && lead <= 0xF4) {
        const unsigned low = lead == 0xF0 ? 0x90 : 0x80;
        const unsigned high = lead == 0xF4 ? 0x8F : 0xBF;
        return tail(1, low, high) && tail(2) && tail(3) ? 4 : 0;
    }
    return 0;
}

bool is_utf8(std::string_view s) {
    while (!s.empty()) {
        const std::size_t n = utf8_sequence(s);
        if (n == 0) {
            return false;
        }
        s.remove_prefix(n);
    }
    return true;
}

void append_utf8(std::string& out, unsigned code) {
    if (code < 0x80) {
        out.push_back(static_cast<char>(code));
    } else if (code < 0x800) {
        out.push_back(static_cast<char>(0xC0U | (code >> 6U)));
        out.push_back(static_cast<char>(0x80U | (code & 0x3FU)));
    } else {
        out.push_back(static_cast<char>(0xE0U | (code >> 12U)));
        out.push_back(static_cast<char>(0x80U | ((code >> 6U) & 0x3FU)));
        out.push_back(static_cast<char>(0x80U | (code & 0x3FU)));
    }
}

/// Windows code page 1252 as in the Unicode Consortium's mapping table; its five unassigned
/// bytes become U+FFFD.
std::string from_windows_1252(std::string_view bytes) {
    static constexpr std::array<unsigned, 32> high = {
        0x20AC, 0xFFFD, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
        0x2039, 0x0152, 0xFFFD, 0x017D, 0xFFFD, 0xFFFD, 0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
        0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0xFFFD, 0x017E, 0x0178};
    std::string out;
    out.reserve(bytes.size() + bytes.size() / 8);
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        append_utf8(out, byte >= 0x80 && byte < 0xA0 ? high[byte - 0x80U] : byte);
    }
    return out;
}

/// Takes leading lines that start with '#' off `text` and counts them.
std::size_t take_comments(std::string_view& text, std::vector<std::string>& comments) {
    std::size_t lines = 0;
    while (!text.empty() && text.front() == '#') {
        const std::size_t end = text.find_first_of("\r\n");
        comments.emplace_back(text.substr(1, end == std::string_view::npos ? end : end - 1));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end);
        if (text.substr(0, 2) == "\r\n") {
            text.remove_prefix(2);
        } else if (!text.empty()) {
            text.remove_prefix(1);
        }
        ++lines;
    }
    return lines;
}

char detect_delimiter(std::string_view text) {
    std::array<std::size_t, 3> counts{};
    constexpr std::string_view candidates = ",;\t";
    bool quoted = false;
    bool seen = false; // skip empty lines before the header
    for (const char c : text) {
        if (c == '"') {
            quoted = !quoted;
        }
        if (!quoted && (c == '\n' || c == '\r') && seen) {
            break;
        }
        seen = seen || (c != '\n' && c != '\r');
        const std::size_t which = candidates.find(c);
        if (!quoted && which != std::string_view::npos) {
            ++counts[which];
        }
    }
    const auto most = std::max_element(counts.begin(), counts.end());
    return candidates[static_cast<std::size_t>(most - counts.begin())];
}

std::size_t lines_in(std::string_view cell) {
    std::size_t lines = 0;
    for (std::size_t i = 0; i < cell.size(); ++i) {
        const bool lone_return = cell[i] == '\r' && (i + 1 == cell.size() || cell[i + 1] != '\n');
        lines += cell[i] == '\n' || lone_return ? 1U : 0U;
    }
    return lines;
}

/// Collects what libcsv calls back with. libcsv does not count lines, so this does: one at
/// every reported line end (CRLF once) and those inside quoted cells.
struct Collector {
    CsvTable* table;
    CsvLimits limits;
    std::size_t line;       ///< of the record being read
    std::size_t lines_held; ///< line ends inside its quoted cells
    CsvRow row{};
    int last_end = 0;
    bool over_limit = false;
    bool has_header = false;

    void cell(std::string_view text) {
        last_end = 0;
        if (row.cells.size() >= limits.columns) {
            over_limit = true;
            return;
        }
        lines_held += lines_in(text);
        row.cells.emplace_back(text);
    }

    void end(int terminator) {
        if (terminator == '\n' && last_end == '\r' && row.cells.empty()) {
            last_end = 0;
            return; // the second half of CRLF
        }
        last_end = terminator;
        const bool blank = std::all_of(row.cells.begin(), row.cells.end(),
                                       [](const std::string& c) { return c.empty(); });
        if (!blank) {
            row.line = line;
            if (!has_header) {
                table->header = std::move(row);
                has_header = true;
            } else if (table->rows.size() < limits.rows) {
                table->rows.push_back(std::move(row));
            } else {
                over_limit = true;
            }
        }
        row = {};
        line += 1 + lines_held;
        lines_held = 0;
    }
};

void on_cell(void* text, std::size_t length, void* collector) {
    static_cast<Collector*>(collector)->cell({static_cast<const char*>(text), length});
}

void on_row(int terminator, void* collector) {
    static_cast<Collector*>(collector)->end(terminator);
}

base::Status parse(std::string_view text, std::size_t first_line, CsvTable& table,
                   const CsvLimits& limits) {
    csv_parser parser{};
    if (csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI | CSV_REPALL_NL) != 0) {
        return base::fault(ErrorCode::io_failure, "csv_init");
    }
    const std::unique_ptr<csv_parser, decltype(&csv_free)> freed(&parser, &csv_free);
    csv_set_delim(&parser, static_cast<unsigned char>(table.delimiter));
    Collector collector{&table, limits, first_line, 0};
    const std::size_t read =
        csv_parse(&parser, text.data(), text.size(), on_cell, on_row, &collector);
    if (read != text.size() || csv_fini(&parser, on_cell, on_row, &collector) != 0) {
        return base::fault(ErrorCode::bad_format,
                           read == text.size() ? "unclosed quote" : "stray quote",
                           line_place(collector.line));
    }
    if (collector.over_limit) {
        return base::fault(ErrorCode::out_of_range, "too many rows or columns",
                           line_place(collector.line));
    }
    return {};
}

bool is_formula_start(std::string_view text) {
    constexpr std::array<std::string_view, 4> wide = {"\xEF\xBC\x9D", "\xEF\xBC\x8B",
                                                      "\xEF\xBC\x8D", "\xEF\xBC\xA0"};
    if (text.empty()) {
        return false;
    }
    return std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos ||
           std::any_of(wide.begin(), wide.end(),
                       [&](std::string_view w) { return text.substr(0, w.size()) == w; });
}

} // namespace

base::Result<CsvTable> read_csv(std::string_view bytes, const CsvLimits& limits) {
    if (bytes.size() > limits.bytes) {
        return base::fault(ErrorCode::out_of_range, "too many bytes");
    }
    if (bytes.substr(0, 2) == "\xFF\xFE" || bytes.substr(0, 2) == "\xFE\xFF") {
        return base::fault(ErrorCode::bad_format, "UTF-16", line_place(1));
    }
    CsvTable table;
    if (bytes.substr(0, utf8_mark.size()) == utf8_mark) {
        bytes.remove_prefix(utf8_mark.size());
        table.coding = TextCoding::utf8_with_mark;
    }
    std::string converted;
    std::string_view text = bytes;
    if (!is_utf8(bytes)) {
        converted = from_windows_1252(bytes);
        text = converted;
        table.coding = TextCoding::windows_1252;
    }
    if (const auto nul = text.find('\0'); nul != std::string_view::npos) {
        return base::fault(ErrorCode::bad_format, "NUL byte",
                           line_place(1 + lines_in(text.substr(0, nul))));
    }
    const std::size_t first_line = 1 + take_comments(text, table.comments);
    table.delimiter = detect_delimiter(text);
    if (const auto parsed = parse(text, first_line, table, limits); !parsed) {
        return tl::unexpected(parsed.error());
    }
    if (table.header.cells.empty()) {
        return base::fault(ErrorCode::empty_input);
    }
    return table;
}

std::string column_key(std::string_view name) {
    std::string key;
    for (const char c : name) {
        const auto byte = static_cast<unsigned char>(c);
        if ((byte >= 'a' && byte <= 'z') || (byte >= '0' && byte <= '9') || byte >= 0x80) {
            key.push_back(c);
        } else if (byte >= 'A' && byte <= 'Z') {
            key.push_back(static_cast<char>(byte - 'A' + 'a'));
        } else if (c == '%') {
            key += key.empty() || key.back() == '_' ? "percent" : "_percent";
        } else if (!key.empty() && key.back() != '_') {
            key.push_back('_');
        }
    }
    while (!key.empty() && key.back() == '_') {
        key.pop_back();
    }
    return key;
}

void append_csv_row(std::string& out, const std::vector<std::string>& cells) {
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const std::string& cell = cells[i];
        out += i == 0 ? "" : ",";
        // Outer blanks are quoted too: readers drop them from bare cells.
        const bool blank_edge =
            !cell.empty() && (cell.front() == ' ' || cell.front() == '\t' || cell.back() == ' ' ||
                              cell.back() == '\t' || cell.front() == '#');
        // A row of one empty cell would be an empty line, which readers skip.
        const bool lone_empty = cells.size() == 1 && cell.empty();
        if (!blank_edge && !lone_empty && cell.find_first_of(",\"\r\n;\t") == std::string::npos) {
            out += cell;
            continue;
        }
        out.push_back('"');
        for (const char c : cell) {
            out.append(c == '"' ? 2U : 1U, c);
        }
        out.push_back('"');
    }
    out += "\r\n";
}

std::string neutral_text(std::string_view text) {
    const bool guard = is_formula_start(text) || (!text.empty() && text.front() == '\'');
    return (guard ? "'" : "") + std::string(text);
}

std::string plain_text(std::string_view cell) {
    if (cell.size() > 1 && cell.front() == '\'' &&
        (cell[1] == '\'' || is_formula_start(cell.substr(1)))) {
        cell.remove_prefix(1);
    }
    return std::string(cell);
}

} // namespace core::exchange
