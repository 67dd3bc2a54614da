"""The notes of a session, as they were typed, beside the sheet that is made of them.

The journal is a file of notes like any other: a line for each line that was typed, forced to the disk before it is answered. What
is taken back is said by a line of its own, so that nothing is ever rewritten. A line that a power cut left unfinished is dropped.
"""

from __future__ import annotations

import os
from collections.abc import Iterable, Sequence
from contextlib import suppress
from io import StringIO
from pathlib import Path
from typing import IO

from koirules.problems import Problem
from koirules.problems.saving import unwritable
from koirules.records.holding import Hold, clear_unfinished, hold
from koirules.records.safe_text import for_csv
from koirules.records.text_files import read_text
from koirules.records.told_records import keep_folder
from koirules.records.writing import write_beside
from koirules.values import define

BACK = "# the line before was taken back"
"""What a journal says where a line was taken back; a reader of notes passes it over."""


def journal_of(path: Path) -> Path:
    """Where the notes of a sheet stand: beside it."""
    return path.with_name(f"{path.name}.said.txt")


@define
class Journal:
    """The notes of a session. hold: on the sheet, as long as the session lasts. lines: those that still stand."""

    path: Path
    hold: Hold
    file: IO[bytes]
    lines: list[str]

    @classmethod
    def open(cls, path: Path) -> Journal | Problem:
        """The journal of a sheet, new or as it was left; a problem where another session writes into it."""
        journal = journal_of(path)
        held = hold(path)
        if isinstance(held, Problem):
            return held
        for left in (path, journal):
            clear_unfinished(left)
        new = not journal.exists()
        try:
            file = journal.open("ab")
        except OSError as error:
            held.release()
            return unwritable(str(journal), str(journal.parent), error.strerror or str(error))
        if new:
            keep_folder(journal)
        text = read_text(journal)
        if isinstance(text, Problem):
            file.close()
            held.release()
            return text
        whole = text[: text.rfind("\n") + 1]
        if len(whole) < len(text):
            file.truncate(len(whole.encode()))
        return cls(journal, held, file, standing(whole.splitlines()))

    def add(self, line: str) -> Problem | None:
        """Put a line at the end and force it to the disk."""
        problem = self._write(line)
        if problem is None:
            self.lines.append(line)
        return problem

    def back(self) -> str | Problem | None:
        """Take the last line back; None where there is none."""
        if not self.lines:
            return None
        problem = self._write(BACK)
        return self.lines.pop() if problem is None else problem

    def close(self) -> None:
        """Give the notes up, so that another session may write into them."""
        self.file.close()
        self.hold.release()

    def _write(self, line: str) -> Problem | None:
        try:
            self.file.write(f"{line}\n".encode())
            self.file.flush()
            os.fsync(self.file.fileno())
        except OSError as error:
            return unwritable(str(self.path), str(self.path.parent), error.strerror or str(error))
        return None


def standing(lines: Sequence[str]) -> list[str]:
    """The lines of a journal that were not taken back."""
    found: list[str] = []
    for line in lines:
        if line == BACK:
            found = found[:-1]
        else:
            found.append(line)
    return found


def sheet_line(cells: Iterable[str]) -> str:
    """A line of the sheet of some notes."""
    import csv

    made = StringIO()
    csv.writer(made, lineterminator="\n").writerow(map(for_csv, cells))
    return made.getvalue()


def write_sheet(path: Path, lines: Iterable[str]) -> Problem | None:
    """Write the sheet of some notes from its lines, whole or not at all, and force it to the disk."""

    def write(passing: Path) -> None:
        with passing.open("w", encoding="utf-8", newline="") as file:
            file.writelines(lines)
            file.flush()
            os.fsync(file.fileno())

    problem = write_beside(path, write)
    if problem is None:
        with suppress(OSError):
            keep_folder(path)
    return problem
