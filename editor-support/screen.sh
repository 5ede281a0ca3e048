# For the tests of editors in a terminal, sourced by them: looks at the screen of a tmux and types into it. They set `tmux`,
# the command with its socket, and `work`, a folder of their own; `passed` counts what was seen.
passed=0
sees() { # sees NAME PATTERN [colours]: waits until the screen shows it
    local name=$1 pattern=$2 colours=${3:-}
    for _ in $(seq 300); do
        "${tmux[@]}" capture-pane -p $colours >"$work/screen" || break
        if grep -qE -- "$pattern" "$work/screen"; then
            echo "  ok    $name"
            passed=$((passed + 1))
            return 0
        fi
        sleep 0.1
    done
    echo "  FAIL  $name; no $pattern on the screen:"
    cat "$work/screen"
    exit 1
}
types() { "${tmux[@]}" send-keys "$@"; }
