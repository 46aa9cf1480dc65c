#pragma once

#include "core/base/result.h"
#include "ui/print/print_sheet.h"
#include "ui/text/guide.h"
#include "ui/text/style.h"

#include <QImage>
#include <functional>

namespace ui::print {

/// Gives the picture of a page by its id; a null image leaves the picture out.
using ManualPictures = std::function<QImage(const QString& page)>;

/// Writes the guide as one PDF: a title page with the contents, then each chapter on a page of its
/// own, with pictures. Links are plain text on paper. Fails as write_pdf_file of pdf_file.h does.
core::base::Result<int> write_manual_pdf(const text::Guide& guide, const ManualPictures& pictures,
                                         const QString& path, const PrintStamp& stamp,
                                         const text::Style& style);

/// The guide as one HTML page whose links work. `picture_name` gives the address of a page's
/// picture relative to the file; empty leaves it out.
QString manual_html(const text::Guide& guide,
                    const std::function<QString(const QString& page)>& picture_name);

} // namespace ui::print
