#!/usr/bin/env bash
# clang-tidy over core, ui and app (rules: .clang-tidy), without compiling them.
# Usage: tests/gates/tidy.sh [FILE ...]; JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
cmake --preset tidy >/dev/null
files=("$@")
if [ ${#files[@]} -eq 0 ]; then
  mapfile -t files < <(git ls-files 'core/*.cpp' 'ui/*.cpp' 'app/*.cpp')
fi
printf '%s\0' "${files[@]}" | xargs -0 -n 1 -P "${JOBS:-1}" clang-tidy -p build/tidy --quiet
