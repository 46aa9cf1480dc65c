#!/usr/bin/env bash
# Builds the Debian package twice, in two folders, and checks that both are the same bytes, that
# lintian has nothing to say and that the package holds what it should.
# Usage: tests/packaging/deb.sh [--once]   (--once leaves the second build out)
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
deb=$(bash "$root/packaging/deb.sh" "$root/build/deb")
echo "built $(basename "$deb"), $(stat -c %s "$deb") bytes"

lintian --fail-on error,warning --tag-display-limit 0 "$deb"
echo "lintian is clean"

listing=$(dpkg-deb --contents "$deb")
for path in usr/bin/saltloft usr/share/applications/saltloft.desktop \
    usr/share/metainfo/arpa.home.saltloft.metainfo.xml \
    usr/share/icons/hicolor/scalable/apps/saltloft.svg usr/share/mime/packages/saltloft.xml \
    usr/share/man/man1/saltloft.1.gz usr/share/doc/saltloft/copyright \
    usr/share/doc/saltloft/changelog.gz usr/share/doc/saltloft/guide/contents.md; do
  grep -q " ./$path\$" <<<"$listing" || { echo "the package lacks $path" >&2; exit 1; }
done
dpkg-deb --field "$deb" Depends | tr ',' '\n' | sed 's/^ */  depends: /'

if [ "${1:-}" != "--once" ]; then
  # A compiler cache would hand out the first build's objects.
  again=$(CCACHE_DISABLE=1 bash "$root/packaging/deb.sh" "$root/build/deb-again")
  cmp "$deb" "$again"
  echo "a second build in another folder gives the same bytes"
fi
