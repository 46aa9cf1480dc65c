#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::exchange {

/// One record of a CSV file (RFC 4180), with the line of the file it starts on (counted from 1,
/// comment lines included, so that a person finds it in an editor).
struct CsvRow {
    std::size_t line = 0;
    std::vector<std::string> cells; ///< UTF-8, outer blanks removed
};

enum class TextCoding { utf8, utf8_with_mark, windows_1252 };

struct CsvTable {
    CsvRow header;                     ///< column names as written
    std::vector<CsvRow> rows;          ///< empty lines left out
    std::vector<std::string> comments; ///< leading lines that start with '#', without it
    char delimiter = ',';
    TextCoding coding = TextCoding::utf8;
};

struct CsvLimits {
    std::size_t bytes = std::size_t{64} << 20;
    std::size_t columns = 256;
    std::size_t rows = 2'000'000;
};

/// Reads the whole of `bytes`. The delimiter (comma, semicolon or tab) is the one most used in
/// the header line. Line ends may be LF, CRLF or CR; a byte-order mark is dropped; text that is
/// not UTF-8 is read as Windows-1252. Fails with empty_input (nothing but blanks), bad_format
/// (UTF-16, a NUL byte, an unclosed quote, text after a closing quote; `where` is the line), or
/// out_of_range (more than `limits`).
base::Result<CsvTable> read_csv(std::string_view bytes, const CsvLimits& limits = {});

/// A column name as compared: lower case, blanks, dots and hyphens as underscores
/// ("Weight (g)" -> "weight_g").
std::string column_key(std::string_view name);

/// Writes one record: cells are quoted where RFC 4180 asks for it; ends with CRLF.
void append_csv_row(std::string& out, const std::vector<std::string>& cells);

/// Text that a spreadsheet would run as a formula ('=', '+', '-', '@' and their full-width
/// forms, tab, CR at the start) gets a leading apostrophe, which spreadsheets show as text; so
/// does text that starts with an apostrophe, so that `plain_text` gives every text back.
std::string neutral_text(std::string_view text);
/// Takes back what `neutral_text` added.
std::string plain_text(std::string_view cell);

} // namespace core::exchange
