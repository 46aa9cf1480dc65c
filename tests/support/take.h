#pragma once

#include "core/base/result.h"

#include <gtest/gtest.h>

namespace saltloft::testing {

/// The value of a result that must be there, by value: ranging over `*call()` would dangle.
template <class T>
T take(core::base::Result<T> result) {
    if (!result) {
        ADD_FAILURE() << "fault " << static_cast<int>(result.error().code) << ": "
                      << result.error().detail << " " << result.error().where;
        throw std::runtime_error(result.error().detail);
    }
    return std::move(*result);
}

} // namespace saltloft::testing
