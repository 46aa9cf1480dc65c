#pragma once

#include "core/base/embedded.h"

#include <span>
#include <string_view>

namespace core::facts {

/// resources/facts/*.json, compiled in (packaging/cmake/SaltloftEmbed.cmake).
std::span<const base::EmbeddedFile> built_in_fact_files();

/// The text of resources/facts/`file_name`; empty where there is no such file.
std::string_view embedded(std::string_view file_name);

} // namespace core::facts
