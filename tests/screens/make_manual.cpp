// Writes the manual with pictures of the invented demonstration book: manual.pdf, manual.html and
// pictures/. Usage: make_manual FOLDER
#include "tests/screens/demo_window.h"
#include "ui/look/theme.h"
#include "ui/pages/main_window.h"
#include "ui/print/manual.h"
#include "ui/text/guide.h"
#include "ui/text/languages.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <cstdio>

using namespace tests::screens;

namespace {

constexpr int picture_height = 760;
constexpr int picture_width = 1180;

/// Every page that a chapter shows, by its id.
QMap<QString, QImage> take_pictures(const ui::text::Guide& guide,
                                    ui::presenters::Workspace& workspace) {
    QMap<QString, QImage> pictures;
    ui::look::apply_theme(*qApp, ui::look::Mode::light);
    ui::pages::MainWindow window(workspace);
    window.resize(picture_width, picture_height);
    window.show();
    for (const auto& chapter : guide.chapters) {
        ui::text::guide_markdown(chapter, [&](const QString& page, const QString&) {
            if (!pictures.contains(page)) {
                window.show_place({page, row_for(page, workspace.book()), {}});
                settle(workspace);
                pictures.insert(page, window.grab().toImage());
            }
            return QString();
        });
    }
    return pictures;
}

bool write_text(const QString& path, const QString& text) {
    QFile file(path);
    return file.open(QIODevice::WriteOnly) && file.write(text.toUtf8()) >= 0;
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_SCALE_FACTOR", "2"); // pictures as sharp as print is
    QApplication application(argc, argv);
    ui::text::load_texts(application, QStringLiteral("en")); // the plurals of English
    const QDir folder(QCoreApplication::arguments().value(1, QStringLiteral("build/manual")));
    folder.mkpath(QStringLiteral("pictures"));
    QTemporaryDir place;
    auto workspace = demo_workspace(place.filePath(QStringLiteral("demo.saltloft")));
    if (!workspace) {
        return 1;
    }
    const auto guide = ui::text::guide_in(workspace->style().locale);
    const auto pictures = take_pictures(guide, *workspace);
    for (auto it = pictures.begin(); it != pictures.end(); ++it) {
        it.value().save(
            folder.filePath(QStringLiteral("pictures/") + it.key() + QLatin1String(".png")));
    }
    const ui::print::PrintStamp stamp{workspace->now(),
                                      QStringLiteral("saltloft " SALTLOFT_VERSION)};
    const QString pdf = folder.filePath(QStringLiteral("manual.pdf"));
    const auto pages = ui::print::write_manual_pdf(
        guide,
        [&](const QString& page) {
            QImage image = pictures.value(page);
            image.setDevicePixelRatio(1);
            return image;
        },
        pdf, stamp, workspace->style());
    const bool html =
        write_text(folder.filePath(QStringLiteral("manual.html")),
                   ui::print::manual_html(guide, [&](const QString& page) {
                       return pictures.contains(page)
                                  ? QStringLiteral("pictures/") + page + QLatin1String(".png")
                                  : QString();
                   }));
    if (!pages || !html) {
        std::fprintf(stderr, "the manual could not be written to %s\n", qPrintable(folder.path()));
        return 1;
    }
    std::printf("%s: %d pages, %d pictures; manual.html beside it\n", qPrintable(pdf), *pages,
                int(pictures.size()));
    return 0;
}
