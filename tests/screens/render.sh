#!/usr/bin/env bash
# Renders every page of the invented demonstration book to PNG files in build/screens: light and
# dark, 1440x900 and 1024x640, and once with the font doubled. Builds what it needs; no display.
# Usage: tests/screens/render.sh [--language de] [page-id...]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
bash packaging/install.sh core ui
cmake --preset debug >/dev/null
cmake --build --preset debug --target render_screens
QT_QPA_PLATFORM=offscreen build/debug/tests/screens/render_screens build/screens "$@"
