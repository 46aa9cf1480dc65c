#!/usr/bin/env bash
# Sets everything up on a bare Debian 12, builds, and runs all tests.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
bash packaging/install.sh core ui
cmake --preset whole >/dev/null
cmake --build --preset whole
# The lines of core are counted (tests/gates/coverage.sh): of this run, and of what was just built.
find build/whole -name '*.gcda' -delete
ctest --preset whole -j "$(nproc)"
