"""Results of a batch into a file, whatever its format."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from koirules.problems import Problem
from koirules.problems.saving import too_many_fish, too_many_rows, unknown_output_ending
from koirules.records.about import About
from koirules.records.csv_results import write_csv
from koirules.records.json_results import write_json
from koirules.records.not_graded import Row
from koirules.records.plugged_formats import plugged_formats, write_plugged
from koirules.records.result_sheets import sheets_of
from koirules.records.workbook import MOST_ROWS
from koirules.records.writing import check_folder, write_beside
from koirules.records.xlsx_results import write_xlsx
from koirules.report.audience import Audience
from koirules.report.page_pictures import Pictures
from koirules.report.results_page import MOST_FISH, write_page
from koirules.results.result import Result

__all__ = ["WRITERS", "About", "check_result_path", "is_page", "result_endings", "write_results"]

WRITERS: dict[str, Callable[[Path, Sequence[Row], About], None]] = {
    ".csv": write_csv,
    ".xlsx": write_xlsx,
    ".json": write_json,
}
"""The writer of each ending of a table."""

_PAGE = ".html"


def result_endings() -> tuple[str, ...]:
    """What results of a batch may end in, the formats of plugins last."""
    return (*WRITERS, _PAGE, *plugged_formats().writers)


def is_page(path: Path) -> bool:
    """Whether results go there as a page to read."""
    return path.suffix.lower() == _PAGE


def check_result_path(path: Path) -> Problem | None:
    """Say what is wrong with a path for results, as far as that shows before anything is graded."""
    ending = path.suffix.lower()
    if ending not in WRITERS and ending != _PAGE and ending not in plugged_formats().writers:
        return unknown_output_ending(str(path), path.suffix, result_endings())
    return check_folder(path)


def write_results(
    path: Path,
    results: Sequence[Row],
    about: About,
    pictures: Pictures | None = None,
    audience: Audience | None = None,
) -> Problem | None:
    """Write results in the format that the ending of the path names; a problem says why nothing was written.

    pictures: what a page shows of the fish. audience: who it is for. Other formats have no place for them.
    """
    problem = check_result_path(path)
    if problem is not None:
        return problem
    ending = path.suffix.lower()
    if ending == ".xlsx" and len(results) >= MOST_ROWS:
        return too_many_rows(str(path), len(results), MOST_ROWS - 1)
    if is_page(path):
        return _write_page(path, results, about, pictures, audience)
    if ending in WRITERS:
        return write_beside(path, lambda passing: WRITERS[ending](passing, results, about))
    writer, plugin = plugged_formats().writers[ending]
    if writer.most_rows is not None and len(results) >= writer.most_rows:
        return too_many_rows(str(path), len(results), writer.most_rows - 1)
    return write_plugged(path, writer, plugin, sheets_of(results, about))


def _write_page(
    path: Path, results: Sequence[Row], about: About, pictures: Pictures | None, audience: Audience | None
) -> Problem | None:
    graded = [one for one in results if isinstance(one, Result)]
    if len(graded) > MOST_FISH:
        return too_many_fish(str(path), len(graded), MOST_FISH)
    return write_beside(path, lambda passing: write_page(passing, results, about, pictures, audience))
