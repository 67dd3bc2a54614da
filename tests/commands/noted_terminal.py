"""A person at a terminal of `koirules note`: types lines, and sees what is shown until the next line may be typed."""

import fcntl
import os
import pty
import select
import struct
import subprocess
import sys
import termios
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
PATIENCE_SECONDS = 60
_OWN_TERMINAL = """import fcntl, runpy, sys, termios
fcntl.ioctl(0, termios.TIOCSCTTY, 0)
sys.argv[:1] = ["koirules", "note"]
runpy.run_module("koirules", run_name="__main__")
"""


class Noting:
    """One run of the command in a window of so many columns and rows."""

    def __init__(self, words, columns=60, rows=20):
        self.terminal, inside = pty.openpty()
        fcntl.ioctl(inside, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))
        self.child = subprocess.Popen(
            [sys.executable, "-c", _OWN_TERMINAL, *map(str, words)],
            env={**{name: text for name, text in os.environ.items() if name != "COLUMNS"}, "PYTHONPATH": str(ROOT)},
            stdin=inside,
            stdout=inside,
            stderr=inside,
            start_new_session=True,
        )
        os.close(inside)
        self.opening = self.shown()

    def shown(self):
        """What is shown until the next line may be typed, or to the end."""
        text = b""
        until = time.monotonic() + PATIENCE_SECONDS
        while not text.endswith(b"> ") or text[-3:-2] not in {b"\n", b""}:
            assert time.monotonic() < until, text
            if select.select([self.terminal], [], [], 0.2)[0]:
                try:
                    more = os.read(self.terminal, 65536)
                except OSError:
                    break
                if not more:
                    break
                text += more
        return text.decode("utf-8").replace("\r\n", "\n")

    def says(self, line):
        """What is shown of a line, without the line itself and the next prompt."""
        os.write(self.terminal, f"{line}\n".encode())
        return self.shown().removeprefix(f"{line}\n").removesuffix("> ")

    def ends(self):
        """Hang up; the exit status."""
        os.write(self.terminal, b"done\n")
        self.shown()
        status = self.child.wait(PATIENCE_SECONDS)
        os.close(self.terminal)
        return status
