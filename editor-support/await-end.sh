#!/usr/bin/env bash
# Succeeds as soon as a process has ended, and fails when it still runs after ten seconds.
exec timeout 10 tail --pid="$1" -f /dev/null
