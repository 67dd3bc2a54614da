"""The pages of a standard: results to read, the page that judges get, and the sheet of what it reads."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from html import escape
from pathlib import Path
from tempfile import TemporaryDirectory

from koirules.api import Standard
from koirules.grading.sample_runs import run_samples
from koirules.problems import Problem
from koirules.records.sheet import write_sheet
from koirules.report.drawer import Drawer
from koirules.report.handbook import Subject, write_handbook
from koirules.report.plugged_drawings import PluggedDrawing
from koirules.report.result_files import About, write_results
from koirules.results.result import Result
from koirules.vocabulary.traits import Variety

_MOST_FISH = 10
"""So many invented fish show whether a page can be made; each has all of its reasons on it."""


def of_pages(standard: Standard, results: Sequence[Result], what: str) -> Iterator[str]:
    """What is wrong with the pages of a standard, a sentence each: one that cannot be made, or lacks what it should show."""
    shown = results[:_MOST_FISH]
    about = About(
        title=standard.title,
        edition=standard.edition,
        variety=standard.variety,
        file=standard.rules.file,
        seal=standard.seal,
        grades=standard.grade_lines,
        stage=standard.rules.stage,
    )
    subject = Subject(standard.grader, run_samples(standard.grader), standard.seal, ())
    read = standard.grader.traits_to_record()
    to_record = {name: trait for name, trait in standard.traits.items() if name in read}
    of_rules = Variety(standard.variety or "", standard.title, to_record)
    with TemporaryDirectory() as name:
        folder = Path(name)
        results_page, judges_page = folder / "results.html", folder / "judges.html"
        titles = [*standard.grade_titles.values(), *(section.title.text for section in standard.rules.sections)]
        yield from _made(f"the page of results by {what}", lambda: write_results(results_page, shown, about))
        yield from _shows(f"the page of results by {what}", results_page, titles)
        yield from _made(f"the page for judges of {what}", lambda: write_handbook(judges_page, subject))
        yield from _shows(f"the page for judges of {what}", judges_page, titles)
        yield from _made(f"the sheet of {what}", lambda: write_sheet(folder / "sheet.xlsx", of_rules, fish=3))


def of_drawing(standard: Standard, records: Sequence[Mapping[str, str]], found: PluggedDrawing) -> Iterator[str]:
    """What is wrong with the drawing of a plugin, a sentence each: tried on invented records, and on one without anything."""
    drawings = {found.drawing.name: found}
    for record in ({}, *records):
        read = standard.reader.read(record, "invented")
        if isinstance(read, tuple):
            continue  # told where it is graded
        drawn: list[str] = []
        for _ in range(2):
            drawer = Drawer(standard.rules, standard.settings, drawings=drawings)
            drawn += [
                view.alone("invented", "drawn", standard.tongue) for view in drawer.views_of(read.readings, "invented")
            ]
            problems = drawer.take_problems()
            if problems:
                yield f"{problems[0].cause} The record: {dict(record)}"
                return
        if drawn[0] != drawn[1]:
            yield f'The drawing "{found.drawing.name}" gives another sketch for the same record: {dict(record)}'
            return


def _made(what: str, make: Callable[[], Problem | None]) -> Iterator[str]:
    try:
        problem = make()
    except Exception as error:  # what a plugin says may break anything
        yield f"{what} cannot be made ({type(error).__name__}: {error})"
        return
    if problem is not None and not problem.warning:
        yield f"{what} cannot be made: {problem.cause}"


def _shows(what: str, page: Path, titles: Sequence[str]) -> Iterator[str]:
    """Whether every title stands on a page that was made, in any case."""
    if not page.is_file():
        return
    text = " ".join(page.read_text(encoding="utf-8").split()).casefold()
    for title in dict.fromkeys(titles):
        if escape(" ".join(title.split()), quote=False).casefold() not in text:
            yield f'{what} does not show "{title}"'
