#!/usr/bin/env bash
# Uses the program installed in the system below FOLDER: the command line without a display, and
# the window on Qt's offscreen platform. Called by clean_install.sh.
set -euo pipefail
bare=$1
inside() { env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C.UTF-8 TZ=Europe/Rome \
  QT_QPA_PLATFORM=offscreen XDG_RUNTIME_DIR=/tmp chroot "$bare" "$@"; }

# The window must still be open after six seconds (exit 124 is timeout's own), and have said
# nothing about missing plugins or fonts.
status=0
inside timeout 6 saltloft --demo > "$bare/tmp/window.log" 2>&1 || status=$?
[ "$status" -eq 124 ] || { cat "$bare/tmp/window.log" >&2; echo "the window ended with $status" >&2; exit 1; }
if grep -iE 'could not|cannot|no such|failed|missing' "$bare/tmp/window.log" >&2; then
  echo "the window complained" >&2; exit 1
fi
echo "window: open for 6 s on the demonstration book"

[ -z "$(inside sh -c 'ldd /usr/bin/saltloft | grep "not found"')" ] || { echo "a library is missing" >&2; exit 1; }
