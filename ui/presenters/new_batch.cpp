#include "ui/presenters/new_batch.h"

#include "core/facts/facts.h"
#include "core/planning/catalogue.h"
#include "core/planning/dated_plan.h"
#include "ui/presenters/acceptances.h"
#include "ui/presenters/limit_choices.h"
#include "ui/presenters/mix_salt.h"
#include "ui/text/data_name.h"

#include <QCoreApplication>

namespace ui::presenters {
namespace {

struct LimitWords {
    Q_DECLARE_TR_FUNCTIONS(LimitWords)
};

/// Read once: the built-in facts do not change while the program runs.
const core::facts::Facts& facts() {
    static const core::facts::Facts all = core::facts::built_in_facts();
    return all;
}

const core::planning::Catalogue& plans() {
    static const core::planning::Catalogue all = core::planning::Catalogue::built_in();
    return all;
}

core::mix::Line line_of_meat(const std::string& ingredient, core::units::MassShare share) {
    core::mix::Line line;
    line.ingredient = ingredient;
    line.amount = core::mix::ShareAmount{share, core::mix::Basis::meat};
    return line;
}

} // namespace

QVector<Choice> curing_salts() {
    QVector<Choice> choices;
    for (const auto& entry : facts().catalogue.entries()) {
        if (entry.kind == core::facts::IngredientKind::curing_salt) {
            choices.push_back({QString::fromStdString(entry.id), text::data_name(entry.name)});
        }
    }
    return choices;
}

QVector<Choice> plan_templates() {
    QVector<Choice> choices;
    for (const auto& plan : plans().templates()) {
        choices.push_back({QString::fromStdString(plan.id), text::data_name(plan.name)});
    }
    return choices;
}

QVector<LimitChoice> limit_choices() {
    QVector<LimitChoice> choices;
    for (const auto& set : facts().limit_sets.sets()) {
        bool verified = true;
        for (const auto& limit : set.limits) {
            verified = verified && core::facts::is_verified(limit.source);
        }
        choices.push_back(
            {QString::fromStdString(set.id),
             verified ? text::data_name(set.name)
                      : LimitWords::tr("%1 (partly unverified)").arg(text::data_name(set.name)),
             text::data_name(set.note)});
    }
    return choices;
}

core::mix::RecipeDocument recipe_of(const NewBatchForm& form) {
    core::mix::RecipeDocument recipe;
    recipe.name = form.name.empty() ? form.product : form.name;
    recipe.method = core::mix::Method::dry;
    recipe.limits = form.limits;
    recipe.expected_loss = form.target;
    if (form.salt) {
        recipe.lines.push_back(line_of_meat("table_salt", *form.salt));
    }
    if (!form.cure.empty() && form.cure_dose) {
        auto line = line_of_meat(form.cure, *form.cure_dose);
        line.label.nitrite = form.nitrite_label;
        line.label.nitrate = form.nitrate_label;
        recipe.lines.push_back(std::move(line));
    }
    if (form.sugar && form.sugar->as_fraction() > 0) {
        recipe.lines.push_back(line_of_meat("white_sugar", *form.sugar));
    }
    return recipe;
}

std::optional<core::units::MassShare> table_salt_for(NewBatchForm form,
                                                     core::units::MassShare total) {
    form.salt = total; // a line to begin with
    const auto changed = with_salt(recipe_of(form), total, core::units::Mass::kilograms(1));
    return changed ? std::optional(
                         std::get<core::mix::ShareAmount>(changed->lines.front().amount).share)
                   : std::nullopt;
}

std::optional<core::mix::MixSheet> mix_sheet_of(const NewBatchForm& form, core::units::Day today) {
    core::mix::MixRequest request;
    request.recipe = recipe_of(form);
    for (const auto& piece : form.pieces) {
        if (piece.raw) {
            request.pieces.push_back({piece.code, *piece.raw});
        }
    }
    if (request.pieces.empty() || request.recipe.lines.empty()) {
        return {};
    }
    request.scale_step = form.scale_step;
    request.today = today;
    return core::mix::make_mix_sheet(request, facts());
}

std::vector<core::model::Stage> stages_of(const NewBatchForm& form) {
    const auto* plan = form.plan.empty() ? nullptr : plans().find(form.plan);
    if (plan == nullptr) {
        return {};
    }
    std::vector<core::planning::PieceSpec> pieces;
    for (const auto& piece : form.pieces) {
        std::optional<core::model::Target> target;
        if (form.target) {
            target = core::model::Target{*form.target, form.reference};
        }
        pieces.push_back({piece.code, piece.form, piece.thickness, piece.raw, target});
    }
    return core::planning::to_stages(
        core::planning::date_plan({*plan, std::move(pieces), form.started, {}}));
}

core::actions::StartBatch start_batch_of(const NewBatchForm& form,
                                         const core::model::Findings& accepted,
                                         std::optional<core::model::PersonId> who,
                                         core::units::Instant now, const text::Style& style) {
    core::actions::StartBatch start{.batch = {.started = form.started}};
    auto& batch = start.batch;
    batch.code = form.code;
    batch.name = form.name;
    batch.product = form.product;
    batch.species = form.species;
    batch.supplier = form.supplier;
    batch.supplier_lot = form.supplier_lot;
    batch.notes = form.notes;
    batch.state = core::model::BatchState::in_progress;
    int order = 0;
    for (const auto& entry : form.pieces) {
        core::actions::NewPiece piece;
        piece.piece.code = entry.code;
        piece.piece.name = entry.name.empty() ? form.product : entry.name;
        piece.piece.form = entry.form;
        piece.piece.thickness = entry.thickness;
        piece.piece.hanging_order = ++order;
        piece.piece.state = core::model::PieceState::curing;
        if (form.target) {
            piece.piece.target = core::model::Target{*form.target, form.reference};
        }
        if (entry.raw) {
            core::model::Weighing raw{
                .taken_at = now, .on_scale = *entry.raw, .tare = core::units::Mass::grams(0)};
            raw.scale_step = form.scale_step;
            piece.weighings = {raw};
        }
        start.pieces.push_back(std::move(piece));
    }
    start.stages = stages_of(form);
    const auto recipe = recipe_of(form);
    if (!recipe.lines.empty()) {
        start.recipe = core::actions::AddRecipe{recipe.name.empty() ? form.code : recipe.name,
                                                core::mix::write_recipe(recipe)};
    }
    for (const auto& finding : accepted) {
        start.accepted.push_back(acceptance_of(finding, style, now, who));
    }
    return start;
}

} // namespace ui::presenters
