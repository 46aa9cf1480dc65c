#!/usr/bin/env bash
# Core and the command line with the address and undefined-behaviour sanitizers, by all tests that
# need no window; and the lines of core/ they run, in one go: one build serves both. Fails where a
# test is red and below 95 % of lines. The report by file is build/checked/core.txt.
# Usage: tests/gates/core.sh ; JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
jobs=${JOBS:-1}
cmake --preset checked >/dev/null
cmake --build --preset checked -j "$jobs" >build/checked/build.log ||
  { tail -n 40 build/checked/build.log; exit 1; }
find build/checked -name '*.gcda' -delete
ctest --preset checked -j "$jobs" >build/checked/tests.log ||
  { tail -n 80 build/checked/tests.log; exit 1; }
tail -n 3 build/checked/tests.log
gcovr --root . --object-directory build/checked --filter 'core/' --exclude-throw-branches \
  --exclude-unreachable-branches --sort-uncovered --txt build/checked/core.txt \
  --print-summary --fail-under-line 95 -j "$jobs"
