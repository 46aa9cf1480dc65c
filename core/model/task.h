#pragma once

#include "core/model/ids.h"
#include "core/units/time.h"

#include <optional>
#include <string>

namespace core::model {

/// A line of a day sheet that somebody did. Due tasks are computed (core/planning) and only the
/// ticks are kept; `key` is the computed task's stable name, so a tick finds its task again.
struct TickedTask {
    TaskId id;
    std::string key;
    units::Day due; ///< the day sheet it stood on
    units::Instant ticked_at;
    std::optional<BatchId> batch;
    std::optional<PieceId> piece;
    std::optional<PersonId> by;
    std::string note; ///< what was found or done, in the user's words
};

} // namespace core::model
