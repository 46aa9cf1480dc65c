#pragma once

#include <QString>
#include <QStringList>

/// Reads printed files back with programs that are not ours (poppler's pdftotext and pdftoppm,
/// zbar's zbarimg). Each throws std::runtime_error when the program is missing or fails, so that
/// a machine without it shows red and not green.
namespace test_support {

/// The text of a PDF in reading order, runs of blanks as one blank.
QString pdf_text(const QString& pdf);
/// The pages of a PDF as PNG files in `folder`.
QStringList pdf_pages(const QString& pdf, const QString& folder, int dots_per_inch = 150);
/// What every code on a picture says, sorted; empty when there is none.
QStringList codes_on(const QString& picture);

} // namespace test_support
