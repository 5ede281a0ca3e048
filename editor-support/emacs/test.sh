#!/usr/bin/env bash
# Starts the real Emacs, without a screen, on a copy of the tea caddy with the mode that a user loads.
# SCREEN=file starts it once more, in a terminal, and keeps what stands there.
set -euo pipefail
cd "$(dirname "$0")"
. ../with-project.sh
emacs=$editors/bin/emacs
[ -x "$emacs" ] || emacs=$(command -v emacs || true)
[ -n "$emacs" ] || { echo "emacs: left out, there is none; editor-support/install-editors.sh gets one"; exit 0; }
HOME=$work TREEN_MODE=$PWD/treen-mode.el TREEN_FILE=$work/project/tea-caddy.treen \
    timeout --kill-after=10 180 "$emacs" --batch -l test/drive.el
bash ../await-end.sh "$(cat "$work/server.pid")" || { echo "emacs: the server outlived the editor"; exit 1; }

if [ -n "${SCREEN:-}" ]; then
    tmux=(tmux -L "treen-$$" -f /dev/null)
    trap '"${tmux[@]}" kill-server 2>/dev/null || true; rm -rf "$work"' EXIT
    printf '%s\n' "(load \"$PWD/treen-mode.el\")" "(add-hook 'treen-mode-hook #'eglot-ensure)" \
        '(setq native-comp-enable-subr-trampolines nil make-backup-files nil)' >"$work/init.el"
    "${tmux[@]}" new-session -d -x 150 -y 46 -e HOME="$work" -e PATH="$PATH" -e TERM=xterm-256color \
        "cd '$work/project' && '$emacs' -nw -Q -l '$work/init.el' tea-caddy.treen"
    . ../screen.sh
    sees "the sizes stand in the line" 'part front ?178 x 94 x 9 mm'
    types M-x 'flymake-show-buffer-diagnostics' Enter
    types M-g g '66' Enter C-e M-b M-d '0.2'
    sees "the finding is listed" 'error +panel-tight|push its frame apart'
    sees "the hints are new" 'gap 0.2.*-0.43 mm'
    cp "$work/screen" "$SCREEN"
fi
