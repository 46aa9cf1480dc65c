#pragma once

#include "core/facts/hurdles.h"

namespace ui::presenters {

/// The growth ranges and hurdles that the program brings along, read once.
inline const core::facts::Hurdles& hurdle_facts() {
    static const core::facts::Hurdles all = core::facts::built_in_hurdles();
    return all;
}

} // namespace ui::presenters
