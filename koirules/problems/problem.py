"""Where something is wrong, and what a problem is."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from attrs import field

from koirules.values import frozen


@frozen
class Place:
    """A stretch of a text file: lines and columns count from 1 in characters, the end column is the first one after."""

    file: str
    line: int
    column: int
    end_line: int
    end_column: int

    def __str__(self) -> str:
        return f"{self.file}:{self.line}:{self.column}"

    def to(self, last: Place) -> Place:
        """The stretch from the start of this place to the end of another."""
        return Place(self.file, self.line, self.column, last.end_line, last.end_column)


@frozen
class Cell:
    """A place in a table of records: the row as a spreadsheet counts it (the header is row 1), the column by its title."""

    file: str
    row: int | None = None
    column: str | None = None
    fish: str = field(default="", eq=False)

    def __str__(self) -> str:
        parts = [self.file]
        if self.row is not None:
            parts.append(f"row {self.row}")
        if self.column is not None:
            parts.append(f'column "{self.column}"')
        if self.fish:
            parts.append(f"fish {self.fish}")
        return ", ".join(parts)


Site = Place | Cell


@frozen
class Edit:
    """A change of the text that mends a problem: what stands at the place is replaced by the text."""

    place: Place
    text: str


_LONG = re.compile(r'"[^"]{160,}"|[^\s"]{120,}')
_KEPT = 60
_STEERING = re.compile("[\x00-\x09\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]")
"""Letters that steer a terminal or turn the direction of a text."""


def _neutral(text: str) -> str:
    """A text in which letters that steer are written out, whoever prints it."""
    return _STEERING.sub(lambda found: f"\\u{ord(found.group()):04x}", text)


def _clipped(text: str) -> str:
    """A sentence whose long words and quotations are cut: a person reads no word of a thousand letters."""
    text = _neutral(text)
    if len(text) < _KEPT * 2:
        return text
    return _LONG.sub(lambda found: found.group()[:_KEPT] + ('…"' if found.group()[0] == '"' else "…"), text)


@frozen
class Problem:
    """One thing that is wrong, told to a person who did nothing foolish.

    code: the stable name of the kind of problem. cause: one sentence that says what was read and why it cannot stand.
    mend: one sentence that says what to try. warning: true where the input still holds (never changes an exit status).
    edit: the change of the text that carries the mend out, where it is one. beside: other places that the cause speaks
    of, each with what is there.
    """

    code: str
    site: Site
    cause: str = field(converter=_clipped)
    mend: str = field(converter=_clipped)
    warning: bool = False
    edit: Edit | None = None
    beside: tuple[tuple[Place, str], ...] = ()

    def __str__(self) -> str:
        return f"{_neutral(str(self.site))}: {self.cause} {self.mend} [{self.code}]"


def is_refused(problems: Iterable[Problem]) -> bool:
    """Whether any of the problems is more than a warning."""
    return any(not problem.warning for problem in problems)


class KoirulesError(Exception):
    """The root of the exceptions that koirules raises about somebody's text or data."""

    def __init__(self, problems: Sequence[Problem]) -> None:
        self.problems: tuple[Problem, ...] = tuple(problems)
        super().__init__("\n".join(str(problem) for problem in self.problems))


class StandardError(KoirulesError):
    """A rule file (or the name of one) that does not make a standard; `problems` holds every reason."""


class RecordWarning(UserWarning):
    """What is doubtful about records that were graded all the same; given with `warnings.warn` where frames are graded."""


class RecordError(KoirulesError):
    """Records that cannot be graded; `problems` holds every reason."""


class EngineError(Exception):
    """An engine that was asked for cannot grade a frame; says why, and what to do."""
