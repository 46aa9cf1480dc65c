#!/usr/bin/env bash
# Every C++ file under version control is as clang-format would write it.
# Mend what it names with: clang-format -i FILE
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
git ls-files -z '*.cpp' '*.h' | xargs -0 clang-format --dry-run -Werror
