#!/usr/bin/env bash
# Starts the real Helix in a terminal, on a copy of the tea caddy and with the configuration and grammar that a user
# installs, types as a user would, and reads its screen. SCREEN=file keeps the last screen.
set -euo pipefail
cd "$(dirname "$0")"
. ../with-project.sh
hx=$editors/bin/hx
[ -x "$hx" ] || hx=$(command -v hx || true)
if [ -z "$hx" ] || ! command -v tmux >/dev/null; then
    echo "helix: left out, there is no Helix or no tmux; editor-support/install-editors.sh gets them"
    exit 0
fi

config=$work/config/helix
mkdir -p "$config/runtime/queries/treen" "$config/runtime/grammars"
cp languages.toml "$config/"
printf '[editor.lsp]\ndisplay-inlay-hints = true\ndisplay-messages = true\n' >"$config/config.toml"
cp ../tree-sitter/queries/{highlights,locals}.scm "$config/runtime/queries/treen/"
grammar=no
if command -v cc >/dev/null; then
    cc -shared -fPIC -Os -I ../tree-sitter/src ../tree-sitter/src/parser.c ../tree-sitter/src/scanner.c \
        -o "$config/runtime/grammars/treen.so"
    grammar=yes
fi

tmux=(tmux -L "treen-$$" -f /dev/null)
trap '"${tmux[@]}" kill-server 2>/dev/null || true; rm -rf "$work"' EXIT
"${tmux[@]}" new-session -d -x 150 -y 46 -e XDG_CONFIG_HOME="$work/config" -e XDG_CACHE_HOME="$work/cache" -e PATH="$PATH" \
    -e COLORTERM=truecolor "cd '$work/project' && '$hx' tea-caddy.treen"

. ../screen.sh

sees "the file is shown" 'project "Tea caddy"'
if [ $grammar = yes ]; then sees "the grammar gives colours" $'\e\\[[0-9;]*mproject\e\\[' -e; fi
types '/gap auto' Enter
sees "found the groove" 'joint groove base'
types 'c' 'gap 0.2'
sees "the gap is changed" 'gap 0\.2'
types Escape
sees "the fault is reported" 'swell|tight|grow'
types Space 'a'
sees "a fix is offered" 'Set the gap to'
[ -z "${SCREEN:-}" ] || cp "$work/screen" "$SCREEN"
types Down Enter
sees "the fix changes the gap" 'gap (0\.83|auto)( mm)?[^}]*}'
types ':q!'
sees "the command is typed" '^:q!'
types Enter
bash ../await-end.sh "$(cat "$work/server.pid")" || { echo "helix: the server outlived the editor"; exit 1; }
echo "helix: $passed passed, 0 failed"
