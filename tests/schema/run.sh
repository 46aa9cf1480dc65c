#!/usr/bin/env bash
# Validates exchange documents against the published schema with a validator that is not ours
# (ajv, from npm), and that it refuses wrong changes. Further documents may be named.
# Usage: tests/schema/run.sh [DOCUMENT...]
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
command -v npm >/dev/null || { echo "npm is missing: bash packaging/install.sh schema" >&2; exit 1; }
work=$root/build/schema-check
mkdir -p "$work"
cp "$here"/package.json "$here"/package-lock.json "$here"/validate.mjs "$work"
(cd "$work" && npm ci --no-audit --no-fund --silent)
schema=$root/resources/schema/book-exchange.schema.json
sample=$root/tests/data/exchange/sample.json
node "$work/validate.mjs" "$schema" "$sample" "$@"
node "$work/validate.mjs" "$schema" --changes "$sample"
