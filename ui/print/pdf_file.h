#pragma once

#include "core/base/result.h"

#include <QString>
#include <functional>

class QPdfWriter;

namespace ui::print {

/// Writes a PDF file whole or not at all: `paint` draws on a writer that is already set up with
/// `title`, and returns the pages it made. The file at `path` is replaced only when everything
/// was written. Fails with no_permission, not_found (no such folder), disk_full or io_failure.
core::base::Result<int> write_pdf_file(const QString& path, const QString& title,
                                       const QString& creator,
                                       const std::function<int(QPdfWriter&)>& paint);

} // namespace ui::print
