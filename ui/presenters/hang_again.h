#pragma once

#include "core/model/pack.h"
#include "core/services/book.h"

namespace ui::presenters {

/// Whether hanging `net` of the pack again hangs the piece itself (all of it, untouched) and not a
/// new piece cut from it. The book decides by the same rule.
bool hangs_whole(const core::services::Book& book, const core::model::Pack& pack,
                 core::units::Mass net);

} // namespace ui::presenters
