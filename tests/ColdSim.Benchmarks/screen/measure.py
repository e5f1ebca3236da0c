#!/usr/bin/env python3
"""Measures the screen in a terminal of its own: first draw, memory, idle processor time, and what a key and a try cost.

usage: measure.py PATH-TO-COLDSIM SCENARIO [COLUMNS ROWS] [--markdown]

Linux only (it reads /proc); Python's standard library is enough. The terminal is a pseudo-terminal that answers nothing, so what the program asks it at the start
goes unanswered, as in the simplest terminals. A key's time is from its writing until the last byte of what it changes on the screen. A try has two: its answer, curves
and nights come first, up to a pause of 30 ms; how much colder each night could be follows, up to one of 150 ms. --markdown prints the rows of the table in docs/performance.md.
"""

import fcntl
import os
import pty
import select
import struct
import sys
import termios
import time

RIGHT, DOWN, ESCAPE = "\x1b[C", "\x1b[B", "\x1b"
CURSOR_KEYS = [RIGHT] * 20
# `t` opens what can be tried; each key turns the chosen thing by one step.
TRY_KEYS = [RIGHT] * 10
PAUSE_S, QUIET_S = 0.03, 0.15
SETTLED_S = 4.0
IDLE_S = 20.0
MOST_START_S = 30.0
MOST_ANSWER_S = 5.0


class Screen:
    """A program on a pseudo-terminal."""

    def __init__(self, program, scenario, columns, rows):
        self.begin = time.monotonic()
        self.pid, self.fd = pty.fork()
        if self.pid == 0:
            os.environ["TERM"] = "xterm-256color"
            os.environ.setdefault("LANG", "C.UTF-8")
            fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))
            os.execv(program, [program, "view", scenario])

    def read_until_quiet(self, quiet_s, most_s=20.0):
        """Everything that is sent until nothing is for a while, and when the last of it came."""
        sent, last = b"", time.monotonic()
        end = last + most_s
        while time.monotonic() < end:
            if not select.select([self.fd], [], [], quiet_s)[0]:
                break
            try:
                part = os.read(self.fd, 65536)
            except OSError:
                break
            if not part:
                break
            sent, last = sent + part, time.monotonic()
        return sent, last

    def first_draw_s(self):
        """From the start to the screen's last row."""
        drawn = b""
        while time.monotonic() < self.begin + MOST_START_S:
            if select.select([self.fd], [], [], 0.01)[0]:
                drawn += os.read(self.fd, 65536)
                if b"quit" in drawn:
                    return time.monotonic() - self.begin
        sys.exit(f"nothing was drawn within {MOST_START_S:.0f} s")

    def press(self, keys):
        """Bytes and milliseconds of each key, up to the first pause and in all, and processor milliseconds a key."""
        first, all_of_it = [], []
        before = self.processor_s()
        for key in keys:
            pressed = time.monotonic()
            os.write(self.fd, key.encode())
            if not select.select([self.fd], [], [], MOST_ANSWER_S)[0]:
                sys.exit(f"key {key!r} changed nothing on the screen within {MOST_ANSWER_S:.0f} s")
            sent, last = self.read_until_quiet(PAUSE_S)
            first.append((len(sent), 1000 * (last - pressed)))
            more, then = self.read_until_quiet(QUIET_S)
            all_of_it.append((len(sent) + len(more), 1000 * ((then if more else last) - pressed)))
        return first, all_of_it, 1000 * (self.processor_s() - before) / len(keys)

    def processor_s(self):
        with open(f"/proc/{self.pid}/stat", encoding="ascii") as f:
            fields = f.read().rpartition(")")[2].split()
        return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")

    def memory_mb(self):
        with open(f"/proc/{self.pid}/status", encoding="ascii") as f:
            return next(int(line.split()[1]) for line in f if line.startswith("VmRSS")) / 1024

    def idle(self):
        """Share of a core and bytes while nobody types."""
        before, moment = self.processor_s(), time.monotonic()
        sent, _ = self.read_until_quiet(IDLE_S, IDLE_S)
        return (self.processor_s() - before) / (time.monotonic() - moment), len(sent)

    def quit(self):
        os.write(self.fd, b"\x11")
        self.read_until_quiet(1.0)
        os.waitpid(self.pid, 0)


def of_keys(name, measured, aims):
    sizes, times = [size for size, _ in measured], sorted(time for _, time in measured)
    return [
        (f"{name}, bytes", f"mean {sum(sizes) / len(sizes):,.0f}, largest {max(sizes):,}", aims[0]),
        (f"{name} to redraw", f"median {times[len(times) // 2]:.1f} ms, largest {times[-1]:.1f} ms", aims[1]),
    ]


def main():
    words = [w for w in sys.argv[1:] if w != "--markdown"]
    if len(words) not in (2, 4):
        sys.exit(__doc__)
    columns, rows = (int(w) for w in words[2:]) if len(words) == 4 else (80, 24)
    screen = Screen(os.path.abspath(words[0]), words[1], columns, rows)
    first_s = screen.first_draw_s()

    # The toolkit's questions to the terminal are given up after two seconds, what is worked out beside the plan arrives after a while, and so long the
    # just-in-time compiler goes over what the start has used often.
    time.sleep(12)
    screen.read_until_quiet(SETTLED_S, MOST_START_S)
    idle_share, idle_bytes = screen.idle()
    cursor = screen.press(CURSOR_KEYS)
    screen.press(["t"])
    tried = screen.press(TRY_KEYS)
    memory = screen.memory_mb()
    screen.press([ESCAPE])
    screen.quit()

    table = [
        ("terminal", f"{columns} x {rows}", ""),
        ("first draw", f"{1000 * first_s:.0f} ms", ""),
        ("memory", f"{memory:.0f} MB", ""),
        ("idle", f"{100 * idle_share:.2f} % of a core over {IDLE_S:.0f} s, {idle_bytes} bytes sent", "0.2 %, 0 bytes"),
        *of_keys("a cursor key", cursor[1], ("1,500", "16 ms")),
        *of_keys("a try", tried[0], ("6,000", "50 ms")),
        *of_keys("with how much colder", tried[1], ("", "")),
        ("processor time", f"{cursor[2]:.0f} ms a cursor key, {tried[2]:.0f} ms a try with how much colder", ""),
    ]
    for what, value, aim in table:
        print(f"| {what} | {value} | {aim} |" if "--markdown" in sys.argv else f"{what:<25}{value}{f'  (aim: {aim})' if aim else ''}")


if __name__ == "__main__":
    main()
