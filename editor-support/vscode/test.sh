#!/usr/bin/env bash
# Builds the VS Code extension into treen.vsix and tests it.
set -euo pipefail
cd "$(dirname "$0")"
bash ../node-modules.sh "$PWD"
npm run --silent package
exec node --test --test-reporter=spec test/
