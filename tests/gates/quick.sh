#!/usr/bin/env bash
# The gates that fit into every submission; the others are in full.sh. Installs the tools it needs.
# Usage: tests/gates/quick.sh
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
