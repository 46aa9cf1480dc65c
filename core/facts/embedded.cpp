#include "core/facts/embedded.h"

namespace core::facts {

std::string_view embedded(std::string_view file_name) {
    for (const auto& file : built_in_fact_files()) {
        if (file.name == file_name) {
            return file.text;
        }
    }
    return {};
}

} // namespace core::facts
