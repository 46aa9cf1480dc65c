#pragma once

#include "core/base/result.h"
#include "core/units/parse.h"

#include <optional>
#include <string>
#include <string_view>

/// Inside of the parsing doors (core/units/parse.h): not for other layers.
namespace core::units::detail {

/// Walks a text from left to right, number by number and word by word.
class Scanner {
  public:
    explicit Scanner(std::string_view text) : text_(text), rest_(text) {}

    /// Skips blanks of any kind (also the narrow ones that some keyboards put before a unit).
    void skip_blanks();
    [[nodiscard]] bool at_end();
    /// True where a number starts: a digit, a vulgar fraction, or a sign or decimal sign before.
    [[nodiscard]] bool at_number();
    /// Reads one number, with a common fraction where one follows.
    base::Result<double> number(ParseStyle style);
    /// Reads up to the next number or the end, trimmed, blanks collapsed, ASCII lower case. A
    /// number after a slash belongs to the unit ("g/100 g").
    std::string unit_text();
    /// The unit_text() read last, as it was written.
    [[nodiscard]] std::string_view unit_as_written() const { return unit_written_; }
    [[nodiscard]] std::string_view rest() const { return rest_; }

  private:
    [[nodiscard]] std::size_t blank_here() const;
    std::optional<double> vulgar_fraction();
    std::optional<double> common_fraction();
    base::Result<double> decimal(ParseStyle style);

    std::string_view text_;
    std::string_view rest_;
    std::string_view unit_written_;
};

/// Resolves the grouping and decimal signs of a run such as "1.234,5"; `run` holds digits,
/// points, commas and apostrophes only.
base::Result<std::string> plain_decimal(std::string_view run, ParseStyle style);

} // namespace core::units::detail
