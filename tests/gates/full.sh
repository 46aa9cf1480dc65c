#!/usr/bin/env bash
# Every gate, one after the other, with the time each took; DEVELOPERS.md says what to expect.
# Usage: tests/gates/full.sh [GATE ...]; all of them without. JOBS=n, default 1.
# `coverage` and `mutants` use what tests/run.sh built and counted. Ends with 1 where one failed; what
# it said is in build/gates/GATE.log.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
export JOBS=${JOBS:-1}
gates=("$@")
[ ${#gates[@]} -gt 0 ] || gates=(format coverage cppcheck clazy bench mutants core tidy asan fuzz)
bash packaging/install.sh core ui gate
mkdir -p build/gates
failed=()
for gate in "${gates[@]}"; do
  run=(bash "tests/gates/$gate.sh")
  [ "$gate" != fuzz ] || run=(bash tests/fuzz/slice.sh "${FUZZ_SECONDS:-600}")
  started=$SECONDS
  if "${run[@]}" >"build/gates/$gate.log" 2>&1; then
    echo "$gate: passed in $((SECONDS - started)) s"
  else
    echo "$gate: FAILED after $((SECONDS - started)) s, see build/gates/$gate.log"
    failed+=("$gate")
  fi
done
[ ${#failed[@]} -eq 0 ]
