#pragma once

#include <string_view>

namespace core::facts {

/// The text of resources/facts/`file_name`, compiled in (packaging/cmake/SaltloftEmbed.cmake);
/// empty where there is no such file.
std::string_view embedded(std::string_view file_name);

} // namespace core::facts
