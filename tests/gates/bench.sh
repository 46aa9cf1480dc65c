#!/usr/bin/env bash
# Every benchmark runs once for a moment: that they work, not how fast.
# Usage: tests/gates/bench.sh [PRESET they were built with, default release] ; JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
preset=${1:-release}
cmake --preset "$preset" >/dev/null
cmake --build --preset "$preset" -j "${JOBS:-1}" >/dev/null
export SALTLOFT_BIN=$PWD/build/$preset/app/saltloft QT_QPA_PLATFORM=offscreen
export SALTLOFT_BENCH_SMOKE=1 BENCHMARK_MIN_TIME=0.001
for bench in build/"$preset"/tests/bench/bench_*; do
  [ -x "$bench" ] && [ -f "$bench" ] || continue
  started=$SECONDS
  log=build/$preset/tests/bench/${bench##*/}.log
  "$bench" >"$log" 2>&1 || { cat "$log"; exit 1; }
  # A benchmark that stops itself with an error still ends with 0.
  ! grep -n 'ERROR OCCURRED' "$log" || exit 1
  echo "${bench##*/}: runs ($((SECONDS - started)) s)"
done
