#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::exchange {

/// RFC 4648, section 4: standard alphabet, padded, no line breaks.
std::string to_base64(const std::vector<unsigned char>& bytes);
/// Absent where `text` is not what `to_base64` writes: other characters, wrong length or padding.
std::optional<std::vector<unsigned char>> from_base64(std::string_view text);

} // namespace core::exchange
