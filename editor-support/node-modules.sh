#!/usr/bin/env bash
# Installs the Node packages of one folder as its lock file says, unless they are there already.
set -euo pipefail
cd "$1"
command -v npm >/dev/null || { echo "$1: these tests need Node 20 or newer with npm" >&2; exit 1; }
if [ ! node_modules/.package-lock.json -nt package-lock.json ]; then
    npm ci --no-audit --no-fund --loglevel=error
fi
