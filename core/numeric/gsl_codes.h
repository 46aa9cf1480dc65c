#pragma once

namespace core::numeric {

/// GSL's stock error handler aborts the program, and the handler is one pointer for the whole
/// process. Every adapter of this layer calls this before its first GSL call: once, for good, it
/// turns the handler off, so that GSL reports by return codes only.
///
/// Why a process-wide switch is tolerable here: this layer is the only one that may include GSL
/// (tests/lint), nothing ever wants the aborting handler back, and switching off twice is the
/// same as once - so no caller can observe an order. Setting and restoring the handler around
/// each call would be a data race between threads; this is not (a guarded static).
void use_gsl_return_codes();

} // namespace core::numeric
