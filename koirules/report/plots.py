"""The plot of a batch into a file, whatever its format."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from koirules.problems import Problem
from koirules.problems.picturing import letters_not_drawn, no_points_to_plot, plot_needs_extra, too_many_to_plot
from koirules.problems.saving import unknown_output_ending
from koirules.records.about import About
from koirules.records.not_graded import NotGraded, Row, by_standard
from koirules.records.writing import check_folder, write_beside
from koirules.report.photographs import has_pillow
from koirules.report.plot import plot_of
from koirules.report.plot_marks import Drawing
from koirules.report.plot_png import letters_without_font, write_png
from koirules.report.plot_rows import plot_of_rows
from koirules.report.plot_svg import write_svg
from koirules.report.score_bins import most_points

PLOTTERS: dict[str, Callable[[Path, Drawing], None]] = {".svg": write_svg, ".png": write_png}
"""The writer of each ending."""

MOST_FISH = 10_000
"""How many fish a row of a plot goes to: beyond it a bar is far narrower than a pixel."""


def check_plot_path(path: Path) -> Problem | None:
    """Say what is wrong with a path for a plot, as far as that shows before anything is graded."""
    ending = path.suffix.lower()
    if ending not in PLOTTERS:
        return unknown_output_ending(str(path), path.suffix, tuple(PLOTTERS))
    if ending == ".png" and not has_pillow():
        return plot_needs_extra(str(path))
    return check_folder(path)


def write_plot(path: Path, results: Sequence[Row], about: About) -> Problem | None:
    """Plot a batch in the format that the ending of the path names.

    A problem says why nothing was written; one that is a warning, what is not well in what was.
    """
    problem = check_plot_path(path)
    if problem is not None:
        return problem
    parts = list(by_standard(results, about))
    if not any(most_points(fish) for _, fish in parts):
        return no_points_to_plot(str(path), fish=any(fish for _, fish in parts))
    largest = max(len(fish) for _, fish in parts)
    if largest > MOST_FISH:
        return too_many_to_plot(str(path), largest, MOST_FISH)
    ending = path.suffix.lower()
    left = sum(isinstance(one, NotGraded) for one in results)
    drawing = plot_of_rows(parts, about.records, left) if about.parts else plot_of(parts[0][1], about)
    problem = write_beside(path, lambda passing: PLOTTERS[ending](passing, drawing))
    if problem is None and ending == ".png" and (missing := letters_without_font(drawing)):
        return letters_not_drawn(str(path), missing)
    return problem
