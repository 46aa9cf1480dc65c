#!/usr/bin/env bash
# Lines of core/ that core's own tests (tests/core, tests/properties) run. Fails below 95 %.
# Usage: tests/gates/coverage.sh ; the report by file is build/coverage/core.txt. JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
jobs=${JOBS:-1}
cmake -S . -B build/coverage -G Ninja -DCMAKE_BUILD_TYPE=Debug -DSALTLOFT_UI=OFF \
  -DCMAKE_CXX_FLAGS_DEBUG="-O0 -g1 --coverage -fprofile-abs-path" >/dev/null
tests=(properties)
for layer in tests/core/*/; do
  tests+=("core_$(basename "$layer")")
done
cmake --build build/coverage -j "$jobs" --target "${tests[@]/#/test_}" >build/coverage/build.log ||
  { tail -n 40 build/coverage/build.log; exit 1; }
find build/coverage -name '*.gcda' -delete
for name in "${tests[@]/#/test_}"; do
  build/coverage/tests/"$name" >build/coverage/"$name".log 2>&1 ||
    { tail -n 40 build/coverage/"$name".log; exit 1; }
done
gcovr --root . --object-directory build/coverage --filter 'core/' --exclude-throw-branches \
  --exclude-unreachable-branches --sort-uncovered --txt build/coverage/core.txt \
  --json build/coverage/core.json --print-summary --fail-under-line 95 -j "$jobs"
