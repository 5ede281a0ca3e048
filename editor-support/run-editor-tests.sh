#!/usr/bin/env bash
# Runs the tests of every editor that has a folder here; ./mvnw -Peditors verify calls it.
set -euo pipefail
cd "$(dirname "$0")"

ran=0
for test in */test.sh; do
    [ -f "$test" ] || continue
    echo "editor tests: ${test%/test.sh}"
    bash "$test"
    ran=$((ran + 1))
done
echo "editor tests: $ran editor(s) driven"
