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
/// What an outcome suggests, sentence by sentence, each with its reason; empty when it was content
/// and wrote nothing. `batch` is the code of the batch that speaks.
QString proposal_words(const core::planning::Proposal& proposal, const QString& batch,
                       const Style& style);
/// The short reason that goes into the book with a change: "B05 was too salty: salt 3 % to 2.7 %."
/// Empty where nothing is to be changed.
QString salt_reason(const core::planning::Proposal& proposal, const QString& batch,
                    const Style& style);
QString target_reason(const core::planning::Proposal& proposal, const QString& batch,
                      const Style& style);

/// "too salty", "much too salty", "right", for -2 to +2.
QString salt_score_words(int score);
/// "too dry", "much too soft", "right", for -2 to +2.
QString texture_score_words(int score);
/// "salt: too salty; texture: right; “older pork”".
QString outcome_words(const core::model::Outcome& outcome);

} // namespace ui::text
