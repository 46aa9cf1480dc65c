#!/usr/bin/env bash
# Puts one known fault at a time into a copy of the program and sees that a test goes red.
# Usage: tests/gates/mutants.sh [WORD: only lines of mutants.txt that hold it]
# Ends with 1 where a fault survives, or no longer fits the code. JOBS=n, default 1.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
copy=$here/build/mutants
jobs=${JOBS:-1}
word=${1:-}

# With their times, so that a second run builds only what changed.
mkdir -p "$copy/source"
cd "$here"
git ls-files -z --cached --others --exclude-standard | tar --null -T - -cf - |
  tar -xf - -C "$copy/source"
cd "$copy/source"
cmake --preset core-only >/dev/null
build=build/core-only

run_tests() { # EXECUTABLE FILTER
  (set +e; QT_QPA_PLATFORM=offscreen timeout 600 "$build/tests/$1" --gtest_filter="$2" \
    --gtest_fail_fast >"$copy/last.log" 2>&1)
}

killed=0
survived=0
while IFS= read -r line; do
  case $line in '#'* | '') continue ;; esac
  [[ $line == *"$word"* ]] || continue
  IFS=$'\t' read -r file expression executable filter what <<<"${line// ;; /$'\t'}"
  cp "$here/$file" "$copy/unharmed"
  ninja -C "$build" -j"$jobs" "$executable" >"$copy/build.log" || { cat "$copy/build.log"; exit 1; }
  if ! run_tests "$executable" "$filter" || ! grep -q '  PASSED  ] [1-9]' "$copy/last.log"; then
    tail -n 20 "$copy/last.log"
    echo "$executable is red, or empty, before any fault" >&2
    exit 1
  fi
  sed -i "$expression" "$file"
  if cmp -s "$file" "$copy/unharmed"; then
    verdict="NO LONGER FITS"
    survived=$((survived + 1))
  elif ! ninja -C "$build" -j"$jobs" "$executable" >"$copy/build.log"; then
    verdict="does not compile"
    survived=$((survived + 1))
  elif run_tests "$executable" "$filter"; then
    verdict="SURVIVED"
    survived=$((survived + 1))
  else
    verdict="found by $(grep -m1 -oE 'FAILED  \] [A-Za-z_/]+\.[A-Za-z0-9_/]+' "$copy/last.log" |
      cut -d' ' -f4 || echo "a crash")"
    killed=$((killed + 1))
  fi
  cp "$copy/unharmed" "$file"
  echo "$verdict: $file: $what"
done <"$here/tests/gates/mutants.txt"
echo "$killed found, $survived not"
[ "$survived" -eq 0 ] && [ "$killed" -gt 0 ]
