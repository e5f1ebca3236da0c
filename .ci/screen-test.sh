#!/usr/bin/env bash
# Drives `coldsim view FILE` in a private tmux server and checks that it moves, helps, resizes, quits and leaves the
# terminal clean. Usage: .ci/screen-test.sh PATH-TO-COLDSIM SCENARIO-FILE
set -uo pipefail

if [ $# -ne 2 ]; then
    echo "usage: $0 PATH-TO-COLDSIM SCENARIO-FILE" >&2
    exit 2
fi
coldsim=$(realpath "$1")
scenario=$(realpath "$2")

# shellcheck source=.ci/terminal.sh
. "$(dirname "$0")/terminal.sh"

# The pane's own shell stays after coldsim has ended, so that the terminal can be looked at.
cat > "$work/pane.sh" <<PANE
[ -n "\$1" ] && export NO_COLOR=1
$(printf '%q' "$coldsim") view $(printf '%q' "$scenario")
echo "ended with \$?"
exec sleep 600
PANE

# What the terminal is called is the person's, whatever runs in it.
name_terminal() { t select-pane -t night -T 'a title of mine'; }
hides() { ! shows "$1"; }
changed() { [ "$(screen)" != "$before" ]; }
moves() {
    before=$(screen)
    press "$1"
    soon changed
}

start() {
    part=$1
    echo "$part"
    t new-session -d -s night -x 80 -y 24 "bash --norc $work/pane.sh '${2:-}'"
    name_terminal
    soon shows 'q quit'
    soon shows '   clock '
}

child() { pgrep -P "$(t display-message -p -t night '#{pane_pid}')"; }

is_clean() {
    soon shows "ended with $1"
    local state
    state=$(t display-message -p -t night 'alternate=#{alternate_on} cursor=#{cursor_flag} mouse=#{mouse_any_flag} title=#{pane_title}')
    [ "$state" = 'alternate=0 cursor=1 mouse=0 title=a title of mine' ] || fail "terminal not restored: $state"
    stty -a < "$(t display-message -p -t night '#{pane_tty}')" | grep -qw -- 'echo' || fail 'the terminal does not echo'
    t kill-session -t night
}

start 'keys and q'
press Enter
soon shows 'delivery'
moves Left
moves S-Left
moves Up
moves u
press '?'
soon shows 'keys of this page'
press Escape
soon hides 'keys of this page'
press ':'
press -l 'night 3'
soon shows '>           night 3,'
press Enter
soon shows 'night 3 of'
press F1
soon shows 'KEYS'
press Escape
soon hides 'KEYS'
press l
soon shows 'Enter go there'
press Escape
soon hides 'Enter go there'
press Escape
soon shows 'Enter open it'
press Enter
soon shows 'delivery'
t resize-window -t night -x 120 -y 40
soon shows 'gas as gross heat'
t resize-window -t night -x 50 -y 12
soon shows 'terminal too small'
t resize-window -t night -x 80 -y 24
soon shows '   clock '
press Escape
moves Left
press q
is_clean 0

# Files: a change on the disk, the person's editor, the clipboard, the list of files. On a copy, with an editor that writes without asking.
part='files and the editor'
echo "$part"
cp -r "$(dirname "$scenario")" "$work/trips"
trip=$work/trips/$(basename "$scenario")
cat > "$work/editor" <<'EDITOR'
#!/usr/bin/env bash
stty -a < /dev/tty | grep -qw -- 'echo' && echo 'the terminal echoes' > "$2.seen"
sed -i 's/^title = "/title = "Edited: /' "$2"
EDITOR
chmod +x "$work/editor"
t set-option -s set-clipboard on
t new-session -d -s night -x 80 -y 24 "export EDITOR='$work/editor --wait'; $(printf '%q' "$coldsim") view $(printf '%q' "$trip"); echo \"ended with \$?\"; exec sleep 600"
name_terminal
soon shows 'q quit'
press e
soon shows 'Edited: '
[ -f "$trip.seen" ] || fail 'the editor did not have the terminal'
moves Left
sed -i 's/^title = "Edited: /title = "Changed: /' "$trip"
soon shows 'was changed on the disk'
press R
soon shows 'Changed: '
press y
soon shows 'Copied: '
copied() { t show-buffer 2>/dev/null | grep -q 'FAILS'; }
soon copied
press o
soon shows '> cold-snap.toml              FAILS'
press Escape
soon hides '> cold-snap.toml'
press q
is_clean 0

start 'Ctrl-C'
press C-c
is_clean 0

# Stopped and continued by the shell, which must be usable meanwhile.
part='Ctrl-Z and fg'
echo "$part"
t new-session -d -s night -x 80 -y 24 "bash --norc -i"
name_terminal
press "$(printf '%q' "$coldsim") view $(printf '%q' "$scenario")" Enter
soon shows 'q quit'
press C-z
soon shows 'Stopped'
press 'echo so$((1 + 1))far' Enter
soon shows 'so2far'
press 'fg; echo "ended with $?"; exec sleep 600' Enter
soon shows 'q quit'
raw() { stty -a < "$(t display-message -p -t night '#{pane_tty}')" | grep -qw -- '-icanon'; }
soon raw
moves Left
t resize-window -t night -x 100 -y 30
soon shows '   clock '
moves Left
press q
is_clean 0

# A window that is dragged: many sizes in a row, the last one counts.
start 'a storm of sizes'
for i in $(seq 60); do
    t resize-window -t night -x $((70 + i % 50)) -y $((20 + i % 20))
done
t resize-window -t night -x 90 -y 26
soon shows '   clock '
settled() { [ "$(screen | head -n 2 | tail -n 1 | wc -m)" -le 91 ] && shows '? keys'; }
soon settled
moves Left
press q
is_clean 0

for signal in 'TERM 143' 'HUP 129'; do
    start "SIG${signal% *}"
    kill -"${signal% *}" "$(child)"
    is_clean "${signal#* }"
done

start 'the terminal goes away'
gone=$(child)
t kill-session -t night
ended() { ! kill -0 "$gone" 2>/dev/null; }
for _ in $(seq 200); do
    ended && break
    sleep 0.05
done
ended || { failures=$((failures + 1)); echo "FAILED in \"$part\": process $gone stays behind" >&2; kill -9 "$gone"; }

start 'NO_COLOR' 1
if t capture-pane -p -e -t night | grep -qP '\e\[(\d+;)*(3[0-8]|4[0-8]|9\d|10\d)(;\d+)*m'; then
    fail 'a colour code is written'
fi
press q
is_clean 0

part='no terminal'
echo "$part"
"$coldsim" view "$scenario" < /dev/null > "$work/out" 2> "$work/err"
code=$?
if [ "$code" -ne 2 ] || [ -s "$work/out" ] || [ ! -s "$work/err" ]; then
    failures=$((failures + 1))
    echo "FAILED in \"$part\": ended with $code instead of 2 and a message on standard error" >&2
fi

if [ "$failures" -eq 0 ]; then
    echo 'the screen works and leaves the terminal clean'
else
    echo "$failures failed" >&2
    exit 1
fi
