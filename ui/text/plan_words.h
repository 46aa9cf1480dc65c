#pragma once

#include "core/planning/dated_plan.h"
#include "core/planning/own_history.h"
#include "ui/text/style.h"

#include <QString>
#include <string>

/// Plans, their lengths and daily work in words.
namespace ui::text {

/// What a day sheet asks for: "Turn", "Rub again", "Look at the chamber". A verb of a template
/// that has no word here is written as it is.
QString task_words(const std::string& verb);
/// The same when it is done: "Turned".
QString task_done_words(const std::string& verb);

/// "9 d", "5 to 12 weeks": a length with its spread, as coarse as the spread deserves.
QString length_words(const core::base::Interval<core::units::Duration>& lasts, const Style& style);
/// What the length rests on: "by weight", "your own pieces", "usual".
QString basis_words(core::planning::LengthBasis basis);
/// "The last 3 took 9 to 11 weeks here".
QString history_words(const core::planning::HistorySummary& summary, const Style& style);

} // namespace ui::text
