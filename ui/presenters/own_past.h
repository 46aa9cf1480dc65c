#pragma once

#include "core/planning/own_history.h"
#include "core/services/book.h"
#include "ui/text/style.h"

#include <QString>
#include <map>
#include <optional>
#include <vector>

namespace ui::presenters {

class Workspace;

/// An outcome's proposal in words. Nothing of it is applied before the person says so.
struct PastProposal {
    QString words; ///< what was said, and what is worth a try; never empty
    std::optional<core::units::MassShare> target; ///< loss to aim for; absent: leave it
    std::optional<core::units::MassShare> salt;   ///< of the raw weight; absent: leave it
    QString target_reason;                        ///< for the book, once the target is used
    QString salt_reason;
    [[nodiscard]] bool usable() const { return target || salt; }
};

/// What the user's own finished batches say to the next one: how long such pieces took, and what
/// the last outcome suggests. Reads the book once; ask it anew after the book changed.
class OwnPast {
  public:
    void load(const Workspace& workspace);

    [[nodiscard]] const std::vector<core::planning::FinishedPiece>& finished() const {
        return finished_;
    }
    /// "Your last 3 took 9 to 11 weeks from hanging to done in this chamber."; empty without two
    /// finished pieces of the product. `like.product` is as the person typed it.
    [[nodiscard]] QString history(core::planning::Likeness like, const text::Style& style) const;
    /// Of the newest batch of the product with an outcome.
    [[nodiscard]] std::optional<PastProposal> proposal(const QString& product,
                                                       const text::Style& style) const;
    /// Of the newest batch with an outcome that used any version of the recipe.
    [[nodiscard]] std::optional<PastProposal> proposal(core::model::RecipeId recipe,
                                                       const text::Style& style) const;

  private:
    [[nodiscard]] std::optional<PastProposal>
    in_words(const std::optional<core::planning::Proposal>& proposal,
             const text::Style& style) const;
    std::vector<core::planning::FinishedPiece> finished_;
    std::vector<core::model::Outcome> outcomes_;
    std::map<core::model::BatchId, QString> codes_;
    std::map<core::model::RecipeId, std::vector<core::model::BatchId>> by_recipe_;
};

} // namespace ui::presenters
