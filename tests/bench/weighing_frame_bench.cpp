// After one weighing among 200 hanging pieces: how long is the GUI thread held at a stretch while
// the book is written, the pages refreshed, the forecasts recomputed (on a worker) and the charts
// repainted? A frame of 60 a second lasts 16.7 ms. The baseline in the same run is one plain
// forecast of one piece on the GUI thread, which is what the worker spares it.
#include "core/services/book.h"
#include "tests/bench/spent.h"
#include "ui/look/theme.h"
#include "ui/pages/main_window.h"
#include "ui/presenters/piece_forecast.h"
#include "ui/presenters/workspace.h"

#include <QAbstractEventDispatcher>
#include <QApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace {

using core::units::Instant;
using core::units::Mass;

constexpr int pieces = 200;
constexpr int weeks = 10;
const Instant start = Instant::from_unix_seconds(1772352000);

core::services::Book two_hundred(const QString& path) {
    auto book = core::services::Book::create(path.toStdString(), {start});
    core::actions::StartBatch batch{
        .batch = {.started = core::units::Day::from_days_since_epoch(20513)}};
    batch.batch.code = "B1";
    batch.batch.product = "coppa";
    batch.batch.state = core::model::BatchState::in_progress;
    for (int i = 0; i < pieces; ++i) {
        core::actions::NewPiece piece;
        piece.piece.code = "P" + std::to_string(i);
        piece.piece.form = core::model::Form::cylinder;
        piece.piece.thickness = core::units::Length::millimetres(70 + i % 20);
        piece.piece.hanging_order = i;
        piece.piece.target = core::model::Target{core::units::MassShare::percent(35),
                                                 core::model::ReferenceWeight::hung};
        for (int week = 0; week < weeks; ++week) {
            const double loss = 0.42 * (1 - std::exp(-week / (5.0 + 0.02 * i)));
            core::model::Weighing w{.taken_at = start + core::units::Duration::days(7 * week),
                                    .on_scale = Mass::grams(1000 * (1 - loss)),
                                    .tare = Mass::grams(0)};
            w.state = core::model::WeighedState::rinsed;
            piece.weighings.push_back(w);
        }
        batch.pieces.push_back(std::move(piece));
    }
    const auto made = book->perform(batch, {{}, start, {}});
    for (int i = 0; i < pieces && made; ++i) {
        core::model::PieceEvent hung{
            .piece = made->id<core::model::PieceId>(core::model::EntryKind::piece,
                                                    static_cast<std::size_t>(i)),
            .kind = core::model::EventKind::hung,
            .at = start};
        static_cast<void>(book->perform(core::actions::RecordEvent{hung}, {{}, start, {}}));
    }
    return std::move(*book);
}

/// Runs the event loop until the forecasts are there; the longest of its single turns.
Spent longest_turn_until_settled(ui::presenters::Workspace& workspace) {
    Spent longest;
    QElapsedTimer quiet;
    quiet.start();
    while (workspace.forecasts().is_busy() || quiet.elapsed() < 100) {
        const Spent turn = spent([] { QCoreApplication::processEvents(QEventLoop::AllEvents); });
        longest = {std::max(longest.wall, turn.wall), std::max(longest.own, turn.own)};
        if (workspace.forecasts().is_busy()) {
            quiet.restart();
        }
    }
    return longest;
}

void weigh_on(const char* page, ui::presenters::Workspace& workspace, ui::pages::MainWindow& window,
              const core::model::Piece& piece, double grams) {
    window.show_place({QString::fromLatin1(page), piece.id.row(), {}});
    longest_turn_until_settled(workspace);
    core::model::Weighing w{.piece = piece.id,
                            .taken_at = workspace.now(),
                            .on_scale = Mass::grams(grams),
                            .tare = Mass::grams(0)};
    w.state = core::model::WeighedState::rinsed;
    QElapsedTimer clock;
    clock.start();
    const Spent entry = spent([&] { workspace.perform(core::actions::AddWeighing{w}); });
    const Spent turn = longest_turn_until_settled(workspace);
    const double all = static_cast<double>(clock.nsecsElapsed()) / 1e6 - 100;
    std::printf("%-10s  entry kept and page refreshed %5.1f ms (own %5.1f)   longest later turn "
                "%5.1f ms (own %5.1f)   settled after %5.0f ms\n",
                page, entry.wall, entry.own, turn.wall, turn.own, all);
}

} // namespace

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    ui::look::apply_theme(application, ui::look::Mode::light);
    QTemporaryDir folder;
    const Instant now = start + core::units::Duration::days(7 * weeks);
    ui::presenters::Workspace workspace(two_hundred(folder.filePath(QStringLiteral("b.saltloft"))),
                                        {}, QLocale(QStringLiteral("en-GB")),
                                        [now] { return now; });
    ui::pages::MainWindow window(workspace);
    window.resize(1440, 900);
    window.show();
    const auto all = workspace.book().pieces();
    const auto history = workspace.book().piece_history(all->front().id);
    QElapsedTimer clock;
    clock.start();
    ui::presenters::forecast_pieces({{*history, {}}}, now);
    std::printf("baseline: one forecast of one piece on the calling thread %.1f ms\n",
                static_cast<double>(clock.nsecsElapsed()) / 1e6);
    int n = 0;
    for (const char* page : {"piece", "hanging", "weigh_in", "batches", "today"}) {
        weigh_on(page, workspace, window, (*all)[static_cast<std::size_t>(++n)], 580);
    }
    return 0;
}
