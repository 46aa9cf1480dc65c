#!/usr/bin/env bash
# Installs the package in a bare Debian 12 made by debootstrap, starts and uses the program
# there, takes it off again and looks that nothing of it stays.
# Needs root. Usage: tests/packaging/clean_install.sh [DEB]   (default: build/deb/*.deb)
# The mirror and its keyring are those of this machine's own apt sources.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
deb=${1:-$(find "$root/build/deb" -maxdepth 1 -name '*.deb' | head -1)}
[ -f "$deb" ] || { echo "no package found: run packaging/deb.sh first" >&2; exit 1; }
[ "$(id -u)" -eq 0 ] || { echo "making a bare system needs root" >&2; exit 1; }
command -v debootstrap >/dev/null || { echo "debootstrap is missing: bash packaging/install.sh package" >&2; exit 1; }

mirror=$(cat /etc/apt/sources.list.d/*.sources /etc/apt/sources.list 2>/dev/null |
  sed -nE -e 's/^URIs: +([^ ]+).*/\1/p' -e 's/^deb +(\[[^]]*\] +)?([^ ]+) .*/\2/p' | head -1 || true)
[ -n "$mirror" ] || { echo "no mirror in this machine's apt sources" >&2; exit 1; }
keyring=/usr/share/keyrings/debian-archive-keyring.gpg
bare=$(mktemp -d /var/tmp/saltloft-bare.XXXXXX)
chmod 755 "$bare"
cleanup() { umount "$bare/proc" 2>/dev/null || true; rm -rf --one-file-system "$bare"; }
trap cleanup EXIT
inside() { env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C.UTF-8 \
  DEBIAN_FRONTEND=noninteractive chroot "$bare" "$@"; }

proxy=()
while read -r line; do proxy+=("$line"); done < <(apt-config dump | grep -E '^Acquire::(http|https)::Proxy' || true)
debootstrap --variant=minbase --keyring="$keyring" bookworm "$bare" "$mirror" >"$bare.log" 2>&1 ||
  { tail -5 "$bare.log" >&2; exit 1; }
rm -f "$bare.log"
mount -t proc proc "$bare/proc" 2>/dev/null || true
printf '%s\n' ${proxy[@]+"${proxy[@]}"} > "$bare/etc/apt/apt.conf.d/90test"
cp /etc/resolv.conf "$bare/etc/resolv.conf" 2>/dev/null || true
for list in /etc/apt/auth.conf.d/*.conf; do [ -e "$list" ] && cp "$list" "$bare/etc/apt/auth.conf.d/"; done
echo "bare system: $(inside dpkg-query -W | wc -l) packages"

inside dpkg-query -W -f '${Package}\n' | sort > "$bare/before"
find "$bare/etc" "$bare/usr" -xdev -name '*saltloft*' | sed "s|$bare||" > "$bare/files-before"
cp "$deb" "$bare/tmp/saltloft.deb"
inside apt-get update -qq
inside apt-get install -y -qq --no-install-recommends /tmp/saltloft.deb >/dev/null
echo "installed: $(inside dpkg-query -W -f '${Package} ${Version} ${db:Status-Status}' saltloft)"

inside saltloft --version
inside saltloft --help >/dev/null
bash "$root/tests/packaging/use.sh" "$bare"

inside apt-get purge -y -qq saltloft >/dev/null
inside apt-get autoremove --purge -y -qq >/dev/null
left=$(find "$bare/etc" "$bare/usr" "$bare/var/lib/dpkg/info" -xdev -name '*saltloft*' | sed "s|$bare||")
[ -z "$left" ] || { echo "left behind after purge: $left" >&2; exit 1; }
inside dpkg-query -W -f '${Package}\n' | sort | comm -13 "$bare/before" - | tee "$bare/extra"
[ ! -s "$bare/extra" ] || { echo "packages left behind" >&2; exit 1; }
echo "purged: nothing left behind"
