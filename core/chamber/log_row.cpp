#include "core/chamber/log_row.h"

#include <new>

namespace core::chamber {

LogRow::LogRow(char separator) {
    if (csv_init(&parser_, 0) != 0) {
        throw std::bad_alloc();
    }
    csv_set_delim(&parser_, static_cast<unsigned char>(separator));
}

LogRow::~LogRow() {
    csv_free(&parser_);
}

void LogRow::on_cell(void* text, std::size_t size, void* self) {
    auto& row = *static_cast<LogRow*>(self);
    row.text_.append(static_cast<const char*>(text), size);
    row.ends_.push_back(row.text_.size());
}

void LogRow::on_line(int, void* self) {
    static_cast<LogRow*>(self)->complete_ = true;
}

bool LogRow::cut(std::string_view line) {
    text_.clear();
    ends_.clear();
    cells_.clear();
    complete_ = false;
    csv_parse(&parser_, line.data(), line.size(), &on_cell, &on_line, this);
    csv_parse(&parser_, "\n", 1, &on_cell, &on_line, this);
    const bool closed = complete_;
    if (!closed) {
        csv_fini(&parser_, &on_cell, &on_line, this); // leaves the parser ready for a new record
    }
    std::size_t start = 0;
    for (const std::size_t end : ends_) {
        cells_.emplace_back(text_.data() + start, end - start);
        start = end;
    }
    return closed || cells_.empty(); // a blank line ends no record and is none
}

} // namespace core::chamber
