#!/usr/bin/env bash
# Each benchmark of the release build runs once for a moment: that they work, not how fast.
# JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
cmake --preset release >/dev/null
cmake --build --preset release -j "${JOBS:-1}" >/dev/null
for bench in build/release/tests/bench/bench_*; do
  [ -x "$bench" ] && [ -f "$bench" ] || continue
  echo "$bench"
  SALTLOFT_BIN=$PWD/build/release/app/saltloft QT_QPA_PLATFORM=offscreen "$bench" \
    --benchmark_min_time=0.01
done
