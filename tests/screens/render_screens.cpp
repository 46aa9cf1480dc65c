// Renders every page of an invented book to PNG: light and dark, small and large, and once with
// the font doubled. Usage: render_screens FOLDER [page-id...]
#include "core/services/demo_book.h"
#include "ui/look/theme.h"
#include "ui/pages/main_window.h"
#include "ui/pages/page_registry.h"
#include "ui/presenters/workspace.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QTemporaryDir>

#include <cstdio>

namespace {

using core::units::Instant;

// A fixed moment, so that two runs draw the same pictures: 14 November 2026, 09:00 UTC.
const Instant story_end = Instant::from_unix_seconds(1794646800);

std::unique_ptr<ui::presenters::Workspace> demo_workspace(const QString& path) {
    auto book = core::services::Book::create(path.toStdString(), {story_end});
    if (!book || !core::services::fill_demo_book(*book, {story_end})) {
        std::fprintf(stderr, "the demonstration book could not be made\n");
        return nullptr;
    }
    ui::presenters::Preferences preferences;
    preferences.time_zone = QStringLiteral("Europe/Rome");
    preferences.language = QStringLiteral("en-GB");
    preferences.limit_set = QStringLiteral("eu-raw");
    auto workspace = std::make_unique<ui::presenters::Workspace>(
        std::move(*book), preferences, QLocale(QStringLiteral("en-GB")), [] { return story_end; });
    workspace->set_demo(true);
    return workspace;
}

/// The row a page about one thing is shown with: something with a history.
qint64 row_for(const QString& id, const core::services::Book& book) {
    if (id != QLatin1String("piece") && id != QLatin1String("review")) {
        return 0;
    }
    core::services::PieceFilter drying;
    drying.states = {core::model::PieceState::drying};
    const auto histories = book.piece_histories(drying);
    qint64 best = 0;
    std::size_t most = 0;
    for (const auto& history :
         histories ? *histories : std::vector<core::services::PieceHistory>{}) {
        if (history.weighings.size() > most) {
            most = history.weighings.size();
            best = history.piece.id.row();
        }
    }
    return best;
}

void settle(ui::presenters::Workspace& workspace) {
    QElapsedTimer clock;
    clock.start();
    QCoreApplication::processEvents();
    workspace.forecasts().wait();
    while (clock.elapsed() < 150) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    const QString folder = arguments.value(1, QStringLiteral("build/screens"));
    const QStringList wanted = arguments.mid(2);
    QDir().mkpath(folder);
    QTemporaryDir place;
    auto workspace = demo_workspace(place.filePath(QStringLiteral("demo.saltloft")));
    if (!workspace) {
        return 1;
    }
    const QFont normal = QApplication::font();
    struct Shot {
        const char* name;
        ui::look::Mode mode;
        QSize size;
        double font;
    };
    const Shot shots[] = {
        {"light-1440x900", ui::look::Mode::light, {1440, 900}, 1},
        {"dark-1440x900", ui::look::Mode::dark, {1440, 900}, 1},
        {"light-1024x640", ui::look::Mode::light, {1024, 640}, 1},
        {"dark-1024x640", ui::look::Mode::dark, {1024, 640}, 1},
        {"light-1024x640-font200", ui::look::Mode::light, {1024, 640}, 2},
    };
    int written = 0;
    for (const auto& shot : shots) {
        QFont font = normal;
        font.setPointSizeF(normal.pointSizeF() * shot.font);
        QApplication::setFont(font);
        ui::look::apply_theme(application, shot.mode);
        ui::pages::MainWindow window(*workspace);
        window.resize(shot.size);
        window.show();
        for (const auto& entry : ui::pages::all_pages()) {
            const QString id = QString::fromLatin1(entry.id);
            if (!wanted.isEmpty() && !wanted.contains(id)) {
                continue;
            }
            window.show_place({id, row_for(id, workspace->book()), {}});
            settle(*workspace);
            const QString file = QDir(folder).filePath(
                id + QLatin1Char('-') + QLatin1String(shot.name) + QStringLiteral(".png"));
            if (!window.grab().save(file)) {
                std::fprintf(stderr, "%s could not be written\n", qPrintable(file));
                return 1;
            }
            ++written;
        }
    }
    std::printf("%d pictures in %s\n", written, qPrintable(folder));
    return 0;
}
