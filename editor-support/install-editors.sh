#!/usr/bin/env bash
# Installs the editors that the tests drive: Neovim, Helix, Emacs and the tree-sitter command from Debian trixie,
# the machine's own Neovim (an older one on Debian 12), Vim with its language-client plug-in, and Kakoune; and VS Code's own
# code, as it is served to a browser, with Debian's Chromium.
#
#   editor-support/install-editors.sh          as root, on Debian 12 or newer
#
# What comes from trixie is unpacked into a folder of its own and never installed, so the machine stays as it is:
#   TREEN_KATE=yes   also Kate, which takes some minutes; its test is left out without it
#   $TREEN_EDITORS   default ~/.cache/treen-editors; its bin/ holds what the tests start
# A second run finds everything there and does nothing. Where trixie is out of reach its editors are left out, their
# tests say that they were, and Neovim is tested in the machine's own version. VS Code stands by itself: where it cannot be
# had, all others are there all the same.
set -euo pipefail

home=${TREEN_EDITORS:-${XDG_CACHE_HOME:-$HOME/.cache}/treen-editors}
packages=(neovim hx emacs-nox tree-sitter-cli)
tree=$home/trixie
stamp=$home/stamp
wanted="trixie ${packages[*]} 1" # raise the number when the unpacking below changes

say() { echo "install-editors: $*"; }
fail() { say "$*" >&2; exit 1; }

command -v apt-get >/dev/null || fail "this needs Debian's apt-get; elsewhere install the editors by hand"

# apt-get needs root and, on a new machine, a first look at what there is.
if [ "$(id -u)" = 0 ]; then apt() { DEBIAN_FRONTEND=noninteractive apt-get -qq -o Dpkg::Use-Pty=0 "$@"; }
else apt() { sudo -n env DEBIAN_FRONTEND=noninteractive apt-get -qq -o Dpkg::Use-Pty=0 "$@"; }; fi
updated=
from_host() {
    local missing=()
    for package in "$@"; do
        dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing+=("$package")
    done
    [ ${#missing[@]} -gt 0 ] || return 0
    [ -n "$updated" ] || { apt update || fail "apt-get update failed"; updated=yes; }
    apt install -y --no-install-recommends "${missing[@]}" >/dev/null || fail "could not install ${missing[*]}"
    say "installed ${missing[*]}"
}

# The address of Debian's main archive, as this machine knows it.
mirror() {
    apt-get indextargets --format '$(ORIGIN)|$(COMPONENT)|$(RELEASE)|$(REPO_URI)' 'Created-By: Packages' |
        awk -F'|' '$1 == "Debian" && $2 == "main" && $3 !~ /security|updates|backports/ && !found { print $4; found = 1 }'
}

# An apt that knows nothing but trixie and believes that nothing is installed: what it downloads is complete.
trixie() {
    apt-get -qq -o "Dir=$work" -o "Dir::Etc=$work/etc" -o Dir::Etc::sourcelist=sources.list -o Dir::Etc::sourceparts=none \
        -o APT::Sandbox::User=root -o "Dir::State=$work/state" -o "Dir::State::status=$work/state/status" \
        -o "Dir::Cache=$work/cache" -o APT::Install-Recommends=false -o Acquire::Languages=none \
        -o Acquire::Retries=3 -o Dpkg::Use-Pty=0 "$@"
}

unpack_trixie() {
    local archive keys=/usr/share/keyrings/debian-archive-keyring.gpg
    archive=$(mirror)
    [ -n "$archive" ] || { say "the machine's apt has no Debian archive to look in"; return 1; }
    [ -f "$keys" ] || { say "Debian's archive keys are missing (package debian-archive-keyring)"; return 1; }
    mkdir -p "$home"
    work=$(mktemp -d "$home/work.XXXXXX")
    trap 'rm -rf "$work"' EXIT
    mkdir -p "$work"/etc/preferences.d "$work"/state/lists/partial "$work"/cache/archives/partial "$work"/tree
    : >"$work/state/status"
    echo "deb [signed-by=$keys] $archive trixie main" >"$work/etc/sources.list"
    trixie update || { say "trixie's package lists are out of reach"; return 1; }
    trixie install -y --download-only "${packages[@]}" >/dev/null || { say "trixie's packages are out of reach"; return 1; }
    local deb
    for deb in "$work"/cache/archives/*.deb; do
        dpkg-deb -x "$deb" "$work/tree" || { say "cannot unpack $(basename "$deb")"; return 1; }
    done
    rm -rf "$work"/tree/usr/share/{doc,man,locale,info,i18n,zoneinfo}
    rm -rf "$tree" "$home/bin"
    mv "$work/tree" "$tree"

    # trixie's programs need trixie's C library; they are told where it lies, and what they start is not.
    local libraries=$tree/usr/lib/$(uname -m)-linux-gnu loader
    loader=$(ls "$libraries"/ld-linux-*.so.*) || { say "trixie's loader is missing"; return 1; }
    local program
    for program in usr/bin/nvim usr/lib/hx/hx usr/bin/emacs-nox usr/bin/tree-sitter; do
        patchelf --set-interpreter "$loader" --force-rpath --set-rpath "$libraries:$libraries/lua/5.1" "$tree/$program" ||
            { say "cannot patch $program"; return 1; }
    done
    mkdir -p "$home/bin"
    script nvim "VIMRUNTIME='$tree/usr/share/nvim/runtime' exec '$tree/usr/bin/nvim' \"\$@\""
    script hx "HELIX_RUNTIME='$tree/usr/lib/hx/runtime' exec '$tree/usr/lib/hx/hx' \"\$@\""
    script tree-sitter "exec '$tree/usr/bin/tree-sitter' \"\$@\""
    local lisp libexec dump
    lisp=$(ls -d "$tree"/usr/share/emacs/[0-9]*)
    libexec=$(ls -d "$tree"/usr/libexec/emacs/[0-9]*/*/)
    dump=$(ls "$libexec"emacs-*.pdmp)
    script emacs "export EMACSDATA='$lisp/etc' EMACSDOC='$lisp/etc' EMACSPATH='$libexec' \
EMACSLOADPATH='$(find "$lisp/lisp" -type d ! -name obsolete | sort | paste -sd:)'
exec '$tree/usr/bin/emacs-nox' --dump-file='$dump' \"\$@\""
    rm -rf "$work"
    trap - EXIT
}
script() { printf '#!/bin/sh\n%s\n' "$2" >"$home/bin/$1"; chmod +x "$home/bin/$1"; }

runs() {
    "$home/bin/nvim" --version >/dev/null 2>&1 && "$home/bin/hx" --version >/dev/null 2>&1 &&
        "$home/bin/tree-sitter" --version >/dev/null 2>&1 && "$home/bin/emacs" --batch >/dev/null 2>&1
}

if [ "$(cat "$stamp" 2>/dev/null)" = "$wanted" ] && runs; then
    say "trixie's editors are in $home already"
else
    rm -f "$stamp"
    from_host patchelf
    [ -n "$updated" ] || { apt update || fail "apt-get update failed"; updated=yes; }
    if unpack_trixie && runs; then
        echo "$wanted" >"$stamp"
        say "unpacked ${packages[*]} into $home"
    else
        say "going on with this machine's own Neovim and Vim only; Helix, Emacs and tree-sitter are left out"
        rm -rf "$home/bin"
    fi
fi
from_host neovim vim-nox vim-ale kakoune tmux
# Kate brings a whole desktop's libraries with it, and a screen to draw on.
if [ "${TREEN_KATE:-no}" = yes ]; then
    (from_host kate xvfb openbox xdotool dbus imagemagick) || say "Kate is left out"
fi

# VS Code's code comes in the package code-server. Of it only the editor is taken: its server runs in Node as it stands, so
# nothing is compiled and nothing asks for a compiler. What would be compiled is for terminals, for logs and for proxies.
code=$home/code
code_stamp=$home/stamp-code
code_version=4.100.3 # the newest one made for Node 20
code_wanted="code-server $code_version 1" # raise the number when the unpacking below changes

unpack_code() {
    command -v npm >/dev/null && command -v node >/dev/null || { say "VS Code needs Node with npm"; return 1; }
    from_host ripgrep chromium
    rm -rf "$code" "$home/code-new"
    mkdir -p "$home/code-new"
    (
        cd "$home/code-new"
        npm pack --silent "code-server@$code_version" >/dev/null &&
            tar -xzf code-server-*.tgz --strip-components=3 --exclude='*.map' package/lib/vscode &&
            rm code-server-*.tgz &&
            npm install --ignore-scripts --omit=dev --no-audit --no-fund --loglevel=error >/dev/null # its own lock lacks one
    ) || { say "the package of VS Code is out of reach"; return 1; }
    mkdir -p "$home/code-new/node_modules/@vscode/ripgrep/bin"
    ln -sf "$(command -v rg)" "$home/code-new/node_modules/@vscode/ripgrep/bin/rg"
    mv "$home/code-new" "$code"
}
code_runs() { node "$code/out/server-main.js" --version >/dev/null 2>&1; }

if [ "$(cat "$code_stamp" 2>/dev/null)" = "$code_wanted" ] && code_runs; then
    say "VS Code is in $code already"
else
    rm -f "$code_stamp"
    began=$SECONDS
    if (unpack_code) && code_runs; then
        echo "$code_wanted" >"$code_stamp"
        say "unpacked VS Code $(node "$code/out/server-main.js" --version 2>/dev/null | head -1) into $code in $((SECONDS - began)) s"
    else
        rm -rf "$code" "$home/code-new"
        say "VS Code is left out"
    fi
fi

for editor in nvim hx emacs tree-sitter; do
    [ ! -x "$home/bin/$editor" ] || say "$editor: $("$home/bin/$editor" --version | head -1)"
done
