#pragma once

#include "core/actions/command.h"
#include "core/exchange/weighings_csv.h"
#include "core/services/book.h"

#include <string>
#include <vector>

namespace core::services {

/// What taking a file's weighings into the book would mean, before anything is changed.
struct WeighingImportPlan {
    std::vector<model::Weighing> new_ones; ///< matched to pieces, not in the book yet
    std::vector<std::size_t> known_lines;  ///< the book has the same piece, moment and weight
    struct Unmatched {
        std::size_t line = 0;
        std::string piece; ///< no piece, or more than one, is meant by this code
    };
    std::vector<Unmatched> unmatched;
    struct Contradiction {
        std::size_t line = 0;
        std::string piece;
        model::WeighingId known; ///< same piece and moment in the book, another weight
    };
    std::vector<Contradiction> contradictions;
};

/// Matches the file's pieces by batch and piece code where the file tells the batch; else by piece
/// code with the open piece that carries it, if no other piece ever did: a code is used again once
/// its piece is gone, and an old file must not feed a new piece. Changes nothing.
base::Result<WeighingImportPlan> plan_weighing_import(const Book& book,
                                                      const exchange::ImportedWeighings& file);

/// Adds the plan's new weighings as one action, which one undo takes back.
base::Result<actions::Performed> import_weighings(Book& book, const WeighingImportPlan& plan,
                                                  const actions::Context& context);

} // namespace core::services
