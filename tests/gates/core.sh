#!/usr/bin/env bash
# All tests that need no window over a core built with clang and the address and undefined-behaviour
# sanitizers (preset checked; tests and command line are plain, for their time). What they said is in
# build/checked/logs.
# Usage: tests/gates/core.sh [TESTS left out, as in --gtest_filter] ; JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
export jobs=${JOBS:-1} built=build/checked without=${1:-}
cmake --preset checked >/dev/null
cmake --build --preset checked -j "$jobs" >$built/build.log || { tail -n 40 $built/build.log; exit 1; }

# Each program once, not each case as ctest does: the sanitizers' start is paid twenty times only.
rm -rf $built/logs
mkdir -p $built/logs
export SALTLOFT_BIN=$PWD/$built/app/saltloft
# Freed memory is kept back for a while; a test that looks at the program's growth must not see it.
export ASAN_OPTIONS=quarantine_size_mb=1
run_one() {
  local log=$built/logs/${1##*/}
  "$1" "--gtest_filter=-$without" >"$log" 2>&1 || { tail -n 60 "$log"; echo "${1##*/}: red" >&2; return 1; }
}
export -f run_one
# The two longest first, so that nothing waits for them at the end.
{
  printf '%s\0' $built/tests/test_faults $built/tests/test_core_chamber
  find $built/tests -maxdepth 1 -name 'test_*' -executable -type f \
    ! -name test_faults ! -name test_core_chamber -print0
} | xargs -0 -n 1 -P "$jobs" bash -c 'run_one "$1"' _
grep -hoE 'PASSED  \] [0-9]+' $built/logs/* | awk '{ n += $3 } END { print n " tests passed" }'
