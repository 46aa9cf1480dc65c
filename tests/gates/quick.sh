#!/usr/bin/env bash
# The gates that fit into every submission; the others are in full.sh. Installs the tools it needs.
# Usage: tests/gates/quick.sh ; SALTLOFT_SPENT=seconds of the submission that are gone already.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
export JOBS=${JOBS:-$(nproc)}
bash packaging/install.sh core gate

gate() { # NAME COMMAND...
  local name=$1 started=$SECONDS
  shift
  "$@" || { echo "gate $name: failed" >&2; exit 1; }
  echo "gate $name: passed in $((SECONDS - started)) s"
}
gate format bash tests/gates/format.sh
gate cppcheck bash tests/gates/cppcheck.sh

# The fuzzers need a build of their own. A submission has 25 minutes: what is left of them is theirs,
# and where that is too little, or runs out, it is said; a fault they find fails the submission.
left=$((1380 - SECONDS - ${SALTLOFT_SPENT:-0}))
if [ "$left" -lt 200 ]; then
  echo "gate fuzz: left out, only $left s of the submission's time are left"
else
  status=0
  timeout "$left" bash tests/fuzz/slice.sh 10 || status=$?
  case $status in
    0) echo "gate fuzz: passed" ;;
    124) echo "gate fuzz: the time was up after $left s" ;;
    *) echo "gate fuzz: failed" >&2; exit 1 ;;
  esac
fi
