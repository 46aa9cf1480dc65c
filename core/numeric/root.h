#pragma once

#include "core/base/result.h"

#include <functional>

namespace core::numeric {

/// The x in [low, high] where the continuous function f crosses zero, by Brent's method (GSL).
/// f(low) and f(high) must have opposite signs or one be zero, else no_solution; f not finite at
/// a point tried: no_solution. `relative_tolerance` is of x; at the default the answer is good
/// to the last two or three digits of a double where f itself is. An answer at 0 is exact to
/// 1e-300. Thread-safe.
base::Result<double> find_root(const std::function<double(double)>& f, double low, double high,
                               double relative_tolerance = 1e-15);

} // namespace core::numeric
