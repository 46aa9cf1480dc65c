#include "ui/pages/upset_dialog.h"

#include "ui/look/fit.h"
#include "ui/look/pieces.h"
#include "ui/pages/table.h"
#include "ui/text/climate_words.h"
#include "ui/text/date_words.h"
#include "ui/text/error_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <set>

namespace ui::pages {

UpsetDialog::UpsetDialog(presenters::Workspace& workspace, const core::model::Chamber& chamber,
                         std::vector<core::model::Sensor> sensors, QWidget* parent)
    : QDialog(parent), workspace_(workspace), chamber_(chamber), sensors_(std::move(sensors)) {
    setObjectName(QStringLiteral("upset_dialog"));
    setWindowTitle(tr("Upset in %1").arg(QString::fromStdString(chamber.name)));
    auto* outer = new QVBoxLayout(this);
    auto* column = look::add_scrolled_column(outer, "upset_scroll", windowTitle());
    build_form(column);
    build_tables(column);
    banner_ = new look::Banner("upset_banner");
    banner_->say(
        QStringLiteral("note"),
        tr("This is a record to weigh up with your own code, your adviser or a laboratory. "
           "It is of the air, not of the meat's core, and judges nothing."));
    column->addWidget(banner_);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    auto* close = look::button("upset_close", tr("&Close"));
    keep_ =
        look::button("upset_keep", tr("&Keep as a note on each batch"), look::ButtonLook::primary);
    keep_->setEnabled(false);
    buttons->addWidget(close);
    buttons->addWidget(keep_);
    outer->addLayout(buttons);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(keep_, &QPushButton::clicked, this, &UpsetDialog::keep);
    look::resize_in_lines(this, 48, 36);
}

void UpsetDialog::build_form(QVBoxLayout* column) {
    const auto& style = workspace_.style();
    auto* form = new QFormLayout;
    source_ = look::named(new QComboBox, "upset_source", tr("Where the temperatures come from"));
    source_->addItem(tr("what I saw"));
    for (const auto& one : sensors_) {
        source_->addItem(tr("the log of %1").arg(QString::fromStdString(one.name)));
    }
    day_ = new edits::DayField("upset_day", tr("Day it began"), style, workspace_.today());
    day_->set_required(true);
    day_->set_value(workspace_.today() - 1);
    clock_ = new edits::ClockField("upset_clock", tr("Time it began"), style);
    clock_->set_required(true);
    clock_->set_value(18 * 60);
    lasted_ = new edits::DurationField("upset_lasted", tr("How long it lasted"), style);
    lasted_->set_required(true);
    usual_ = new edits::TemperatureField("upset_usual", tr("Usual temperature"), style);
    usual_->set_value(chamber_.high_temperature);
    reached_ = new edits::TemperatureField("upset_reached", tr("Temperature it reached"), style);
    look::add_field(form, tr("&Temperatures from"), source_);
    form->addRow(look::field_label(tr("It &began"), day_->line()), day_);
    form->addRow(look::field_label(tr("Time it began"), clock_->line()), clock_);
    form->addRow(look::field_label(tr("It &lasted"), lasted_->line()), lasted_);
    form->addRow(look::field_label(tr("&Usual temperature"), usual_->line()), usual_);
    form->addRow(look::field_label(tr("It &reached"), reached_->line()), reached_);
    column->addLayout(form);
    auto* show = look::button("upset_show", tr("&Show the record"));
    auto* row = new QHBoxLayout;
    course_ = look::paragraph({});
    course_->setObjectName(QStringLiteral("upset_course"));
    row->addWidget(course_, 1);
    row->addWidget(show);
    column->addLayout(row);
    connect(show, &QPushButton::clicked, this, &UpsetDialog::show_record);
    connect(source_, &QComboBox::currentIndexChanged, this, [this](int index) {
        usual_->setEnabled(index == 0);
        reached_->setEnabled(index == 0);
    });
}

void UpsetDialog::build_tables(QVBoxLayout* column) {
    const auto style = workspace_.style();
    using Row = core::chamber::PieceExposure;
    pieces_ = new Pieces(
        {{tr("Piece"),
          [](const Row& r) { return QString::fromStdString(r.piece.code); },
          {},
          false,
          {}},
         {tr("What"),
          [](const Row& r) { return QString::fromStdString(r.piece.name); },
          {},
          false,
          {}},
         {tr("Stage"),
          [style](const Row& r) {
              if (!r.piece.stage) {
                  return text::unknown();
              }
              return r.piece.in_stage ? UpsetDialog::tr("%1, for %2")
                                            .arg(text::words(*r.piece.stage),
                                                 text::words(*r.piece.in_stage, style))
                                      : text::words(*r.piece.stage);
          },
          {},
          false,
          {}},
         {tr("Hung"),
          [style](const Row& r) { return text::words_or_unknown(r.piece.hung, style); },
          {},
          true,
          {}},
         {tr("Lost"),
          [style](const Row& r) {
              return r.piece.loss ? text::words(*r.piece.loss, style) : text::unknown();
          },
          {},
          true,
          {}},
         {tr("Salt, at most"),
          [style](const Row& r) {
              return r.piece.salt ? text::words(*r.piece.salt, style) : text::unknown();
          },
          {},
          true,
          {}},
         {tr("Nitrite put on"),
          [style](const Row& r) {
              return r.piece.nitrite ? text::ppm_words(*r.piece.nitrite, style) : text::unknown();
          },
          {},
          true,
          {}},
         {tr("Water activity, estimated"),
          [style](const Row& r) {
              const auto& aw = r.piece.water_activity;
              return aw ? UpsetDialog::tr("%1 to %2")
                              .arg(text::words(aw->low, style), text::words(aw->high, style))
                        : text::unknown();
          },
          {},
          true,
          {}}},
        [](const Row& r) { return r.piece.piece.row(); }, this);
    piece_table_ = new Table("upset_pieces", tr("Pieces, to be looked at in this order"));
    piece_table_->show_model(pieces_);
    piece_table_->set_least_height(6);
    using Line = core::chamber::Exposure;
    exposures_ = new Exposures(
        {{tr("Can grow"),
          [](const Line& e) { return QString::fromStdString(e.range.name); },
          {},
          false,
          {}},
         {tr("Hours of air in its range"),
          [style](const Line& e) { return presenters::hours_words(e, style); },
          [](const Line& e) { return QVariant(e.most.in_hours()); },
          true,
          {}},
         {tr("Its temperatures"),
          [style](const Line& e) {
              return UpsetDialog::tr("%1 to %2")
                  .arg(text::words_or_unknown(e.range.lowest, style),
                       text::words_or_unknown(e.range.highest, style));
          },
          {},
          false,
          {}},
         {tr("Water activity"),
          [](const Line& e) { return text::words(e.activity); },
          {},
          false,
          {}},
         {tr("Source"),
          [](const Line& e) { return text::source_words(e.range.source); },
          {},
          false,
          {}}},
        [this](const Line& e) {
            for (std::size_t i = 0; i < exposures_->rows().size(); ++i) {
                if (exposures_->rows()[i].range.id == e.range.id) {
                    return static_cast<qint64>(i) + 1;
                }
            }
            return qint64{0};
        },
        this);
    exposure_table_ = new Table("upset_exposures", tr("Hours in growth ranges"));
    exposure_table_->show_model(exposures_);
    exposure_table_->set_least_height(6);
    column->addWidget(look::section_title(tr("To be looked at in this order")));
    column->addWidget(piece_table_, 3);
    column->addWidget(look::section_title(tr("Hours of air in growth ranges")));
    column->addWidget(exposure_table_, 3);
    connect(piece_table_, &Table::current_changed, this, &UpsetDialog::show_piece);
}

std::optional<presenters::UpsetEntry> UpsetDialog::entry() {
    const bool typed = source_->currentIndex() == 0;
    reached_->set_required(typed);
    bool good = day_->validate();
    good = clock_->validate() && good;
    good = lasted_->validate() && good;
    good = (!typed || reached_->validate()) && good;
    if (!good) {
        return {};
    }
    presenters::UpsetEntry entry{
        .from = workspace_.style().zone.instant_at(*day_->value(), *clock_->value()),
        .lasted = *lasted_->value()};
    if (typed) {
        entry.usual = usual_->value();
        entry.reached = reached_->value();
    } else {
        entry.sensor = sensors_[static_cast<std::size_t>(source_->currentIndex() - 1)];
    }
    return entry;
}

void UpsetDialog::show_record() {
    const auto wanted = entry();
    if (!wanted) {
        return;
    }
    auto record = presenters::upset_record(workspace_, chamber_.id, *wanted);
    if (!record) {
        banner_->say(QStringLiteral("stop"), text::error_words(record.error()));
        return;
    }
    const auto& style = workspace_.style();
    record_ = std::move(*record);
    QString words = tr("%n piece(s) were there. Highest air temperature: %1.", nullptr,
                       static_cast<int>(record_->pieces.size()))
                        .arg(text::words_or_unknown(record_->course.highest, style));
    if (record_->course.unknown > core::units::Duration::seconds(0)) {
        words += QLatin1Char(' ') +
                 tr("For %1 there is no reading.").arg(text::words(record_->course.unknown, style));
    }
    course_->setText(words);
    pieces_->set_rows(record_->pieces);
    piece_table_->set_current_id(
        record_->pieces.empty() ? 0 : record_->pieces.front().piece.piece.row());
    show_piece(piece_table_->current_id());
    keep_->setEnabled(!record_->pieces.empty() && !workspace_.is_read_only());
}

void UpsetDialog::show_piece(qint64 row) {
    for (const auto& one : pieces_->rows()) {
        if (one.piece.piece.row() == row) {
            exposures_->set_rows(one.exposures);
            exposure_table_->fit_columns();
            return;
        }
    }
    exposures_->set_rows({});
}

void UpsetDialog::keep() {
    const auto words = presenters::record_words(*record_, QString::fromStdString(chamber_.name),
                                                workspace_.style());
    std::set<qint64> batches;
    for (const auto& one : record_->pieces) {
        if (const auto piece = workspace_.one(workspace_.book().piece(one.piece.piece))) {
            batches.insert(piece->batch.row());
        }
    }
    for (const qint64 batch : batches) {
        core::model::Note note{.at = record_->course.from};
        note.batch = core::model::BatchId::from_row(batch);
        note.kind = core::model::NoteKind::other;
        note.text = words.toStdString();
        if (!workspace_.perform(core::actions::AddNote{note})) {
            return;
        }
    }
    banner_->say(QStringLiteral("done"), tr("The record is kept as a note on %n batch(es).",
                                            nullptr, static_cast<int>(batches.size())));
    keep_->setEnabled(false);
}

} // namespace ui::pages
