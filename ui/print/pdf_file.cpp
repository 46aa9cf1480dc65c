#include "ui/print/pdf_file.h"

#include <QDir>
#include <QFileInfo>
#include <QPdfWriter>
#include <QSaveFile>

namespace ui::print {
namespace {

using core::base::ErrorCode;

core::base::Error file_fault(const QSaveFile& file) {
    const QFileInfo info(file.fileName());
    ErrorCode code = ErrorCode::io_failure;
    if (!info.dir().exists()) {
        code = ErrorCode::not_found;
    } else if (info.isDir()) {
        code = ErrorCode::is_a_directory;
    } else if (file.error() == QFileDevice::PermissionsError ||
               (file.error() == QFileDevice::OpenError && !QFileInfo(info.path()).isWritable())) {
        code = ErrorCode::no_permission;
    } else if (file.error() == QFileDevice::ResourceError ||
               file.error() == QFileDevice::WriteError) {
        code = ErrorCode::disk_full;
    }
    return {code, file.errorString().toStdString(), file.fileName().toStdString()};
}

} // namespace

core::base::Result<int> write_pdf_file(const QString& path, const QString& title,
                                       const QString& creator,
                                       const std::function<int(QPdfWriter&)>& paint) {
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        return tl::unexpected(file_fault(file));
    }
    int pages = 0;
    {
        QPdfWriter writer(&file);
        writer.setTitle(title);
        writer.setCreator(creator);
        writer.setResolution(300);
        pages = paint(writer);
    }
    if (pages == 0) {
        file.cancelWriting();
        return core::base::fault(ErrorCode::io_failure, "no page was painted", path.toStdString());
    }
    if (!file.commit()) {
        return tl::unexpected(file_fault(file));
    }
    return pages;
}

} // namespace ui::print
