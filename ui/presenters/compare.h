#pragma once

#include "ui/presenters/piece_line.h"

#include <vector>

namespace ui::presenters {

/// Which other pieces share a piece's chart.
enum class CompareWith { alone, batch, chamber, product, chosen };

struct Company {
    std::vector<PieceLine> lines; ///< the newest hung first, without the piece itself
    int left_out = 0;             ///< more than a chart can tell apart
};

/// More curves than this cannot be told apart on one chart (marks, dashes and colours go round).
inline constexpr std::size_t most_compared = 11;

/// Pieces that were hung and weighed since: of the same batch in any state; drying in the same
/// chamber; drying and of the same product; or those of `chosen`.
Company company_of(const core::services::Book& book, const core::model::Piece& piece,
                   CompareWith with, const std::vector<core::model::PieceId>& chosen = {});

/// The user's own finished pieces of the same product and form, the newest hung first.
std::vector<PieceLine> earlier_of(const core::services::Book& book, const core::model::Piece& piece,
                                  std::size_t most = 6);
/// Whether there are any, without reading their weighings.
bool has_earlier(const core::services::Book& book, const core::model::Piece& piece);

} // namespace ui::presenters
