#pragma once

#include <QByteArray>
#include <QString>

class QWidget;

namespace ui::pages {

/// Asks where to keep a calendar file and writes it there whole or not at all. Returns what to say
/// in the status line; empty when the person thought better of it. Tests set `path_for_tests`
/// instead of answering a dialog.
QString save_calendar(QWidget* parent, const QByteArray& file, const QString& suggested_name,
                      QString* problem);

extern QString calendar_path_for_tests;

} // namespace ui::pages
