// While a year of a minute's logger comes into the book from the import form: how long is the GUI
// thread held at a stretch, by the loop's turns and by a weighing that somebody keeps meanwhile?
// A frame of 60 a second lasts 16.7 ms. Wall time says what a person feels, the thread's own time
// what the program does, which a busy machine does not blur. Baseline in the same run: the same
// import on the GUI thread.
#include "core/services/book.h"
#include "core/services/climate.h"
#include "tests/bench/spent.h"
#include "ui/look/theme.h"
#include "ui/pages/import_log_dialog.h"
#include "ui/pages/main_window.h"
#include "ui/presenters/workspace.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTextStream>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <vector>

namespace {

using core::units::Instant;
using core::units::Mass;

constexpr std::int64_t first_s = 1'740'787'200; // 2025-03-01
constexpr int readings = 365 * 1440;
const Instant now = Instant::from_unix_seconds(first_s + readings * 60LL + 3600);

void write_log(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        std::abort();
    }
    QTextStream out(&file);
    out << "time;temperature (°C);humidity (%)\n";
    for (int i = 0; i < readings; ++i) {
        const auto at = QDateTime::fromSecsSinceEpoch(first_s + i * 60LL, Qt::UTC);
        out << at.toString(QStringLiteral("yyyy-MM-dd HH:mm:ss")) << ';'
            << QString::number(12.5 + std::sin(i / 200.0), 'f', 1) << ';'
            << QString::number(75 + 3 * std::cos(i / 90.0), 'f', 1) << '\n';
    }
}

struct Scene {
    core::model::Sensor sensor;
    core::model::PieceId piece;
};

Scene furnish(ui::presenters::Workspace& workspace) {
    core::model::Chamber chamber;
    chamber.name = "Loft";
    Scene scene;
    const auto made = workspace.perform(core::actions::AddChamber{chamber});
    scene.sensor.chamber = made->id<core::model::ChamberId>(core::model::EntryKind::chamber);
    scene.sensor.name = "Logger";
    const auto sensor = workspace.perform(core::actions::AddSensor{scene.sensor});
    scene.sensor.id = sensor->id<core::model::SensorId>(core::model::EntryKind::sensor);
    core::actions::StartBatch batch{
        .batch = {.started = core::units::Day::from_days_since_epoch(20'500)}};
    batch.batch.code = "B1";
    batch.batch.product = "coppa";
    core::actions::NewPiece piece;
    piece.piece.code = "P1";
    piece.piece.state = core::model::PieceState::drying;
    batch.pieces.push_back(piece);
    const auto started = workspace.perform(batch);
    scene.piece = started->id<core::model::PieceId>(core::model::EntryKind::piece);
    return scene;
}

void keep_weighing(ui::presenters::Workspace& workspace, core::model::PieceId piece, int n) {
    core::model::Weighing w{.piece = piece,
                            .taken_at = now - core::units::Duration::minutes(1000 - n),
                            .on_scale = Mass::grams(1000 - n),
                            .tare = Mass::grams(0)};
    static_cast<void>(workspace.perform(core::actions::AddWeighing{w}));
}

void say(const char* what, std::vector<Spent> all) {
    if (all.empty()) {
        return;
    }
    Spent longest;
    for (const Spent& each : all) {
        longest = {std::max(longest.wall, each.wall), std::max(longest.own, each.own)};
    }
    std::sort(all.begin(), all.end(),
              [](const Spent& a, const Spent& b) { return a.wall < b.wall; });
    std::printf("%-34s %6zu   longest %7.1f ms wall, %6.1f ms own   99 of 100 within %6.1f ms\n",
                what, all.size(), longest.wall, longest.own, all[all.size() * 99 / 100].wall);
}

} // namespace

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    ui::look::apply_theme(application, ui::look::Mode::light);
    QTemporaryDir folder;
    const QString log = folder.filePath(QStringLiteral("log.csv"));
    write_log(log);
    auto book = core::services::Book::create(
        folder.filePath(QStringLiteral("b.saltloft")).toStdString(), {now});
    ui::presenters::Workspace workspace(std::move(*book), {}, QLocale(QStringLiteral("en-GB")),
                                        [] { return now; });
    const Scene scene = furnish(workspace);
    ui::pages::MainWindow window(workspace);
    window.resize(1440, 900);
    window.show();
    window.show_place(
        {QStringLiteral("chamber"), static_cast<qint64>(scene.sensor.chamber.row()), {}});
    ui::pages::ImportLogDialog dialog(workspace, {scene.sensor}, &window);
    dialog.show();
    dialog.set_file(log);
    dialog.import().wait();

    std::vector<Spent> turns;
    std::vector<Spent> after;
    std::vector<Spent> entries;
    QElapsedTimer all;
    all.start();
    const Spent click =
        spent([&] { dialog.findChild<QPushButton*>(QStringLiteral("import_start"))->click(); });
    QElapsedTimer since_entry;
    since_entry.start();
    QElapsedTimer quiet;
    quiet.start();
    int n = 0;
    while (dialog.import().is_running() || quiet.elapsed() < 500) {
        const bool running = dialog.import().is_running();
        const Spent turn = spent([] { QCoreApplication::processEvents(QEventLoop::AllEvents); });
        (running && dialog.import().is_running() ? turns : after).push_back(turn);
        if (dialog.import().is_running()) {
            quiet.restart();
            if (since_entry.elapsed() > 150) {
                entries.push_back(spent([&] { keep_weighing(workspace, scene.piece, ++n); }));
                since_entry.restart();
            }
        }
    }
    const auto& report = dialog.import().report();
    if (!report || !*report || (*report)->import.added != readings) {
        std::printf("the log did not come in whole\n");
        return 1;
    }
    std::printf("%d readings in %.0f ms beside the open window\n", readings,
                static_cast<double>(all.elapsed()) - 500);
    say("the click on Import", {click});
    say("turns of the loop while it runs", turns);
    say("turns after the last reading", after);
    say("a weighing kept meanwhile", entries);
    const Spent whole = spent([&] {
        core::services::ClimateImportRequest request{log.toStdString(),
                                                     scene.sensor.id,
                                                     (*dialog.import().looked())->detection.dialect,
                                                     now,
                                                     {}};
        static_cast<void>(
            core::services::import_climate_log(workspace.book().path(), request, {}, {}));
    });
    std::printf("baseline: the same log once more on the calling thread %.0f ms\n", whole.wall);
    return 0;
}
