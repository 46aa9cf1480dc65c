#pragma once

#include "core/chamber/detect_dialect.h"
#include "core/chamber/log_layout.h"
#include "core/chamber/log_words.h"

/// Second half of detect_dialect: which column is what, and in which unit. Not for other callers.
namespace core::chamber {

/// A table whose moments are understood.
struct StampedTable {
    const SampleTable& table;
    const StampPlace& place;
    char decimal_sign;
    const std::vector<HeadingCell>& heading; ///< empty or one a column
};

/// Fills `columns` of the dialect and appends the two parts. False when no column can be a
/// temperature or a humidity.
bool choose_value_columns(const StampedTable& in, const DialectHints& hints, Detection& found);

/// Fills the scales of the chosen columns and appends the two parts.
void choose_scales(const StampedTable& in, const DialectHints& hints, Detection& found);

} // namespace core::chamber
