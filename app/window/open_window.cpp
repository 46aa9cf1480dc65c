#include "app/window/open_window.h"

#include "app/window/session.h"

#include <QApplication>
#include <QIcon>
#include <QSettings>

#include <cstdio>
#include <cstdlib>

namespace app::window {
namespace {

constexpr int exit_no_display = 1;

/// Qt ends the process with an abort when it finds no display; people deserve a sentence.
bool has_display(int argc, char** argv) {
#if defined(Q_OS_LINUX)
    for (int i = 1; i < argc; ++i) {
        if (std::string(argv[i]) == "-platform" || std::string(argv[i]) == "-display") {
            return true;
        }
    }
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) {
        const char* value = std::getenv(name);
        if (value != nullptr && *value != '\0') {
            return true;
        }
    }
    return false;
#else
    static_cast<void>(argc);
    static_cast<void>(argv);
    return true;
#endif
}

} // namespace

int open_window(int& argc, char** argv, const OpenRequest& request) {
    if (!has_display(argc, argv)) {
        std::fputs("saltloft: there is no display here, so no window can open. Start it on a "
                   "desktop, or use a verb: 'saltloft --help' lists them.\n",
                   stderr);
        return exit_no_display;
    }
    QApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("saltloft"));
    QCoreApplication::setApplicationVersion(QStringLiteral(SALTLOFT_VERSION));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Saltloft"));
    QGuiApplication::setDesktopFileName(QStringLiteral("saltloft"));
    QSettings settings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("saltloft"),
                       QStringLiteral("saltloft"));
    Session session(settings);
    bool opened = false;
    if (request.demo) {
        opened = session.open_demo();
    } else {
        const QString path = request.book_path.empty() ? Session::own_book()
                                                       : QString::fromStdString(request.book_path);
        opened = session.open(path, false, true);
    }
    return opened ? QApplication::exec() : 3;
}

} // namespace app::window
