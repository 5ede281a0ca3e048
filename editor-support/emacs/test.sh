#!/usr/bin/env bash
# Starts the real Emacs, without a screen, on a copy of the tea caddy with the mode that a user loads.
set -euo pipefail
cd "$(dirname "$0")"
. ../with-project.sh
emacs=$editors/bin/emacs
[ -x "$emacs" ] || emacs=$(command -v emacs || true)
[ -n "$emacs" ] || { echo "emacs: left out, there is none; editor-support/install-editors.sh gets one"; exit 0; }
HOME=$work TREEN_MODE=$PWD/treen-mode.el TREEN_FILE=$work/project/tea-caddy.treen \
    timeout --kill-after=10 180 "$emacs" --batch -l test/drive.el
bash ../await-end.sh "$(cat "$work/server.pid")" || { echo "emacs: the server outlived the editor"; exit 1; }
