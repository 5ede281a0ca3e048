# For the tests, to be sourced: a copy of the tea caddy in a folder of its own, and a `treen` before all others on the
# PATH. RECORD=folder also keeps a record of the session there, under the name of the test's folder.
name=$(basename "$PWD")
root=$(cd ../.. && pwd)
launcher=${TREEN_LAUNCHER:-$root/treen}
editors=${TREEN_EDITORS:-${XDG_CACHE_HOME:-$HOME/.cache}/treen-editors}
[ -x "$launcher" ] || { echo "$name: there is no launcher at $launcher" >&2; exit 1; }
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p "$work/bin" "$work/project"
cp -r "$root"/examples/tea-caddy/tea-caddy.treen "$work/project/"
if [ -n "${RECORD:-}" ]; then
    start="exec node '$root/editor-support/record-session.mjs' '$RECORD/$name.jsonl' '$work/project' '$launcher' \"\$@\""
else
    start="exec '$launcher' \"\$@\""
fi
printf '#!/bin/sh\necho $$ >"%s/server.pid"\n%s\n' "$work" "$start" >"$work/bin/treen"
chmod +x "$work/bin/treen"
# An editor's own program is told by its folder: what it starts finds the machine's programs.
export PATH=$work/bin:$PATH
