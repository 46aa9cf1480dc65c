#pragma once

#include "core/planning/back_plan.h"
#include "core/services/planning_desk.h"
#include "ui/presenters/own_past.h"

#include <QObject>
#include <QSet>
#include <QString>
#include <QStringList>
#include <memory>
#include <optional>
#include <vector>

namespace ui::presenters {

class Workspace;

struct DraftPiece {
    QString code; ///< empty: the book gives a free one
    core::model::Form form = core::model::Form::slab;
    std::optional<core::units::Length> thickness;
    std::optional<core::units::Mass> weight;
};

/// One stage of the plan in words; a repeated pair is one line with its rounds.
struct StepLine {
    QString name; ///< the template's, by which it is skipped or repeated; shown by text::data_name
    core::model::StageKind kind{};
    core::units::Day start;
    core::units::Day end;
    QString days;   ///< "1 to 10 Mar 2026"
    QString length; ///< "9 days", "5 to 17 weeks"
    QString basis;  ///< what it rests on
    QString air;    ///< bands: "10–15 °C, 70–80 %"; empty where none is set
    QString work;   ///< "Weigh every 7 days, …"
    QString note;
    bool optional = false;
    bool skipped = false;
    int rounds = 1;
    int rounds_least = 1;
    int rounds_most = 1;
};

/// An offer that comes with a no.
struct OfferLine {
    enum class Kind { smaller, other, later } kind = Kind::later;
    QString words;
    QString take; ///< on the button
    QString template_id;
    std::optional<core::units::Length> thickness;
    std::optional<core::units::Mass> weight;
    std::optional<core::units::Day> day;
};

/// A plan being made: what is asked for, and the answer in words. Pure but for accept(). The answer
/// is worked out anew whenever something was set; nothing reaches the book before accept().
class PlanDraft : public QObject {
    Q_OBJECT
  public:
    explicit PlanDraft(Workspace& workspace, QObject* parent = nullptr);
    ~PlanDraft() override;

    struct Choice {
        QString id;
        QString name;
        QString family;
    };
    [[nodiscard]] std::vector<Choice> templates() const;

    /// Reads what the book knows: own finished pieces, outcomes, chambers.
    void load();
    void set_template(const QString& id);
    [[nodiscard]] QString template_id() const { return template_id_; }
    void set_product(const QString& product);
    [[nodiscard]] QString product() const { return product_; }
    void set_pieces(std::vector<DraftPiece> pieces);
    [[nodiscard]] const std::vector<DraftPiece>& pieces() const { return pieces_; }
    void set_target(std::optional<core::units::MassShare> loss);
    [[nodiscard]] std::optional<core::units::MassShare> target() const { return target_; }
    /// Forwards from a start, or backwards from the day it should be ready.
    void set_backwards(bool backwards);
    [[nodiscard]] bool backwards() const { return backwards_; }
    void set_day(core::units::Day day);
    [[nodiscard]] core::units::Day day() const { return day_; }
    void set_cautious(bool cautious);
    void set_skipped(const QString& stage, bool skipped);
    void set_rounds(const QString& stage, int rounds);
    void set_chamber(std::optional<core::model::ChamberId> chamber);
    void take(const OfferLine& offer);

    // --- the answer -------------------------------------------------------------------------
    [[nodiscard]] bool possible() const { return plan_.has_value(); }
    [[nodiscard]] QString answer() const { return answer_; } ///< the headline
    [[nodiscard]] QString more() const { return more_; }     ///< the line below it
    [[nodiscard]] const std::vector<StepLine>& steps() const { return steps_; }
    /// The reasons of a no, or what is worth knowing about the plan.
    [[nodiscard]] const core::model::Findings& findings() const { return findings_; }
    [[nodiscard]] const std::vector<OfferLine>& offers() const { return offers_; }
    [[nodiscard]] QString history() const { return history_; } ///< own pieces; may be empty
    /// From the last outcome; may be empty.
    [[nodiscard]] QString proposal() const { return proposed_ ? proposed_->words : QString(); }
    [[nodiscard]] std::optional<core::units::MassShare> proposed_target() const;
    /// Takes the proposed target; the reason goes into the batch's notes with accept().
    void use_proposal();
    [[nodiscard]] QStringList cure_rules() const { return cure_rules_; }
    [[nodiscard]] QString source() const; ///< where the template comes from
    [[nodiscard]] const core::planning::DatedPlan* plan() const;

    /// Makes the batch with its pieces and stages, as one step of undo. `weighed_now` also keeps
    /// the weights as raw weighings of this moment. `taken_on` are the cautions `by` has read and
    /// takes on; the book refuses them without a person.
    std::optional<core::model::BatchId> accept(const QString& name, bool weighed_now,
                                               const core::model::Findings& taken_on,
                                               std::optional<core::model::PersonId> by);
    /// The plan as an iCalendar file.
    [[nodiscard]] std::optional<QByteArray> calendar(const QString& mark) const;

  Q_SIGNALS:
    void changed();

  private:
    void work_out();
    void answer_forwards(const core::planning::LengthSources& sources);
    void answer_backwards(const core::planning::LengthSources& sources);
    void write_steps(const core::planning::DatedPlan& plan);
    void write_offers(const core::planning::BackPlan& back);
    void write_own(const std::vector<core::planning::PieceSpec>& pieces);
    void write_cure_rules();
    [[nodiscard]] StepLine step_of(const core::planning::PlannedStage& stage) const;
    [[nodiscard]] std::vector<core::planning::PieceSpec> specs() const;
    [[nodiscard]] core::planning::PlanChoices choices() const;
    [[nodiscard]] const core::model::PlanTemplate& chosen() const;

    Workspace& workspace_;
    std::unique_ptr<core::planning::Catalogue> catalogue_;
    QString template_id_;
    QString product_;
    std::vector<DraftPiece> pieces_;
    std::optional<core::units::MassShare> target_;
    bool backwards_ = false;
    core::units::Day day_;
    bool cautious_ = true;
    QSet<QString> skipped_;
    std::map<std::string, int> rounds_;
    std::optional<core::model::ChamberId> chamber_;
    OwnPast past_;

    std::optional<core::planning::DatedPlan> plan_;
    std::optional<PastProposal> proposed_;
    std::optional<PastProposal> used_; ///< as it was when it was taken
    QString answer_;
    QString more_;
    std::vector<StepLine> steps_;
    core::model::Findings findings_;
    std::vector<OfferLine> offers_;
    QString history_;
    QStringList cure_rules_;
};

} // namespace ui::presenters
