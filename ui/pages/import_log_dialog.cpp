#include "ui/pages/import_log_dialog.h"

#include "ui/look/adaptive.h"
#include "ui/look/fit.h"
#include "ui/look/pieces.h"
#include "ui/pages/table.h"
#include "ui/presenters/workspace.h"
#include "ui/text/climate_words.h"
#include "ui/text/date_words.h"
#include "ui/text/error_words.h"
#include "ui/text/quantity_words.h"

#include <QComboBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

namespace chamber = core::chamber;

/// A drop-down whose first choice leaves it to the file.
QComboBox* choice(const char* object_name, const QString& name,
                  const std::vector<std::pair<QString, int>>& choices) {
    auto* box = look::named(new QComboBox, object_name, name);
    box->addItem(ImportLogDialog::tr("as found in the file"), -1);
    for (const auto& [text, value] : choices) {
        box->addItem(text, value);
    }
    return box;
}

enum ClockChoice { book_zone, utc, winter_time };

} // namespace

ImportLogDialog::ImportLogDialog(presenters::Workspace& workspace,
                                 std::vector<core::model::Sensor> sensors, QWidget* parent)
    : QDialog(parent), workspace_(workspace), sensors_(std::move(sensors)),
      import_(new presenters::LogImport(this)) {
    setObjectName(QStringLiteral("import_log_dialog"));
    setWindowTitle(tr("Import a climate log"));
    auto* outer = new QVBoxLayout(this);
    auto* column = look::add_scrolled_column(outer, "import_scroll", windowTitle());
    build_choices(column);
    build_tables(column);
    banner_ = new look::Banner("import_banner");
    outer->addWidget(banner_);
    progress_ = look::named(new QProgressBar, "import_progress", tr("Progress of the import"));
    progress_->setRange(0, 1000);
    progress_->hide();
    outer->addWidget(progress_);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    close_ = look::button("import_close", tr("&Close"));
    start_ = look::button("import_start", tr("&Import"), look::ButtonLook::primary);
    start_->setEnabled(false);
    buttons->addWidget(close_);
    buttons->addWidget(start_);
    outer->addLayout(buttons);
    connect(close_, &QPushButton::clicked, this, &ImportLogDialog::reject);
    connect(start_, &QPushButton::clicked, this, &ImportLogDialog::start);
    connect(import_, &presenters::LogImport::previewed, this, &ImportLogDialog::show_preview);
    connect(import_, &presenters::LogImport::finished, this, &ImportLogDialog::show_report);
    connect(import_, &presenters::LogImport::progressed, this, [this](int share, qint64 readings) {
        progress_->setValue(share);
        progress_->setFormat(tr("%n reading(s)", nullptr, static_cast<int>(readings)));
    });
    banner_->say(QStringLiteral("note"),
                 tr("Choose the file your logger wrote. Nothing is stored before you press "
                    "Import, and one Undo takes the whole log back."));
    look::resize_in_lines(this, 46, 34);
}

ImportLogDialog::~ImportLogDialog() {
    hide();
}

void ImportLogDialog::build_choices(QVBoxLayout* column) {
    auto* form = new QFormLayout;
    auto* row = new QHBoxLayout;
    file_ = look::named(new QLineEdit, "import_file", tr("Log file"));
    auto* pick = look::button("import_browse", tr("C&hoose\u2026"));
    row->addWidget(file_, 1);
    row->addWidget(pick);
    form->addRow(look::field_label(tr("&File"), file_), row);
    sensor_ = look::named(new QComboBox, "import_sensor", tr("Sensor"));
    for (const auto& one : sensors_) {
        sensor_->addItem(QString::fromStdString(one.name));
    }
    look::add_field(form, tr("&Sensor"), sensor_);
    dates_ =
        choice("import_dates", tr("Dates"),
               {{tr("year, month, day"), static_cast<int>(chamber::StampForm::year_month_day)},
                {tr("day, month, year"), static_cast<int>(chamber::StampForm::day_month_year)},
                {tr("month, day, year"), static_cast<int>(chamber::StampForm::month_day_year)}});
    temperature_ = choice(
        "import_temperature", tr("Temperature in"),
        {{QStringLiteral("\u00B0C"), static_cast<int>(chamber::TemperatureScale::celsius)},
         {QStringLiteral("\u00B0F"), static_cast<int>(chamber::TemperatureScale::fahrenheit)},
         {QStringLiteral("K"), static_cast<int>(chamber::TemperatureScale::kelvin)}});
    decimal_ =
        choice("import_decimal", tr("Decimal sign"), {{tr("point"), '.'}, {tr("comma"), ','}});
    clock_ =
        choice("import_clock", tr("Clock"),
               {{tr("local time of %1").arg(QString::fromStdString(workspace_.style().zone.name())),
                 book_zone},
                {QStringLiteral("UTC"), utc},
                {tr("winter time all year"), winter_time}});
    auto* choices = new look::SideBySide(34);
    for (const auto& [label, box] :
         {std::pair(tr("&Dates"), dates_), std::pair(tr("&Temperature in"), temperature_),
          std::pair(tr("D&ecimal sign"), decimal_), std::pair(tr("Cloc&k"), clock_)}) {
        auto* pair = new QVBoxLayout;
        pair->addWidget(look::field_label(label, box));
        pair->addWidget(box);
        choices->add(pair, 1);
        connect(box, &QComboBox::currentIndexChanged, this, &ImportLogDialog::look);
    }
    column->addLayout(form);
    column->addWidget(choices);
    connect(pick, &QPushButton::clicked, this, &ImportLogDialog::browse);
    connect(file_, &QLineEdit::editingFinished, this, &ImportLogDialog::look);
    connect(sensor_, &QComboBox::currentIndexChanged, this, &ImportLogDialog::look);
}

void ImportLogDialog::build_tables(QVBoxLayout* column) {
    const auto style = workspace_.style();
    parts_ = new Parts(
        {{tr("What"), [](const Part& p) { return text::words(p.detected.field); }, {}, false, {}},
         {tr("Reads as"),
          [](const Part& p) { return text::choice_words(p.detected.field, p.detected.choice); },
          {},
          false,
          {}},
         {tr("How sure"),
          [style](const Part& p) { return text::sureness_words(p.detected.sureness, style); },
          [](const Part& p) { return QVariant(p.detected.sureness); },
          false,
          {}},
         {tr("Why"), [](const Part& p) { return text::words(p.detected.why); }, {}, false, {}},
         {tr("Or else"),
          [](const Part& p) {
              QStringList rivals;
              for (const auto& rival : p.detected.rivals) {
                  rivals << text::choice_words(p.detected.field, rival.choice);
              }
              return rivals.join(QStringLiteral(", "));
          },
          {},
          false,
          {}}},
        [](const Part& p) { return static_cast<qint64>(p.detected.field) + 1; }, this);
    part_table_ = new Table("import_parts", tr("How the file reads"));
    part_table_->show_model(parts_);
    part_table_->set_least_height(7);
    readings_ = new Readings(
        {{tr("When"),
          [style](const auto& r) { return text::words(r.at, style); },
          [](const auto& r) { return QVariant(static_cast<qlonglong>(r.at.unix_seconds())); },
          false,
          {}},
         {tr("Temperature"),
          [style](const auto& r) { return text::words_or_unknown(r.temperature, style); },
          {},
          true,
          {}},
         {tr("Humidity"),
          [style](const auto& r) { return text::words_or_unknown(r.humidity, style); },
          {},
          true,
          {}}},
        [](const auto& r) { return static_cast<qint64>(r.at.unix_seconds()); }, this);
    reading_table_ = new Table("import_readings", tr("First readings"));
    reading_table_->show_model(readings_);
    reading_table_->set_least_height(6);
    column->addWidget(look::section_title(tr("How the file reads")));
    column->addWidget(part_table_, 3);
    column->addWidget(look::section_title(tr("First readings")));
    column->addWidget(reading_table_, 2);
}

const core::model::Sensor& ImportLogDialog::sensor() const {
    return sensors_[static_cast<std::size_t>(std::max(0, sensor_->currentIndex()))];
}

void ImportLogDialog::set_file(const QString& path) {
    file_->setText(path);
    look();
}

void ImportLogDialog::browse() {
    const auto path = QFileDialog::getOpenFileName(
        this, tr("Log file"), {}, tr("Logs (*.csv *.txt *.tsv *.log);;All files (*)"));
    if (!path.isEmpty()) {
        set_file(path);
    }
}

chamber::DialectHints ImportLogDialog::hints() const {
    chamber::DialectHints hints;
    hints.zone = workspace_.style().zone.name();
    hints.not_after = workspace_.now();
    if (const auto known = chamber::dialect_from_json(sensor().log_dialect)) {
        hints.remembered = *known;
    }
    const auto told = [](const QComboBox* box) {
        const int value = box->currentData().toInt();
        return value >= 0 ? std::optional(value) : std::nullopt;
    };
    if (const auto form = told(dates_)) {
        hints.stamp = static_cast<chamber::StampForm>(*form);
    }
    if (const auto scale = told(temperature_)) {
        hints.temperature = static_cast<chamber::TemperatureScale>(*scale);
    }
    if (const auto sign = told(decimal_)) {
        hints.decimal_sign = static_cast<char>(*sign);
    }
    if (const auto clock = told(clock_)) {
        if (*clock == book_zone) {
            hints.told_zone = hints.zone;
        } else if (*clock == utc) {
            hints.told_offset_seconds = 0;
        } else {
            // Winter time is the smaller of the year's two offsets.
            const auto& zone = workspace_.style().zone;
            const auto today = workspace_.now();
            hints.told_offset_seconds =
                std::min(zone.offset_seconds(today),
                         zone.offset_seconds(today + core::units::Duration::days(182)));
        }
    }
    return hints;
}

void ImportLogDialog::look() {
    if (file_->text().isEmpty() || import_->is_running() || sensors_.empty()) {
        return;
    }
    start_->setEnabled(false);
    import_->preview(file_->text().toStdString(), hints());
}

void ImportLogDialog::show_preview() {
    const auto& looked = *import_->looked();
    if (!looked) {
        parts_->set_rows({});
        readings_->set_rows({});
        banner_->say(QStringLiteral("stop"), text::error_words(looked.error()));
        return;
    }
    std::vector<Part> parts;
    for (const auto& part : looked->detection.parts) {
        parts.push_back({part});
    }
    parts_->set_rows(std::move(parts));
    readings_->set_rows(looked->first);
    part_table_->fit_columns();
    const bool sure = looked->detection.guesses().empty();
    start_->setEnabled(sure && !workspace_.is_read_only());
    if (!sure) {
        banner_->say(QStringLiteral("caution"),
                     tr("Part of this is a guess. Say above how the file is to be read; it is "
                        "remembered for this sensor."));
    } else if (looked->tally.rejected_lines() > 0) {
        banner_->say(QStringLiteral("note"),
                     tr("Of the first %1 lines %n are no readings; they will be left out.", nullptr,
                        static_cast<int>(looked->tally.rejected_lines()))
                         .arg(looked->tally.lines));
    } else {
        banner_->say(QStringLiteral("done"), tr("The file reads well."));
    }
}

void ImportLogDialog::start() {
    const auto& looked = *import_->looked();
    if (!looked) {
        return;
    }
    auto remembered = sensor();
    remembered.log_dialect = chamber::to_json(looked->detection.dialect);
    if (remembered.log_dialect != sensor().log_dialect &&
        !workspace_.perform(core::actions::ChangeSensor{remembered})) {
        return;
    }
    sensors_[static_cast<std::size_t>(sensor_->currentIndex())] = remembered;
    core::services::ClimateImportRequest request{file_->text().toStdString(), remembered.id,
                                                 looked->detection.dialect, workspace_.now(),
                                                 workspace_.who()};
    progress_->setValue(0);
    progress_->show();
    start_->setEnabled(false);
    close_->setText(tr("&Cancel the import"));
    import_->start(workspace_.book().path(), std::move(request));
}

void ImportLogDialog::show_report() {
    progress_->hide();
    close_->setText(tr("&Close"));
    const auto& report = *import_->report();
    if (!report) {
        banner_->say(QStringLiteral("stop"), text::error_words(report.error()));
        return;
    }
    const auto& log = report->import;
    QString words =
        tr("%1 of %n reading(s) are new.", nullptr, static_cast<int>(report->tally.readings))
            .arg(log.added);
    if (!log.complete) {
        words = tr("Stopped. %n reading(s) were taken in before; Undo takes them back.", nullptr,
                   static_cast<int>(log.added));
    }
    if (report->tally.rejected_lines() > 0) {
        words += QLatin1Char(' ') + tr("%n line(s) are no readings.", nullptr,
                                       static_cast<int>(report->tally.rejected_lines()));
        const auto& first = report->tally.first_rejects.front();
        words += QLatin1Char(' ') +
                 tr("The first is line %1: %2.").arg(first.line).arg(text::words(first.reason));
    }
    if (log.conflicts > 0) {
        words +=
            QLatin1Char(' ') +
            tr("%1 say something else than the book, which was left as it is.").arg(log.conflicts);
    }
    banner_->say(log.complete ? QStringLiteral("done") : QStringLiteral("caution"), words);
    Q_EMIT workspace_.changed();
}

void ImportLogDialog::reject() {
    if (import_->is_running()) {
        import_->cancel(); // show_report follows after the chunk under way
        return;
    }
    QDialog::reject();
}

} // namespace ui::pages
