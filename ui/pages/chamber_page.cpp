#include "ui/pages/chamber_page.h"

#include "ui/charts/chart_view.h"
#include "ui/look/adaptive.h"
#include "ui/look/fit.h"
#include "ui/look/pieces.h"
#include "ui/pages/chamber_dialogs.h"
#include "ui/pages/import_log_dialog.h"
#include "ui/pages/page_frame.h"
#include "ui/pages/table.h"
#include "ui/pages/upset_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/print/printable.h"
#include "ui/text/climate_words.h"
#include "ui/text/date_words.h"
#include "ui/text/error_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabWidget>
#include <QVBoxLayout>

namespace ui::pages {

using core::units::Duration;
using core::units::Instant;

namespace {

/// In a small window, or with a large font, a tab scrolls instead of squeezing its chart.
QScrollArea* scrolling(QWidget* tab, const char* object_name, const QString& name) {
    auto* area = look::named(new QScrollArea, object_name, name);
    look::let_scroll(area, tab);
    area->setFrameShape(QFrame::NoFrame);
    return area;
}

} // namespace

ChamberPage::ChamberPage(presenters::Workspace& workspace, QWidget* parent)
    : Page(workspace, parent), desk_(new presenters::ChamberAirDesk(this)),
      watched_(new presenters::WatchedFolder(workspace, this)) {
    const auto frame = frame_page(this, tr("Chambers"));
    build_head(frame.head);
    stack_ = new QStackedWidget(this);
    auto* empty = new look::EmptyState(
        "chamber_empty", tr("No chamber yet"),
        tr("A chamber is where pieces cure or hang: a fridge, a cabinet, a cellar. Add one with "
           "the air you want in it; then import your logger's file to see how the air really was."),
        tr("Add a chamber"));
    connect(empty->action(), &QPushButton::clicked, this,
            [this] { ChamberDialog(workspace_, {}, this).exec(); });
    stack_->addWidget(empty);
    tabs_ = look::named(new QTabWidget, "chamber_tabs", tr("About the chamber"));
    tabs_->addTab(scrolling(build_air(), "chamber_air", tr("Air")), tr("&Air"));
    tabs_->addTab(scrolling(build_sensors(), "chamber_sensors", tr("Sensors")), tr("&Sensors"));
    tabs_->addTab(scrolling(build_load(), "chamber_load", tr("Load")), tr("&Load"));
    tabs_->addTab(scrolling(build_logs(), "chamber_logs", tr("Logs")), tr("L&ogs"));
    stack_->addWidget(tabs_);
    frame.body->addWidget(stack_, 1);
    connect(desk_, &presenters::ChamberAirDesk::arrived, this, &ChamberPage::show_air);
    connect(watched_, &presenters::WatchedFolder::said, this,
            [this](const QString& severity, const QString& sentence) {
                folder_banner_->say(severity, sentence);
                folder_banner_->show();
                Q_EMIT said(sentence);
            });
}

void ChamberPage::build_head(look::HeadRow* head) {
    chamber_ = look::named(new QComboBox, "chamber_choice", tr("Chamber"));
    head->addWidget(chamber_);
    auto* add = look::button("chamber_add", tr("&New\u2026"));
    auto* change = look::button("chamber_change", tr("&Change\u2026"));
    auto* upset = look::button("chamber_upset", tr("Record an &upset\u2026"));
    import_ = look::button("chamber_import", tr("&Import a log\u2026"), look::ButtonLook::primary);
    for (auto* one : {add, change, upset, import_}) {
        head->addWidget(one);
    }
    connect(chamber_, &QComboBox::currentIndexChanged, this, [this] {
        if (!filling_) {
            refresh();
        }
    });
    connect(add, &QPushButton::clicked, this,
            [this] { ChamberDialog(workspace_, {}, this).exec(); });
    connect(change, &QPushButton::clicked, this, [this] {
        if (const auto* one = current()) {
            ChamberDialog(workspace_, *one, this).exec();
        }
    });
    connect(upset, &QPushButton::clicked, this, [this] {
        if (const auto* one = current()) {
            UpsetDialog(workspace_, *one, sensors_here(), this).exec();
        }
    });
    connect(import_, &QPushButton::clicked, this, &ChamberPage::import_log);
}

QWidget* ChamberPage::build_air() {
    auto* tab = new QWidget;
    auto* column = new QVBoxLayout(tab);
    auto* row = new look::HeadRow(look::lines(this, 0.5));
    quantity_ = look::named(new QComboBox, "air_quantity", tr("What is shown"));
    quantity_->addItems({tr("temperature"), tr("humidity"), tr("drying force")});
    window_ = look::named(new QComboBox, "air_window", tr("How long"));
    for (const auto& [words, days] :
         {std::pair(tr("a day"), 1), std::pair(tr("a week"), 7), std::pair(tr("30 days"), 30),
          std::pair(tr("90 days"), 90), std::pair(tr("a year"), 366),
          std::pair(tr("ten years"), 3653)}) {
        window_->addItem(words, days);
    }
    window_->setCurrentIndex(2);
    first_ = look::named(new QComboBox, "air_sensor", tr("Sensor"));
    second_ = look::named(new QComboBox, "air_second_sensor", tr("Second sensor laid over it"));
    auto* earlier = look::button("air_earlier", tr("\u25C0 &Earlier"));
    auto* later = look::button("air_later", tr("La&ter \u25B6"));
    auto* newest = look::button("air_newest", tr("Ne&west"));
    for (QWidget* one : std::initializer_list<QWidget*>{quantity_, window_, first_, second_,
                                                        earlier, later, newest}) {
        row->addWidget(one);
    }
    column->addLayout(row);
    chart_ = new charts::ChartView("air_chart");
    chart_->setMinimumHeight(look::lines(this, 30));
    column->addWidget(chart_, 4);
    band_words_ = look::paragraph({});
    band_words_->setObjectName(QStringLiteral("air_band_words"));
    column->addWidget(band_words_);
    air_findings_ = new QVBoxLayout;
    column->addLayout(air_findings_);
    const auto style = workspace_.style();
    excursions_ = new Excursions(
        {{tr("Out of band"),
          [](const ExcursionRow& r) { return text::words(r.excursion.side); },
          {},
          false,
          {}},
         {tr("From"),
          [style](const ExcursionRow& r) { return text::words(r.excursion.from, style); },
          [](const ExcursionRow& r) {
              return QVariant(static_cast<qlonglong>(r.excursion.from.unix_seconds()));
          },
          false,
          {}},
         {tr("For"),
          [style](const ExcursionRow& r) { return text::words(r.excursion.time, style); },
          [](const ExcursionRow& r) { return QVariant(r.excursion.time.in_hours()); },
          true,
          {}},
         {tr("Worst"),
          [style](const ExcursionRow& r) {
              return r.excursion.worst_temperature
                         ? text::words(*r.excursion.worst_temperature, style)
                         : text::words_or_unknown(r.excursion.worst_humidity, style);
          },
          {},
          true,
          {}}},
        [](const ExcursionRow& r) {
            return static_cast<qint64>(r.excursion.from.unix_seconds() * 4) +
                   static_cast<qint64>(r.excursion.side) + 1;
        },
        this);
    excursion_table_ = new Table("air_excursions", tr("Times out of band, half an hour or longer"));
    excursion_table_->show_model(excursions_);
    excursion_table_->setMinimumHeight(look::lines(this, 7));
    column->addWidget(excursion_table_, 2);
    for (auto* box : {quantity_, window_, first_, second_}) {
        connect(box, &QComboBox::currentIndexChanged, this, [this] {
            if (!filling_) {
                ask_air();
            }
        });
    }
    connect(earlier, &QPushButton::clicked, this, [this] { move_window(-0.5); });
    connect(later, &QPushButton::clicked, this, [this] { move_window(0.5); });
    connect(newest, &QPushButton::clicked, this, [this] {
        window_end_.reset();
        ask_air();
    });
    return tab;
}

void ChamberPage::arrive(const Place& place) {
    wanted_chamber_ = place.row;
}

const core::model::Chamber* ChamberPage::current() const {
    const auto row = chamber_->currentData().toLongLong();
    for (const auto& one : chambers_) {
        if (one.id.row() == row) {
            return &one;
        }
    }
    return nullptr;
}

std::vector<core::model::Sensor> ChamberPage::sensors_here() const {
    std::vector<core::model::Sensor> here;
    const auto* place = current();
    for (const auto& one : sensors_) {
        if (place != nullptr && one.chamber == place->id) {
            here.push_back(one);
        }
    }
    return here;
}

void ChamberPage::fill_choices() {
    filling_ = true;
    const qint64 keep =
        wanted_chamber_ > 0 ? wanted_chamber_ : chamber_->currentData().toLongLong();
    wanted_chamber_ = 0;
    chamber_->clear();
    for (const auto& one : chambers_) {
        chamber_->addItem(QString::fromStdString(one.name), static_cast<qlonglong>(one.id.row()));
    }
    chamber_->setCurrentIndex(
        std::max(0, chamber_->findData(QVariant(static_cast<qlonglong>(keep)))));
    const auto here = sensors_here();
    for (auto* box : {first_, second_}) {
        const auto kept = box->currentData();
        box->clear();
        if (box == second_) {
            box->addItem(tr("no second sensor"), QVariant(qlonglong{0}));
        }
        for (const auto& one : here) {
            box->addItem(QString::fromStdString(one.name), static_cast<qlonglong>(one.id.row()));
        }
        box->setCurrentIndex(std::max(0, box->findData(kept)));
        box->setVisible(box == first_ ? !here.empty() : here.size() > 1);
    }
    filling_ = false;
}

std::vector<print::Printable> ChamberPage::printables() {
    return print::calibration_printables(workspace_.book(), workspace_.today(), workspace_.style());
}

void ChamberPage::refresh() {
    chambers_ = workspace_.rows(workspace_.book().chambers());
    sensors_ = workspace_.rows(workspace_.book().sensors());
    stack_->setCurrentIndex(chambers_.empty() ? 0 : 1);
    import_->setEnabled(!chambers_.empty() && !workspace_.is_read_only());
    fill_choices();
    ask_air();
    show_sensors();
    show_load();
    show_logs();
    watched_->refresh();
}

void ChamberPage::move_window(double windows) {
    const auto& answer = desk_->answer();
    const double days = window_->currentData().toDouble();
    Instant end = workspace_.now();
    if (window_end_) {
        end = *window_end_;
    } else if (answer && *answer && !(*answer)->sensors.empty() &&
               (*answer)->sensors.front().extent) {
        end = (*answer)->sensors.front().extent->last;
    }
    window_end_ = end + Duration::days(days * windows);
    ask_air();
}

void ChamberPage::ask_air() {
    core::services::ChamberAirRequest request{.from = workspace_.now(), .to = workspace_.now()};
    const auto* place = current();
    if (place == nullptr) {
        return;
    }
    request.band = {place->low_temperature, place->high_temperature, place->low_humidity,
                    place->high_humidity};
    for (const auto& one : sensors_here()) {
        const auto row = QVariant(static_cast<qlonglong>(one.id.row()));
        if (row == first_->currentData()) {
            request.sensors.insert(request.sensors.begin(), one);
        } else if (row == second_->currentData()) {
            request.sensors.push_back(one);
        }
    }
    // The newest reading is looked up here: one search of the key, well under a millisecond.
    Instant end = workspace_.now();
    if (window_end_) {
        end = *window_end_;
    } else if (!request.sensors.empty()) {
        if (const auto reader = core::services::ClimateReader::open(workspace_.book().path())) {
            const auto extent = reader->extent(request.sensors.front().id);
            if (extent && *extent) {
                end = (*extent)->last + Duration::seconds(1);
            }
        }
    }
    request.to = end;
    request.from = end - Duration::days(window_->currentData().toDouble());
    request.pixels = std::max(200, chart_->width());
    desk_->ask(workspace_.book().path(), std::move(request));
}

std::vector<charts::ClimateStage> ChamberPage::stages_here(Instant from, Instant to) const {
    std::vector<charts::ClimateStage> found;
    const auto* place = current();
    if (place == nullptr) {
        return found;
    }
    for (const auto& stage : workspace_.rows(workspace_.book().stages_in(place->id, from, to))) {
        const auto batch = workspace_.book().batch(stage.batch);
        if (batch && stage.started_at) {
            found.push_back({*stage.started_at, stage.ended_at.value_or(workspace_.now()),
                             tr("%1 %2").arg(QString::fromStdString(batch->code),
                                             text::words(stage.what.kind))});
        }
    }
    return found;
}

namespace {

void clear(QVBoxLayout* layout) {
    while (auto* item = layout->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

void say_findings(QVBoxLayout* layout, const core::model::Findings& findings,
                  const text::Style& style) {
    for (const auto& finding : findings) {
        auto* banner = new look::Banner("finding");
        banner->say(text::severity_look(finding.severity), text::finding_words(finding, style));
        layout->addWidget(banner);
    }
}

QString band_sentence(const core::services::ChamberAir& air, const text::Style& style) {
    const auto& t = air.out_of_band;
    QStringList parts;
    const auto add = [&](Duration time, core::chamber::OutOfBand side) {
        if (time > Duration::seconds(0)) {
            parts << ChamberPage::tr("%1 %2").arg(text::words(time, style), text::words(side));
        }
    };
    add(t.too_cold, core::chamber::OutOfBand::too_cold);
    add(t.too_warm, core::chamber::OutOfBand::too_warm);
    add(t.too_dry, core::chamber::OutOfBand::too_dry);
    add(t.too_damp, core::chamber::OutOfBand::too_damp);
    QString words = parts.isEmpty()
                        ? ChamberPage::tr("Of %1 watched, no time out of the band.")
                              .arg(text::words(t.watched, style))
                        : ChamberPage::tr("Of %1 watched: %2.")
                              .arg(text::words(t.watched, style), parts.join(QStringLiteral(", ")));
    if (t.unknown > Duration::minutes(30)) {
        words += QLatin1Char(' ') +
                 ChamberPage::tr("For %1 nothing is known.").arg(text::words(t.unknown, style));
    }
    return words;
}

} // namespace

void ChamberPage::show_air() {
    const auto& answer = *desk_->answer();
    const auto* place = current();
    if (place == nullptr) {
        return;
    }
    clear(air_findings_);
    if (!answer) {
        band_words_->setText(text::error_words(answer.error()));
        return;
    }
    const auto& style = workspace_.style();
    charts::ClimateChartInput input;
    input.title = tr("Air in %1").arg(QString::fromStdString(place->name));
    input.band = {place->low_temperature, place->high_temperature, place->low_humidity,
                  place->high_humidity};
    core::model::Findings findings = answer->findings;
    for (const auto& one : answer->sensors) {
        input.curves.push_back({QString::fromStdString(one.sensor.name), one.series});
        findings.insert(findings.end(), one.findings.begin(), one.findings.end());
    }
    input.stages = stages_here(answer->from, answer->to);
    chart_->show_spec(charts::climate_chart(
        input, static_cast<charts::ClimateQuantity>(quantity_->currentIndex()), style));
    chart_->show_all();
    const bool has_readings =
        !answer->sensors.empty() && answer->sensors.front().extent.has_value();
    band_words_->setText(
        has_readings ? band_sentence(*answer, style)
        : answer->sensors.empty()
            ? tr("No sensor here yet: import a log, or add a sensor on the Sensors tab.")
            : tr("This sensor has no readings yet: import a log."));
    std::vector<ExcursionRow> rows;
    for (const auto& one : answer->out_of_band.excursions) {
        rows.push_back({one});
    }
    excursions_->set_rows(std::move(rows));
    constexpr std::size_t most_shown = 3;
    findings.resize(std::min(findings.size(), most_shown));
    say_findings(air_findings_, findings, style);
}

QWidget* ChamberPage::build_load() {
    auto* tab = new QWidget;
    auto* column = new QVBoxLayout(tab);
    load_words_ = look::paragraph({});
    load_words_->setObjectName(QStringLiteral("load_words"));
    column->addWidget(load_words_);
    load_findings_ = new QVBoxLayout;
    column->addLayout(load_findings_);
    auto* row = new look::HeadRow(look::lines(this, 0.5));
    joining_ = look::named(new QComboBox, "load_joining", tr("Batch about to be hung here"));
    row->addWidget(look::field_label(tr("&What if this batch is hung here"), joining_));
    row->addWidget(joining_);
    column->addLayout(row);
    const auto style = workspace_.style();
    using Row = core::chamber::PieceLoad;
    loads_ = new Loads(
        {{tr("Piece"),
          [](const Row& r) { return QString::fromStdString(r.piece.code); },
          {},
          false,
          {}},
         {tr("Place"),
          [](const Row& r) { return QString::fromStdString(r.piece.position); },
          {},
          false,
          {}},
         {tr("Weighs"),
          [style](const Row& r) { return text::words(r.piece.net, style); },
          [](const Row& r) { return QVariant(r.piece.net.in_grams()); },
          true,
          {}},
         {tr("Hung for"),
          [style](const Row& r) { return text::words(r.piece.hung, style); },
          [](const Row& r) { return QVariant(r.piece.hung.in_hours()); },
          true,
          {}},
         {tr("Lost"),
          [style](const Row& r) {
              return r.piece.loss ? text::words(*r.piece.loss, style) : text::unknown();
          },
          {},
          true,
          {}},
         {tr("Water a day"),
          [style](const Row& r) { return text::words(r.water_per_day, style); },
          [](const Row& r) { return QVariant(r.water_per_day.in_grams()); },
          true,
          {}},
         {tr("Known from"),
          [](const Row& r) {
              return r.measured ? ChamberPage::tr("its weighings")
                                : ChamberPage::tr("the usual pace of its age");
          },
          {},
          false,
          {}}},
        [](const Row& r) { return r.piece.piece.row(); }, this);
    load_table_ = new Table("load_table", tr("Pieces by the water they give off"));
    load_table_->show_model(loads_);
    load_table_->setMinimumHeight(look::lines(this, 9));
    column->addWidget(load_table_, 1);
    rotation_words_ = look::paragraph({});
    rotation_words_->setObjectName(QStringLiteral("rotation_words"));
    column->addWidget(rotation_words_);
    connect(load_table_, &Table::opened, this, [this](qint64 piece) {
        Q_EMIT go({QStringLiteral("piece"), piece, {}});
    });
    connect(joining_, &QComboBox::currentIndexChanged, this, [this] {
        if (!filling_) {
            show_load();
        }
    });
    return tab;
}

void ChamberPage::wait() {
    desk_->wait();
}

PageEntry chamber_page() {
    return {"chamber", Side::house, ChamberPage::tr("Chambers"),
            ChamberPage::tr("Air, sensors and load of the rooms where pieces hang"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new ChamberPage(workspace, parent);
            }};
}

} // namespace ui::pages
