#!/usr/bin/env bash
# All tests with the address and undefined-behaviour sanitizers. JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
cmake --preset asan-ubsan >/dev/null
cmake --build --preset asan-ubsan -j "${JOBS:-1}" >/dev/null
ctest --preset asan-ubsan -j "${JOBS:-1}"
