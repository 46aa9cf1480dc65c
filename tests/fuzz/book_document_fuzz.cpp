// The JSON importer on any bytes: it may refuse, never crash; what it accepts, it writes and
// accepts again, and then without change.
#include "core/exchange/book_document.h"

#include <cstdint>
#include <cstdlib>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace core::exchange;
    const auto read = read_book_document({reinterpret_cast<const char*>(data), size}); // NOLINT
    if (!read) {
        return 0;
    }
    const std::string written = write_book_document(*read);
    const auto again = read_book_document(written);
    if (!again || write_book_document(*again) != written) {
        std::abort();
    }
    return 0;
}
