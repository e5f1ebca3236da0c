#!/usr/bin/env bash
# The screen as a workbench, in a real terminal of several sizes: on the demo the first line says that it fails, five keys make all its nights
# hold, the try is saved, and the saved file run by 'coldsim run' holds. Usage: .ci/try-test.sh PATH-TO-COLDSIM FOLDER-OF-SCENARIOS
set -uo pipefail

if [ $# -ne 2 ]; then
    echo "usage: $0 PATH-TO-COLDSIM FOLDER-OF-SCENARIOS" >&2
    exit 2
fi
coldsim=$(realpath "$1")
scenarios=$(realpath "$2")
# shellcheck source=.ci/terminal.sh
. "$(dirname "$0")/terminal.sh"

first() { screen | head -1 | grep -qF -- "$1"; }

# A size, the terminal's name, and whether without colour.
try() {
    part="$1x$2 $3${4:+ NO_COLOR}"
    echo "$part"
    rm -rf "$work/trip"
    mkdir "$work/trip"
    cp "$scenarios"/cold-snap*.toml "$scenarios"/cold-snap*.csv "$work/trip"
    t new-session -d -s night -x "$1" -y "$2" -e "TERM=$3" ${4:+-e NO_COLOR=1} "$(printf '%q' "$coldsim") view '$work/trip/cold-snap.toml'; echo \"ended with \$?\"; exec sleep 600"
    soon first FAILS
    # h lists what would make all nights hold, Enter tries the first of it: two keys of the five.
    press h
    soon shows 'econd full'
    press Enter
    soon first holds
    soon shows 'As tried: holds'
    # S, Tab and Enter save it into the scenario itself.
    press S
    soon shows 'ave as option'
    press Tab
    soon shows 'into the scenario itself'
    press Enter
    soon shows 'saved into'
    press q
    soon shows 'ended with 0'
    t kill-session -t night
    "$coldsim" run "$work/trip/cold-snap.toml" --brief 2>/dev/null | grep -q '^HOLDS' || fail 'the saved file does not hold'
    grep -q '^# The demo' "$work/trip/cold-snap.toml" || fail 'a comment is lost'
}

try 40 10 screen-256color
try 80 24 screen-256color
try 120 40 screen-256color
try 200 60 screen-256color
try 80 24 screen-256color 1
try 80 24 linux

# The same by turning: t opens the list, the ninth thing is the number of cylinders.
part='turning'
echo "$part"
t new-session -d -s night -x 80 -y 24 "$(printf '%q' "$coldsim") view '$scenarios/cold-snap.toml'; exec sleep 600"
soon first FAILS
press t Down Down Down Down Down Down Down Right
soon first holds
press z
soon first FAILS
press Right
soon first holds
press 0
soon first FAILS
press q
t kill-session -t night

if [ "$failures" -eq 0 ]; then
    echo 'a try holds, is saved, and holds in the shell'
else
    echo "$failures failed" >&2
    exit 1
fi
