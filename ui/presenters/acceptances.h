#pragma once

#include "core/model/batch.h"
#include "core/model/finding.h"
#include "ui/text/style.h"

#include <QString>
#include <optional>

/// Cautions a person takes on: as they go into the book, and as they are read there.
namespace ui::presenters {

/// The caution with the sentence it was shown with, so that the record says in years what was read
/// then. `batch` or `piece` is the caller's.
core::model::Acceptance acceptance_of(const core::model::Finding& finding, const text::Style& style,
                                      core::units::Instant at,
                                      std::optional<core::model::PersonId> by,
                                      const QString& why = {});

/// The sentence that was shown; the code in words where an older entry kept none.
QString acceptance_words(const core::model::Acceptance& acceptance);

} // namespace ui::presenters
