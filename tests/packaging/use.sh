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

# The command line, without a display: a book from an exchange document, its record as PDF, and
# out again.
cp "$(dirname "${BASH_SOURCE[0]}")/../data/exchange/sample.json" "$bare/tmp/sample.json"
inside saltloft import /tmp/sample.json --book /tmp/used.saltloft >/dev/null
inside saltloft record --book /tmp/used.saltloft --batch B07 --out /tmp/record.pdf
inside saltloft record --book /tmp/used.saltloft --batch B07 --sheet tags --out /tmp/tags.pdf
inside saltloft export --book /tmp/used.saltloft --out /tmp/again.json --weighings /tmp/w.csv
[ "$(head -c 5 "$bare/tmp/record.pdf")" = "%PDF-" ] || { echo "no PDF was written" >&2; exit 1; }
grep -q 'B07' "$bare/tmp/again.json"
inside saltloft air --temp 13C --rh 75 >/dev/null
echo "command line: imported, printed, exported"

[ -z "$(inside sh -c 'ldd /usr/bin/saltloft | grep "not found"')" ] || { echo "a library is missing" >&2; exit 1; }
