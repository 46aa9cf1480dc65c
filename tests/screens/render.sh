#!/usr/bin/env bash
# Renders every page and form of the invented demonstration book to PNG files in build/screens:
# light and dark, pages also 1440x900 and 1024x640, all once with the font doubled. Builds what it
# needs; no display. Says which page scrolls sideways and which form is larger than its screen.
# Usage: tests/screens/render.sh [--language de] [page-id or form...]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
bash packaging/install.sh core ui
cmake --preset whole >/dev/null
cmake --build --preset whole --target render_screens render_dialogs
export QT_QPA_PLATFORM=offscreen
build/whole/tests/screens/render_screens build/screens "$@"
build/whole/tests/screens/render_dialogs build/screens "$@"
