#pragma once

#include "ui/presenters/workspace.h"

#include <QString>
#include <QStringList>
#include <memory>

/// The invented demonstration book for pictures: always the same moment, so that two runs draw
/// the same.
class QApplication;

namespace tests::screens {

extern const core::units::Instant story_end; ///< 14 November 2026, 09:00 UTC

/// Made at `path`, which must not be there. Null after saying on standard error why not.
std::unique_ptr<ui::presenters::Workspace>
demo_workspace(const QString& path, const QString& language = QStringLiteral("en-GB"));

/// Takes "--language CODE" out of the program's arguments and makes the application speak it
/// (default en-GB), also a language that is not complete yet: what lacks is seen in English. The
/// code; empty after saying on standard error that there are no texts.
QString speak_as_asked(QApplication& application, QStringList& arguments);

/// The row a page about one thing is shown with: something with a history. 0 for other pages.
qint64 row_for(const QString& page, const core::services::Book& book);

/// Waits until forecasts have arrived and everything is painted.
void settle(ui::presenters::Workspace& workspace);

} // namespace tests::screens
