#include "ui/presenters/watched_folder.h"

#include "core/chamber/detect_dialect.h"
#include "ui/presenters/log_import.h"
#include "ui/presenters/workspace.h"
#include "ui/text/error_words.h"

#include <QDir>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>

namespace ui::presenters {

namespace {

constexpr const char* preference_key = "climate_folder";

/// A file that changed is a new one.
QString fingerprint(const QFileInfo& file) {
    return file.absoluteFilePath() + QLatin1Char('|') + QString::number(file.size()) +
           QLatin1Char('|') + QString::number(file.lastModified().toSecsSinceEpoch());
}

} // namespace

WatchedFolder::WatchedFolder(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace), watcher_(new QFileSystemWatcher(this)),
      import_(new LogImport(this)) {
    connect(watcher_, &QFileSystemWatcher::directoryChanged, this, &WatchedFolder::look);
    connect(import_, &LogImport::previewed, this, &WatchedFolder::previewed);
    connect(import_, &LogImport::finished, this, &WatchedFolder::finished);
}

WatchedFolder::~WatchedFolder() = default;

void WatchedFolder::watch(const QString& folder, core::model::SensorId sensor) {
    core::actions::SetPreference preference{preference_key, std::nullopt};
    if (!folder.isEmpty()) {
        const QJsonObject kept{{QStringLiteral("folder"), folder},
                               {QStringLiteral("sensor"), static_cast<qint64>(sensor.row())}};
        preference.value = QJsonDocument(kept).toJson(QJsonDocument::Compact).toStdString();
    }
    if (workspace_.perform(preference)) {
        refresh();
    }
}

void WatchedFolder::refresh() {
    QString folder;
    core::model::SensorId sensor;
    const auto kept = workspace_.book().preference(preference_key);
    if (kept && *kept) {
        const auto entry = QJsonDocument::fromJson(QByteArray::fromStdString(**kept)).object();
        folder = entry.value(QStringLiteral("folder")).toString();
        sensor = core::model::SensorId::from_row(
            entry.value(QStringLiteral("sensor")).toVariant().toLongLong());
    }
    if (folder == folder_ && sensor == sensor_) {
        return;
    }
    if (!watcher_->directories().isEmpty()) {
        watcher_->removePaths(watcher_->directories());
    }
    folder_ = folder;
    sensor_ = sensor;
    seen_.clear();
    if (!folder_.isEmpty()) {
        watcher_->addPath(folder_);
        look();
    }
}

std::optional<core::model::Sensor> WatchedFolder::sensor_entry() const {
    for (const auto& sensor : workspace_.rows(workspace_.book().sensors())) {
        if (sensor.id == sensor_) {
            return sensor;
        }
    }
    return {};
}

void WatchedFolder::look() {
    if (folder_.isEmpty() || workspace_.is_read_only()) {
        return;
    }
    const QDir dir(folder_);
    if (!dir.exists()) {
        Q_EMIT said(QStringLiteral("caution"),
                    tr("The watched folder %1 is not there.").arg(folder_));
        return;
    }
    const auto files = dir.entryInfoList({QStringLiteral("*.csv"), QStringLiteral("*.txt"),
                                          QStringLiteral("*.tsv"), QStringLiteral("*.log")},
                                         QDir::Files, QDir::Time | QDir::Reversed);
    for (const auto& file : files) {
        const auto mark = fingerprint(file);
        if (!seen_.contains(mark)) {
            seen_ << mark;
            waiting_ << file.absoluteFilePath();
        }
    }
    next();
}

void WatchedFolder::next() {
    if (!current_.isEmpty() || waiting_.isEmpty()) {
        return;
    }
    const auto sensor = sensor_entry();
    if (!sensor) {
        return;
    }
    current_ = waiting_.takeFirst();
    core::chamber::DialectHints hints;
    hints.zone = workspace_.style().zone.name();
    hints.not_after = workspace_.now();
    if (const auto known = core::chamber::dialect_from_json(sensor->log_dialect)) {
        hints.remembered = *known;
    }
    import_->preview(current_.toStdString(), hints);
}

void WatchedFolder::previewed() {
    const auto& looked = *import_->looked();
    const QString name = QFileInfo(current_).fileName();
    if (!looked) {
        Q_EMIT said(QStringLiteral("caution"), text::error_words(looked.error()));
    } else if (!looked->detection.guesses().empty()) {
        Q_EMIT said(QStringLiteral("caution"),
                    tr("%1 is in the watched folder, but part of how it reads is a guess: import "
                       "it once by hand.")
                        .arg(name));
    } else {
        import_->start(workspace_.book().path(),
                       {current_.toStdString(), sensor_, looked->detection.dialect,
                        workspace_.now(), workspace_.who()});
        return;
    }
    current_.clear();
    next();
}

void WatchedFolder::finished() {
    const QString name = QFileInfo(current_).fileName();
    const auto& report = *import_->report();
    if (!report) {
        Q_EMIT said(QStringLiteral("stop"), text::error_words(report.error()));
    } else if (report->import.added > 0) {
        Q_EMIT said(QStringLiteral("done"), tr("%1 from the watched folder: %n new reading(s).",
                                               nullptr, static_cast<int>(report->import.added))
                                                .arg(name));
        Q_EMIT workspace_.changed();
    }
    current_.clear();
    next();
}

} // namespace ui::presenters
