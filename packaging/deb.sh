#!/usr/bin/env bash
# Builds the Debian package from a clean build folder and prints its path.
# Usage: packaging/deb.sh [BUILD_FOLDER]   (default build/deb)
# The same sources give the same bytes: every time stamp is that of packaging/debian/changelog.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
build=${1:-$root/build/deb}
export SOURCE_DATE_EPOCH
SOURCE_DATE_EPOCH=$(dpkg-parsechangelog -l "$root/packaging/debian/changelog" -S Timestamp)
umask 022

# Debian's own hardening flags; paths of this machine stay out of the program.
export DEB_BUILD_MAINT_OPTIONS="hardening=+all"
flags="$(dpkg-buildflags --get CPPFLAGS) $(dpkg-buildflags --get CXXFLAGS)"
flags="$flags -ffile-prefix-map=$root=. -ffile-prefix-map=$build=."
cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release \
  -DCMAKE_CXX_FLAGS_RELEASE="$flags -g0 -DNDEBUG" \
  -DCMAKE_EXE_LINKER_FLAGS="$(dpkg-buildflags --get LDFLAGS)" \
  -DCMAKE_POSITION_INDEPENDENT_CODE=ON -DCMAKE_SKIP_RPATH=ON \
  -DSALTLOFT_TESTS=OFF -DSALTLOFT_BENCH=OFF \
  -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=25 >&2
cmake --build "$build" >&2
(cd "$build" && rm -f ./*.deb && cpack -G DEB >&2)
find "$build" -maxdepth 1 -name '*.deb'
