"""Writes the page of a standard, or the book of a show, in the format that the ending of the file names."""

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
from koirules.report.handbook.show import Show, show_blocks
from koirules.report.results_page import sealed, sealed_together

WRITERS: dict[str, Callable[[Sequence[Block], Tongue, str], str]] = {".html": html_of, ".md": markdown_of}
"""What makes the text of a page, by the ending of its file."""


def check_handbook_path(path: Path) -> Problem | None:
    """Say what is wrong with a path for a page, as far as that shows before it is made."""
    if path.suffix.lower() not in WRITERS:
        return unknown_output_ending(str(path), path.suffix, tuple(WRITERS))
    return check_folder(path)


def write_handbook(path: Path, subject: Subject) -> Problem | None:
    """Write the page of a standard; a problem says why nothing was written. The same standard gives the same bytes."""
    tongue = subject.grader.reasoner.teller.plain.tongue
    rules, plain = subject.grader.rules, subject.grader.reasoner.teller.plain
    foot = sealed(plain.of(rules.title), rules.edition, subject.seal, tongue)
    return _write(path, blocks_of(subject), tongue, foot)


def write_show_handbook(path: Path, show: Show) -> Problem | None:
    """Write the handbook of a whole show; a problem says why nothing was written. The same show gives the same bytes."""
    tongue, told = show.tongue, []
    for one in show.chapters:
        voice = one.subject.voice()
        told.append(sealed(voice.plain.of(voice.rules.title), voice.rules.edition, one.subject.seal, tongue))
    foot = tongue.joined([show.title, sealed_together(told, tongue)], "; ")
    return _write(path, show_blocks(show), tongue, foot)


def _write(path: Path, blocks: Sequence[Block], tongue: Tongue, foot: str) -> Problem | None:
    problem = check_handbook_path(path)
    if problem is not None:
        return problem
    text = WRITERS[path.suffix.lower()](blocks, tongue, foot)
    return write_beside(path, lambda passing: _save(passing, text))


def _save(path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8", newline="\n")
