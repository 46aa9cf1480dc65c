#pragma once

#include "core/mix/mix_sheet.h"
#include "core/model/plan.h"
#include "core/services/book.h"
#include "ui/text/style.h"

#include <QString>
#include <QVector>
#include <optional>
#include <string>
#include <vector>

namespace ui::presenters {

/// What the form of a new batch holds. Plain; the functions below are pure.
struct NewBatchForm {
    struct PieceEntry {
        std::string code;
        std::string name;
        core::model::Form form = core::model::Form::cylinder;
        std::optional<core::units::Length> thickness;
        std::optional<core::units::Mass> raw;
    };
    std::string code;
    std::string name;
    std::string product;
    std::string species;
    std::string supplier;
    std::string supplier_lot;
    core::units::Day started = core::units::Day::from_days_since_epoch(0);
    std::vector<PieceEntry> pieces;
    std::optional<core::units::MassShare> target;
    core::model::ReferenceWeight reference = core::model::ReferenceWeight::hung;
    std::string plan;  ///< template id; empty: no plan
    std::string notes; ///< why something differs from last time

    // The cure: dry, weighed, all of it taken up.
    std::optional<core::units::MassShare> salt;
    std::optional<core::units::MassShare> sugar;
    std::string cure; ///< catalogue id of the curing salt; empty: none
    std::optional<core::units::MassShare> cure_dose;
    std::optional<core::units::MassShare> nitrite_label; ///< off the packet; else the catalogue's
    std::optional<core::units::MassShare> nitrate_label;
    std::optional<core::units::Mass> scale_step;
    std::string limits; ///< limit set; empty: none
};

struct Choice {
    QString id;
    QString name;
};
QVector<Choice> curing_salts();
QVector<Choice> plan_templates();

core::mix::RecipeDocument recipe_of(const NewBatchForm& form);
/// The table salt with which all salt of the cure together is `total`; absent where the curing salt
/// alone brings more.
std::optional<core::units::MassShare> table_salt_for(NewBatchForm form,
                                                     core::units::MassShare total);
/// Absent until at least one piece has a weight.
std::optional<core::mix::MixSheet> mix_sheet_of(const NewBatchForm& form, core::units::Day today);
/// The plan's stages from its template, dated for these pieces; empty without a template.
std::vector<core::model::Stage> stages_of(const NewBatchForm& form);

/// The one action that puts all of it into the book. `accepted` are the cautions the person
/// took on, kept as they read in `style`.
core::actions::StartBatch start_batch_of(const NewBatchForm& form,
                                         const core::model::Findings& accepted,
                                         std::optional<core::model::PersonId> who,
                                         core::units::Instant now, const text::Style& style);

} // namespace ui::presenters
