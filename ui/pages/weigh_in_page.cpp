#include "ui/pages/weigh_in_page.h"

#include "ui/look/adaptive.h"
#include "ui/look/pieces.h"
#include "ui/pages/page_frame.h"
#include "ui/pages/piece_dialog.h"
#include "ui/pages/weighing_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/print/printable.h"
#include "ui/text/date_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/quantity_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ui::pages {

using presenters::RoundLine;

WeighInPage::WeighInPage(presenters::Workspace& workspace, QWidget* parent)
    : Page(workspace, parent), round_(new presenters::WeighRound(workspace, this)) {
    const auto frame = frame_page(this, tr("Weigh-in round"));
    chamber_ = look::named(new QComboBox, "round_chamber", tr("Chamber"));
    scale_ = scale_box(workspace, "round_scale", core::units::Mass::grams(1));
    frame.head->addWidget(look::field_label(tr("&Chamber"), chamber_));
    frame.head->addWidget(chamber_);
    frame.head->addWidget(look::field_label(tr("&Scale"), scale_));
    frame.head->addWidget(scale_);
    stack_ = new QStackedWidget(this);
    stack_->addWidget(new look::EmptyState(
        "round_empty", tr("Nothing to weigh"),
        tr("The round lists every piece that is curing, resting or drying, in the order in which "
           "it hangs. Start a batch, then come back once a week: a number and Enter for each "
           "piece is all it takes."),
        QString()));
    auto* split = new look::SideBySide(34);
    split->add(build_list(), 1);
    split->add(build_entry(), 1);
    stack_->addWidget(split);
    frame.body->addWidget(stack_, 1);
    connect(round_, &presenters::WeighRound::changed, this, &WeighInPage::show_round);
    connect(chamber_, &QComboBox::activated, this,
            [this] { round_->load(chosen_chamber(chamber_)); });
}

QWidget* WeighInPage::build_list() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    progress_ = look::caption({});
    progress_->setObjectName(QStringLiteral("round_progress"));
    column->addWidget(progress_);
    rows_ = new Rows(
        columns(), [](const RoundLine& l) { return l.line.piece().id.row(); }, this);
    table_ = new Table("round_table", tr("Pieces in hanging order"));
    table_->show_model(rows_);
    table_->setSortingEnabled(false); // the order is the walk
    table_->set_least_height(7);
    column->addWidget(table_, 1);
    connect(table_, &Table::current_changed, this,
            [this](qint64 id) { round_->set_current(rows_->row_of(id)); });
    connect(table_, &Table::opened, this, [this] { entry_->line()->setFocus(); });
    return side;
}

QWidget* WeighInPage::build_entry() {
    auto* scroll = look::named(new QScrollArea, "round_scroll", tr("The piece whose turn it is"));
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    QVBoxLayout* column = nullptr;
    auto* card = look::card(&column);
    piece_ = look::figure({}, 2.2);
    piece_->setObjectName(QStringLiteral("round_piece"));
    place_label_ = look::caption({});
    last_ = look::paragraph({});
    last_->setObjectName(QStringLiteral("round_last"));
    expected_ = look::paragraph({});
    expected_->setObjectName(QStringLiteral("round_expected"));
    const auto& style = workspace_.style();
    entry_ = new edits::MassField("round_entry", tr("On the scale"), style);
    QFont big = entry_->line()->font();
    big.setPointSizeF(big.pointSizeF() * 2.0);
    entry_->line()->setFont(big);
    entry_->line()->setMinimumWidth(look::lines(this, 9));
    entry_->set_required(true);
    tare_ = new edits::MassField("round_tare", tr("Tare"), style);
    wet_ = look::named(new QCheckBox(tr("&Wet")), "round_wet", tr("The surface is wet"));
    note_ = look::named(new QLineEdit, "round_note", tr("Note"));
    note_->setPlaceholderText(tr("note, if any"));
    question_ = new look::Banner("round_question", this);
    result_ = new look::Banner("round_result", this);
    keep_ = look::button("round_keep", tr("&Keep and go on  ⏎"), look::ButtonLook::primary);
    auto* pass = look::button("round_pass", tr("Pass over  ⇟"));
    column->addWidget(piece_);
    column->addWidget(place_label_);
    column->addWidget(last_);
    column->addWidget(expected_);
    column->addWidget(look::field_label(tr("&On the scale"), entry_->line()));
    column->addWidget(entry_);
    column->addWidget(question_);
    auto* tare = new QHBoxLayout;
    tare->addWidget(look::field_label(tr("&Tare"), tare_->line()));
    tare->addWidget(tare_);
    auto* more = new look::SideBySide(24);
    more->add(tare, 0);
    more->add(wet_, 1);
    column->addWidget(more);
    column->addWidget(note_);
    auto* buttons = new look::SideBySide(26);
    buttons->add(keep_, 0);
    buttons->add(pass, 0);
    buttons->add_stretch();
    column->addWidget(buttons);
    column->addWidget(result_);
    column->addStretch(1);
    scroll->setWidget(card);
    connect(entry_, &edits::EntryField::entered, this, &WeighInPage::enter);
    connect(keep_, &QPushButton::clicked, this, &WeighInPage::enter);
    connect(pass, &QPushButton::clicked, this, &WeighInPage::pass_over);
    return scroll;
}

std::vector<WeighInPage::Rows::Column> WeighInPage::columns() const {
    const auto style = workspace_.style();
    return {
        {tr("Hangs"),
         [](const RoundLine& l) { return presenters::place_words(l.line.piece(), l.chamber); },
         {},
         false,
         {}},
        {tr("Code"),
         [](const RoundLine& l) { return QString::fromStdString(l.line.piece().code); },
         {},
         false,
         {}},
        {tr("Piece"),
         [](const RoundLine& l) { return QString::fromStdString(l.line.piece().name); },
         {},
         false,
         {}},
        {tr("Last"),
         [style](const RoundLine& l) { return text::words_or_unknown(l.last_on_scale, style); },
         {},
         true,
         {}},
        {tr("Now"),
         [style](const RoundLine& l) {
             if (l.entered) {
                 return QStringLiteral("✓ ") + text::words(*l.entered, style);
             }
             return l.passed_over ? WeighInPage::tr("passed over") : QString();
         },
         {},
         true,
         {}},
    };
}

void WeighInPage::arrive(const Place& place) {
    fill_chambers();
    if (place.row > 0) {
        chamber_->setCurrentIndex(std::max(0, chamber_->findData(place.row)));
    }
    shown_piece_ = 0;
}

void WeighInPage::fill_chambers() {
    const QVariant chosen = chamber_->currentData();
    chamber_->clear();
    chamber_->addItem(tr("all"), 0);
    for (const auto& chamber : workspace_.rows(workspace_.book().chambers())) {
        chamber_->addItem(QString::fromStdString(chamber.name),
                          static_cast<qlonglong>(chamber.id.row()));
    }
    chamber_->setCurrentIndex(std::max(0, chamber_->findData(chosen)));
}

std::vector<print::Printable> WeighInPage::printables() {
    return {list_printable(*table_->model(), {.title = tr("Weigh-in round"),
                                              .pen_columns = {tr("On the scale"), tr("Remarks")},
                                              .empty = tr("Nothing hangs to be weighed.")})};
}

void WeighInPage::refresh() {
    entry_->set_style(workspace_.style());
    tare_->set_style(workspace_.style());
    round_->load(chosen_chamber(chamber_));
}

void WeighInPage::show_round() {
    const auto& lines = round_->lines();
    stack_->setCurrentIndex(lines.empty() ? 0 : 1);
    const QSignalBlocker quiet(table_);
    rows_->set_all(columns(), lines);
    const int total = static_cast<int>(lines.size());
    const int done = round_->entered_count();
    progress_->setText(done == total && total > 0
                           ? tr("All %n piece(s) are weighed.", nullptr, total)
                           : tr("%1 of %2 weighed. Enter keeps and goes on; Page Down passes over.")
                                 .arg(done)
                                 .arg(total));
    if (round_->current() >= 0) {
        table_->set_current_id(
            lines[static_cast<std::size_t>(round_->current())].line.piece().id.row());
    }
    show_current();
}

void WeighInPage::show_current() {
    if (round_->current() < 0) {
        return;
    }
    const auto& line = round_->lines()[static_cast<std::size_t>(round_->current())];
    const auto& style = workspace_.style();
    piece_->setText(QString::fromStdString(line.line.piece().code));
    place_label_->setText(
        QStringLiteral("%1 · %2").arg(QString::fromStdString(line.line.piece().name),
                                      presenters::place_words(line.line.piece(), line.chamber)));
    last_->setText(line.last_on_scale && line.last_at
                       ? tr("Last time: %1 on the scale, %2")
                             .arg(text::words(*line.last_on_scale, style),
                                  text::relative_words(style.zone.day_of(*line.last_at),
                                                       workspace_.today(), style))
                       : tr("Not weighed before."));
    expected_->setText(line.expected
                           ? tr("Expected now: %1 to %2 (%3)")
                                 .arg(text::words(line.expected->low, style),
                                      text::words(line.expected->high, style),
                                      line.expected_from_forecast ? tr("from its forecast")
                                                                  : tr("from its last weight"))
                           : tr("Expected now: %1").arg(text::unknown()));
    keep_->setEnabled(!workspace_.is_read_only());
    const qint64 piece = line.line.piece().id.row();
    if (piece != shown_piece_) {
        shown_piece_ = piece;
        entry_->set_text(QString());
        tare_->set_value(line.line.tare);
        wet_->setChecked(false);
        note_->clear();
        question_->say({}, {});
        entry_->line()->setFocus();
    }
}

void WeighInPage::enter() {
    if (!entry_->validate() || !tare_->validate()) {
        return;
    }
    const auto on_scale = *entry_->value();
    const QString code = piece_->text();
    const auto answer = round_->enter(on_scale, tare_->value(), chosen_step(scale_),
                                      wet_->isChecked(), note_->text());
    if (!answer.kept) {
        QStringList sentences;
        for (const auto& finding : answer.questions) {
            sentences << text::finding_words(finding, workspace_.style());
        }
        if (!sentences.isEmpty()) {
            question_->say(answer.stopped ? QStringLiteral("stop") : QStringLiteral("caution"),
                           answer.stopped ? sentences.join(QLatin1Char('\n'))
                                          : tr("%1\nIf it is right, press Enter again.")
                                                .arg(sentences.join(QLatin1Char('\n'))));
        }
        entry_->line()->selectAll();
        return;
    }
    result_->say(QStringLiteral("done"), tr("%1: %2 kept. Ctrl+Z takes it back.")
                                             .arg(code, text::words(on_scale, workspace_.style())));
    round_->advance();
}

void WeighInPage::pass_over() {
    result_->say({}, {});
    round_->pass_over();
}

void WeighInPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_PageDown) {
        pass_over();
        return;
    }
    if (event->key() == Qt::Key_PageUp) {
        round_->set_current(round_->current() - 1);
        return;
    }
    Page::keyPressEvent(event);
}

PageEntry weigh_in_page() {
    return {"weigh_in", Side::round, WeighInPage::tr("Weigh-in"),
            WeighInPage::tr("Weigh every hanging piece in hanging order"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new WeighInPage(workspace, parent);
            }};
}

} // namespace ui::pages
