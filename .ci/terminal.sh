# What the tests of the screen share: a private tmux server with a session "night", looked at and typed into. To be sourced; sets $work and $failures.
if ! command -v tmux >/dev/null; then
    as_root=$([ "$(id -u)" -eq 0 ] || echo sudo)
    if ! { $as_root apt-get update -qq && $as_root apt-get install -qq -y tmux >/dev/null; }; then
        echo "tmux is absent and cannot be installed" >&2
        exit 2
    fi
fi

work=$(mktemp -d)
failures=0
t() { tmux -S "$work/socket" -f /dev/null "$@"; }
trap 't kill-server 2>/dev/null; rm -rf "$work"' EXIT
t new-session -d -s idle 'exec sleep 3600'

screen() { t capture-pane -p -t night; }
shows() { screen | grep -qF -- "$1"; }
press() { t send-keys -t night "$@"; }
fail() {
    failures=$((failures + 1))
    printf 'FAILED in "%s": %s\n' "$part" "$1" >&2
    screen >&2
}

# Waits for something to become true, at most 20 seconds.
soon() {
    for _ in $(seq 400); do
        "$@" && return
        sleep 0.05
    done
    fail "waited in vain for: $*"
}
