#pragma once

#include "core/services/book.h"
#include "ui/presenters/piece_line.h"

#include <QString>
#include <optional>
#include <vector>

namespace ui::presenters {

/// How a drying piece stands on a given day.
enum class ReadyBy {
    yes,      ///< at target with nine chances in ten, or there already
    likely,   ///< more likely than not
    unlikely, ///< possible, less than even
    no,       ///< less than one chance in ten, or never
    unknown,  ///< too few weighings
};

struct HangingLine {
    PieceLine line;
    QString chamber;
    QString batch;
    QString product;
    /// Drying much faster or slower than the others of its batch (median of loss per day since
    /// hung): +1 faster, -1 slower, 0 like the others or too few to say.
    int unlike = 0;
};

ReadyBy ready_by(const std::optional<core::model::Forecast>& forecast, core::units::Instant at);

/// The drying pieces with where they hang and what they belong to, in hanging order.
std::vector<HangingLine> hanging_lines(const core::services::Book& book);

/// Marks the pieces that dry unlike the others of their batch: their rate since hung is more than
/// 1.6 times, or less than 1/1.6 of, the median of three or more.
void mark_unlike(std::vector<HangingLine>& lines);

} // namespace ui::presenters
