#!/usr/bin/env bash
# Starts the real Neovim, without a screen, on a copy of the tea caddy and with the configuration that a user copies.
# Every version that is there is tried: the one in the editors' folder, and the machine's own. SCREEN=file keeps a screen.
set -euo pipefail
cd "$(dirname "$0")"
root=$(cd ../.. && pwd)
launcher=${TREEN_LAUNCHER:-$root/treen}
editors=${TREEN_EDITORS:-${XDG_CACHE_HOME:-$HOME/.cache}/treen-editors}
[ -x "$launcher" ] || { echo "neovim: there is no launcher at $launcher" >&2; exit 1; }

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

drive() {
    local nvim=$1 here
    here=$work/$2
    mkdir -p "$here/config/nvim/plugin" "$here/project"
    cp plugin/treen.lua "$here/config/nvim/plugin/"
    cp -r "$root"/examples/tea-caddy/. "$here/project/"
    # Keeps the number of the server's process, so that it can be looked for afterwards.
    printf '#!/bin/sh\necho $$ >"%s/server.pid"\nexec "%s" "$@"\n' "$here" "$launcher" >"$here/treen"
    chmod +x "$here/treen"
    (
        cd "$here/project"
        PATH="$here:$PATH" XDG_CONFIG_HOME=$here/config XDG_DATA_HOME=$here/data XDG_STATE_HOME=$here/state \
            XDG_CACHE_HOME=$here/cache NVIM_LOG_FILE=$here/nvim.log \
            timeout --kill-after=10 180 "$nvim" -n --headless -i NONE -c "luafile $OLDPWD/test/drive.lua" tea-caddy.treen \
            2>"$here/stderr"
    ) || {
        echo "neovim: failed; what it printed, and its log of the server:"
        cat "$here/stderr"
        find "$here" -name 'lsp.log' -exec tail -20 {} +
        return 1
    }
    bash ../await-end.sh "$(cat "$here/server.pid")" || { echo "neovim: the server outlived the editor"; return 1; }
}

tried=0
if [ -x "$editors/bin/nvim" ]; then drive "$editors/bin/nvim" newer; tried=1; unset SCREEN; fi
if command -v nvim >/dev/null; then drive "$(command -v nvim)" own; tried=1; fi
[ $tried = 1 ] || { echo "neovim: there is none; editor-support/install-editors.sh installs it" >&2; exit 1; }
