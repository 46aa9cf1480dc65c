#pragma once

#include "ui/presenters/workspace.h"

#include <QString>
#include <QStringList>
#include <memory>

class QApplication;

/// The invented demonstration book for pictures: always the same moment, so that two runs draw
/// the same.
namespace tests::screens {

extern const core::units::Instant story_end; ///< 14 November 2026, 09:00 UTC

/// Made at `path`, which must not be there. Null after saying on standard error why not.
std::unique_ptr<ui::presenters::Workspace>
demo_workspace(const QString& path, const QString& language = QStringLiteral("en-GB"));

/// What a program of pictures was asked for: FOLDER [--language CODE] [name...].
struct Asked {
    QString folder;     ///< made if it was not there
    QStringList wanted; ///< empty: all
    std::unique_ptr<ui::presenters::Workspace> workspace;
};
/// Reads the application's arguments, makes it speak the language (default en-GB; also one that is
/// not complete yet: what lacks is seen in English) and makes the book at `book`. Without a
/// workspace after saying on standard error why.
Asked as_asked(QApplication& application, const QString& book);

/// The row a page about one thing is shown with: something with a history. 0 for other pages.
qint64 row_for(const QString& page, const core::services::Book& book);

/// Waits until forecasts have arrived and everything is painted.
void settle(ui::presenters::Workspace& workspace);

} // namespace tests::screens
