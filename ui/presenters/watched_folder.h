#pragma once

#include "core/model/chamber.h"
#include "core/model/climate.h"

#include <QFileSystemWatcher>
#include <QObject>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

namespace ui::presenters {

class LogImport;
class Workspace;

/// A folder into which a logger's files fall, for one sensor. New files are taken into the book by
/// themselves once the sensor's dialect has been confirmed by a first import; a file that reads
/// with a guess waits for the person. Kept with the book as the preference "climate_folder".
class WatchedFolder : public QObject {
    Q_OBJECT
  public:
    WatchedFolder(Workspace& workspace, QObject* parent);
    ~WatchedFolder() override;

    [[nodiscard]] QString folder() const { return folder_; }
    [[nodiscard]] core::model::SensorId sensor() const { return sensor_; }
    /// An empty folder stops watching.
    void watch(const QString& folder, core::model::SensorId sensor);
    /// Reads the preference again and looks at the folder.
    void refresh();

  Q_SIGNALS:
    /// What happened to one file: severity as in look::Banner, and a sentence.
    void said(const QString& severity, const QString& sentence);

  private:
    void look();
    void next();
    void previewed();
    void finished();
    [[nodiscard]] std::optional<core::model::Sensor> sensor_entry() const;

    Workspace& workspace_;
    QFileSystemWatcher* watcher_;
    LogImport* import_;
    QString folder_;
    core::model::SensorId sensor_;
    QStringList waiting_;
    QStringList seen_; ///< path, size and time of what was looked at
    QString current_;
};

} // namespace ui::presenters
