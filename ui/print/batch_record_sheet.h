#pragma once

#include "core/services/batch_record.h"
#include "ui/print/sheet.h"
#include "ui/text/style.h"

namespace ui::print {

/// The record of one batch for an officer who does not know the product: what went in, from which
/// lot, what that makes against which limit in which edition, every stage with its air, every
/// weighing with its corrections, what deviated and what was done, calibration, decision, stock
/// and to whom it went, and places to sign. What is not known is printed as not known: nothing is
/// left out silently. Fields after limits 8.3 of the project's reference notes (inferred from
/// 9 CFR 417.5 and the CFIA annex on Trichinella).
Sheet batch_record_sheet(const core::services::BatchRecord& record, const text::Style& style);

/// One step back (suppliers and their lots) and one step forward (what left, how much, to whom).
Sheet trace_sheet(const core::services::BatchRecord& record, const text::Style& style);

/// From bought to sold: where the batch's mass went, and what cannot be accounted for.
Sheet mass_balance_sheet(const core::services::BatchRecord& record, const text::Style& style);

} // namespace ui::print
