"""Writes the page of a standard in the format that the ending of the file names."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from koirules.languages import Tongue
from koirules.problems import Problem
from koirules.problems.saving import unknown_output_ending
from koirules.records.writing import check_folder, write_beside
from koirules.report.handbook.as_html import html_of
from koirules.report.handbook.as_markdown import markdown_of
from koirules.report.handbook.blocks import Block
from koirules.report.handbook.page import Subject, blocks_of
from koirules.report.results_page import sealed

WRITERS: dict[str, Callable[[Sequence[Block], Tongue, str], str]] = {".html": html_of, ".md": markdown_of}
"""What makes the text of a page, by the ending of its file."""


def check_handbook_path(path: Path) -> Problem | None:
    """Say what is wrong with a path for a page, as far as that shows before it is made."""
    if path.suffix.lower() not in WRITERS:
        return unknown_output_ending(str(path), path.suffix, tuple(WRITERS))
    return check_folder(path)


def write_handbook(path: Path, subject: Subject) -> Problem | None:
    """Write the page of a standard; a problem says why nothing was written. The same standard gives the same bytes."""
    problem = check_handbook_path(path)
    if problem is not None:
        return problem
    tongue = subject.grader.reasoner.teller.plain.tongue
    rules, plain = subject.grader.rules, subject.grader.reasoner.teller.plain
    foot = sealed(plain.of(rules.title), rules.edition, subject.seal, tongue)
    text = WRITERS[path.suffix.lower()](blocks_of(subject), tongue, foot)
    return write_beside(path, lambda passing: _write(passing, text))


def _write(path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8", newline="\n")
