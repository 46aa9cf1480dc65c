#include "tests/screens/demo_window.h"

#include "core/services/demo_book.h"
#include "ui/text/languages.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>

#include <cstdio>

namespace tests::screens {

using core::units::Instant;

// A fixed moment, so that two runs draw the same pictures: 14 November 2026, 09:00 UTC.
const Instant story_end = Instant::from_unix_seconds(1794646800);

std::unique_ptr<ui::presenters::Workspace> demo_workspace(const QString& path,
                                                          const QString& language) {
    auto book = core::services::Book::create(path.toStdString(), {story_end});
    if (!book || !core::services::fill_demo_book(*book, {story_end})) {
        std::fprintf(stderr, "the demonstration book could not be made\n");
        return nullptr;
    }
    ui::presenters::Preferences preferences;
    preferences.time_zone = QStringLiteral("Europe/Rome");
    preferences.language = language;
    preferences.limit_set = QStringLiteral("eu-raw");
    auto workspace = std::make_unique<ui::presenters::Workspace>(
        std::move(*book), preferences, QLocale(QStringLiteral("en-GB")), [] { return story_end; });
    workspace->set_demo(true);
    return workspace;
}

Asked as_asked(QApplication& application, const QString& book) {
    QStringList arguments = QCoreApplication::arguments();
    QString language = QStringLiteral("en-GB");
    if (const auto at = arguments.indexOf(QLatin1String("--language")); at >= 0) {
        language = arguments.value(at + 1);
        arguments.remove(at, 2);
    }
    Asked asked{arguments.value(1, QStringLiteral("build/screens")), arguments.mid(2), nullptr};
    QLocale::setDefault(QLocale(language));
    if (!ui::text::load_texts(application, QString(language).replace(u'-', u'_')) &&
        !ui::text::load_texts(application, language.section(u'-', 0, 0))) {
        std::fprintf(stderr, "there are no texts for %s\n", qPrintable(language));
        return asked;
    }
    QDir().mkpath(asked.folder);
    asked.workspace = demo_workspace(book, language);
    return asked;
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

} // namespace tests::screens
