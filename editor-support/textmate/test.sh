#!/usr/bin/env bash
# The TextMate grammar, read by the engine that editors use for it.
set -euo pipefail
cd "$(dirname "$0")"
bash ../node-modules.sh "$PWD"
exec node --test --test-reporter=spec test/
