#include "core/planning/back_plan.h"

#include <algorithm>
#include <cmath>

namespace core::planning {
namespace {

using model::Severity;
using units::Day;
using units::Duration;

/// Ten years back is where the search begins, a century where it ends: a thick piece's cautious
/// end can lie far beyond any date that a person would keep, and is still an answer.
constexpr int first_look_days = 3660;
constexpr int last_look_days = 36600;
/// A piece cut to less than a quarter is another product; below 15 mm nothing here applies.
constexpr double smallest_share = 0.25;
constexpr double thinnest_mm = 15;

Day ready(const DatedPlan& plan, Slack slack) {
    return slack == Slack::cautious ? plan.latest_end : plan.end;
}

class BackPlanner {
  public:
    BackPlanner(const BackPlanRequest& request, const LengthSources& sources)
        : request_(request), sources_(sources) {}

    BackPlan run() {
        BackPlan out;
        out.latest_start = latest_start(request_.plan, request_.pieces, request_.choices);
        const DatedPlan from_today =
            date_plan({request_.plan, request_.pieces, request_.today, request_.choices}, sources_);
        out.ready_if_started_today = ready(from_today, request_.slack);
        if (out.latest_start && *out.latest_start >= request_.today) {
            out.plan = date_plan(
                {request_.plan, request_.pieces, *out.latest_start, request_.choices}, sources_);
            return out;
        }
        out.shortfall_days = *out.ready_if_started_today - request_.wanted_on;
        explain(from_today, out);
        out.smaller = smaller_piece();
        out.others = other_products();
        return out;
    }

  private:
    using Pieces = std::vector<PieceSpec>;

    Day end_for(const model::PlanTemplate& plan, const Pieces& pieces, Day start,
                const PlanChoices& choices) const {
        return ready(date_plan({plan, pieces, start, choices}, sources_), request_.slack);
    }

    /// The last start whose end is not after the wanted day. Ends never come earlier for a later
    /// start, so halving the interval finds it.
    std::optional<Day> latest_start(const model::PlanTemplate& plan, const Pieces& pieces,
                                    const PlanChoices& choices) const {
        int back = first_look_days;
        while (end_for(plan, pieces, request_.wanted_on - back, choices) > request_.wanted_on) {
            back *= 2;
            if (back > last_look_days) {
                return std::nullopt;
            }
        }
        Day good = request_.wanted_on - back;
        Day bad = request_.wanted_on + 1;
        while (bad - good > 1) {
            const Day middle = good + (bad - good) / 2;
            (end_for(plan, pieces, middle, choices) <= request_.wanted_on ? good : bad) = middle;
        }
        return good;
    }

    void explain(const DatedPlan& from_today, BackPlan& out) const {
        const int available = request_.wanted_on - request_.today;
        if (available < 0) {
            out.reasons.push_back({.code = "date_passed", .severity = Severity::stop});
        }
        const int needed = *out.ready_if_started_today - request_.today;
        out.reasons.push_back(
            {.code = "too_little_time",
             .severity = Severity::stop,
             .values = {{"days_needed", static_cast<double>(needed)},
                        {"days_available", static_cast<double>(std::max(0, available))},
                        {"shortfall", static_cast<double>(out.shortfall_days)}}});
        for (const auto& stage : from_today.stages) {
            explain_stage(stage, out);
        }
        out.reasons.insert(out.reasons.end(), from_today.findings.begin(),
                           from_today.findings.end());
    }

    void explain_stage(const PlannedStage& stage, BackPlan& out) const {
        const bool held = stage.length.basis == LengthBasis::fixed ||
                          stage.length.basis == LengthBasis::weight_rule ||
                          stage.length.basis == LengthBasis::thickness_rule ||
                          stage.length.basis == LengthBasis::date;
        if (!held || stage.stage.round > 1 || stage.length.lasts.best < Duration::days(1)) {
            return;
        }
        out.reasons.push_back(
            {.code = "stage_cannot_be_shorter",
             .place = stage.stage.what.name,
             .values = {{"days", stage.length.lasts.best.in_days() * stage.stage.rounds}},
             .source = base::Source{request_.plan.source, {}, request_.plan.sureness}});
    }

    [[nodiscard]] Pieces asked() const {
        Pieces pieces = request_.pieces;
        if (pieces.empty()) {
            pieces.push_back(usual_piece(request_.plan));
        }
        for (auto& piece : pieces) {
            piece = with_usual(piece, request_.plan);
        }
        return pieces;
    }

    /// The same pieces cut thinner: a slab's weight shrinks with its thickness, a cylinder's and a
    /// round's with the square and the cube if they keep their shape.
    [[nodiscard]] Pieces cut_to(double thickness_share) const {
        Pieces pieces = asked();
        for (auto& piece : pieces) {
            const double power = piece.form == model::Form::round      ? 3.0
                                 : piece.form == model::Form::cylinder ? 2.0
                                                                       : 1.0;
            // Down to what a ruler and a butcher's scale show, so the offer never overpromises.
            piece.thickness = units::Length::millimetres(
                std::floor(piece.thickness->in_millimetres() * thickness_share + 1e-9));
            piece.raw_weight = units::Mass::grams(
                std::floor(piece.raw_weight->in_grams() * std::pow(thickness_share, power) / 10 +
                           1e-9) *
                10);
        }
        return pieces;
    }

    [[nodiscard]] bool fits(const Pieces& pieces) const {
        return end_for(request_.plan, pieces, request_.today, request_.choices) <=
               request_.wanted_on;
    }

    [[nodiscard]] std::optional<SmallerPiece> smaller_piece() const {
        const Pieces whole = asked();
        const auto thickest = std::max_element(
            whole.begin(), whole.end(),
            [](const PieceSpec& a, const PieceSpec& b) { return *a.thickness < *b.thickness; });
        double good = std::max(smallest_share, thinnest_mm / thickest->thickness->in_millimetres());
        if (request_.wanted_on < request_.today || good >= 1 || !fits(cut_to(good))) {
            return std::nullopt;
        }
        double bad = 1;
        while (bad - good > 0.002) {
            const double middle = (good + bad) / 2;
            (fits(cut_to(middle)) ? good : bad) = middle;
        }
        const Pieces cut = cut_to(good);
        const auto& offered = cut[static_cast<std::size_t>(thickest - whole.begin())];
        if (*offered.raw_weight <= units::Mass::grams(0)) {
            return std::nullopt;
        }
        return SmallerPiece{*offered.thickness, *offered.raw_weight,
                            *offered.raw_weight / *thickest->raw_weight,
                            end_for(request_.plan, cut, request_.today, request_.choices)};
    }

    [[nodiscard]] std::vector<OtherProduct> other_products() const {
        std::vector<OtherProduct> others;
        if (request_.catalogue == nullptr || request_.wanted_on < request_.today) {
            return others;
        }
        for (const auto& plan : request_.catalogue->templates()) {
            if (plan.id == request_.plan.id) {
                continue;
            }
            const Day end = end_for(plan, {}, request_.today, {});
            if (end <= request_.wanted_on) {
                others.push_back({plan.id, plan.name, end - request_.today,
                                  request_.wanted_on - end, plan.species == request_.plan.species});
            }
        }
        std::stable_sort(others.begin(), others.end(),
                         [](const OtherProduct& a, const OtherProduct& b) {
                             return std::pair(!a.same_meat, a.days_spare) <
                                    std::pair(!b.same_meat, b.days_spare);
                         });
        return others;
    }

    const BackPlanRequest& request_;
    const LengthSources& sources_;
};

} // namespace

BackPlan plan_back(const BackPlanRequest& request, const LengthSources& sources) {
    return BackPlanner(request, sources).run();
}

} // namespace core::planning
