#pragma once

#include "core/services/batch_record.h"
#include "ui/print/sheet.h"
#include "ui/text/style.h"

namespace ui::print {

/// What to weigh, for the bench: large, one line an ingredient with a box to tick and a place for
/// what was weighed and its lot, per piece where the batch has several, with the doses this makes,
/// the limits, and every caution there is. Cautions stand before the lines they are about.
Sheet mix_bench_sheet(const core::services::BatchRecord& record, const text::Style& style);

/// The same from a mix that is not in the book yet.
Sheet mix_bench_sheet(const core::mix::MixSheet& mix, const QString& title_line,
                      const text::Style& style);

} // namespace ui::print
