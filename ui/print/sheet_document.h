#pragma once

#include "ui/print/sheet.h"

#include <QTextDocument>
#include <memory>

class QPaintDevice;

namespace ui::print {

/// The sheet as a rich text document laid out for `device`, `width` and `height` device pixels a
/// page. Text is put in as text, never as markup: a piece named "<b>" prints as "<b>".
std::unique_ptr<QTextDocument> make_document(const Sheet& sheet, QPaintDevice& device, double width,
                                             double height);

} // namespace ui::print
