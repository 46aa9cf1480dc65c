#pragma once

#include "core/base/result.h"

#include <exception>
#include <string>
#include <type_traits>
#include <utility>

namespace core::store {

/// Inside one transaction a fault unwinds as an exception, so that the transaction rolls back
/// wherever it happens. It never leaves the core: `guarded` turns it into a Result at the door.
class Fault : public std::exception {
  public:
    explicit Fault(base::Error error) : error_(std::move(error)) {}
    [[nodiscard]] const base::Error& error() const { return error_; }
    [[nodiscard]] const char* what() const noexcept override { return error_.detail.c_str(); }

  private:
    base::Error error_;
};

[[noreturn]] void refuse(base::ErrorCode code, std::string detail = {}, std::string where = {});

/// The exception being handled, as an Error: our own faults as they are, the database engine's by
/// its result code. Call inside a catch block only.
base::Error current_error();

/// Runs `work` and turns what it throws into an Error.
template <class Work>
auto guarded(Work&& work) -> base::Result<std::invoke_result_t<Work>> {
    try {
        if constexpr (std::is_void_v<std::invoke_result_t<Work>>) {
            std::forward<Work>(work)();
            return {};
        } else {
            return std::forward<Work>(work)();
        }
    } catch (...) {
        return tl::unexpected<base::Error>(current_error());
    }
}

} // namespace core::store
