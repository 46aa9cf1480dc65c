#!/usr/bin/env bash
# Builds every fuzz target and runs it for a while over the kept corpus: a folder of inputs that once
# failed or were written by hand, and TARGET.tar.xz, what long runs found (DEVELOPERS.md).
# Usage: tests/fuzz/slice.sh [SECONDS each, default 10] [TARGET ...] ; JOBS=n, default 1.
# New inputs go to a temporary folder; what fails is left in build/checked/findings.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
seconds=${1:-10}
[ $# -eq 0 ] || shift
targets=("$@")
if [ ${#targets[@]} -eq 0 ]; then
  for source in tests/fuzz/*_fuzz.cpp; do
    targets+=("$(basename "$source" _fuzz.cpp)")
  done
fi

cmake --preset checked >/dev/null
cmake --build --preset checked --target "${targets[@]/#/fuzz_}" >/dev/null
findings=build/checked/findings
found_new=$(mktemp -d)
trap 'rm -rf "$found_new"' EXIT
export seconds findings found_new
run_target() {
  local target=$1 log longest
  mkdir -p "$findings/$target" "$found_new/$target" "$found_new/kept/$target"
  tar -xJf "tests/fuzz/corpus/$target.tar.xz" -C "$found_new/kept/$target"
  log=$findings/$target.log
  # Quantities are short; a long one only makes the others rare.
  longest=65536
  [ "$target" != quantity ] || longest=256
  if ! build/checked/tests/fuzz/fuzz_"$target" -max_total_time="$seconds" -timeout=60 \
      -rss_limit_mb=2048 -max_len=$longest -print_final_stats=1 \
      -artifact_prefix="$findings/$target/" \
      "$found_new/$target" "tests/fuzz/corpus/$target" "$found_new/kept/$target" >"$log" 2>&1; then
    tail -n 60 "$log"
    echo "fuzz_$target found a fault; its input is in $findings/$target" >&2
    return 1
  fi
  echo "fuzz_$target: $(grep -oE 'stat::number_of_executed_units: *[0-9]+' "$log" |
    grep -oE '[0-9]+$') runs, $(grep -oE 'cov: [0-9]+' "$log" | tail -1)"
}
export -f run_target
printf '%s\0' "${targets[@]}" | xargs -0 -n 1 -P "${JOBS:-1}" bash -c 'set -euo pipefail; run_target "$1"' _
