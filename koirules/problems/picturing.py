"""Problems of pictures: photographs beside the records, and plots."""

from __future__ import annotations

from koirules.problems.extras import to_install
from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import quoted, visible

_MEND = "Save it as a JPEG of a few megapixels beside the records. The page is written without it."


def photographs_need_extra(file: str) -> Problem:
    """Photographs are named, and what makes them smaller is not installed."""
    return Problem(
        "extra-missing",
        Cell(file, None, "photo"),
        "Photographs on a page need the extra `pictures`, which is not installed; the page is written without them.",
        f"Install it: {to_install('pictures')}.",
        warning=True,
    )


def photograph_outside(file: str, row: int, photo: str) -> Problem:
    """A photograph is named that does not lie in the folder of the records."""
    return Problem(
        "photo-outside",
        Cell(file, row, "photo"),
        f"{quoted(photo)} does not lie in the folder of the records, so it is not opened.",
        "Put photographs beside the records, or in a folder there, and name them from there: photos/K01.jpg.",
        warning=True,
    )


def photograph_not_there(file: str, row: int, photo: str, meant: str | None) -> Problem:
    """A photograph is named that is not there."""
    guess = f"Did you mean {quoted(meant)}? " if meant else ""
    return Problem(
        "no-such-photo",
        Cell(file, row, "photo"),
        f"There is no file {quoted(photo)} beside the records.",
        f"{guess}Check its name and folder. The page is written without it.",
        warning=True,
    )


def photograph_unreadable(file: str, row: int, photo: str, why: str) -> Problem:
    """A photograph that cannot be shown."""
    return Problem(
        "photo-unreadable",
        Cell(file, row, "photo"),
        f"{quoted(photo)} cannot be shown: {visible(why)}.",
        _MEND,
        warning=True,
    )


def photographs_left_out(file: str, number: int, most_bytes: int) -> Problem:
    """The photographs of a page together are more than a phone would open."""
    return Problem(
        "photos-left-out",
        Cell(file, None, "photo"),
        f"A page holds {most_bytes // 1_000_000} MB of photographs; the last {number:,} are left out.",
        "Grade them in parts for their pages.",
        warning=True,
    )


def plot_needs_extra(file: str) -> Problem:
    """A plot is asked for that is made with a library that is not installed."""
    return Problem(
        "extra-missing",
        Cell(file),
        "A plot as PNG needs the extra `pictures`, which is not installed.",
        f"Write an .svg, which needs nothing, or install it: {to_install('pictures')}.",
    )


def no_points_to_plot(file: str, *, fish: bool) -> Problem:
    """There is no score to plot."""
    what = "No section of this standard gives points" if fish else "There is no record"
    return Problem(
        "nothing-to-plot",
        Cell(file),
        f"{what}, so there is nothing to plot.",
        "Leave --plot out; a page or table of results has what there is.",
    )


def too_many_to_plot(file: str, fish: int, most: int) -> Problem:
    """There are more fish than bars that can be told apart."""
    return Problem(
        "too-many-fish",
        Cell(file),
        f"There are {fish:,} records, but a plot goes to {most:,}: nobody could tell their bars apart.",
        "Grade them in parts for their plots, or write a .csv file of them all.",
    )


def plot_of_whole_files(file: str) -> Problem:
    """A plot is asked for, of records that are graded as whole files."""
    return Problem(
        "not-of-whole-files",
        Cell(file),
        "A plot shows one batch, and not records that are graded as whole files.",
        "Leave --plot out, or grade one smaller file of records.",
    )


def letters_not_drawn(file: str, letters: str) -> Problem:
    """A plot was written with boxes in place of letters."""
    return Problem(
        "letters-not-drawn",
        Cell(file),
        f"No font was found here that has {quoted(letters)}: boxes stand in their place.",
        "Write an .svg, for which whoever shows it chooses the fonts, or install a font that has them.",
        warning=True,
    )


def mark_unreadable(file: str, why: str) -> Problem:
    """The mark of a house that cannot be shown."""
    return Problem(
        "mark-unreadable",
        Cell(file),
        f"The mark {quoted(file)} cannot be shown: {visible(why)}.",
        "Name an SVG, PNG or JPEG file of at most 300 kB.",
    )
