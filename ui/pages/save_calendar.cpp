#include "ui/pages/save_calendar.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QSaveFile>
#include <QStandardPaths>

namespace ui::pages {
namespace {

struct SaveCalendar {
    Q_DECLARE_TR_FUNCTIONS(SaveCalendar)
};

} // namespace

QString calendar_path_for_tests; // NOLINT: the one seam for the system's file dialog

QString save_calendar(QWidget* parent, const QByteArray& file, const QString& suggested_name,
                      QString* problem) {
    QString path = calendar_path_for_tests;
    if (path.isEmpty()) {
        const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
        path = QFileDialog::getSaveFileName(parent, SaveCalendar::tr("Save the calendar"),
                                            folder + QLatin1Char('/') + suggested_name,
                                            SaveCalendar::tr("Calendar (*.ics)"));
    }
    if (path.isEmpty()) {
        return {};
    }
    if (!path.endsWith(QLatin1String(".ics"), Qt::CaseInsensitive)) {
        path += QStringLiteral(".ics");
    }
    QSaveFile out(path);
    if (!out.open(QIODevice::WriteOnly) || out.write(file) != file.size() || !out.commit()) {
        *problem = SaveCalendar::tr("%1 could not be written: %2. Choose another place.")
                       .arg(path, out.errorString());
        return {};
    }
    return SaveCalendar::tr("Calendar kept in %1.").arg(path);
}

} // namespace ui::pages
