// Start-up to first paint and memory of the window on a demonstration book, beside a bare Qt
// window with an empty QCustomPlot, in the same run. Usage: bench_start_up [rounds]
#include "core/services/demo_book.h"
#include "tests/bench/smoke.h"
#include "ui/charts/plot_library.h"
#include "ui/look/theme.h"
#include "ui/pages/main_window.h"
#include "ui/presenters/workspace.h"

#include <QApplication>
#include <QDateTime>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTimer>

#include <algorithm>
#include <cstdio>

namespace {

const core::units::Instant now = core::units::Instant::from_unix_seconds(1794646800);

double resident_mb() {
    QFile status(QStringLiteral("/proc/self/status"));
    if (!status.open(QIODevice::ReadOnly)) {
        return 0;
    }
    for (const QByteArray& line : status.readAll().split('\n')) {
        if (line.startsWith("VmRSS:")) {
            return line.mid(6).trimmed().split(' ').front().toDouble() / 1024;
        }
    }
    return 0;
}

/// Prints the moment after the first paint and what is resident then.
int report_after_paint(QWidget& window) {
    window.show();
    window.repaint();
    QCoreApplication::processEvents();
    window.grab();
    std::printf("%lld %.1f\n", QDateTime::currentMSecsSinceEpoch(), resident_mb());
    return 0;
}

int child(int argc, char** argv, const QString& what) {
    QApplication application(argc, argv);
    if (what == QLatin1String("bare")) {
        QMainWindow window;
        window.setCentralWidget(new QCustomPlot(&window));
        window.resize(1180, 760);
        return report_after_paint(window);
    }
    ui::look::apply_theme(application, ui::look::Mode::light);
    core::services::OpenOptions options{now};
    auto book = core::services::Book::open(argv[2], options);
    if (!book) {
        return 1;
    }
    ui::presenters::Workspace workspace(std::move(*book), {}, QLocale::system(),
                                        [] { return now; });
    ui::pages::MainWindow window(workspace);
    return report_after_paint(window);
}

} // namespace

int main(int argc, char** argv) {
    if (argc > 2) {
        return child(argc, argv, QString::fromLatin1(argv[1]));
    }
    QApplication application(argc, argv);
    const int rounds = argc > 1 ? std::atoi(argv[1]) : smoke() ? 1 : 9;
    if (rounds < 1) {
        std::fprintf(stderr, "usage: %s [ROUNDS, 1 or more]\n", argv[0]);
        return 2;
    }
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("demo.saltloft"));
    {
        auto book = core::services::Book::create(path.toStdString(), {now});
        if (!book || !core::services::fill_demo_book(*book, {now})) {
            return 1;
        }
    }
    for (const char* what : {"bare", "saltloft", "bare", "saltloft"}) {
        std::vector<double> times;
        double memory = 0;
        for (int round = 0; round < rounds; ++round) {
            QProcess process;
            const qint64 began = QDateTime::currentMSecsSinceEpoch();
            process.start(QCoreApplication::applicationFilePath(),
                          {QString::fromLatin1(what), path});
            process.waitForFinished();
            const auto words = process.readAllStandardOutput().trimmed().split(' ');
            times.push_back(static_cast<double>(words.front().toLongLong() - began));
            memory = words.back().toDouble();
        }
        std::sort(times.begin(), times.end());
        std::printf(
            "%-9s first paint after %5.0f ms (median of %d, best %.0f)   resident %.0f MB\n", what,
            times[times.size() / 2], rounds, times.front(), memory);
    }
    return 0;
}
