#pragma once

#include "app/cli/command.h"
#include "core/base/result.h"

#include <optional>
#include <string>

namespace app::cli {

/// Why a typed quantity could not be read, as the middle of a sentence: "has no unit".
std::string reason(const core::base::Error& error);

/// The value, or one sentence on standard error: what was given, what is wrong with it, and
/// `example` as the way to mend it.
template <class T>
std::optional<T> read_argument(const core::base::Result<T>& value, const std::string& flag,
                               const std::string& given, const std::string& example) {
    if (value) {
        return *value;
    }
    fail(ExitCode::wrong_use, flag + " '" + given + "' " + reason(value.error()) +
                                  "; write it like " + flag + " " + example + ".");
    return std::nullopt;
}

} // namespace app::cli
