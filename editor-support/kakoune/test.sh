#!/usr/bin/env bash
# Starts the real Kakoune in a terminal on a copy of the tea caddy, spoils a gap and reads what :lint shows.
# SCREEN=file keeps the last screen.
set -euo pipefail
cd "$(dirname "$0")"
. ../with-project.sh
if ! command -v kak >/dev/null || ! command -v tmux >/dev/null; then
    echo "kakoune: left out, there is no Kakoune or no tmux; editor-support/install-editors.sh gets them"
    exit 0
fi
mkdir -p "$work/config/kak/autoload"
ln -s "$(readlink -f "$(command -v kak)" | sed 's#/bin/kak$##')/share/kak/autoload" "$work/config/kak/autoload/standard"
cp treen.kak "$work/config/kak/autoload/"
tmux=(tmux -L "treen-$$" -f /dev/null)
trap '"${tmux[@]}" kill-server 2>/dev/null || true; rm -rf "$work"' EXIT
"${tmux[@]}" new-session -d -x 150 -y 44 -e XDG_CONFIG_HOME="$work/config" -e PATH="$PATH" \
    "cd '$work/project' && kak -s treen$$ -e 'set-option global autoinfo \"\"; set-option global startup_info_version 99999999' tea-caddy.treen"

. ../screen.sh

sees "the file is shown" 'project "Tea caddy"'
sees "the statement has a colour" $'\e\\[[0-9;]*mproject' -e
types '/gap auto' Enter
sees "found the groove" 'joint groove base'
types 'c' 'gap 0.2'
sees "the gap is changed" 'gap 0\.2'
types Escape
sees "typing has ended" '\[\+\] 1 sel'
types ':lint' Enter
sees "the finding is counted" 'linting results: +1 error'
types ':lint-next-message' Enter
sees "and told" 'panel-tight'
[ -z "${SCREEN:-}" ] || cp "$work/screen" "$SCREEN"
types ':quit!' Enter
echo "kakoune: $passed passed, 0 failed"
