#include "ui/presenters/plan_draft.h"

#include "core/services/calendar_file.h"
#include "ui/presenters/acceptances.h"
#include "ui/presenters/workspace.h"
#include "ui/text/data_name.h"
#include "ui/text/date_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/plan_words.h"
#include "ui/text/quantity_words.h"

#include <algorithm>

namespace ui::presenters {

using core::units::Day;

namespace {
constexpr const char* first_template = "coppa";
constexpr std::size_t most_others = 4; ///< other products offered with a no
} // namespace

PlanDraft::PlanDraft(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace),
      catalogue_(
          std::make_unique<core::planning::Catalogue>(core::planning::Catalogue::built_in())),
      day_(workspace.today()) {
    pieces_.push_back({});
    set_template(QString::fromLatin1(first_template));
}

PlanDraft::~PlanDraft() = default;

std::vector<PlanDraft::Choice> PlanDraft::templates() const {
    std::vector<Choice> out;
    for (const auto& family : catalogue_->families()) {
        for (const auto& plan : catalogue_->templates()) {
            if (plan.family == family) {
                out.push_back({QString::fromStdString(plan.id), text::data_name(plan.name),
                               text::data_name(plan.family)});
            }
        }
    }
    return out;
}

void PlanDraft::load() {
    past_.load(workspace_);
    work_out();
}

const core::model::PlanTemplate& PlanDraft::chosen() const {
    const auto* found = catalogue_->find(template_id_.toStdString());
    return found != nullptr ? *found : catalogue_->templates().front();
}

void PlanDraft::set_template(const QString& id) {
    if (id == template_id_ || catalogue_->find(id.toStdString()) == nullptr) {
        return;
    }
    template_id_ = id;
    product_ = text::data_name(chosen().name);
    target_ = chosen().usual_target ? std::optional(chosen().usual_target->loss) : std::nullopt;
    skipped_.clear();
    rounds_.clear();
    for (auto& piece : pieces_) { // the form belongs to the product; sizes are the person's
        piece.form = chosen().usual_form;
    }
    work_out();
}

void PlanDraft::set_product(const QString& product) {
    product_ = product;
    work_out();
}

void PlanDraft::set_pieces(std::vector<DraftPiece> pieces) {
    pieces_ = std::move(pieces);
    work_out();
}

void PlanDraft::set_target(std::optional<core::units::MassShare> loss) {
    target_ = loss;
    work_out();
}

void PlanDraft::set_backwards(bool backwards) {
    backwards_ = backwards;
    work_out();
}

void PlanDraft::set_day(Day day) {
    day_ = day;
    work_out();
}

void PlanDraft::set_cautious(bool cautious) {
    cautious_ = cautious;
    work_out();
}

void PlanDraft::set_skipped(const QString& stage, bool skipped) {
    skipped ? static_cast<void>(skipped_.insert(stage)) : static_cast<void>(skipped_.remove(stage));
    work_out();
}

void PlanDraft::set_rounds(const QString& stage, int rounds) {
    rounds_[stage.toStdString()] = rounds;
    work_out();
}

void PlanDraft::set_chamber(std::optional<core::model::ChamberId> chamber) {
    chamber_ = chamber;
    work_out();
}

void PlanDraft::take(const OfferLine& offer) {
    switch (offer.kind) {
    case OfferLine::Kind::smaller:
        for (auto& piece : pieces_) {
            if (!piece.thickness || *piece.thickness > *offer.thickness) {
                piece.thickness = offer.thickness;
                piece.weight = offer.weight;
            }
        }
        break;
    case OfferLine::Kind::other:
        for (auto& piece : pieces_) { // the sizes were those of the other product
            piece.thickness.reset();
            piece.weight.reset();
        }
        set_template(offer.template_id);
        return;
    case OfferLine::Kind::later:
        day_ = *offer.day;
        break;
    }
    work_out();
}

std::vector<core::planning::PieceSpec> PlanDraft::specs() const {
    std::vector<core::planning::PieceSpec> out;
    for (const auto& piece : pieces_) {
        core::planning::PieceSpec spec{.code = piece.code.toStdString(),
                                       .form = piece.form,
                                       .thickness = piece.thickness,
                                       .raw_weight = piece.weight};
        if (target_) {
            const auto usual = chosen().usual_target;
            spec.target = core::model::Target{*target_, usual ? usual->reference
                                                              : core::model::ReferenceWeight::hung};
        }
        out.push_back(std::move(spec));
    }
    return out;
}

core::planning::PlanChoices PlanDraft::choices() const {
    core::planning::PlanChoices out;
    for (const auto& name : skipped_) {
        out.skipped.push_back(name.toStdString());
    }
    out.rounds = rounds_;
    if (chamber_) {
        // The hanging room: what happens before is done in the cold, wherever that is.
        for (const auto& stage : chosen().stages) {
            if (stage.kind == core::model::StageKind::dry ||
                stage.kind == core::model::StageKind::age) {
                out.chambers.emplace(stage.name, *chamber_);
            }
        }
    }
    return out;
}

void PlanDraft::work_out() {
    plan_.reset();
    steps_.clear();
    findings_.clear();
    offers_.clear();
    const auto sources = core::services::length_sources(past_.finished(), product_.toStdString());
    backwards_ ? answer_backwards(sources) : answer_forwards(sources);
    write_own(specs());
    write_cure_rules();
    Q_EMIT changed();
}

void PlanDraft::answer_forwards(const core::planning::LengthSources& sources) {
    const auto& style = workspace_.style();
    plan_ = core::planning::date_plan({chosen(), specs(), day_, choices()}, sources);
    findings_ = plan_->findings;
    answer_ = tr("Ready about %1").arg(text::words(plan_->end, style));
    const int days = core::planning::days_of(*plan_);
    more_ = plan_->earliest_end == plan_->latest_end
                ? tr("%n day(s) from the start.", nullptr, days)
                : tr("%n day(s) from the start; it may be %1.", nullptr, days)
                      .arg(text::range_words(plan_->earliest_end, plan_->latest_end, style));
    write_steps(*plan_);
}

void PlanDraft::answer_backwards(const core::planning::LengthSources& sources) {
    const auto& style = workspace_.style();
    const auto back = core::planning::plan_back(
        {.plan = chosen(),
         .pieces = specs(),
         .wanted_on = day_,
         .today = workspace_.today(),
         .slack = cautious_ ? core::planning::Slack::cautious : core::planning::Slack::none,
         .choices = choices(),
         .catalogue = catalogue_.get()},
        sources);
    if (back.plan) {
        plan_ = back.plan;
        findings_ = plan_->findings;
        const int spare = plan_->start - workspace_.today();
        answer_ = spare == 0 ? tr("Start today")
                             : tr("Start by %1").arg(text::words(plan_->start, style));
        more_ = cautious_ ? tr("Likely ready %1; the rest until %2 is slack.")
                                .arg(text::words(plan_->end, style), text::words(day_, style))
                          : tr("No slack: half of such plans end later than %1.")
                                .arg(text::words(day_, style));
        write_steps(*plan_);
        return;
    }
    findings_ = back.reasons;
    answer_ = tr("Not by %1").arg(text::words(day_, style));
    more_ = tr("It would be %n day(s) late. A stronger dose or a shorter cure does not help: salt "
               "needs its time.",
               nullptr, back.shortfall_days);
    write_offers(back);
    write_steps(
        core::planning::date_plan({chosen(), specs(), workspace_.today(), choices()}, sources));
}

void PlanDraft::write_offers(const core::planning::BackPlan& back) {
    const auto& style = workspace_.style();
    if (back.smaller) {
        OfferLine offer{.kind = OfferLine::Kind::smaller, .take = tr("Plan it smaller")};
        offer.words = tr("A piece of at most %1 and %2 would be ready by %3.")
                          .arg(text::words(back.smaller->thickness, style),
                               text::words(back.smaller->weight, style),
                               text::words(back.smaller->ready_by, style));
        offer.thickness = back.smaller->thickness;
        offer.weight = back.smaller->weight;
        offers_.push_back(std::move(offer));
    }
    for (std::size_t i = 0; i < std::min(most_others, back.others.size()); ++i) {
        const auto& other = back.others[i];
        OfferLine offer{.kind = OfferLine::Kind::other, .take = tr("Plan this instead")};
        offer.words =
            tr("%1 needs %n day(s) for its usual piece, %2 to spare.", nullptr, other.days)
                .arg(text::data_name(other.name))
                .arg(other.days_spare);
        offer.template_id = QString::fromStdString(other.template_id);
        offers_.push_back(std::move(offer));
    }
    if (back.ready_if_started_today) {
        OfferLine offer{.kind = OfferLine::Kind::later, .take = tr("Plan for that day")};
        offer.words = tr("Begun today, it would be ready by %1.")
                          .arg(text::words(*back.ready_if_started_today, style));
        offer.day = back.ready_if_started_today;
        offers_.push_back(std::move(offer));
    }
}

void PlanDraft::write_own(const std::vector<core::planning::PieceSpec>& pieces) {
    const auto& style = workspace_.style();
    history_ =
        past_.history({.product = product_.toStdString(),
                       .form = pieces.empty() ? std::nullopt : std::optional(pieces.front().form),
                       .chamber = chamber_,
                       .hung_on = plan_ ? std::optional(plan_->start) : std::nullopt},
                      style);
    proposed_ = past_.proposal(product_, style);
}

std::optional<core::units::MassShare> PlanDraft::proposed_target() const {
    return proposed_ && proposed_->target != target_ ? proposed_->target : std::nullopt;
}

void PlanDraft::use_proposal() {
    if (proposed_target()) {
        used_ = proposed_;
        set_target(proposed_->target);
    }
}

QString PlanDraft::source() const {
    return text::source_words({chosen().source, {}, chosen().sureness});
}

const core::planning::DatedPlan* PlanDraft::plan() const {
    return plan_ ? &*plan_ : nullptr;
}

std::optional<core::model::BatchId> PlanDraft::accept(const QString& name, bool weighed_now,
                                                      const core::model::Findings& taken_on,
                                                      std::optional<core::model::PersonId> by) {
    if (!plan_) {
        return {};
    }
    const auto& book = workspace_.book();
    const auto code = workspace_.one(book.free_batch_code());
    const auto codes = workspace_.rows(book.free_piece_codes(static_cast<int>(pieces_.size())));
    if (!code || codes.size() < pieces_.size()) {
        return {};
    }
    core::actions::StartBatch start{
        .batch = {.code = *code,
                  .name = name.toStdString(),
                  .product = product_.toStdString(),
                  .species = text::data_name(chosen().species).toStdString(),
                  .started = plan_->start},
        .stages = core::planning::to_stages(*plan_)};
    if (used_ && used_->target == target_) {
        start.batch.notes = used_->target_reason.toStdString();
    }
    const auto all = specs();
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
        core::actions::NewPiece piece;
        piece.piece.code = pieces_[i].code.isEmpty() ? codes[i] : pieces_[i].code.toStdString();
        piece.piece.form = pieces_[i].form;
        piece.piece.thickness = pieces_[i].thickness;
        piece.piece.target = all[i].target;
        if (weighed_now && pieces_[i].weight) {
            piece.weighings.push_back({.taken_at = workspace_.now(),
                                       .on_scale = *pieces_[i].weight,
                                       .tare = core::units::Mass::grams(0),
                                       .state = core::model::WeighedState::raw});
        }
        start.pieces.push_back(std::move(piece));
    }
    for (const auto& caution : taken_on) {
        start.accepted.push_back(acceptance_of(caution, workspace_.style(), workspace_.now(), by));
    }
    const auto performed = workspace_.perform(std::move(start));
    if (!performed) {
        return {};
    }
    return performed->id<core::model::BatchId>(core::model::EntryKind::batch);
}

std::optional<QByteArray> PlanDraft::calendar(const QString& mark) const {
    if (!plan_) {
        return {};
    }
    std::vector<core::services::CalendarLine> lines;
    for (const auto& step : steps_) {
        if (step.skipped) {
            continue;
        }
        const QStringList about{step.length, step.air, step.work, step.note};
        QStringList said = about;
        said.removeAll(QString());
        lines.push_back(
            {.kind = "plan",
             .key = (template_id_ + QLatin1Char('-') + QString::number(lines.size())).toStdString(),
             .title = tr("%1: %2").arg(product_, text::data_name(step.name)).toStdString(),
             .text = said.join(QLatin1Char('\n')).toStdString(),
             .first = step.start,
             .last = step.end});
    }
    const auto text = workspace_.one(
        core::services::calendar_file(lines, mark.toStdString(), product_.toStdString(),
                                      workspace_.style().zone, workspace_.now()));
    return text ? std::optional(QByteArray::fromStdString(*text)) : std::nullopt;
}

} // namespace ui::presenters
