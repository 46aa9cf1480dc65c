#include "ui/pages/review_page.h"

#include "ui/look/adaptive.h"
#include "ui/look/pieces.h"
#include "ui/pages/note_dialog.h"
#include "ui/pages/page_frame.h"
#include "ui/pages/person_box.h"
#include "ui/pages/photos.h"
#include "ui/pages/warm_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/text/date_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/model_words.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

namespace ui::pages {

using core::doneness::CentreFeel;
using core::model::Verdict;
using presenters::EvidenceLine;

namespace {

constexpr int week = 7; // the usual round: the next one is the next chance to look
/// The book knows it as "not yet" of a piece that was finished; the form words it by what is done.
constexpr int hang_again = 100;

} // namespace

ReviewPage::ReviewPage(presenters::Workspace& workspace, QWidget* parent)
    : Page(workspace, parent) {
    const auto frame = frame_page(this, tr("Is it done?"));
    title_ = findChild<QLabel*>(QStringLiteral("page_title"));
    auto* back = look::button("review_piece", tr("To the &piece"));
    frame.head->addWidget(back);
    connect(back, &QPushButton::clicked, this, [this] {
        Q_EMIT go({QStringLiteral("piece"), piece_, {}});
    });
    frame.body->addWidget(look::caption(
        tr("Evidence, not a verdict. A number says how much water has gone; your hand, nose and "
           "eye say the rest. Follow the code where you live and your laboratory.")));
    findings_ = new QVBoxLayout;
    findings_->setSpacing(look::lines(this, 0.3));
    frame.body->addLayout(findings_);
    auto* both = new look::SideBySide(48);
    both->add(build_evidence(), 3);
    both->add(build_decision(), 2);
    frame.body->addWidget(both, 1);
    connect(&workspace_.forecasts(), &presenters::Forecasts::arrived, this,
            &ReviewPage::show_evidence);
}

QWidget* ReviewPage::build_evidence() {
    QVBoxLayout* column = nullptr;
    auto* card = look::card(&column);
    column->addWidget(look::section_title(tr("Evidence")));
    const auto hint = [](const EvidenceLine& l) {
        return QStringList{l.what, l.value, l.remark}.join(QLatin1Char('\n'));
    };
    const auto strong = [](const EvidenceLine& l) { return l.heading; };
    lines_ = new Lines(
        {{tr("What"),
          [](const auto& l) { return l.heading ? l.group : l.what; },
          {},
          false,
          hint,
          strong},
         {tr("Here"), [](const auto& l) { return l.value; }, {}, false, hint, {}},
         {tr("Beside it"), [](const auto& l) { return l.remark; }, {}, false, hint, {}}},
        [](const EvidenceLine&) { return qint64(0); }, this);
    table_ = new Table("evidence_table", tr("Evidence"));
    table_->show_model(lines_);
    table_->setSortingEnabled(false);
    table_->wrap_rows(true);
    table_->setMinimumHeight(look::lines(this, 16));
    column->addWidget(table_, 1);
    build_photos(column);
    return card;
}

void ReviewPage::build_photos(QVBoxLayout* column) {
    auto* row = new look::HeadRow(look::lines(this, 0.4));
    row->addWidget(look::section_title(tr("Photos")));
    auto* add = look::button("review_photo", tr("Add a p&hoto…"), look::ButtonLook::plain);
    row->addWidget(add);
    column->addLayout(row);
    no_photo_ = look::caption(tr("No photo of this piece yet. The cut face says more than a "
                                 "number does: take one, and the next batch can be held beside "
                                 "it."));
    no_photo_->setObjectName(QStringLiteral("review_no_photo"));
    column->addWidget(no_photo_);
    photos_ = new PhotoStrip(workspace_, "review_photos", this);
    photos_->setFixedHeight(photos_->minimumHeight());
    column->addWidget(photos_);
    connect(add, &QPushButton::clicked, this, [this] {
        if (line_) {
            NoteDialog dialog(workspace_, line_->piece().id, line_->piece().batch, this);
            dialog.set_kind(core::model::NoteKind::look);
            dialog.exec();
        }
    });
}

QWidget* ReviewPage::build_decision() {
    QVBoxLayout* column = nullptr;
    auto* card = look::card(&column);
    column->addWidget(look::section_title(tr("Look, then decide")));
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    centre_ = look::named(new QComboBox, "review_centre", tr("The centre feels"));
    centre_->addItem(tr("not felt yet"), -1);
    centre_->addItem(tr("soft"), int(CentreFeel::soft));
    centre_->addItem(tr("springy"), int(CentreFeel::springy));
    centre_->addItem(tr("firm"), int(CentreFeel::firm));
    look::add_field(form, tr("The &centre feels"), centre_);
    column->addLayout(form);
    auto* note = look::button("review_note", tr("Add a &note or photo…"), look::ButtonLook::plain);
    column->addWidget(note, 0, Qt::AlignLeft);
    warm_ = look::button("review_warm", tr("Finish it in warm a&ir…"), look::ButtonLook::plain);
    column->addWidget(warm_, 0, Qt::AlignLeft);
    connect(warm_, &QPushButton::clicked, this, [this] {
        if (line_) {
            const auto line = *line_; // refresh() replaces line_ while the dialog closes
            WarmDialog(workspace_, line, this).exec();
        }
    });
    column->addWidget(look::hairline());
    verdict_ = new QButtonGroup(this);
    const std::pair<Verdict, QString> verdicts[] = {
        {Verdict::done, tr("&Done: it comes down")},
        {Verdict::not_yet, tr("Not &yet: weigh and look again")},
        {Verdict::discard, tr("Disc&ard: it is thrown out")}};
    const char* names[] = {"verdict_done", "verdict_not_yet", "verdict_discard"};
    for (int i = 0; i < 3; ++i) {
        auto* radio = new QRadioButton(verdicts[i].second);
        look::named(radio, names[i], QString(verdicts[i].second).remove(QLatin1Char('&')));
        verdict_->addButton(radio, int(verdicts[i].first));
        column->addWidget(radio);
    }
    auto* again = new QRadioButton(tr("H&ung again: it was down, and dries on"));
    look::named(again, "verdict_hang_again", tr("Hung again: it was down, and dries on"));
    verdict_->addButton(again, hang_again);
    column->addWidget(again);
    again_ = new edits::DayField("review_again", tr("Look again on"), workspace_.style(),
                                 workspace_.today());
    again_label_ = look::field_label(tr("&Look again on"), again_->line());
    column->addWidget(again_label_);
    column->addWidget(again_);
    why_ = look::named(new QPlainTextEdit, "review_why", tr("Why"));
    why_->setTabChangesFocus(true);
    why_->setFixedHeight(look::lines(this, 4));
    column->addWidget(look::field_label(tr("&Why"), why_));
    column->addWidget(why_);
    person_ = new PersonBox("review_person", tr("Signed by"));
    column->addWidget(look::field_label(tr("Signed &by"), person_));
    column->addWidget(person_);
    wrong_ = new look::Banner("review_wrong", this);
    column->addWidget(wrong_);
    sign_ = look::button("review_sign", tr("&Sign"), look::ButtonLook::primary);
    column->addWidget(sign_, 0, Qt::AlignLeft);
    earlier_ = look::caption({});
    earlier_->setObjectName(QStringLiteral("review_earlier"));
    column->addWidget(earlier_);
    column->addStretch(1);
    connect(centre_, &QComboBox::activated, this, &ReviewPage::show_evidence);
    connect(verdict_, &QButtonGroup::idToggled, this, [this] { verdict_chosen(); });
    connect(sign_, &QPushButton::clicked, this, &ReviewPage::sign);
    connect(note, &QPushButton::clicked, this, [this] {
        if (line_) {
            NoteDialog(workspace_, line_->piece().id, line_->piece().batch, this).exec();
        }
    });
    return card;
}

void ReviewPage::arrive(const Place& place) {
    piece_ = place.row;
    centre_->setCurrentIndex(0);
    verdict_->setExclusive(false);
    for (auto* radio : verdict_->buttons()) {
        radio->setChecked(false);
    }
    verdict_->setExclusive(true);
    why_->clear();
    again_->set_value(workspace_.today() + week);
    wrong_->say({}, {});
    verdict_chosen();
}

void ReviewPage::refresh() {
    line_.reset();
    auto history =
        workspace_.one(workspace_.book().piece_history(core::model::PieceId::from_row(piece_)));
    if (!history) {
        return;
    }
    line_ = presenters::line_in(workspace_.book(), std::move(*history));
    title_->setText(tr("Is %1 done?").arg(QString::fromStdString(line_->piece().code)));
    sign_->setEnabled(!workspace_.is_read_only());
    warm_->setEnabled(!workspace_.is_read_only());
    person_->load(workspace_);
    offer_verdicts();
    show_evidence();
    show_photos();
    show_decisions();
    workspace_.ask_forecasts({{line_->history, line_->kin, {}}});
}

/// A piece that hangs is not hung again, one that is down is: each is offered where it can be.
void ReviewPage::offer_verdicts() {
    const bool finished = line_->piece().state == core::model::PieceState::finished;
    auto* again = verdict_->button(hang_again);
    again->setEnabled(finished);
    again->setToolTip(finished ? tr("It goes back to the hanging pieces, and the day sheet asks "
                                    "for its weight again.")
                               : tr("For a piece that is finished. This one hangs still: sign "
                                    "\"not yet\"."));
    verdict_->button(int(Verdict::done))->setEnabled(!finished);
    verdict_->button(int(Verdict::not_yet))->setEnabled(!finished);
}

void ReviewPage::show_evidence() {
    if (!line_) {
        return;
    }
    if (const auto* forecast =
            workspace_.forecasts().find(line_->piece().id, line_->history.revision)) {
        line_->forecast = *forecast;
    }
    const int feel = centre_->currentData().toInt();
    sheet_ = presenters::evidence_for(
        workspace_.book(), *line_,
        feel < 0 ? std::nullopt : std::optional(static_cast<CentreFeel>(feel)), workspace_.now());
    const auto lines = presenters::evidence_lines(sheet_, workspace_.style());
    std::vector<EvidenceLine> rows;
    for (const auto& line : lines) {
        if (rows.empty() || rows.back().group != line.group) {
            EvidenceLine heading{line.group, {}, {}, {}};
            heading.heading = true;
            rows.push_back(std::move(heading));
        }
        rows.push_back(line);
    }
    lines_->set_rows(std::move(rows));
    while (auto* item = findings_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    int number = 0;
    for (const auto& finding : sheet_.findings) {
        auto* banner =
            new look::Banner(("review_finding_" + QByteArray::number(number++)).constData());
        banner->say(text::severity_look(finding.severity),
                    text::finding_words(finding, workspace_.style()));
        findings_->addWidget(banner);
    }
}

void ReviewPage::show_photos() {
    core::services::NoteFilter filter;
    filter.piece = core::model::PieceId::from_row(piece_);
    photos_->show_notes(workspace_.rows(workspace_.book().notes(filter)));
    photos_->setVisible(photos_->count() > 0);
    no_photo_->setVisible(photos_->count() == 0);
}

void ReviewPage::show_decisions() {
    QStringList words;
    for (const auto& decision :
         workspace_.rows(workspace_.book().decisions(core::model::PieceId::from_row(piece_)))) {
        words << tr("%1: %2. %3")
                     .arg(text::words(decision.at, workspace_.style()),
                          text::words(decision.verdict), QString::fromStdString(decision.why));
    }
    earlier_->setText(
        words.isEmpty() ? QString() : tr("Signed before:\n%1").arg(words.join(QLatin1Char('\n'))));
}

void ReviewPage::verdict_chosen() {
    const int chosen = verdict_->checkedId();
    const bool again = chosen == int(Verdict::not_yet) || chosen == hang_again;
    again_->setVisible(again);
    again_label_->setVisible(again);
}

void ReviewPage::sign() {
    const int chosen = verdict_->checkedId();
    if (chosen < 0) {
        wrong_->say(QStringLiteral("stop"), tr("Choose what becomes of it first."));
        return;
    }
    if (!person_->is_named()) {
        wrong_->say(QStringLiteral("stop"), tr("Say who signs: choose or type the name."));
        person_->setFocus();
        return;
    }
    const auto verdict = chosen == hang_again ? Verdict::not_yet : static_cast<Verdict>(chosen);
    if (verdict == Verdict::not_yet && !again_->validate()) {
        again_->setFocus();
        return;
    }
    const auto person = person_->person(workspace_);
    if (!person) {
        return;
    }
    core::model::Decision decision{.piece = core::model::PieceId::from_row(piece_),
                                   .at = workspace_.now(),
                                   .verdict = verdict,
                                   .signed_by = *person};
    decision.evidence = presenters::evidence_document(sheet_, workspace_.style());
    const QString why = why_->toPlainText().trimmed();
    decision.why =
        (chosen == hang_again ? tr("Hung again. %1").arg(why).trimmed() : why).toStdString();
    if (verdict == Verdict::not_yet) {
        decision.weigh_again = again_->value();
    }
    if (workspace_.perform(core::actions::SignDecision{decision})) {
        Q_EMIT go({QStringLiteral("piece"), piece_, {}});
    }
}

PageEntry review_page() {
    return {"review", Side::inner, ReviewPage::tr("Is it done?"),
            ReviewPage::tr("Evidence beside each other, and a signed decision"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new ReviewPage(workspace, parent);
            }};
}

} // namespace ui::pages
