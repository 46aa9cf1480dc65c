#include "ui/pages/plan_page.h"

#include "ui/look/adaptive.h"
#include "ui/look/pieces.h"
#include "ui/pages/page_frame.h"
#include "ui/pages/plan_strip.h"
#include "ui/pages/save_calendar.h"
#include "ui/pages/take_on_box.h"
#include "ui/presenters/plan_calendar.h"
#include "ui/presenters/workspace.h"
#include "ui/text/data_name.h"
#include "ui/text/finding_words.h"
#include "ui/text/quantity_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace ui::pages {

using presenters::StepLine;

namespace {

void clear(QLayout* layout) {
    while (auto* item = layout->takeAt(0)) {
        if (auto* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        } else if (auto* inner = item->layout()) {
            clear(inner);
        }
        delete item;
    }
}

} // namespace

PlanPage::PlanPage(presenters::Workspace& workspace, QWidget* parent)
    : Page(workspace, parent), draft_(new presenters::PlanDraft(workspace, this)) {
    const auto frame = frame_page(this, tr("Plan"));
    auto* save = look::button("plan_save", tr("Sa&ve as calendar file…"));
    frame.head->addWidget(save);
    connect(save, &QPushButton::clicked, this, &PlanPage::save);
    auto* halves = new look::SideBySide(44);
    halves->add(build_form(), 2);
    halves->add(build_answer(), 3);
    frame.body->addWidget(halves);
    frame.body->addWidget(build_steps());
    frame.body->addWidget(build_accept());
    frame.body->addStretch(1);
    connect(draft_, &presenters::PlanDraft::changed, this, &PlanPage::show_answer);
    fields_from_draft();
    setFocusProxy(template_);
}

QWidget* PlanPage::build_answer() {
    QVBoxLayout* column = nullptr;
    auto* card = look::card(&column);
    answer_ = look::figure({}, 1.5);
    answer_->setObjectName(QStringLiteral("plan_answer"));
    answer_->setWordWrap(true);
    more_ = look::paragraph({});
    more_->setObjectName(QStringLiteral("plan_more_words"));
    history_ = look::paragraph({});
    history_->setObjectName(QStringLiteral("plan_history"));
    column->addWidget(answer_);
    column->addWidget(more_);
    offers_ = new QVBoxLayout;
    offers_->setSpacing(look::lines(this, 0.4));
    column->addLayout(offers_);
    column->addWidget(history_);
    proposal_box_ = new QWidget;
    auto* row = new QHBoxLayout(proposal_box_);
    row->setContentsMargins(0, 0, 0, 0);
    proposal_ = look::paragraph({});
    proposal_->setObjectName(QStringLiteral("plan_proposal"));
    use_proposal_ = look::button("plan_use_proposal", tr("&Use it"));
    row->addWidget(proposal_, 1);
    row->addWidget(use_proposal_);
    column->addWidget(proposal_box_);
    findings_ = new QVBoxLayout;
    findings_->setSpacing(look::lines(this, 0.3));
    column->addLayout(findings_);
    column->addStretch(1);
    connect(use_proposal_, &QPushButton::clicked, this, [this] {
        draft_->use_proposal();
        fields_from_draft();
        target_->setFocus(); // the button goes with the proposal it stood for
    });
    return card;
}

QWidget* PlanPage::build_steps() {
    QVBoxLayout* column = nullptr;
    auto* card = look::card(&column);
    column->addWidget(look::section_title(tr("The stages")));
    strip_ = new PlanStrip("plan_strip");
    column->addWidget(strip_);
    steps_ = new Steps(
        columns(), [](const StepLine&) { return qint64(0); }, this);
    table_ = new Table("plan_steps", tr("Stages of the plan"));
    table_->show_model(steps_);
    table_->setSortingEnabled(false);
    table_->grow_with_rows(true);
    column->addWidget(table_);
    choices_ = new QVBoxLayout;
    column->addLayout(choices_);
    rules_ = look::caption({});
    rules_->setObjectName(QStringLiteral("plan_rules"));
    column->addWidget(rules_);
    return card;
}

std::vector<PlanPage::Steps::Column> PlanPage::columns() const {
    return {
        {.header = tr("Stage"), .text = [](const StepLine& s) { return text::data_name(s.name); }},
        {.header = tr("Days"), .text = [](const StepLine& s) { return s.days; }},
        {.header = tr("How long"), .text = [](const StepLine& s) { return s.length; }},
        {.header = tr("Rests on"), .text = [](const StepLine& s) { return s.basis; }},
        {.header = tr("Air"),
         .text = [](const StepLine& s) { return s.air; },
         .hint = [](const StepLine& s) { return s.air; }},
        {.header = tr("Work"),
         .text = [](const StepLine& s) { return s.work; },
         .hint =
             [](const StepLine& s) {
                 return s.note.isEmpty() ? s.work : s.work + QLatin1Char('\n') + s.note;
             }}};
}

QWidget* PlanPage::build_accept() {
    QVBoxLayout* column = nullptr;
    accept_box_ = look::card(&column);
    column->addWidget(look::section_title(tr("Into the book")));
    name_ = look::named(new QLineEdit, "plan_name", tr("Name of the batch"));
    name_->setPlaceholderText(tr("optional, e.g. Winter coppa"));
    name_->setMaximumWidth(look::lines(this, 24));
    column->addWidget(look::field_label(tr("Name of the &batch"), name_));
    column->addWidget(name_);
    weighed_ = look::named(new QCheckBox(tr("These weights are &just off the scale")),
                           "plan_weighed", tr("These weights are just off the scale"));
    column->addWidget(weighed_);
    take_on_ = new TakeOnBox("plan_take_on");
    column->addWidget(take_on_);
    wrong_ = new look::Banner("plan_wrong");
    column->addWidget(wrong_);
    auto* buttons = new QHBoxLayout;
    auto* accept =
        look::button("plan_accept", tr("&Put the batch in the book"), look::ButtonLook::primary);
    buttons->addWidget(accept);
    buttons->addStretch(1);
    column->addLayout(buttons);
    connect(accept, &QPushButton::clicked, this, &PlanPage::accept);
    return accept_box_;
}

void PlanPage::refresh() {
    filling_ = true;
    const QVariant chamber = chamber_->currentData();
    chamber_->clear();
    chamber_->addItem(tr("not decided"), qint64(0));
    for (const auto& each : workspace_.rows(workspace_.book().chambers())) {
        chamber_->addItem(QString::fromStdString(each.name), qint64(each.id.row()));
    }
    chamber_->setCurrentIndex(std::max(0, chamber_->findData(chamber)));
    const QString product = product_->currentText();
    product_->clear();
    for (const auto& each : workspace_.rows(workspace_.book().products())) {
        product_->addItem(QString::fromStdString(each));
    }
    product_->setEditText(product);
    filling_ = false;
    take_on_->load(workspace_);
    draft_->load();
}

void PlanPage::show_answer() {
    answer_->setText(draft_->answer());
    more_->setText(draft_->more());
    history_->setText(draft_->history());
    history_->setVisible(!draft_->history().isEmpty());
    proposal_->setText(draft_->proposal());
    proposal_box_->setVisible(!draft_->proposal().isEmpty());
    const auto target = draft_->proposed_target();
    use_proposal_->setVisible(target.has_value());
    if (target) {
        use_proposal_->setAccessibleName(
            tr("Use the proposal: aim for %1").arg(text::words(*target, workspace_.style())));
    }
    source_->setText(tr("Template: %1.").arg(draft_->source()));
    rules_->setText(draft_->cure_rules().isEmpty()
                        ? QString()
                        : tr("Cure rules for the thickest piece, side by side: %1")
                              .arg(draft_->cure_rules().join(QStringLiteral("; "))));
    accept_box_->setEnabled(draft_->possible() && !workspace_.is_read_only());
    show_offers();
    show_findings();
    show_steps();
    show_choices();
}

void PlanPage::show_offers() {
    clear(offers_);
    int n = 0;
    for (const auto& offer : draft_->offers()) {
        auto* line = new QWidget;
        auto* row = new QHBoxLayout(line);
        row->setContentsMargins(0, 0, 0, 0);
        row->addWidget(look::paragraph(offer.words), 1);
        const QByteArray name = "plan_offer_" + QByteArray::number(++n);
        auto* take = look::button(name.constData(), offer.take);
        take->setAccessibleName(tr("%1: %2").arg(offer.take, offer.words));
        row->addWidget(take);
        // A line that wraps tells its layout less height than the button needs.
        take->setMinimumHeight(look::lines(this, 1.8));
        offers_->addWidget(line);
        connect(take, &QPushButton::clicked, this, [this, offer] {
            draft_->take(offer);
            fields_from_draft();
            template_->setFocus();
        });
    }
}

void PlanPage::show_findings() {
    clear(findings_);
    take_on_->set_findings(draft_->findings());
    wrong_->say({}, {});
    int n = 0;
    for (const auto& finding : draft_->findings()) {
        const QByteArray name = "plan_finding_" + QByteArray::number(++n);
        auto* banner = new look::Banner(name.constData());
        banner->say(text::severity_look(finding.severity),
                    text::finding_with_source(finding, workspace_.style()));
        findings_->addWidget(banner);
    }
}

void PlanPage::show_steps() {
    steps_->set_rows(draft_->steps());
    table_->fit_columns();
    std::vector<PlanStrip::Block> blocks;
    QVector<int> kinds; // numbered as they appear: few kinds, so that their colours differ
    auto latest = draft_->day();
    for (const auto& step : draft_->steps()) {
        if (!step.skipped) {
            const int kind = static_cast<int>(step.kind);
            if (!kinds.contains(kind)) {
                kinds << kind;
            }
            blocks.push_back({text::data_name(step.name), step.start, step.end,
                              static_cast<int>(kinds.indexOf(kind))});
            latest = step.end;
        }
    }
    if (const auto* plan = draft_->plan()) {
        latest = plan->latest_end;
    }
    strip_->show_plan(std::move(blocks), latest, workspace_.style());
}

/// Optional stages and rounds are the template's: the boxes stay while it does, so that the focus
/// is not lost by using one.
void PlanPage::show_choices() {
    if (choices_for_ == draft_->template_id()) {
        return;
    }
    choices_for_ = draft_->template_id();
    clear(choices_);
    int n = 0;
    for (const auto& step : draft_->steps()) {
        const QByteArray number = QByteArray::number(++n);
        if (step.optional) {
            const QString words = tr("With “%1”").arg(text::data_name(step.name));
            auto* box =
                look::named(new QCheckBox(words), ("plan_with_" + number).constData(), words);
            box->setChecked(!step.skipped);
            choices_->addWidget(box);
            connect(box, &QCheckBox::toggled, this,
                    [this, name = step.name](bool on) { draft_->set_skipped(name, !on); });
        }
        // A pair of stages repeats together: one box for both, under the first one's name.
        if (step.rounds_most > step.rounds_least) {
            auto* row = new QHBoxLayout;
            const QString words = tr("Rounds of “%1”").arg(text::data_name(step.name));
            auto* rounds = look::named(new QSpinBox, ("plan_rounds_" + number).constData(), words);
            rounds->setRange(step.rounds_least, step.rounds_most);
            rounds->setValue(step.rounds);
            row->addWidget(look::field_label(words, rounds));
            row->addWidget(rounds);
            row->addStretch(1);
            choices_->addLayout(row);
            connect(rounds, &QSpinBox::valueChanged, this,
                    [this, name = step.name](int value) { draft_->set_rounds(name, value); });
        }
    }
}

void PlanPage::accept() {
    for (const auto& piece : pieces_) {
        if (!piece.weight->validate() || !piece.thickness->validate()) {
            return;
        }
    }
    if (!day_->validate() || !target_->validate()) {
        return;
    }
    if (const QString missing = take_on_->missing(); !missing.isEmpty()) {
        wrong_->say(QStringLiteral("caution"), missing);
        return;
    }
    // A name that is new changes the book, and with it the page: what was read is kept first.
    const auto cautions = take_on_->cautions();
    const auto by = take_on_->person(workspace_);
    if (!cautions.empty() && !by) {
        return;
    }
    const auto batch = draft_->accept(name_->text().trimmed(), weighed_->isChecked(), cautions, by);
    if (!batch) {
        return;
    }
    name_->clear();
    take_on_->forget();
    weighed_->setChecked(false);
    Q_EMIT go({QStringLiteral("batches"), batch->row(), {}});
}

void PlanPage::save() {
    const auto file = draft_->calendar(presenters::PlanCalendar::mark_of(workspace_));
    if (!file) {
        Q_EMIT workspace_.problem(tr("There is no plan to save: the day cannot be met."));
        return;
    }
    QString problem;
    const QString sentence =
        save_calendar(this, *file, draft_->template_id() + QStringLiteral(".ics"), &problem);
    if (!problem.isEmpty()) {
        Q_EMIT workspace_.problem(problem);
    } else if (!sentence.isEmpty()) {
        Q_EMIT said(sentence);
    }
}

PageEntry plan_page() {
    return {"plan", Side::book, PlanPage::tr("Plan"),
            PlanPage::tr("When to begin, and what to do when"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new PlanPage(workspace, parent);
            }};
}

} // namespace ui::pages
