#!/usr/bin/env bash
# Checks the files that packaging/ installs beside the program, with their own validators.
# Quick: needs no build. Fails at the first file that is not clean.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
files=packaging/desktop
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

need() { command -v "$1" >/dev/null || { echo "$1 is missing: bash packaging/install.sh package" >&2; exit 1; }; }
for tool in desktop-file-validate appstreamcli xmllint man dpkg-parsechangelog; do need "$tool"; done

desktop-file-validate "$files/saltloft.desktop"
xmllint --noout "$files"/*.svg "$files/saltloft-mime.xml" "$files/saltloft.metainfo.xml.in"

version=$(sed -nE 's/^project\(saltloft VERSION ([0-9.]+).*/\1/p' CMakeLists.txt)
packaged=$(dpkg-parsechangelog -l packaging/debian/changelog -S Version)
[ "$version" = "$packaged" ] || {
  echo "CMakeLists.txt says version $version, packaging/debian/changelog says $packaged" >&2; exit 1; }
sed -e "s/@PROJECT_VERSION@/$version/" -e 's/@SALTLOFT_RELEASE_DATE@/2026-01-01/' \
  "$files/saltloft.metainfo.xml.in" > "$work/arpa.home.saltloft.metainfo.xml"
appstreamcli validate --no-net --strict "$work/arpa.home.saltloft.metainfo.xml"

warnings=$(LC_ALL=C.UTF-8 MANROFFSEQ='' MANWIDTH=80 man --warnings -E UTF-8 -l -Tutf8 -Z \
  "$files/saltloft.1" 2>&1 >/dev/null)
[ -z "$warnings" ] || { echo "$warnings" >&2; exit 1; }

# What the desktop entry, the type and the metainfo say of each other.
grep -q '^MimeType=application/x-saltloft-book;$' "$files/saltloft.desktop"
grep -q 'type="application/x-saltloft-book"' "$files/saltloft-mime.xml"
grep -q '<mediatype>application/x-saltloft-book</mediatype>' "$files/saltloft.metainfo.xml.in"
echo "desktop entry, metainfo, type, icon and manual page are clean"
