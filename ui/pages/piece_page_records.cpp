// What the piece page shows and does, apart from how it is laid out (piece_page.cpp).
#include "ui/look/pieces.h"
#include "ui/pages/event_dialog.h"
#include "ui/pages/note_dialog.h"
#include "ui/pages/photos.h"
#include "ui/pages/piece_page.h"
#include "ui/pages/upset_dialog.h"
#include "ui/pages/weighing_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/text/data_name.h"
#include "ui/text/date_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>

namespace ui::pages {

using core::model::PieceState;

QWidget* PiecePage::build_weighings() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    auto* row = new QHBoxLayout;
    row->addWidget(look::caption(tr("Enter corrects the marked weighing; the old entry stays.")),
                   1);
    auto* correct = look::button("weighing_correct", tr("C&orrect…"));
    auto* withdraw = look::button("weighing_withdraw", tr("Take &back…"));
    row->addWidget(correct);
    row->addWidget(withdraw);
    column->addLayout(row);
    weighings_ = new Weighings(
        weighing_columns(), [](const auto& r) { return r.weighing.id.row(); }, this);
    weighing_table_ = new Table("weighing_table", tr("Weighings"));
    weighing_table_->show_model(weighings_);
    column->addWidget(weighing_table_, 1);
    connect(weighing_table_, &Table::opened, this, &PiecePage::amend);
    connect(correct, &QPushButton::clicked, this, [this] { amend(weighing_table_->current_id()); });
    connect(withdraw, &QPushButton::clicked, this, &PiecePage::withdraw_weighing);
    return side;
}

QWidget* PiecePage::build_events() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    auto* withdraw = look::button("event_withdraw", tr("Take &back…"));
    row->addWidget(withdraw);
    column->addLayout(row);
    events_ = new Events(
        event_columns(), [](const auto& e) { return e.id.row(); }, this);
    event_table_ = new Table("event_table", tr("Events"));
    event_table_->show_model(events_);
    column->addWidget(event_table_, 1);
    connect(withdraw, &QPushButton::clicked, this, &PiecePage::withdraw_event);
    return side;
}

QWidget* PiecePage::build_notes() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    auto* row = new QHBoxLayout;
    row->addWidget(look::caption(tr("Enter on a note with a photo shows it large.")), 1);
    auto* add = look::button("note_add", tr("Add a &note…"));
    row->addWidget(add);
    column->addLayout(row);
    notes_ = new Notes(
        note_columns(), [](const auto& n) { return n.id.row(); }, this);
    auto* table = new Table("note_table", tr("Notes"));
    table->show_model(notes_);
    auto* both = new QHBoxLayout;
    both->addWidget(table, 3);
    photos_ = new PhotoStrip(workspace_, "piece_photos", side);
    both->addWidget(photos_, 2);
    column->addLayout(both, 1);
    connect(table, &Table::opened, this, &PiecePage::open_note);
    connect(add, &QPushButton::clicked, this, &PiecePage::add_note);
    return side;
}

std::vector<PiecePage::Weighings::Column> PiecePage::weighing_columns() const {
    const auto style = workspace_.style();
    return {
        {tr("When"),
         [style](const auto& r) { return text::words(r.weighing.taken_at, style); },
         [](const auto& r) {
             return QVariant(static_cast<qlonglong>(r.weighing.taken_at.unix_seconds()));
         },
         false,
         {}},
        {tr("What is on it"),
         [](const auto& r) { return text::words(r.weighing.state); },
         {},
         false,
         {}},
        {tr("On the scale"),
         [style](const auto& r) {
             return text::words(r.weighing.on_scale, style, r.weighing.scale_step);
         },
         [](const auto& r) { return QVariant(r.weighing.on_scale.in_grams()); },
         true,
         {}},
        {tr("Tare"),
         [style](const auto& r) { return text::words(r.weighing.tare, style); },
         {},
         true,
         {}},
        {tr("Net"),
         [style](const auto& r) { return text::words(r.weighing.net(), style); },
         [](const auto& r) { return QVariant(r.weighing.net().in_grams()); },
         true,
         {}},
        {tr("Lost"),
         [style](const auto& r) { return text::words_or_unknown(r.loss, style); },
         {},
         true,
         {}},
        {tr("Remarks"),
         [](const auto& r) {
             QStringList remarks;
             if (!r.fate.isEmpty()) {
                 remarks << r.fate;
             }
             if (r.weighing.wet_surface) {
                 remarks << PiecePage::tr("wet surface");
             }
             if (!r.weighing.note.empty()) {
                 remarks << QString::fromStdString(r.weighing.note);
             }
             return remarks.join(QStringLiteral("; "));
         },
         {},
         false,
         {}},
    };
}

std::vector<PiecePage::Events::Column> PiecePage::event_columns() const {
    const auto style = workspace_.style();
    const auto mass = [style](const std::optional<core::units::Mass>& m) {
        return text::words_or_unknown(m, style);
    };
    return {
        {tr("When"),
         [style](const auto& e) { return text::words(e.at, style); },
         [](const auto& e) { return QVariant(static_cast<qlonglong>(e.at.unix_seconds())); },
         false,
         {}},
        {tr("What"), [](const auto& e) { return text::words(e.kind); }, {}, false, {}},
        {tr("Net before"), [mass](const auto& e) { return mass(e.net_before); }, {}, true, {}},
        {tr("Net after"), [mass](const auto& e) { return mass(e.net_after); }, {}, true, {}},
        {tr("Tare after"), [mass](const auto& e) { return mass(e.tare_after); }, {}, true, {}},
        {tr("Remarks"),
         [](const auto& e) {
             const QString note = QString::fromStdString(e.note);
             return e.withdrawn ? PiecePage::tr("taken back. %1").arg(note) : note;
         },
         {},
         false,
         {}},
    };
}

std::vector<PiecePage::Notes::Column> PiecePage::note_columns() const {
    const auto style = workspace_.style();
    return {
        {tr("When"),
         [style](const auto& n) { return text::words(n.at, style); },
         [](const auto& n) { return QVariant(static_cast<qlonglong>(n.at.unix_seconds())); },
         false,
         {}},
        {tr("About"), [](const auto& n) { return text::words(n.kind); }, {}, false, {}},
        {tr("Note"),
         [](const auto& n) { return QString::fromStdString(n.text); },
         {},
         false,
         [](const auto& n) { return QString::fromStdString(n.text); }},
        {tr("Photo"),
         [](const auto& n) { return QString::fromStdString(n.photo_name); },
         {},
         false,
         {}},
    };
}

void PiecePage::arrive(const Place& place) {
    if (piece_ != place.row) {
        piece_ = place.row;
        tabs_->setCurrentIndex(0);
        chosen_.clear();
        compare_with(presenters::CompareWith::alone);
    }
    if (place.detail == QLatin1String("with_batch")) {
        compare_with(presenters::CompareWith::batch);
    }
    weighing_table_->forget_current();
    event_table_->forget_current();
}

void PiecePage::refresh() {
    line_.reset();
    air_.reset();
    auto history = workspace_.one(workspace_.book().piece_history(piece_id()));
    if (!history) {
        return;
    }
    const bool writable = !workspace_.is_read_only();
    for (QWidget* button : std::initializer_list<QWidget*>{change_, event_button_, weigh_}) {
        button->setEnabled(writable);
    }
    line_ = presenters::line_in(workspace_.book(), std::move(*history));
    const auto& piece = line_->piece();
    title_->setText(
        tr("%1 \u2013 %2")
            .arg(QString::fromStdString(piece.code), QString::fromStdString(piece.name)));
    QStringList facts = {text::words(piece.state), text::words(piece.form)};
    if (piece.thickness) {
        facts << text::words(*piece.thickness, workspace_.style());
    }
    if (const auto batch = workspace_.one(workspace_.book().batch(piece.batch))) {
        facts.prepend(
            tr("batch %1, %2")
                .arg(QString::fromStdString(batch->code), QString::fromStdString(batch->name)));
    }
    if (!piece.position.empty()) {
        facts << QString::fromStdString(piece.position);
    }
    subtitle_->setText(facts.join(QStringLiteral(" · ")));
    show_tables();
    fill_measures();
    read_company();
    forecast_arrived();
}

void PiecePage::forecast_arrived() {
    if (!line_) {
        return;
    }
    if (const auto* forecast =
            workspace_.forecasts().find(line_->piece().id, line_->history.revision)) {
        line_->forecast = *forecast;
    }
    for (auto& line : company_.lines) {
        if (const auto* forecast =
                workspace_.forecasts().find(line.piece().id, line.history.revision)) {
            line.forecast = *forecast;
        }
    }
    show_chart();
    show_facts();
}

void PiecePage::show_facts() {
    const auto& style = workspace_.style();
    big_loss_->setText(line_->towards_target ? text::words(line_->towards_target->loss, style)
                                             : text::unknown());
    loss_words_->setText(line_->towards_target
                             ? tr("lost of the %1 (%2)")
                                   .arg(text::words(line_->towards_target->reference),
                                        text::words(line_->towards_target->start, style))
                             : tr("No weight to count a loss from yet."));
    const auto& target = line_->piece().target;
    target_words_->setText(target && line_->target_net
                               ? tr("Target %1: %2 net, %3 on the scale")
                                     .arg(text::words(target->loss, style, 0),
                                          text::words(*line_->target_net, style),
                                          text::words(*line_->target_on_scale(), style))
                               : tr("No target set."));
    QString ready =
        tr("At target: %1").arg(presenters::ready_words(line_->forecast, style, workspace_.now()));
    if (line_->forecast && line_->forecast->levels_off) {
        const auto& levels = *line_->forecast->levels_off;
        ready += QLatin1Char('\n') +
                 tr("Levels off at %1 to %2")
                     .arg(text::words(levels.low, style, 0), text::words(levels.high, style, 0));
    }
    const bool done = line_->piece().state == PieceState::finished;
    ready_words_->setText(done ? tr("Signed as done.") : ready);
    const int teachers = done ? 0 : workspace_.forecasts().learnt_from(line_->piece().id);
    learnt_words_->setText(
        tr("Leans on %n of your own finished piece(s) of this product.", nullptr, teachers));
    learnt_words_->setVisible(teachers > 0);
    QStringList others;
    for (const auto& loss : line_->losses) {
        others
            << tr("%1 of the %2").arg(text::words(loss.loss, style), text::words(loss.reference));
    }
    other_losses_->setText(
        others.isEmpty() ? QString() : tr("Lost: %1").arg(others.join(QStringLiteral("; "))));
    show_findings();
}

void PiecePage::show_findings() {
    while (auto* item = findings_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    if (!line_->forecast) {
        return;
    }
    int number = 0;
    for (const auto& finding : line_->forecast->findings) {
        const QByteArray name = "piece_finding_" + QByteArray::number(number++);
        auto* banner = new look::Banner(name.constData());
        banner->say(text::severity_look(finding.severity),
                    text::finding_words(finding, workspace_.style()));
        findings_->addWidget(banner);
    }
}

void PiecePage::show_tables() {
    std::vector<WeighingRow> rows;
    for (const auto& weighing : workspace_.rows(workspace_.book().weighings(piece_id()))) {
        WeighingRow row{weighing, {}, {}};
        for (const auto& point : line_->points) {
            if (point.weighing == weighing.id && line_->towards_target) {
                const auto start = line_->towards_target->start;
                row.loss = core::units::MassShare::of(start - point.net, start);
            }
        }
        row.fate = weighing.withdrawn    ? tr("taken back")
                   : weighing.amended_by ? tr("corrected later")
                   : weighing.amends     ? tr("a correction")
                                         : QString();
        rows.push_back(std::move(row));
    }
    std::reverse(rows.begin(), rows.end()); // newest first
    weighings_->set_columns(weighing_columns());
    events_->set_columns(event_columns());
    notes_->set_columns(note_columns());
    weighings_->set_rows(std::move(rows));
    events_->set_rows(workspace_.rows(workspace_.book().events(piece_id())));
    core::services::NoteFilter filter;
    filter.piece = piece_id();
    auto notes = workspace_.rows(workspace_.book().notes(filter));
    photos_->show_notes(notes);
    photos_->setVisible(photos_->count() > 0);
    notes_->set_rows(std::move(notes));
    family_->set_rows(workspace_.rows(workspace_.book().family(piece_id())));
    tabs_->setTabText(0, tr("Weighings (%1)").arg(weighings_->rowCount()));
    tabs_->setTabText(1, tr("Events (%1)").arg(events_->rowCount()));
    tabs_->setTabText(2, tr("Notes (%1)").arg(notes_->rowCount()));
    tabs_->setTabText(3, tr("Family (%1)").arg(family_->rowCount()));
}

void PiecePage::weigh() {
    if (line_) {
        const auto line = *line_; // refresh() replaces line_ while the dialog closes
        WeighingDialog(workspace_, line, this).exec();
    }
}

void PiecePage::amend(qint64 weighing) {
    if (!line_ || weighing <= 0 || workspace_.is_read_only()) {
        return;
    }
    const auto entry =
        workspace_.one(workspace_.book().weighing(core::model::WeighingId::from_row(weighing)));
    if (!entry || !entry->stands()) {
        Q_EMIT said(tr("This entry was corrected or taken back already; correct the newer one."));
        return;
    }
    // The chart may show other pieces beside this one.
    auto line = *line_;
    if (entry->piece != line.piece().id) {
        auto history = workspace_.one(workspace_.book().piece_history(entry->piece));
        if (!history) {
            return;
        }
        line = presenters::line_in(workspace_.book(), std::move(*history));
    }
    WeighingDialog(workspace_, line, *entry, this).exec();
}

void PiecePage::withdraw_weighing() {
    const qint64 row = weighing_table_->current_id();
    if (row <= 0) {
        return;
    }
    const auto id = core::model::WeighingId::from_row(row);
    const auto entry = workspace_.one(workspace_.book().weighing(id));
    if (entry && entry->stands()) {
        const QString what = tr("%1: %2 on the scale")
                                 .arg(text::words(entry->taken_at, workspace_.style()),
                                      text::words(entry->on_scale, workspace_.style()));
        WithdrawDialog(workspace_, what, core::actions::WithdrawWeighing{id}, this).exec();
    }
}

void PiecePage::withdraw_event() {
    const qint64 row = event_table_->current_id();
    for (const auto& event : events_->rows()) {
        if (event.id.row() == row && !event.withdrawn) {
            const auto command = core::actions::WithdrawEvent{event.id};
            const QString what = tr("%1: %2").arg(text::words(event.at, workspace_.style()),
                                                  text::words(event.kind));
            WithdrawDialog(workspace_, what, command, this).exec();
            return;
        }
    }
}

void PiecePage::event_dialog(core::model::EventKind kind) {
    if (line_) {
        const auto line = *line_;
        EventDialog(workspace_, line, kind, this).exec();
    }
}

void PiecePage::chamber_failed(const presenters::PieceLine& line) {
    const auto where = line.piece().chamber;
    for (const auto& chamber : workspace_.rows(workspace_.book().chambers())) {
        if (chamber.id == where) {
            auto sensors = workspace_.rows(workspace_.book().sensors());
            std::erase_if(sensors, [&](const auto& sensor) { return sensor.chamber != where; });
            UpsetDialog(workspace_, chamber, std::move(sensors), this).exec();
            return;
        }
    }
    Q_EMIT said(tr("%1 is in no chamber of the book. Choose its chamber under Change first.")
                    .arg(QString::fromStdString(line.piece().code)));
}

void PiecePage::add_note() {
    if (line_) {
        NoteDialog(workspace_, line_->piece().id, line_->piece().batch, this).exec();
    }
}

void PiecePage::open_note(qint64 note) {
    if (!photos_->open_note(note)) {
        Q_EMIT said(tr("This note has no photo."));
    }
}

} // namespace ui::pages
