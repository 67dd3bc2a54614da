"""A sorter at a terminal: runs `koirules ask` in a window of 40 columns and answers what it is shown from full records."""

import fcntl
import os
import pty
import re
import select
import struct
import subprocess
import sys
import termios
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
PATIENCE_SECONDS = 30
OWN_TERMINAL = """import fcntl, runpy, sys, termios
fcntl.ioctl(0, termios.TIOCSCTTY, 0)
sys.argv[:1] = ["koirules", "ask"]
runpy.run_module("koirules", run_name="__main__")
"""
"""Runs the command with the terminal as its own, so that Ctrl-C and a closed window reach it."""


class Sorter:
    """One run of the command.

    titles: the name of each trait by its title. fish: what is seen, as a sheet has it. begun: the fish that have a row.
    """

    def __init__(self, words, titles, fish, begun=(), columns=40):
        self.titles, self.fish, self.begun = titles, fish, set(begun)
        self.screen = ""
        self.answered = []
        self.terminal, inside = pty.openpty()
        fcntl.ioctl(inside, termios.TIOCSWINSZ, struct.pack("HHHH", 24, columns, 0, 0))
        self.child = subprocess.Popen(
            [sys.executable, "-c", OWN_TERMINAL, *map(str, words)],
            env={**{name: text for name, text in os.environ.items() if name != "COLUMNS"}, "PYTHONPATH": str(ROOT)},
            stdin=inside,
            stdout=inside,
            stderr=inside,
            start_new_session=True,
        )
        os.close(inside)

    def shown(self):
        """All that is shown until the command waits for an answer; None where it ended instead."""
        text = b""
        until = time.monotonic() + PATIENCE_SECONDS
        while not text.endswith(b"\n> "):
            assert time.monotonic() < until, text
            if not select.select([self.terminal], [], [], 1)[0]:
                continue
            try:
                more = os.read(self.terminal, 4096)
            except OSError:
                more = b""
            if not more:
                self.screen += text.decode()
                return None
            text += more
        told = text.decode().replace("\r\n", "\n")
        self.screen += told
        return " ".join(told.split("\n"))

    def type(self, keys):
        """Press keys."""
        os.write(self.terminal, keys.encode())

    def answer_next(self):
        """Answer the next question as the fish is; False where the command has ended."""
        told = self.shown()
        if told is None:
            return False
        if re.search(r"Next (fish|item): name", told):
            name = next((name for name in self.fish if name not in self.begun), "q")
            self.begun.add(name)
            self.type(f"{name}\n")
            return True
        fish, title = re.findall(r"(\w+): ([^?:]+)\?", told)[-1]
        seen = self.fish[fish]
        if title == "anything else to note":
            self.type("?\n")
            numbered = dict(re.findall(r"(\d+) (.+?)(?= \d+ |$)", self.shown().rpartition("noted it:")[2]))
            chosen = [key for key, name in numbered.items() if key != "0" and self.titles[name.strip()] in seen]
            self.type(f"{' '.join(chosen) or '0'}\n")
            return True
        name = self.titles[title]
        self.answered.append((fish, name))
        keys = keys_for(seen.get(name), told.rpartition(f"{title}?")[2])
        if keys is None:
            self.type("w")
            self.shown()
            keys = f"{seen[name]}\n"
        self.type(keys)
        return True

    def kill(self):
        """A power cut."""
        self.child.kill()
        self.status()

    def close(self):
        """The window of the terminal is closed."""
        os.close(self.terminal)
        self.terminal = None
        self.status()

    def status(self):
        """The exit status, once the command has ended."""
        status = self.child.wait(PATIENCE_SECONDS)
        if self.terminal is not None:
            os.close(self.terminal)
        return status


def keys_for(value, listed):
    """What to press for a value, given the line of options; None where it has to be written."""
    typed = "then Enter" in listed
    if value is None:
        return "-\n" if typed else "-"
    keys = {word: key for key, word in re.findall(r"(\w) ([\w ]+?)(?=,|;| *> *$)", listed)}
    if not typed:
        return keys.get(value.replace("_", " "))
    return f"{value}\n"
