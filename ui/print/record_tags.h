#pragma once

#include "core/services/batch_record.h"
#include "ui/print/tag_sheet.h"

#include <vector>

namespace ui::print {

/// A tag for every piece of the batch that is still on a hook or will be: not those cut up, joined
/// with others or discarded. Start and target are what the scale will show, tare included; they
/// are left empty, for the pen, where the reference weight is not known yet.
std::vector<Tag> tags_of(const core::services::BatchRecord& record, const text::Style& style);

} // namespace ui::print
