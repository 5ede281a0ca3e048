#!/usr/bin/env bash
# Starts the real Vim with the plug-in ALE, without a screen, on a copy of the tea caddy with the file that a user copies.
# SCREEN=file keeps what would stand on one.
set -euo pipefail
cd "$(dirname "$0")"
. ../with-project.sh
ale=$(ls -d /usr/share/vim/*/pack/*/opt/ale /usr/share/vim-scripts/pack/*/opt/ale /usr/share/vim/vimfiles/pack/*/opt/ale 2>/dev/null | head -1 || true)
vim=$(command -v vim.nox || command -v vim || true)
if [ -z "$vim" ] || [ -z "$ale" ]; then
    echo "vim: left out, there is no Vim or no ALE; editor-support/install-editors.sh gets them"
    exit 0
fi
mkdir -p "$work/.vim/plugin"
cp treen.vim "$work/.vim/plugin/"
printf 'set nocompatible\nfiletype plugin on\nsyntax on\nlet g:ale_linters = {"treen": ["treen"]}\npackadd ale\n' >"$work/.vimrc"
said=$work/said
here=$PWD
export TREEN_SAID=$said HOME=$work
(
    cd "$work/project"
    timeout --kill-after=10 180 "$vim" -n -i NONE -T dumb --not-a-term -u "$work/.vimrc" -S "$here/test/drive.vim" tea-caddy.treen \
        >"$work/screen" 2>&1
) || { cat "$said" 2>/dev/null || cat "$work/screen"; echo "vim: failed"; exit 1; }
cat "$said"
bash ../await-end.sh "$(cat "$work/server.pid")" || { echo "vim: the server outlived the editor"; exit 1; }
