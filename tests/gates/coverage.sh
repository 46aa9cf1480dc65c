#!/usr/bin/env bash
# The lines of core/ that the last run of tests/run.sh went through; fails below 95 %. The report by
# file is build/whole/core.txt.
# Usage: tests/gates/coverage.sh ; JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
mapfile -t layers < <(find build/whole/CMakeFiles -maxdepth 1 -name 'saltloft_core_*.dir')
gcovr --root . --filter 'core/' --exclude-throw-branches --exclude-unreachable-branches \
  --txt build/whole/core.txt --print-summary --fail-under-line 95 -j "${JOBS:-1}" "${layers[@]}"
