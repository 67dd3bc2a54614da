"""Answers from a keyboard: one key at a time at a terminal, else a line at a time."""

from __future__ import annotations

import os
import sys

import click

_END = {"", "\x04", "\x00"}
"""Nothing more; Ctrl-D; and what a terminal makes of Ctrl-D where it was pressed before a key was asked for."""

PROMPT = "> "
_ESCAPE = "\x1b"


class Ended(Exception):  # noqa: N818 - nothing went wrong
    """No further answer comes: the input has ended, or its terminal was closed."""


class Keyboard:
    """Where answers come from. single: whether one key is an answer, which needs a terminal."""

    def __init__(self) -> None:
        self.single = sys.stdin.isatty()

    def line(self) -> str:
        """One line without its end, after a prompt; raises Ended."""
        click.echo(PROMPT, nl=False)
        try:
            text = sys.stdin.readline()
        except (OSError, ValueError):
            text = ""
        if not text:
            raise Ended
        return text.strip()

    def key(self) -> str:
        """One key, or one line where keys cannot be read; blank for a key that writes nothing; raises Ended."""
        if not self.single:
            return self.line()
        try:
            key = _windows_key() if os.name == "nt" else _terminal_key(sys.stdin.fileno())
        except OSError:
            key = ""
        if key in _END:
            raise Ended
        click.echo(" ", nl=False)
        return key


def _terminal_key(terminal: int) -> str:
    """One key of a terminal. What is typed is shown as ever, so that a program that ends at any time leaves it in order."""
    import select
    import termios

    before = termios.tcgetattr(terminal)
    by_key = termios.tcgetattr(terminal)
    by_key[3] &= ~termios.ICANON
    by_key[6][termios.VMIN], by_key[6][termios.VTIME] = 1, 0
    try:
        termios.tcsetattr(terminal, termios.TCSADRAIN, by_key)
        click.echo(PROMPT, nl=False)
        typed = os.read(terminal, 1)
        if typed[:1] == _ESCAPE.encode() or typed[:1] >= b"\x80":
            # An arrow, or a letter of several bytes, is one key.
            while select.select([terminal], [], [], 0.02)[0] and (more := os.read(terminal, 1)):
                typed += more
        return " " if typed[:1] == _ESCAPE.encode() else typed.decode(errors="replace")
    finally:
        termios.tcsetattr(terminal, termios.TCSADRAIN, before)


def _windows_key() -> str:
    import importlib

    click.echo(PROMPT, nl=False)
    key: str = importlib.import_module("msvcrt").getwche()
    if key == "\x03":
        raise KeyboardInterrupt
    return "" if key == "\x1a" else key
