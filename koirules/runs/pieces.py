"""What is given, made into pieces: files, folders and patterns, and the row groups of what is large."""

from __future__ import annotations

import glob
from collections.abc import Sequence
from pathlib import Path

from attrs import evolve

from koirules.problems import Problem, runs
from koirules.problems.record_files import no_such_file, unreadable_file
from koirules.records.large_files import ENDINGS, row_groups
from koirules.runs.work import Piece


def files_of(given: Sequence[str]) -> tuple[tuple[str, ...], tuple[Problem, ...]]:
    """The files of records behind names, folders (those in it whose ending is known) and patterns (`*`, `**`), in order."""
    files: list[str] = []
    problems: list[Problem] = []
    for name in given:
        path = Path(name)
        if path.is_dir():
            inside = (each for each in path.iterdir() if each.suffix.lower() in ENDINGS and each.is_file())
            found = sorted(str(each) for each in inside if not each.name.startswith("."))
            problems += [] if found else [runs.nothing_in_folder(name, ENDINGS)]
        elif path.exists():
            found = [name] if path.suffix.lower() in ENDINGS else []
            problems += [] if found else [runs.not_among_many(name, path.suffix, ENDINGS)]
        elif glob.has_magic(name):
            like = glob.iglob(name, recursive=True)  # noqa: PTH207 - a pattern may begin at the root
            found = sorted(each for each in like if Path(each).suffix.lower() in ENDINGS)
            problems += [] if found else [runs.nothing_like(name, ENDINGS)]
        else:
            found = []
            problems.append(no_such_file(name, None))
        files.extend(found)
    return tuple(dict.fromkeys(files)), tuple(problems)


def pieces_of(files: Sequence[str], most_rows: int = 0) -> tuple[tuple[Piece, ...], tuple[Problem, ...]]:
    """The pieces of files, in order; most_rows: a Parquet file with more is parted between its row groups (0: never)."""
    pieces: list[Piece] = []
    problems: list[Problem] = []
    for file in files:
        if Path(file).suffix.lower() != ".parquet":
            pieces.append(Piece(0, file))
            continue
        try:
            groups = row_groups(Path(file))
        except (OSError, ValueError) as error:
            why = (str(error).splitlines() or [""])[0][:200]
            problems.append(unreadable_file(file, why, "Make the file again, or leave it out."))
            continue
        pieces.extend(_parted(file, groups, most_rows))
    return tuple(evolve(piece, number=number) for number, piece in enumerate(pieces)), tuple(problems)


def _parted(file: str, groups: Sequence[int], most_rows: int) -> list[Piece]:
    if not most_rows or sum(groups) <= most_rows:
        return [Piece(0, file, rows=sum(groups))]
    made: list[Piece] = []
    first = before = rows = 0
    for number, size in enumerate(groups):
        if rows and rows + size > most_rows:
            made.append(Piece(0, file, first, number, before, rows))
            first, before, rows = number, before + rows, 0
        rows += size
    made.append(Piece(0, file, first, len(groups), before, rows))
    return made
