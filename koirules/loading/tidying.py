"""A rule file in the one layout, where it has no problems."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from pathlib import Path

from koirules.language.diagnose.mending import mended_signs
from koirules.language.format.sameness import is_same
from koirules.language.format.writer import tidy
from koirules.language.parse.incremental import Memory
from koirules.language.parse.reader import Read, read_bytes, read_text
from koirules.loading.bases import Shelf, first_link
from koirules.loading.opening import bytes_of, without_collector
from koirules.problems import Problem
from koirules.values import frozen
from koirules.vocabulary.skins import Varieties


@frozen
class Tidied:
    """A rule file in the one layout. text: None where it has problems. mended: how many signs became words."""

    before: bytes
    text: str | None
    problems: tuple[Problem, ...]
    mended: int = 0


def tidied(path: Path, varieties: Varieties, rulesets: Mapping[str, Path]) -> Tidied:
    """A rule file in the one layout, or its problems; what this version cannot work out yet is none."""
    data = bytes_of(path)
    if isinstance(data, Problem):
        return Tidied(b"", None, (data,))
    shelf, chain = Shelf.beside(path, varieties, rulesets), first_link(path)

    def faults(read: Read) -> tuple[Problem, ...]:
        return _faults(shelf.checked(read, path.parent, chain).problems)

    with without_collector():
        return _tidied(data, read_bytes(data, str(path)), faults)


def tidied_text(
    text: str, file: str, varieties: Varieties, rulesets: Mapping[str, Path], folder: Path | None = None
) -> Tidied:
    """The text of a rule file in the one layout, or its problems. folder: where a base given by a path is looked for."""
    shelf = Shelf.of(folder, varieties, rulesets)

    def faults(read: Read) -> tuple[Problem, ...]:
        return _faults(shelf.checked(read, folder).problems)

    with without_collector():
        return _tidied(text.encode(errors="replace"), read_text(text, file), faults)


def tidied_read(
    text: str, read: Read, problems: Callable[[Read], Sequence[Problem]], memory: Memory | None = None
) -> Tidied:
    """A text that was read already in the one layout, or its problems. problems: those of such a reading, its bases in it."""
    return _tidied(text.encode(errors="replace"), read, lambda again: _faults(problems(again)), memory)


def _tidied(
    data: bytes, read: Read, faults: Callable[[Read], tuple[Problem, ...]], memory: Memory | None = None
) -> Tidied:
    better, mended = mended_signs(read)
    if faults(better):
        return Tidied(data, None, faults(read))
    text = tidy(better.rules)
    if not is_same(better, read_text(text, better.rules.file, memory)):
        raise AssertionError(f"{better.rules.file} would not read the same when it is laid out anew")
    return Tidied(data, text, (), mended)


def _faults(problems: Sequence[Problem]) -> tuple[Problem, ...]:
    """The problems that keep a file from being laid out anew: what only this version cannot work out is none."""
    return tuple(problem for problem in problems if not problem.warning)
