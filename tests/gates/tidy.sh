#!/usr/bin/env bash
# clang-tidy over core, ui and app (rules: .clang-tidy), without compiling them. Ten sources go in
# together, as in a unity build: reading the headers is most of the work.
# Usage: tests/gates/tidy.sh [FILE ...]; JOBS=n, default 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
cmake --preset tidy >/dev/null
files=("$@")
if [ ${#files[@]} -eq 0 ]; then
  mapfile -t files < <(python3 - <<'PY'
import json, os, re
root = os.getcwd() + "/"
ours = re.compile(re.escape(root) + r"((core|ui|app)/|build/tidy/(app/)?CMakeFiles/saltloft(_core_\w+|_ui_\w+)?\.dir/Unity/)")
for entry in json.load(open("build/tidy/compile_commands.json")):
    if ours.match(entry["file"]):
        print(entry["file"])
PY
  )
fi
printf '%s\0' "${files[@]}" | xargs -0 -n 1 -P "${JOBS:-1}" clang-tidy -p build/tidy --quiet
