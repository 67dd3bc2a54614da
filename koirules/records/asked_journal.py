"""The journal beside a file of records that are asked for: what was asked and cannot be seen in the records themselves.

One JSON object a line, each forced to the disk before anything else is asked: what was answered (so that it can be taken
back), what cannot be told, what was noted. A line that a power cut left unfinished is dropped.
"""

from __future__ import annotations

import json
import os
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from koirules.problems import Problem
from koirules.problems.asking import broken_journal
from koirules.problems.saving import unwritable
from koirules.records.text_files import read_bytes
from koirules.records.told_records import keep_folder
from koirules.records.writing import write_beside
from koirules.values import frozen


@frozen
class Answered:
    """A trait of a fish was told; before: the cell as it was."""

    fish: str
    trait: str
    before: str = ""


@frozen
class Untold:
    """A trait of a fish cannot be told."""

    fish: str
    trait: str


@frozen
class Noted:
    """A fish was asked what else is to be noted: for these traits, and it was some of them."""

    fish: str
    asked: tuple[str, ...]
    names: tuple[str, ...]


@frozen
class Looked:
    """The look at a fish is done: what nobody mentioned is as the page says."""

    fish: str


@frozen
class Back:
    """The step before was taken back."""


Step = Answered | Untold | Noted | Looked
_KINDS = {"answered": Answered, "cannot tell": Untold, "noted": Noted, "looked": Looked, "back": Back}


def journal_of(path: Path) -> Path:
    """Where the journal of a file of records stands: beside it."""
    return path.with_name(f"{path.name}.asked")


def read_journal(path: Path) -> list[Step] | Problem:
    """The steps of a journal that still stand; a problem where a line cannot be read. What is unfinished is cut off."""
    content = read_bytes(path)
    if isinstance(content, Problem):
        return content
    whole = content[: content.rfind(b"\n") + 1]
    if len(whole) < len(content):
        try:
            os.truncate(path, len(whole))
        except OSError as error:
            return unwritable(str(path), str(path.parent), error.strerror or str(error))
    steps: list[Step] = []
    for number, line in enumerate(whole.splitlines(), 1):
        step = _step(line)
        if step is None or (isinstance(step, Back) and not steps):
            return broken_journal(str(path), number)
        if isinstance(step, Back):
            steps.pop()
        else:
            steps.append(step)
    return steps


def add_to_journal(path: Path, step: Step | Back) -> Problem | None:
    """Put a step at the end of a journal and force it to the disk; a problem says why it could not be."""
    line = _line(step)
    try:
        new = not path.exists()
        with path.open("ab") as file:
            file.write(line)
            file.flush()
            os.fsync(file.fileno())
    except OSError as error:
        return unwritable(str(path), str(path.parent), error.strerror or str(error))
    if new:
        keep_folder(path)
    return None


def write_journal(path: Path, steps: Sequence[Step]) -> Problem | None:
    """Write a journal anew, with these steps and nothing else."""

    def write(passing: Path) -> None:
        with passing.open("wb") as file:
            file.writelines(map(_line, steps))
            file.flush()
            os.fsync(file.fileno())

    problem = write_beside(path, write)
    if problem is None:
        keep_folder(path)
    return problem


def _line(step: Step | Back) -> bytes:
    word = next(word for word, kind in _KINDS.items() if isinstance(step, kind))
    return (json.dumps({"what": word, **_fields(step)}, ensure_ascii=True) + "\n").encode()


def begin_journal(path: Path) -> Problem | None:
    """An empty journal, before the first step."""
    try:
        path.open("xb").close()
    except OSError as error:
        return unwritable(str(path), str(path.parent), error.strerror or str(error))
    keep_folder(path)
    return None


def _fields(step: Step | Back) -> dict[str, Any]:
    match step:
        case Answered(fish, trait, before):
            return {"fish": fish, "trait": trait, "before": before}
        case Untold(fish, trait):
            return {"fish": fish, "trait": trait}
        case Noted(fish, asked, names):
            return {"fish": fish, "asked": asked, "names": names}
        case Looked(fish):
            return {"fish": fish}
        case Back():
            return {}


def _step(line: bytes) -> Step | Back | None:
    try:
        held = json.loads(line)
        kind = _KINDS[held.pop("what")]
        made: Step | Back = kind(**{k: tuple(v) if isinstance(v, list) else v for k, v in held.items()})
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
        return None
    texts = [text for value in _fields(made).values() for text in (value if isinstance(value, tuple) else (value,))]
    return made if all(isinstance(text, str) for text in texts) else None
