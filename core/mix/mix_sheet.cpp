#include "core/mix/mix_sheet.h"

#include "core/mix/amounts.h"
#include "core/mix/checks.h"
#include "core/mix/finding_maker.h"
#include "core/mix/limit_checks.h"

#include <algorithm>

namespace core::mix {
namespace {

using facts::Component;
using model::Severity;
using units::Mass;
using units::MassShare;

bool holds_cure(const ResolvedIngredient& what) {
    return what.composition.may_hold(Component::sodium_nitrite) ||
           what.composition.may_hold(Component::potassium_nitrite) ||
           what.composition.may_hold(Component::sodium_nitrate) ||
           what.composition.may_hold(Component::potassium_nitrate);
}

/// The work on one request; each step fills its part of the sheet.
class SheetMaker {
  public:
    SheetMaker(const MixRequest& request, const facts::Facts& facts)
        : request_(request), recipe_(request.recipe), facts_(facts) {}

    MixSheet run() {
        resolved_ = resolve_recipe(recipe_, facts_);
        sheet_.findings = resolved_.findings;
        check_meat(request_.pieces, sheet_.findings);
        find_limit_set();
        for (const auto& piece : request_.pieces) {
            if (piece.mass.is_finite() && piece.mass > Mass::grams(0)) {
                sheet_.meat += piece.mass;
            }
        }
        if (sheet_.meat <= Mass::grams(0)) {
            return std::move(sheet_);
        }
        masses_ = line_masses(recipe_, resolved_, sheet_.meat, facts_, sheet_.findings);
        sheet_.dose = dose_of(masses_, sheet_.meat, 1);
        if (has_liquid() && absorption_matters()) {
            sheet_.half_absorbed = dose_of(masses_, sheet_.meat, 0.5);
        }
        run_checks();
        find_ceilings();
        sheet_.lines = lines_for(masses_);
        settle(sheet_.lines, sheet_.meat);
        make_pieces();
        advise_on_scale();
        return std::move(sheet_);
    }

  private:
    void find_limit_set() {
        const std::string id = request_.limits.value_or(recipe_.limits);
        if (id.empty()) {
            return;
        }
        set_ = facts_.limit_sets.find(id);
        if (set_ == nullptr) {
            sheet_.findings.push_back(
                make_finding("limit_set_unknown", Severity::stop, "limits", {{"found", id}}));
        }
    }

    [[nodiscard]] bool has_liquid() const {
        return std::any_of(resolved_.ingredients.begin(), resolved_.ingredients.end(),
                           [](const auto& what) { return is_liquid(what.kind); });
    }
    /// Elsewhere the method itself says how much is taken up.
    [[nodiscard]] bool absorption_matters() const {
        return recipe_.method == Method::dry || recipe_.method == Method::marinade;
    }

    [[nodiscard]] Dose dose_of(const std::vector<MassInterval>& masses, Mass meat,
                               double absorbed) const {
        std::vector<WeighedLine> lines;
        lines.reserve(masses.size());
        for (std::size_t i = 0; i < masses.size(); ++i) {
            lines.push_back({resolved_.ingredients[i], masses[i], recipe_.lines[i].as_wash});
        }
        DoseContext context;
        context.method = recipe_.method;
        context.meat = meat;
        context.moisture = meat_moisture(recipe_.meat, facts_.constants);
        context.pump = recipe_.pump;
        context.pickup = recipe_.pickup;
        context.wash_pickup = facts_.constants.wash_pickup.value;
        context.absorbed = absorbed;
        return compute_dose(lines, context);
    }

    void run_checks() {
        const CheckInput input{recipe_, resolved_, masses_, sheet_.dose, sheet_.meat};
        check_form(input, sheet_.findings);
        check_dose(input, set_ != nullptr, sheet_.findings);
        if (set_ != nullptr) {
            sheet_.limits = check_limits(*set_, recipe_, sheet_.dose, facts_.constants,
                                         request_.today, sheet_.findings);
        }
    }

    /// How many times the cures may grow before the first limit on them is passed.
    void find_ceilings() {
        for (const auto& check : sheet_.limits) {
            const auto s = check.limit.substance;
            const bool of_cure = s == facts::Substance::nitrite || s == facts::Substance::nitrate ||
                                 s == facts::Substance::nitrite_and_nitrate;
            if (of_cure && check.limit.maximum && check.value.best > MassShare::fraction(0)) {
                const double factor = *check.limit.maximum / check.value.best;
                headroom_ = headroom_ ? std::min(*headroom_, factor) : factor;
            }
        }
    }

    /// Nearest step, but down where up would carry nitrite or nitrate past the limit.
    [[nodiscard]] Mass on_scale(std::size_t i, Mass amount) const {
        if (!request_.scale_step || *request_.scale_step <= Mass::grams(0)) {
            return amount;
        }
        const Mass step = *request_.scale_step;
        const Mass nearest = round_to_step(amount, step);
        // Growing every cure by the same factor keeps the limit, so each line on its own does.
        const bool too_much = holds_cure(resolved_.ingredients[i]) && nearest > amount &&
                              (headroom_ ? nearest > amount * *headroom_ : false);
        return too_much ? round_down_to_step(amount, step) : nearest;
    }

    /// Takes cures down by single steps until the rounded lines together keep the limit. Each
    /// line on its own already does; in a pickle the other lines' rounding moves its strength.
    Dose settle(std::vector<SheetLine>& lines, Mass meat) const {
        Dose dose = dose_of(as_weighed(lines), meat, 1);
        if (!request_.scale_step || *request_.scale_step <= Mass::grams(0) || !headroom_) {
            return dose;
        }
        constexpr int most_steps = 3;
        for (int taken = 0; taken < most_steps && passes_headroom(dose); ++taken) {
            for (auto& line : lines) {
                if (holds_cure(resolved_.ingredients[line.line])) {
                    line.weigh_out =
                        std::max(Mass::grams(0), line.weigh_out - *request_.scale_step);
                    complete(line);
                }
            }
            dose = dose_of(as_weighed(lines), meat, 1);
        }
        return dose;
    }

    [[nodiscard]] bool passes_headroom(const Dose& rounded) const {
        // Of a recipe that is over the limit as written, rounding makes nothing worse than it is.
        const double allowed = std::max(1.0, *headroom_) * (1 + 1e-9);
        const auto grew = [&](const ShareInterval& now, const ShareInterval& written) {
            return now.best > written.best * allowed;
        };
        return grew(rounded.nitrite_as_weighed, sheet_.dose.nitrite_as_weighed) ||
               grew(rounded.nitrate_as_weighed, sheet_.dose.nitrate_as_weighed);
    }

    [[nodiscard]] std::vector<SheetLine> lines_for(const std::vector<MassInterval>& masses) const {
        std::vector<SheetLine> lines;
        lines.reserve(masses.size());
        for (std::size_t i = 0; i < masses.size(); ++i) {
            const auto& what = resolved_.ingredients[i];
            SheetLine line;
            line.line = i;
            line.ingredient = what.id;
            line.name = what.name;
            line.amount = masses[i];
            line.weigh_out = on_scale(i, masses[i].best);
            complete(line);
            lines.push_back(std::move(line));
        }
        return lines;
    }

    /// What follows from the weight on the scale.
    void complete(SheetLine& line) const {
        const auto& what = resolved_.ingredients[line.line];
        line.step_error.reset();
        if (request_.scale_step && *request_.scale_step > Mass::grams(0) &&
            line.weigh_out > Mass::grams(0)) {
            line.step_error = half_step_error(line.weigh_out, *request_.scale_step);
        }
        if (is_liquid(what.kind) && what.density) {
            line.volume = what.density->best.volume_of(line.weigh_out);
        }
        line.rubs = rubs_of(line.line, line.weigh_out);
    }

    [[nodiscard]] std::vector<Mass> rubs_of(std::size_t i, Mass total) const {
        std::vector<Mass> rubs;
        if (recipe_.rubs.size() < 2) {
            return rubs;
        }
        const auto only = recipe_.lines[i].rub;
        Mass left = total;
        for (std::size_t r = 0; r < recipe_.rubs.size(); ++r) {
            Mass part = Mass::grams(0);
            if (only) {
                part = static_cast<std::size_t>(*only) == r ? total : part;
            } else if (r + 1 == recipe_.rubs.size()) {
                part = left; // the last takes what rounding left, so that the sum is right
            } else {
                part = recipe_.rubs[r].share.part_of(total);
                if (request_.scale_step && *request_.scale_step > Mass::grams(0)) {
                    part = round_to_step(part, *request_.scale_step);
                }
                part = std::min(part, left);
            }
            left -= part;
            rubs.push_back(part);
        }
        return rubs;
    }

    void make_pieces() {
        bool rounds_to_zero = false;
        for (const auto& piece : request_.pieces) {
            PieceSheet out;
            out.code = piece.code;
            out.meat = piece.mass;
            if (!piece.mass.is_finite() || piece.mass <= Mass::grams(0)) {
                sheet_.pieces.push_back(std::move(out));
                continue;
            }
            const double share = piece.mass / sheet_.meat;
            std::vector<MassInterval> masses;
            masses.reserve(masses_.size());
            for (const auto& mass : masses_) {
                masses.push_back({mass.low * share, mass.best * share, mass.high * share});
            }
            out.lines = lines_for(masses);
            out.as_weighed = settle(out.lines, piece.mass);
            for (const auto& line : out.lines) {
                rounds_to_zero = rounds_to_zero || (line.amount.best > Mass::grams(0) &&
                                                    line.weigh_out <= Mass::grams(0) &&
                                                    holds_cure(resolved_.ingredients[line.line]));
            }
            sheet_.pieces.push_back(std::move(out));
        }
        if (rounds_to_zero) {
            sheet_.findings.push_back(make_finding("scale_rounds_to_nothing", Severity::stop,
                                                   "scale_step", {{"step", *request_.scale_step}}));
        }
    }

    /// The rounded amounts with half a step either way, and a spoon's spread where one is used.
    [[nodiscard]] std::vector<MassInterval> as_weighed(const std::vector<SheetLine>& lines) const {
        std::vector<MassInterval> masses;
        masses.reserve(lines.size());
        const Mass half = request_.scale_step.value_or(Mass::grams(0)) / 2;
        for (const auto& line : lines) {
            if (half <= Mass::grams(0)) {
                masses.push_back(line.amount);
                continue;
            }
            masses.push_back({std::max(Mass::grams(0), line.weigh_out - half), line.weigh_out,
                              line.weigh_out + half});
        }
        return masses;
    }

    void advise_on_scale() {
        if (!request_.scale_step || *request_.scale_step <= Mass::grams(0) ||
            sheet_.pieces.empty()) {
            return;
        }
        // The smallest piece has the smallest dose, so the largest error.
        const auto smallest = std::min_element(
            sheet_.pieces.begin(), sheet_.pieces.end(), [](const auto& a, const auto& b) {
                return !a.lines.empty() && (b.lines.empty() || a.meat < b.meat);
            });
        std::vector<ScaleLine> lines;
        for (const auto& line : smallest->lines) {
            const auto& what = resolved_.ingredients[line.line];
            ScaleLine scale_line;
            scale_line.line = line.line;
            scale_line.amount = line.amount.best;
            scale_line.is_cure = holds_cure(what);
            scale_line.can_blend = !is_liquid(what.kind) && !recipe_.lines[line.line].rub;
            if (scale_line.is_cure && headroom_) {
                scale_line.at_most = line.amount.best * *headroom_;
            }
            lines.push_back(scale_line);
        }
        sheet_.scale = advise_scale(lines, *request_.scale_step);
        for (const auto& advice : sheet_.scale) {
            sheet_.findings.push_back(make_finding(
                "scale_too_coarse", Severity::caution, place_of_line(advice.line) + ".amount",
                {{"ingredient", resolved_.ingredients[advice.line].name},
                 {"amount", advice.amount},
                 {"step", *request_.scale_step},
                 {"error", MassShare::fraction(advice.error)}}));
        }
    }

    const MixRequest& request_;
    const RecipeDocument& recipe_;
    const facts::Facts& facts_;
    const facts::LimitSet* set_ = nullptr;
    ResolvedRecipe resolved_;
    std::vector<MassInterval> masses_;
    std::optional<double> headroom_;
    MixSheet sheet_;
};

} // namespace

bool MixSheet::has_stop() const {
    return std::any_of(findings.begin(), findings.end(), [](const model::Finding& finding) {
        return finding.severity == Severity::stop;
    });
}

MixSheet make_mix_sheet(const MixRequest& request, const facts::Facts& facts) {
    return SheetMaker(request, facts).run();
}

} // namespace core::mix
