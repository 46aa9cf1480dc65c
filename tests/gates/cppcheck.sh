#!/usr/bin/env bash
# cppcheck over core, ui and app as they are compiled. JOBS=n, default 1. What was looked at and
# has not changed is kept in build/cppcheck. A false alarm is silenced in the line, with its reason.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
cmake --preset debug >/dev/null
mkdir -p build/cppcheck
# Only our own files: not what Qt's moc or the embedding of resources makes.
python3 - <<'PY'
import json, os
root = os.getcwd() + "/"
wanted = tuple(root + part for part in ("core/", "ui/", "app/"))
entries = json.load(open("build/debug/compile_commands.json"))
json.dump([e for e in entries if e["file"].startswith(wanted)],
          open("build/cppcheck/compile_commands.json", "w"))
PY
cppcheck --project=build/cppcheck/compile_commands.json --cppcheck-build-dir=build/cppcheck \
  --enable=warning,performance,portability --library=qt --library=googletest --inline-suppr \
  --suppress=missingInclude --suppress=unmatchedSuppression --quiet --error-exitcode=1 \
  --template='{file}:{line}: {severity}: {message} [{id}]' -j "${JOBS:-1}"
