#include "core/services/weighing_import.h"

#include <map>
#include <optional>
#include <utility>

namespace core::services {
namespace {

using model::PieceState;

bool is_open(PieceState state) {
    return state != PieceState::split_up && state != PieceState::merged_away &&
           state != PieceState::discarded;
}

/// The pieces of the book by what a file may call them. Nothing where more than one is meant.
class PieceIndex {
  public:
    PieceIndex(const std::vector<model::Piece>& pieces, const std::vector<model::Batch>& batches) {
        std::map<model::BatchId, std::string> codes;
        for (const model::Batch& batch : batches) {
            codes[batch.id] = batch.code;
        }
        for (const model::Piece& piece : pieces) {
            add(piece.code, piece);
            add_to(by_both_, {codes[piece.batch], piece.code}, piece);
        }
    }
    [[nodiscard]] std::optional<model::PieceId> find(const std::string& batch,
                                                     const std::string& piece) const {
        if (batch.empty()) {
            const auto found = by_code_.find(piece);
            return found == by_code_.end() ? std::nullopt : found->second;
        }
        const auto found = by_both_.find({batch, piece});
        return found == by_both_.end() ? std::nullopt : found->second;
    }

  private:
    using Meant = std::optional<model::PieceId>;
    void add(const std::string& code, const model::Piece& piece) {
        const auto [found, is_new] = by_code_.try_emplace(code, piece.id);
        if (!is_new) {
            found->second.reset();
        }
    }
    /// Within a batch a piece that was cut up or joined gives its code free: the open one is meant.
    void add_to(std::map<std::pair<std::string, std::string>, Meant>& index,
                const std::pair<std::string, std::string>& key, const model::Piece& piece) {
        const auto [found, is_new] = index.try_emplace(key, piece.id);
        if (is_new) {
            open_[key] = is_open(piece.state);
            return;
        }
        if (open_[key] == is_open(piece.state)) {
            found->second.reset();
        } else if (is_open(piece.state)) {
            found->second = piece.id;
            open_[key] = true;
        }
    }
    std::map<std::string, Meant> by_code_;
    std::map<std::pair<std::string, std::string>, Meant> by_both_;
    std::map<std::pair<std::string, std::string>, bool> open_;
};

/// Half a milligram: the book keeps weights to the milligram.
bool same_weight(const model::Weighing& a, const model::Weighing& b) {
    const auto near = [](units::Mass x, units::Mass y) {
        const double gap = (x - y).in_milligrams();
        return gap < 0.5 && gap > -0.5;
    };
    return near(a.on_scale, b.on_scale) && near(a.tare, b.tare);
}

} // namespace

base::Result<WeighingImportPlan> plan_weighing_import(const Book& book,
                                                      const exchange::ImportedWeighings& file) {
    const auto pieces = book.pieces({});
    if (!pieces) {
        return tl::unexpected<base::Error>(pieces.error());
    }
    const auto batches = book.batches();
    if (!batches) {
        return tl::unexpected<base::Error>(batches.error());
    }
    const PieceIndex index(*pieces, *batches);
    std::map<model::PieceId, std::vector<model::Weighing>> known;
    WeighingImportPlan plan;
    for (const exchange::ImportedWeighing& row : file.weighings) {
        const auto piece = index.find(row.batch, row.piece);
        if (!piece) {
            plan.unmatched.push_back({row.line, row.piece});
            continue;
        }
        const model::PieceId id = *piece;
        if (known.count(id) == 0) {
            auto weighings = book.weighings(id);
            if (!weighings) {
                return tl::unexpected<base::Error>(weighings.error());
            }
            known[id] = std::move(*weighings);
        }
        model::Weighing weighing = row.weighing;
        weighing.piece = id;
        const model::Weighing* there = nullptr;
        for (const model::Weighing& other : known[id]) {
            if (other.stands() && other.taken_at == weighing.taken_at) {
                there = &other;
            }
        }
        if (there == nullptr) {
            plan.new_ones.push_back(std::move(weighing));
        } else if (same_weight(*there, weighing)) {
            plan.known_lines.push_back(row.line);
        } else {
            plan.contradictions.push_back({row.line, row.piece, there->id});
        }
    }
    return plan;
}

base::Result<actions::Performed> import_weighings(Book& book, const WeighingImportPlan& plan,
                                                  const actions::Context& context) {
    return book.perform(actions::AddWeighings{plan.new_ones}, context);
}

} // namespace core::services
