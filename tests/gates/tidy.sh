#!/usr/bin/env bash
# clang-tidy over core, ui and app (rules: .clang-tidy), without compiling them. Many sources go in
# together, as in a unity build: reading the headers is most of the work.
# Usage: tests/gates/tidy.sh [FILE ...]
#        tests/gates/tidy.sh --some N: only N goes (compiled.py says which)
# JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
cmake --preset tidy >/dev/null
choice=()
if [ "${1:-}" = --some ]; then
  choice=(--some "$2")
  shift 2
fi
files=("$@")
if [ ${#files[@]} -eq 0 ]; then
  mapfile -t files < <(python3 tests/gates/compiled.py "${choice[@]}" core ui app)
fi
printf '%s\0' "${files[@]}" | xargs -0 -n 1 -P "${JOBS:-1}" clang-tidy -p build/tidy --quiet
