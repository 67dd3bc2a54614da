"""Problems of runs over whole files."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.extras import to_install
from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import in_words


def nothing_in_folder(folder: str, endings: Sequence[str]) -> Problem:
    """A folder of records holds none."""
    return Problem(
        "no-record-files",
        Cell(folder),
        f"No file in this folder ends in {', '.join(endings)}.",
        "Give the folder that holds the records, or the files themselves.",
    )


def nothing_like(pattern: str, endings: Sequence[str]) -> Problem:
    """A pattern fits no file of records."""
    return Problem(
        "no-record-files",
        Cell(pattern),
        f"No file that ends in {', '.join(endings)} fits this pattern.",
        "Check its folder, and put it in quotation marks, so that it comes here as it is.",
    )


def not_among_many(file: str, ending: str, endings: Sequence[str]) -> Problem:
    """A file that is read by itself alone is given among several."""
    return Problem(
        "one-file-alone",
        Cell(file),
        f"A file that ends in {ending or 'nothing'} is not read among several files.",
        f"Give it alone, or save it so that it ends in {', '.join(endings)}.",
    )


def needs_frames(what: str) -> Problem:
    """What large files need is not installed."""
    return Problem(
        "extra-missing",
        Cell(what),
        "Large files and Parquet need the extra `frames`, which is not installed.",
        f"Install it: {to_install('frames')}.",
    )


def folder_is_there(folder: str) -> Problem:
    """The folder for results is there already."""
    return Problem(
        "unwritable",
        Cell(folder),
        "There is a file or folder of this name already, and results are never mixed with others.",
        "Name another folder, or move that one away.",
    )


def results_among_records(file: str) -> Problem:
    """The results would take the place of records, or stand among them."""
    return Problem(
        "results-among-records",
        Cell(file),
        "The results would stand among the records, and be taken for records the next time.",
        "Give a name in another folder.",
    )


def no_earlier_looks(file: str) -> Problem:
    """A standard that asks for the look before, over whole files."""
    return Problem(
        "no-earlier-looks",
        Cell(file),
        "The standard asks for the look before (`earlier`), but whole files are read some rows at a time, and looks at one "
        "fish may lie far apart.",
        "Put the looks into one file of up to 20 MB, or grade a frame of them in the library (`grade_frame`).",
    )


def no_looks(file: str) -> Problem:
    """Numbered looks in whole files, or a standard that judges at a look or carries forward."""
    return Problem(
        "no-looks",
        Cell(file),
        "The looks of one sorting (`look`, `at look`, `carry forward`) belong together, but whole files are read some rows at a "
        "time, and the looks at one of them may lie far apart.",
        "Put the looks into one file of up to 20 MB.",
    )


def not_of_whole_files(file: str, ending: str, endings: Sequence[str]) -> Problem:
    """A format for batches is asked for, of records that are graded as whole files."""
    return Problem(
        "not-of-whole-files",
        Cell(file),
        f"A file that ends in {ending} is written of one batch, and not of records that are graded as whole files.",
        f"Choose a name that ends in {in_words(endings)}, or grade one smaller file of records.",
    )


def nothing_left() -> Problem:
    """Every file was left out."""
    return Problem(
        "nothing-graded",
        Cell("records"),
        "None of the files could be graded, so there is nothing to write.",
        "See the problems above.",
    )


def one_file_of_results(file: str) -> Problem:
    """Several files of results are asked for, of a run that writes one."""
    return Problem(
        "one-result-file",
        Cell(file),
        "Records that are graded as whole files go into one file of results, or into one folder.",
        "Give --out once: a name that ends in .csv or .parquet, or a new folder.",
    )
