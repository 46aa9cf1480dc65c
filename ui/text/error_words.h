#pragma once

#include "core/base/result.h"

#include <QString>

namespace ui::text {

/// One or two plain sentences: what went wrong, where, and how to mend it. Never a bare code.
QString error_words(const core::base::Error& error);

} // namespace ui::text
