"""Problems of a panel of judges, in rule files and in records."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from pathlib import Path

from koirules.problems.problem import Cell, Place, Problem
from koirules.problems.quoting import in_words, quoted
from koirules.problems.recording import cell


def panel_twice(place: Place, first: str, stands: Place) -> Problem:
    """A second panel."""
    of = "" if stands.file == place.file else f" of {Path(stands.file).name}"
    return Problem(
        "panel-twice",
        place,
        f'A standard has one panel, and "{first}" stands on line {stands.line}{of} already.',
        f"Keep one of them. To change that of a base, write `replace panel {first} …`.",
    )


def no_number_of_judges(place: Place, value: Decimal, least: int, most: int) -> Problem:
    """A number of judges that there cannot be, or that asks for nothing."""
    return Problem(
        "number-of-judges",
        place,
        f"{value} is no number of judges to ask for: it is a whole number from {least} to {most}.",
        f"Write {least} or more, or leave the part out.",
    )


def too_few_judges(place: Place, judges: int, needed: int, named_by: int | None) -> Problem:
    """Fewer judges are enough than the rest of the statement needs."""
    why = (
        f"places are named by at least {named_by}"
        if named_by == needed
        else "the highest and the lowest are left out, so that nothing would be left of two"
    )
    return Problem(
        "too-few-judges",
        place,
        f"{judges} judges are enough here, but {why}.",
        f'Write "{needed}".',
    )


def no_panel(file: str, row: int | None, fish: str, judges: Sequence[str], rules: str) -> Problem:
    """Records of several judges, and rules that do not say how they are put together. rules: their file."""
    page = Path(rules).name if Path(rules).name != "standard.koi" else "/".join(Path(rules).parts[-2:])
    return Problem(
        "no-panel",
        cell(file, row, "judge"),
        f"{quoted(fish)} was judged by {in_words([quoted(one) for one in judges], 'and')}, but {quoted(page)} does not say "
        "how their records are put together.",
        "Write a statement such as `panel judges trait by trait` into the rule file, or give one record of each fish.",
    )


def judges_without_fish() -> Problem:
    """A frame that names judges and no fish."""
    return Problem(
        "judges-without-fish",
        Cell("frame", None, "judge"),
        "The frame names judges, but no fish, so that nobody knows which records are of the same one.",
        "Add a column `fish`.",
    )


def panel_of_whole_files(file: str) -> Problem:
    """A column of judges in whole files."""
    return Problem(
        "panel-of-whole-files",
        Cell(file),
        "The records of one fish by several judges (`judge`) belong together, but whole files are read some rows at a time, and "
        "these rows may lie far apart.",
        "Put the judges' records into one file of up to 20 MB.",
    )


def one_recorder(file: str, row: int | None, fish: str) -> Problem:
    """Records of judges where each fish has one record."""
    return Problem(
        "one-recorder",
        cell(file, row, "judge"),
        f"{quoted(fish)} was recorded by judges, but here each fish has one record, and theirs would be lost.",
        "Give a file with one row of each fish, without the column `judge`.",
    )
