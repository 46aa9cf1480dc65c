#!/usr/bin/env bash
# Sets everything up on a bare Debian 12 and opens the window on an invented demonstration book.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
bash packaging/install.sh core ui
cmake --preset release -DSALTLOFT_TESTS=OFF -DSALTLOFT_BENCH=OFF \
  -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=10 -B build/run >/dev/null
cmake --build build/run
if [ -z "${DISPLAY:-}" ] && [ -z "${WAYLAND_DISPLAY:-}" ]; then
  cat <<'TEXT'
Saltloft is built, but there is no display here, so no window can open.
To see every page of the demonstration book as pictures, run
    bash tests/screens/render.sh
and open the PNG files in build/screens. The command line needs no display:
    build/run/app/saltloft --help
TEXT
  exit 0
fi
exec build/run/app/saltloft --demo
