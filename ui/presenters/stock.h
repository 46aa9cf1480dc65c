#pragma once

#include "core/model/pack.h"
#include "core/services/book.h"

#include <QString>
#include <optional>
#include <vector>

namespace ui::presenters {

/// A pack with what a list shows of where it came from.
struct StockLine {
    core::model::Pack pack;
    QString piece;   ///< its code
    QString product; ///< of its batch
    QString batch;   ///< its code
    /// Rank in eating order: what is open first, then by keep-by day, then by age. 0 is first.
    int eat_order = 0;
};

/// What became of a piece's meat: yield and cost at the loss it really had.
struct Yield {
    core::units::Mass raw;        ///< net raw weight of the piece
    core::units::Mass packed;     ///< all that was packed of it
    core::units::MassShare share; ///< packed of raw
    /// Price of a finished kilogram, trim included where the batch says how much was bought;
    /// absent without a price.
    std::optional<double> cost_per_kilogram;
};

/// In eating order; packs that are gone come last.
std::vector<StockLine> stock_lines(const core::services::Book& book);
void rank_for_eating(std::vector<StockLine>& lines);

/// Absent when the raw weight is not known or nothing was packed.
std::optional<Yield> yield_of(const core::services::PieceHistory& history,
                              const core::model::Batch& batch,
                              const std::vector<core::model::Pack>& packs,
                              std::optional<core::units::Mass> raw_of_whole_batch);

} // namespace ui::presenters
