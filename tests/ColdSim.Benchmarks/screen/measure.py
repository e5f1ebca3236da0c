#!/usr/bin/env python3
"""Measures the screen in a terminal of its own: first draw, memory, idle processor time, and what a key costs.

usage: measure.py PATH-TO-COLDSIM SCENARIO [COLUMNS ROWS]

Linux only (it reads /proc); Python's standard library is enough. The terminal is a pseudo-terminal that answers nothing,
so what the program asks it at the start goes unanswered, as in the simplest terminals.
"""

import fcntl
import os
import pty
import select
import struct
import sys
import termios
import time

KEYS = ["\x1b[C"] * 20
QUIET_S = 0.15
IDLE_S = 20.0


def read_until_quiet(fd, quiet_s, most_s=20.0):
    """Everything that is sent until nothing is for a while, and when the last of it came."""
    sent, last = b"", time.monotonic()
    end = last + most_s
    while time.monotonic() < end:
        if not select.select([fd], [], [], quiet_s)[0]:
            break
        try:
            part = os.read(fd, 65536)
        except OSError:
            break
        if not part:
            break
        sent, last = sent + part, time.monotonic()
    return sent, last


def processor_s(pid):
    with open(f"/proc/{pid}/stat", encoding="ascii") as f:
        fields = f.read().rpartition(")")[2].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def memory_mb(pid):
    with open(f"/proc/{pid}/status", encoding="ascii") as f:
        return next(int(line.split()[1]) for line in f if line.startswith("VmRSS")) / 1024


def main():
    if len(sys.argv) not in (3, 5):
        sys.exit(__doc__)
    columns, rows = (int(a) for a in sys.argv[3:]) if len(sys.argv) == 5 else (80, 24)
    begin = time.monotonic()
    pid, fd = pty.fork()
    if pid == 0:
        os.environ["TERM"] = "xterm-256color"
        fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))
        os.execv(sys.argv[1], [sys.argv[1], "view", sys.argv[2]])
    drawn, first = b"", None
    while first is None and time.monotonic() < begin + 30:
        if select.select([fd], [], [], 0.01)[0]:
            drawn += os.read(fd, 65536)
            if b"quit" in drawn:
                first = time.monotonic()
    if first is None:
        sys.exit("nothing was drawn within 30 s")
    read_until_quiet(fd, 1.0)
    time.sleep(2.5)
    read_until_quiet(fd, QUIET_S)

    before, moment = processor_s(pid), time.monotonic()
    idle, _ = read_until_quiet(fd, IDLE_S, IDLE_S)
    idle_share = (processor_s(pid) - before) / (time.monotonic() - moment)

    sizes, times = [], []
    before = processor_s(pid)
    for key in KEYS:
        pressed = time.monotonic()
        os.write(fd, key.encode())
        sent, last = read_until_quiet(fd, QUIET_S)
        sizes.append(len(sent))
        times.append(1000 * (last - pressed))
    used = 1000 * (processor_s(pid) - before) / len(KEYS)

    times.sort()
    print(f"terminal                 {columns} x {rows}")
    print(f"first draw               {1000 * (first - begin):.0f} ms")
    print(f"memory                   {memory_mb(pid):.0f} MB")
    print(f"idle, processor          {100 * idle_share:.2f} % of a core over {IDLE_S:.0f} s, {len(idle)} bytes sent")
    print(f"a cursor key, bytes      mean {sum(sizes) / len(sizes):.0f}, largest {max(sizes)}")
    print(f"a cursor key to redraw   median {times[len(times) // 2]:.1f} ms, largest {times[-1]:.1f} ms; {used:.1f} ms of processor time")
    os.write(fd, b"q")
    os.waitpid(pid, 0)


if __name__ == "__main__":
    main()
