#!/usr/bin/env bash
# The tree-sitter grammar: its own cases, its colours, and every Treen file of the project against the compiler's tokens.
# UPDATE=1 generates src/parser.c anew and writes the trees of the cases: read the difference before committing it.
set -euo pipefail
cd "$(dirname "$0")"
editors=${TREEN_EDITORS:-${XDG_CACHE_HOME:-$HOME/.cache}/treen-editors}
export PATH=$editors/bin:$PATH
if ! command -v tree-sitter >/dev/null; then
    echo "tree-sitter: left out, there is no tree-sitter command; editor-support/install-editors.sh gets one"
    exit 0
fi

# All of it happens in a copy: what is generated beside the parser is of no use to editors.
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export XDG_CACHE_HOME=$work/cache HOME=$work TREE_SITTER_FOLDER=$work
cp -r grammar.js package.json queries test "$work/"
mkdir "$work/src" && cp src/scanner.c "$work/src/"
(cd "$work" && tree-sitter generate --no-bindings)
if [ -n "${UPDATE:-}" ]; then
    cp -r "$work/src/parser.c" "$work/src/tree_sitter" src/
    (cd "$work" && tree-sitter test --update >/dev/null) || true
    cp "$work"/test/corpus/*.txt test/corpus/
fi
diff -r -q -x '*.json' src "$work/src" || { echo "tree-sitter: src/ is not what grammar.js gives; UPDATE=1 $0" >&2; exit 1; }

(cd "$work" && tree-sitter test) >"$work/said" 2>&1 || { cat "$work/said"; exit 1; }
echo "tree-sitter: $(grep -c '✓' "$work/said") cases pass"
examples=("$PWD"/../../examples/*/*.treen)
for query in queries/*.scm; do
    (cd "$work" && tree-sitter query "$query" "${examples[@]}") >/dev/null 2>"$work/said" || { cat "$work/said" >&2; exit 1; }
done
node --test --test-reporter=spec test/
