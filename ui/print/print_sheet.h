#pragma once

#include "core/base/result.h"
#include "core/units/time.h"
#include "ui/print/sheet.h"
#include "ui/text/style.h"

#include <QPageLayout>

class QPagedPaintDevice;

namespace ui::print {

/// When and by what a sheet was printed, for its foot and the file's own properties.
struct PrintStamp {
    core::units::Instant at;
    QString by; ///< program and version
};

/// The paper of the style's region (US Letter where the locale measures in US inches, else A4)
/// with `margin_mm` on every side.
QPageLayout page_layout(const text::Style& style, bool landscape, double margin_mm = 15);

/// Paints the sheet page by page on a printer or a PDF writer, whose page layout is set to the
/// sheet's orientation before. A foot with the stamp and "Page 2 of 3" stands on every page.
/// Returns the number of pages; 0 when nothing could be painted (`device` refused).
int print_sheet(const Sheet& sheet, QPagedPaintDevice& device, const PrintStamp& stamp,
                const text::Style& style);

/// Writes the sheet as a PDF file on page_layout(). Fails as write_pdf_file of pdf_file.h does.
core::base::Result<int> write_pdf(const Sheet& sheet, const QString& path, const PrintStamp& stamp,
                                  const text::Style& style);

} // namespace ui::print
