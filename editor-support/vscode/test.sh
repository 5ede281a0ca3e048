#!/usr/bin/env bash
# Builds the VS Code extension into treen.vsix, tests what it is made of, and then drives VS Code's own code with it in a
# headless Chromium, on a copy of the tea caddy. SCREEN=file and SCREEN_PLAN=file keep pictures.
set -euo pipefail
cd "$(dirname "$0")"
bash ../node-modules.sh "$PWD"
npm run --silent package
node --test --test-reporter=spec test/

. ../with-project.sh
code=$editors/code
chromium=$(command -v chromium || command -v chromium-browser || command -v google-chrome || true)
if [ ! -f "$code/out/server-main.js" ] || [ -z "$chromium" ]; then
    echo "vscode: VS Code itself is left out, there is none or no Chromium; editor-support/install-editors.sh gets them"
    exit 0
fi
timeout --kill-after=10 600 node drive/drive.mjs "$code" "$chromium" "$PWD/treen.vsix" "$work" ||
    { [ ! -f "$work/screen.png" ] || cp "$work/screen.png" failed.png; exit 1; }
