#pragma once

#include <string_view>

namespace core::base {

/// A file put into the program at build time by packaging/cmake/SaltloftEmbed.cmake.
struct EmbeddedFile {
    std::string_view name; ///< file name without folders, e.g. "coppa.json"
    std::string_view text; ///< its bytes (UTF-8 unless it is no text); lives as long as the program
};

} // namespace core::base
