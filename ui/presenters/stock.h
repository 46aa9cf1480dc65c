#pragma once

#include "core/model/pack.h"
#include "core/services/book.h"
#include "ui/presenters/piece_line.h"

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
    core::units::Mass raw;                   ///< net raw (else trimmed) weight, rebased by cuts
    core::units::Mass finished;              ///< net by the last weighing, else what was packed
    core::units::MassShare share;            ///< finished of raw
    core::units::MassShare lost;             ///< the rest of it
    std::optional<core::units::Mass> packed; ///< of the packs, less what hung again
    /// Price of a finished kilogram at that loss, trim included where the batch says how much was
    /// bought; absent without a price.
    std::optional<double> cost_per_kilogram;
};

/// In eating order; packs that are gone come last.
std::vector<StockLine> stock_lines(const core::services::Book& book);
void rank_for_eating(std::vector<StockLine>& lines);

/// Net raw (else trimmed) weight of all pieces a batch began with; absent where one has none.
std::optional<core::units::Mass> raw_of_batch(const core::services::Book& book,
                                              core::model::BatchId batch);

/// Absent when the raw weight or the last weight is not known.
std::optional<Yield> yield_of(const PieceLine& line, const core::model::Batch& batch,
                              const std::vector<core::model::Pack>& packs,
                              const std::vector<core::model::PackMove>& moves,
                              std::optional<core::units::Mass> raw_of_whole_batch);

} // namespace ui::presenters
