#!/usr/bin/env bash
# The gates of every submission, after tests/run.sh, whose build they use. Installs the tools it needs.
# Usage: tests/gates/quick.sh ; SALTLOFT_SPENT=seconds of the submission that are gone already.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
export JOBS=${JOBS:-$(nproc)}
bash packaging/install.sh core gate

# A submission has 25 minutes. What runs past this second of it is left out, or stopped, and said so;
# a fault that was found until then fails it.
last=1410
left() { echo $((last - SECONDS - ${SALTLOFT_SPENT:-0})); }

gate() { # NAME COMMAND...
  local name=$1 started=$SECONDS status=0
  shift
  if [ "$(left)" -lt 10 ]; then
    echo "gate $name: left out, the submission's time is up"
    return
  fi
  timeout "$(left)" "$@" || status=$?
  case $status in
    0) echo "gate $name: passed in $((SECONDS - started)) s" ;;
    124) echo "gate $name: stopped, the submission's time is up; nothing found in $((SECONDS - started)) s" ;;
    *) echo "gate $name: failed" >&2; exit 1 ;;
  esac
}
gate format bash tests/gates/format.sh
gate coverage bash tests/gates/coverage.sh
gate cppcheck bash tests/gates/cppcheck.sh
gate clazy bash tests/gates/clazy.sh
gate bench bash tests/gates/bench.sh whole
gate mutants bash tests/gates/mutants.sh --some 6
# Judging the forecasts by some hundred simulated pieces takes as long as all else there; it is in
# tests/run.sh, and with the sanitizers in full.sh.
gate core bash tests/gates/core.sh 'ForecastQuality.*'
gate fuzz bash tests/fuzz/slice.sh 10
gate tidy bash tests/gates/tidy.sh --some 6
