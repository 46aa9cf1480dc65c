#pragma once

#include <cstdlib>

/// Whether this run only shows that a benchmark works (tests/gates/bench.sh sets it): it is small,
/// and its figures mean nothing.
inline bool smoke() {
    return std::getenv("SALTLOFT_BENCH_SMOKE") != nullptr;
}
