#!/usr/bin/env bash
# Starts the real Kate on a screen that nobody sees, with the configuration that a user copies, types as a user would, and
# reads what it says to the server and what it writes to the disk. SCREEN=file keeps a picture.
set -euo pipefail
cd "$(dirname "$0")"
for tool in kate Xvfb openbox xdotool dbus-run-session; do
    if ! command -v $tool >/dev/null; then
        echo "kate: left out, there is no $tool; TREEN_KATE=yes editor-support/install-editors.sh gets all of it"
        exit 0
    fi
done
[ -n "${RECORD:-}" ] || { RECORD=$(mktemp -d); throwaway=$RECORD; }
. ../with-project.sh
export HOME=$work XDG_RUNTIME_DIR=$work/run LC_ALL=C.UTF-8 QT_QPA_PLATFORM=xcb
unset XDG_CONFIG_HOME XDG_DATA_HOME
mkdir -p "$work/.config/kate/lspclient" "$work/.local/share/org.kde.syntax-highlighting/syntax"
mkdir -m 700 "$work/run"
cp settings.json "$work/.config/kate/lspclient/"
cp treen.xml "$work/.local/share/org.kde.syntax-highlighting/syntax/"
# Kate asks before it starts a server, unless the user has said yes before.
printf '[Kate Plugins]\nlspclientplugin=true\n\n[lspclient]\nAllowedServerCommandLines=%s/bin/treen lsp\nInlayHints=true\nSemanticHighlighting=true\n' \
    "$work" >"$work/.config/katerc"

record=$RECORD/kate.jsonl
rm -f "$record"
started=()
trap 'for each in "${started[@]}"; do kill "$each" 2>/dev/null || true; done; sleep 0.5; rm -rf "$work" ${throwaway:-}' EXIT
Xvfb -displayfd 3 -screen 0 1280x800x24 3>"$work/display" >/dev/null 2>&1 &
started+=($!)
for _ in $(seq 100); do [ ! -s "$work/display" ] || break; sleep 0.1; done
export DISPLAY=:$(cat "$work/display")
openbox >/dev/null 2>&1 &
started+=($!)
(cd "$work/project" && exec dbus-run-session -- kate -n --startanon tea-caddy.treen >"$work/kate.log" 2>&1) &
started+=($!)

passed=0
says() { # says NAME PATTERN FILE: waits until a file has it
    for _ in $(seq 200); do
        if grep -qE -- "$2" "$3" 2>/dev/null; then
            echo "  ok    $1"
            passed=$((passed + 1))
            return 0
        fi
        sleep 0.1
    done
    echo "  FAIL  $1; no $2 in $(basename "$3")"
    [ -z "${SCREEN:-}" ] || import -window root "$SCREEN"
    exit 1
}
keys() { xdotool key --clearmodifiers --delay 80 "$@"; }

says "the file is known as Treen, and the server is told of it" '"from":"editor".*textDocument/didOpen.*"languageId":"treen"' "$record"
says "the outline is asked for" '"from":"editor".*textDocument/documentSymbol' "$record"
for _ in $(seq 100); do
    window=$(xdotool search --onlyvisible --name 'tea-caddy.treen' | head -1 || true)
    [ -z "$window" ] || break
    sleep 0.1
done
xdotool windowactivate "$window" windowmove "$window" 0 20 windowsize "$window" 1270 770
sleep 1 # the window manager gives no sign when it is done
xdotool mousemove 700 400 click 1
keys ctrl+End Up Up Up Up End Left Left shift+Left shift+Left shift+Left shift+Left # the gap of the base
sleep 1
xdotool type --delay 50 0.2
says "what is typed is told" 'textDocument/didChange' "$record"
says "the finding is sent to it" 'publishDiagnostics.*panel-tight' "$record"
keys ctrl+s
says "the file is saved" 'gap 0\.2 }' "$work/project/tea-caddy.treen"
if [ -n "${SCREEN:-}" ]; then
    sleep 3 # until all is drawn, for the looks alone
    import -window root "$SCREEN"
fi
keys ctrl+q
bash ../await-end.sh "$(cat "$work/server.pid")" || { echo "kate: the server outlived the editor"; exit 1; }
echo "  ok    the server ends with the window"
passed=$((passed + 1))
echo "kate: $passed passed, 0 failed"
