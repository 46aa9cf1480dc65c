#!/usr/bin/env bash
# Installs the Debian packages of the named groups (default: core ui) that are not there yet.
# Usage: packaging/install.sh [GROUP ...]   (groups: packages.txt)
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
groups=("$@")
[ ${#groups[@]} -gt 0 ] || groups=(core ui)

missing=()
while read -r group package; do
  for wanted in "${groups[@]}"; do
    if [ "$group" = "$wanted" ] &&
       [ "$(dpkg-query -W -f='${db:Status-Abbrev}' "$package" 2>/dev/null | cut -c1-2)" != "ii" ]; then
      missing+=("$package")
    fi
  done
done < <(grep -v '^#' "$here/packages.txt")
[ ${#missing[@]} -gt 0 ] || exit 0

run=()
if [ "$(id -u)" -ne 0 ]; then
  command -v sudo >/dev/null || {
    echo "These packages are missing: ${missing[*]}" >&2
    echo "Install them as root (apt-get install ...), then run this again." >&2
    exit 1
  }
  run=(sudo)
fi
echo "Installing: ${missing[*]}"
"${run[@]}" apt-get update -qq
"${run[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}"
