#include "app/window/open_window.h"

#include <QApplication>
#include <QMainWindow>

namespace app::window {

int open_window(int& argc, char** argv, const OpenRequest& /*request*/) {
    QApplication application(argc, argv);
    QMainWindow window;
    window.show();
    return QApplication::exec();
}

} // namespace app::window
