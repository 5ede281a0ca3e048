#!/usr/bin/env bash
# Runs the tests of every editor that has a folder here; ./mvnw -Peditors verify calls it.
# With names, only those: editor-support/run-editor-tests.sh neovim helix
set -uo pipefail
cd "$(dirname "$0")"

folders=("$@")
[ ${#folders[@]} -gt 0 ] || for test in */test.sh; do folders+=("${test%/test.sh}"); done

failed=()
for folder in "${folders[@]}"; do
    echo "== $folder"
    start=$SECONDS
    bash "$folder/test.sh" </dev/null || failed+=("$folder")
    echo "== $folder took $((SECONDS - start)) s"
done
[ ${#failed[@]} -eq 0 ] || echo "failed: ${failed[*]}"
echo "editors: $((${#folders[@]} - ${#failed[@]})) passed, ${#failed[@]} failed"
[ ${#failed[@]} -eq 0 ]
