#pragma once

#include <csv.h>

#include <string>
#include <string_view>
#include <vector>

namespace core::chamber {

/// One line of a log cut into cells by libcsv: quotes, doubled quotes and blanks around cells
/// handled. A record never spans lines here: loggers write no line breaks inside cells, and a
/// stray quote must not swallow the rest of a gigabyte.
class LogRow {
  public:
    explicit LogRow(char separator);
    ~LogRow();
    LogRow(const LogRow&) = delete;
    LogRow& operator=(const LogRow&) = delete;

    /// Cuts `line` (no line end). False when a quote is left open. The cells point into this
    /// object and live until the next call.
    bool cut(std::string_view line);
    [[nodiscard]] const std::vector<std::string_view>& cells() const { return cells_; }

  private:
    static void on_cell(void* text, std::size_t size, void* self);
    static void on_line(int terminator, void* self);

    csv_parser parser_{};
    std::string text_;              ///< the cells' bytes, one after the other
    std::vector<std::size_t> ends_; ///< where each cell ends in `text_`
    std::vector<std::string_view> cells_;
    bool complete_ = false;
};

} // namespace core::chamber
