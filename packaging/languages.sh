#!/usr/bin/env bash
# Brings the translation files up to date with the sources: the names of the data files
# (ui/text/data_names.inc) and every text of ui and app (resources/languages/*.ts).
# Usage: packaging/languages.sh [FOLDER]
# With FOLDER the .ts files are made there, empty, and nothing else is touched: the test of the
# languages compares. The same sources give the same bytes; nothing has line numbers, so that
# moving code changes no file.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
folder=${1:-resources/languages}
languages="de es fr it zh_CN"

# qtchooser's wrapper of the same name only knows Qt 5.
for lupdate in "${LUPDATE:-}" /usr/lib/qt6/bin/lupdate lupdate6 lupdate; do
  [ -n "$lupdate" ] && command -v "$lupdate" >/dev/null && break
done

if [ $# -eq 0 ]; then
  made=$(mktemp)
  trap 'rm -f "$made"' EXIT
  cmake -DROOT="$PWD" -DOUT="$made" -P packaging/cmake/DataNames.cmake
  { echo "// Made by packaging/languages.sh from resources/facts and resources/plans; sorted."
    LC_ALL=C sort -u "$made"; } > ui/text/data_names.inc
fi

# Guesses are switched off: a sentence about one dose is no translation of another's.
update() {
  "$lupdate" -silent -no-obsolete -locations none -no-ui-lines -source-language en \
    -disable-heuristic sametext -disable-heuristic similartext -disable-heuristic number \
    -extensions cpp,h,inc -I . ui app "$@"
}
for language in $languages; do
  update -target-language "$language" -ts "$folder/saltloft_$language.ts"
done
# English needs its plurals only: "%n piece(s)" is 1 piece or 2 pieces.
update -pluralonly -target-language en -ts "$folder/saltloft_en.ts"
