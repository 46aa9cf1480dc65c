// GoogleTest's main for tests that open real windows: one QApplication for the whole run.
#include "ui/text/languages.h"

#include <QApplication>
#include <gtest/gtest.h>

int main(int argc, char** argv) {
    // CTest lists the cases before it sets their environment, often where there is no display.
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM") && !qEnvironmentVariableIsSet("DISPLAY")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    ::testing::InitGoogleTest(&argc, argv);
    QApplication app(argc, argv);
    // Settings of the person who runs the tests must not leak in, nor ours out.
    QCoreApplication::setOrganizationName(QStringLiteral("saltloft-tests"));
    QCoreApplication::setApplicationName(QStringLiteral("saltloft-tests"));
    ui::text::load_texts(app, QStringLiteral("en")); // the plurals of English
    return RUN_ALL_TESTS();
}
