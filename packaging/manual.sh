#!/usr/bin/env bash
# Builds the manual with pictures from the program itself: the chapters of resources/guide, pictures
# of the invented demonstration book, the program's own print code. No display needed.
# Writes manual.pdf, manual.html and pictures/ into FOLDER. Usage: packaging/manual.sh [FOLDER]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
bash packaging/install.sh core ui
cmake --preset whole >/dev/null
cmake --build --preset whole --target make_manual
QT_QPA_PLATFORM=offscreen build/whole/tests/screens/make_manual "${1:-build/manual}"
