#!/usr/bin/env bash
# Puts one known fault at a time into the program and sees that a test goes red. Uses what
# tests/run.sh builds and changes no file of ours (mutants.py).
# Usage: tests/gates/mutants.sh [WORD: only lines of mutants.txt that hold it]
#        tests/gates/mutants.sh --some N: only N lines, others at each commit
# Ends with 1 where a fault survives, or no longer fits the code. JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
cmake --preset whole >/dev/null
python3 tests/gates/mutants.py build/whole "${JOBS:-1}" "$@"
