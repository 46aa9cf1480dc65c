#include "app/cli/arguments.h"

namespace app::cli {

std::string reason(const core::base::Error& error) {
    using enum core::base::ErrorCode;
    switch (error.code) {
    case empty_input:
        return "is empty";
    case not_a_number:
        return "is not a number with a unit";
    case unknown_unit:
        return "has a unit that is not known (" + error.detail + ")";
    case unit_missing:
        return "has no unit";
    case wrong_kind:
        return "is another kind of quantity (" + error.detail + ")";
    case out_of_range:
        return "is out of range";
    case trailing_text:
        return "has something left over (" + error.detail + ")";
    case ambiguous_number:
        return "can be read as a thousand or as a decimal";
    default:
        return "cannot be read";
    }
}

} // namespace app::cli
