#!/usr/bin/env bash
# Qt's own mistakes (clazy level 1) over ui and app, read by clang as a unity build: what clang itself
# objects to is found too. Needs build/tidy's list of commands.
# Usage: tests/gates/clazy.sh [FILE ...]; JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
cmake --preset tidy >/dev/null
files=("$@")
if [ ${#files[@]} -eq 0 ]; then
  mapfile -t files < <(python3 tests/gates/compiled.py ui app)
fi
log=build/tidy/clazy.log
printf '%s\0' "${files[@]}" | xargs -0 -n 1 -P "${JOBS:-1}" clazy-standalone -p build/tidy \
  -checks=level1 -header-filter='/(ui|app)/' -ignore-dirs='/usr/|_autogen/' >"$log" 2>&1 || true
if grep -E '(warning|error):' "$log" | sort -u; then
  exit 1
fi
