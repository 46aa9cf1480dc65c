#include "core/numeric/gsl_codes.h"

#include <gsl/gsl_errno.h>

namespace core::numeric {

void use_gsl_return_codes() {
    static const bool once = [] {
        gsl_set_error_handler_off();
        return true;
    }();
    static_cast<void>(once);
}

} // namespace core::numeric
