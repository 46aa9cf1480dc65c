#include "ui/presenters/own_past.h"

#include "core/services/planning_desk.h"
#include "ui/presenters/workspace.h"
#include "ui/text/plan_words.h"

namespace ui::presenters {

using core::planning::Proposal;

void OwnPast::load(const Workspace& workspace) {
    const auto& book = workspace.book();
    finished_ = workspace.one(core::services::finished_pieces(book, workspace.style().zone))
                    .value_or(std::vector<core::planning::FinishedPiece>{});
    outcomes_ = workspace.rows(book.outcomes());
    codes_.clear();
    by_recipe_.clear();
    std::map<core::model::RecipeVersionId, core::model::RecipeId> recipe_of;
    for (const auto& batch : workspace.rows(book.batches())) {
        codes_[batch.id] = QString::fromStdString(batch.code);
        if (!batch.recipe) {
            continue;
        }
        const auto known = recipe_of.find(*batch.recipe);
        if (known != recipe_of.end()) {
            by_recipe_[known->second].push_back(batch.id);
        } else if (const auto version = workspace.one(book.recipe_version(*batch.recipe))) {
            recipe_of.emplace(version->id, version->recipe);
            by_recipe_[version->recipe].push_back(batch.id);
        }
    }
}

QString OwnPast::history(core::planning::Likeness like, const text::Style& style) const {
    like.product = core::services::product_key(like.product);
    if (like.product.empty()) {
        return {};
    }
    const auto summary = core::planning::summarise(finished_, like);
    return summary ? text::history_words(*summary, style) : QString();
}

std::optional<PastProposal> OwnPast::proposal(const QString& product,
                                              const text::Style& style) const {
    const auto key = core::services::product_key(product.toStdString());
    return key.empty() ? std::nullopt
                       : in_words(core::planning::propose_next(finished_, outcomes_, key), style);
}

std::optional<PastProposal> OwnPast::proposal(core::model::RecipeId recipe,
                                              const text::Style& style) const {
    const auto batches = by_recipe_.find(recipe);
    return batches == by_recipe_.end()
               ? std::nullopt
               : in_words(core::planning::propose_next(finished_, outcomes_, batches->second),
                          style);
}

std::optional<PastProposal> OwnPast::in_words(const std::optional<Proposal>& proposal,
                                              const text::Style& style) const {
    if (!proposal) {
        return std::nullopt;
    }
    const auto code = codes_.find(proposal->batch);
    const QString batch = code == codes_.end() ? QString() : code->second;
    PastProposal out{.words = text::proposal_words(*proposal, batch, style),
                     .target = proposal->target_next,
                     .salt = proposal->salt_next,
                     .target_reason = text::target_reason(*proposal, batch, style),
                     .salt_reason = text::salt_reason(*proposal, batch, style)};
    return out.words.isEmpty() ? std::nullopt : std::optional(std::move(out));
}

} // namespace ui::presenters
