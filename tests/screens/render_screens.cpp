// Renders every page of an invented book to PNG: light and dark, small and large, and once with
// the font doubled; says where a page scrolls sideways. Usage: render_screens FOLDER [--language
// de] [page-id...]
#include "tests/screens/demo_window.h"
#include "ui/look/theme.h"
#include "ui/pages/main_window.h"
#include "ui/pages/page_registry.h"

#include <QApplication>
#include <QDir>
#include <QLayout>
#include <QScrollArea>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>

using namespace tests::screens;

namespace {

/// Says which widgets ask for more width than a scrolling page has: such a page scrolls sideways.
void say_what_is_too_wide(const QWidget& window, const QString& name) {
    for (const auto* scroll : window.findChildren<QScrollArea*>()) {
        const int lacking = scroll->widget() == nullptr || !scroll->isVisible()
                                ? 0
                                : scroll->widget()->width() - scroll->viewport()->width();
        if (lacking <= 0) {
            continue;
        }
        std::printf("%s: %s lacks %d of %d pixels for", qPrintable(name),
                    qPrintable(scroll->objectName()), lacking, scroll->viewport()->width());
        const auto* layout = scroll->widget()->layout();
        const int room = scroll->viewport()->width() -
                         (layout == nullptr ? 0 : layout->contentsMargins().right()) -
                         2 * scroll->fontMetrics().height(); // a card has a margin of its own
        for (const auto* one : scroll->widget()->findChildren<QWidget*>()) {
            const int least = std::max(one->minimumWidth(), one->minimumSizeHint().width());
            const int from = one->mapTo(scroll->widget(), QPoint()).x();
            if (one->isVisible() && from + least > room &&
                one->objectName() != QLatin1String("qt_scrollarea_viewport")) {
                std::printf(" %s(%s)", one->metaObject()->className(),
                            qPrintable(one->objectName()));
            }
        }
        std::printf("\n");
    }
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QTemporaryDir place;
    const auto [folder, wanted, workspace] =
        as_asked(application, place.filePath(QStringLiteral("demo.saltloft")));
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
            say_what_is_too_wide(window, id + QLatin1Char(' ') + QLatin1String(shot.name));
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
