// The recipe document on any bytes, and the tag code: they may refuse, never crash.
#include "core/exchange/tag_code.h"
#include "core/mix/recipe_document.h"

#include <cstdint>
#include <cstdlib>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size); // NOLINT
    if (const auto recipe = core::mix::read_recipe(text)) {
        (void)core::mix::write_recipe(*recipe);
    }
    if (const auto tag = core::exchange::read_tag(text)) {
        const auto again = core::exchange::read_tag(core::exchange::tag_text(*tag));
        if (!again || !(*again == *tag)) {
            std::abort();
        }
    }
    return 0;
}
