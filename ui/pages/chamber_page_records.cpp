// Sensors, load and logs of the chamber page.
#include "ui/look/adaptive.h"
#include "ui/look/pieces.h"
#include "ui/pages/chamber_dialogs.h"
#include "ui/pages/chamber_page.h"
#include "ui/pages/import_log_dialog.h"
#include "ui/pages/table.h"
#include "ui/presenters/workspace.h"
#include "ui/text/date_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/quantity_words.h"

#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::pages {

namespace {

using core::chamber::CheckDue;

const CheckDue* due_of(const std::vector<CheckDue>& checks, CheckDue::Kind kind) {
    for (const auto& one : checks) {
        if (one.kind == kind) {
            return &one;
        }
    }
    return nullptr;
}

QString due_words(const CheckDue* check, core::units::Day today, const text::Style& style) {
    if (check == nullptr) {
        return text::unknown();
    }
    if (!check->last) {
        return ChamberPage::tr("\u25B2 never checked");
    }
    const auto day = text::relative_words(check->due, today, style);
    return check->overdue ? ChamberPage::tr("\u25B2 due %1").arg(day) : day;
}

} // namespace

QWidget* ChamberPage::build_sensors() {
    auto* tab = new QWidget;
    auto* column = new QVBoxLayout(tab);
    const auto style = workspace_.style();
    const auto today = workspace_.today();
    const auto check = [today, style](CheckDue::Kind kind) {
        return [today, style, kind](const SensorRow& r) {
            return due_words(due_of(r.checks, kind), today, style);
        };
    };
    sensor_rows_ = new Sensors(
        {{tr("Sensor"),
          [](const SensorRow& r) { return QString::fromStdString(r.sensor.name); },
          {},
          false,
          {}},
         {tr("Where"),
          [](const SensorRow& r) { return QString::fromStdString(r.sensor.place); },
          {},
          false,
          {}},
         {tr("Readings"),
          [style](const SensorRow& r) {
              return r.extent ? style.locale.toString(static_cast<qlonglong>(r.extent->readings))
                              : text::unknown();
          },
          {},
          true,
          {}},
         {tr("Last reading"),
          [style](const SensorRow& r) {
              return r.extent ? text::words(r.extent->last, style) : text::unknown();
          },
          {},
          false,
          {}},
         {tr("Added to it"),
          [style](const SensorRow& r) {
              QStringList parts;
              if (r.sensor.temperature_offset) {
                  parts << text::words(*r.sensor.temperature_offset, style);
              }
              if (r.sensor.humidity_offset) {
                  parts << text::words(*r.sensor.humidity_offset, style);
              }
              return parts.isEmpty() ? text::unknown() : parts.join(QStringLiteral(", "));
          },
          {},
          false,
          {}},
         {tr("Salt-bag check"), check(CheckDue::Kind::salt_bag), {}, false, {}},
         {tr("Ice check"), check(CheckDue::Kind::ice), {}, false, {}}},
        [](const SensorRow& r) { return r.sensor.id.row(); }, this);
    sensor_table_ = new Table("sensor_table", tr("Sensors in this chamber"));
    sensor_table_->show_model(sensor_rows_);
    sensor_table_->setMinimumHeight(look::lines(this, 7));
    column->addWidget(look::caption(
        tr("Instruments are often wrong, and believed. Check each over a salt slurry every six "
           "months and after a battery change; the dates are common practice.")));
    column->addWidget(sensor_table_, 1);
    auto* row = new look::HeadRow(look::lines(this, 0.5));
    auto* add = look::button("sensor_add", tr("Add a senso&r\u2026"));
    auto* change = look::button("sensor_change", tr("Chan&ge\u2026"));
    auto* checked = look::button("sensor_check", tr("Record a chec&k\u2026"));
    for (auto* one : {add, change, checked}) {
        row->addWidget(one);
    }
    column->addLayout(row);
    connect(add, &QPushButton::clicked, this, [this] { edit_sensor(false); });
    connect(change, &QPushButton::clicked, this, [this] { edit_sensor(true); });
    connect(sensor_table_, &Table::opened, this, [this] { edit_sensor(true); });
    connect(checked, &QPushButton::clicked, this, &ChamberPage::check_sensor);
    return tab;
}

std::optional<core::model::Sensor> ChamberPage::marked_sensor() const {
    for (const auto& one : sensors_here()) {
        if (one.id.row() == sensor_table_->current_id()) {
            return one;
        }
    }
    return {};
}

void ChamberPage::edit_sensor(bool existing) {
    core::model::Sensor sensor;
    if (existing) {
        const auto marked = marked_sensor();
        if (!marked) {
            return;
        }
        sensor = *marked;
    } else if (const auto* place = current()) {
        sensor.chamber = place->id;
    }
    SensorDialog(workspace_, sensor, this).exec();
}

void ChamberPage::check_sensor() {
    if (const auto marked = marked_sensor()) {
        SensorCheckDialog(workspace_, *marked, this).exec();
    }
}

void ChamberPage::show_sensors() {
    const auto instruments = workspace_.rows(workspace_.book().instruments());
    const auto checks = workspace_.rows(workspace_.book().all_checks());
    const auto reader = core::services::ClimateReader::open(workspace_.book().path());
    std::vector<SensorRow> rows;
    for (const auto& one : sensors_here()) {
        SensorRow row{one, {}, {}};
        if (reader) {
            if (const auto extent = reader->extent(one.id)) {
                row.extent = *extent;
            }
        }
        row.checks = core::chamber::checks_due(one, instruments, checks, workspace_.today());
        rows.push_back(std::move(row));
    }
    sensor_rows_->set_rows(std::move(rows));
    sensor_table_->fit_columns();
}

void ChamberPage::show_load() {
    const auto* place = current();
    if (place == nullptr) {
        return;
    }
    const auto& style = workspace_.style();
    const auto pieces = workspace_.rows(
        core::services::load_pieces(workspace_.book(), place->id, workspace_.now()));
    const auto load = core::chamber::load_of(*place, pieces);
    QString words = load.share_of_capacity
                        ? tr("%1 of water a day, %2 % of what %3 can carry out.")
                              .arg(text::words(load.water_per_day, style),
                                   text::number_words(*load.share_of_capacity * 100, style, 0),
                                   QString::fromStdString(place->name))
                        : tr("%1 of water a day. What the chamber can carry out is not known: "
                             "weigh the water it sheds in a day, and enter it under Change.")
                              .arg(text::words(load.water_per_day, style));
    if (load.free_places) {
        words += QLatin1Char(' ') +
                 tr("%1 of %n place(s) are free.", nullptr, place->places).arg(*load.free_places);
    }
    load_words_->setText(pieces.empty() ? tr("Nothing hangs here.") : words);
    QStringList swaps;
    const auto code = [&](core::model::PieceId id) {
        for (const auto& one : load.pieces) {
            if (one.piece.piece == id) {
                return QString::fromStdString(one.piece.code);
            }
        }
        return text::unknown();
    };
    for (const auto& swap : load.rotation) {
        swaps << tr("%1 with %2").arg(code(swap.fast), code(swap.slow));
    }
    rotation_words_->setText(swaps.isEmpty()
                                 ? QString()
                                 : tr("Worth swapping, the fast with the slow of the same age: %1.")
                                       .arg(swaps.join(QStringLiteral("; "))));
    loads_->set_rows(load.pieces);
    load_table_->fit_columns();
    // Batches with pieces that cure now may be hung here next.
    filling_ = true;
    const auto kept = joining_->currentData();
    joining_->clear();
    joining_->addItem(tr("none"), QVariant(qlonglong{0}));
    std::map<qint64, std::vector<core::chamber::LoadPiece>> curing;
    core::services::PieceFilter filter;
    filter.states = {core::model::PieceState::curing, core::model::PieceState::resting};
    for (const auto& history : workspace_.rows(workspace_.book().piece_histories(filter))) {
        if (!history.weighings.empty()) {
            curing[history.piece.batch.row()].push_back(
                {.piece = history.piece.id,
                 .code = history.piece.code,
                 .net = history.weighings.back().net(),
                 .hung = core::units::Duration::seconds(0)});
        }
    }
    for (const auto& batch : workspace_.rows(workspace_.book().batches())) {
        if (curing.count(batch.id.row()) > 0) {
            joining_->addItem(tr("%1 %2").arg(QString::fromStdString(batch.code),
                                              QString::fromStdString(batch.name)),
                              static_cast<qlonglong>(batch.id.row()));
        }
    }
    joining_->setCurrentIndex(std::max(0, joining_->findData(kept)));
    filling_ = false;
    while (auto* item = load_findings_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const auto joining = joining_->currentData().toLongLong();
    const auto findings = joining > 0
                              ? core::chamber::before_hanging(*place, pieces, curing[joining])
                              : load.findings;
    for (const auto& finding : findings) {
        auto* banner = new look::Banner("load_finding");
        banner->say(text::severity_look(finding.severity), text::finding_words(finding, style));
        load_findings_->addWidget(banner);
    }
}

QWidget* ChamberPage::build_logs() {
    auto* tab = new QWidget;
    auto* column = new QVBoxLayout(tab);
    folder_banner_ = new look::Banner("folder_banner");
    folder_banner_->hide();
    column->addWidget(folder_banner_);
    const auto style = workspace_.style();
    using Row = core::model::ClimateImport;
    const auto moment = [style](const auto& at) {
        return at ? text::words(*at, style) : text::unknown();
    };
    logs_ = new Logs(
        {{tr("Taken in"),
          [style](const Row& r) { return text::words(r.made_at, style); },
          [](const Row& r) { return QVariant(static_cast<qlonglong>(r.made_at.unix_seconds())); },
          false,
          {}},
         {tr("File"),
          [](const Row& r) { return QString::fromStdString(r.file_name); },
          {},
          false,
          {}},
         {tr("New readings"),
          [style](const Row& r) { return style.locale.toString(static_cast<qlonglong>(r.added)); },
          [](const Row& r) { return QVariant(static_cast<qlonglong>(r.added)); },
          true,
          {}},
         {tr("Left out"),
          [style](const Row& r) {
              return style.locale.toString(static_cast<qlonglong>(r.rejected));
          },
          {},
          true,
          {}},
         {tr("From"), [moment](const Row& r) { return moment(r.first); }, {}, false, {}},
         {tr("To"), [moment](const Row& r) { return moment(r.last); }, {}, false, {}},
         {tr("State"),
          [](const Row& r) {
              return r.undone     ? ChamberPage::tr("taken back")
                     : r.complete ? ChamberPage::tr("whole")
                                  : ChamberPage::tr("\u25B2 stopped half-way");
          },
          {},
          false,
          {}}},
        [](const Row& r) { return r.id.row(); }, this);
    log_table_ = new Table("log_table", tr("Logs taken in"));
    log_table_->show_model(logs_);
    log_table_->setMinimumHeight(look::lines(this, 7));
    column->addWidget(log_table_, 1);
    column->addWidget(look::caption(
        tr("A watched folder's new files are taken in by themselves, once a first file of the "
           "sensor has been imported by hand.")));
    auto* row = new look::HeadRow(look::lines(this, 0.5));
    folder_ = look::button("watch_folder", tr("Watch a &folder\u2026"));
    take_back_ = look::button("log_take_back", tr("Take the newest log &back"));
    row->addWidget(folder_);
    row->addWidget(take_back_);
    column->addLayout(row);
    connect(folder_, &QPushButton::clicked, this, &ChamberPage::choose_folder);
    connect(take_back_, &QPushButton::clicked, this, &ChamberPage::take_back);
    return tab;
}

void ChamberPage::show_logs() {
    std::vector<core::model::ClimateImport> rows;
    if (const auto reader = core::services::ClimateReader::open(workspace_.book().path())) {
        for (const auto& one : sensors_here()) {
            const auto of_sensor = workspace_.rows(reader->imports(one.id));
            rows.insert(rows.end(), of_sensor.begin(), of_sensor.end());
        }
    }
    logs_->set_rows(std::move(rows));
    log_table_->fit_columns();
    const auto undo = workspace_.book().undo_label();
    take_back_->setEnabled(undo && undo->verb == "import_climate" && !workspace_.is_read_only());
    folder_->setText(watched_->folder().isEmpty() ? tr("Watch a &folder\u2026")
                                                  : tr("Stop watching the &folder"));
}

void ChamberPage::take_back() {
    workspace_.undo();
}

void ChamberPage::choose_folder() {
    if (!watched_->folder().isEmpty()) {
        watched_->watch({}, {});
        show_logs();
        return;
    }
    const auto here = sensors_here();
    if (here.empty()) {
        Q_EMIT said(tr("Add a sensor first, so that the files have somewhere to go."));
        return;
    }
    const auto folder = QFileDialog::getExistingDirectory(this, tr("Folder to watch"));
    if (!folder.isEmpty()) {
        const auto marked = marked_sensor();
        watched_->watch(folder, marked ? marked->id : here.front().id);
        show_logs();
    }
}

void ChamberPage::import_log() {
    auto here = sensors_here();
    if (here.empty()) {
        const auto* place = current();
        if (place == nullptr) {
            return;
        }
        core::model::Sensor added;
        added.chamber = place->id;
        added.name = tr("logger").toStdString();
        const auto made = workspace_.perform(core::actions::AddSensor{added});
        if (!made) {
            return;
        }
        added.id = made->id<core::model::SensorId>(core::model::EntryKind::sensor);
        here.push_back(added);
    }
    ImportLogDialog(workspace_, std::move(here), this).exec();
    refresh();
}

} // namespace ui::pages
