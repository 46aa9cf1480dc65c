#pragma once

#include "core/base/result.h"
#include "core/exchange/tag_code.h"
#include "core/units/time.h"
#include "ui/print/print_sheet.h"

#include <QString>
#include <QStringList>
#include <vector>

class QPagedPaintDevice;

namespace ui::print {

/// What one tag says, in the person's words. The weights are those the piece will be weighed
/// against: start as hung and target, both as the scale will show them (tare included).
struct Tag {
    core::exchange::TagCode code;
    QString product;
    QString hung;   ///< the day it was hung, or an empty line for the pen
    QString start;  ///< on the scale when hung
    QString target; ///< on the scale when the target loss is reached
    QString tare;
    QString loss; ///< "35 % of hung"
};

/// large: 8 to an A4 sheet, read from the floor; small: 18 to a sheet, for packs and bags.
enum class TagSize { large, small };

/// Paints tags in rows with cutting lines, the code of each twice: in letters as tall as the tag
/// allows and as a QR code (tag_code.h). Returns the pages painted, 0 when the device refused or
/// there are no tags.
int print_tags(const std::vector<Tag>& tags, TagSize size, QPagedPaintDevice& device);

/// As write_pdf of print_sheet.h.
core::base::Result<int> write_tags_pdf(const std::vector<Tag>& tags, TagSize size,
                                       const QString& path, const PrintStamp& stamp,
                                       const text::Style& style);

} // namespace ui::print
