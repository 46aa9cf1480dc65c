#pragma once

namespace core::base {

/// Whether `c` is one of 0 to 9; never asks a locale.
constexpr bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

} // namespace core::base
