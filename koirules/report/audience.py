"""Who a page of results is for: the house, which sees everything, or a customer, who sees the fish that are on offer."""

from __future__ import annotations

from base64 import b64encode
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from koirules.problems import Problem
from koirules.problems import picturing as say
from koirules.values import frozen

if TYPE_CHECKING:
    from koirules.records.about import About
    from koirules.report.page_words import Wording
    from koirules.results.result import Result

MOST_MARK_BYTES = 300_000
"""How large the file of a mark may be: a page carries it along."""

_KINDS = {".svg": "image/svg+xml", ".png": "image/png", ".jpg": "image/jpeg", ".jpeg": "image/jpeg"}


@frozen
class Audience:
    """Who reads a page, and what the house says about itself.

    is_house: whether notes, rounds and all reasons are shown. title: of the page, "" for that of the standard. contact: a line
    below it. mark: the mark of the house as an address that holds it. offered: the names of the grades whose fish a customer
    sees; none given, all but the last grade. occasion, day: what the fish were seen at, instead of the file of records and the
    day of the grading. owners: whether their names may stand there.
    """

    is_house: bool = True
    title: str = ""
    contact: str = ""
    mark: str = ""
    offered: frozenset[str] = frozenset()
    occasion: str = ""
    day: date | None = None
    owners: bool = True

    @property
    def names_owners(self) -> bool:
        """Whether a page names owners: to the house, unless it asked not to."""
        return self.is_house and self.owners

    def shows(self, wording: Wording, result: Result) -> bool:
        """Whether a fish is on the page: a customer sees settled fish of the grades that are offered."""
        if self.is_house:
            return True
        last = tuple(wording.grades)[-1]
        if result.grade is None or result.tied_in is not None:
            return False
        return result.grade in self.offered if self.offered else result.grade != last or len(wording.grades) == 1

    def cautions(self, about: About) -> tuple[str, ...]:
        """The cautions for a reader: a customer decides nothing about what is not kept, and needs none about that."""
        if self.is_house:
            return about.cautions
        subjects = (about.subject, *(part.subject for part in about.parts))
        deciding = {words for one in subjects for kind in one.cautions.values() for words in kind.deciding}
        return tuple(one for one in about.cautions if one not in deciding)


def read_mark(path: Path) -> str | Problem:
    """The mark of a house as an address that holds it; a problem where the file is none that can be shown."""
    kind = _KINDS.get(path.suffix.lower())
    if kind is None:
        return say.mark_unreadable(str(path), f"its name ends in none of {', '.join(_KINDS)}")
    try:
        data = path.read_bytes()
    except OSError as error:
        return say.mark_unreadable(str(path), str(error.strerror or "it cannot be opened").lower())
    if len(data) > MOST_MARK_BYTES:
        return say.mark_unreadable(str(path), f"it is larger than {MOST_MARK_BYTES // 1000} kB")
    begins = {"image/png": b"\x89PNG", "image/jpeg": b"\xff\xd8"}.get(kind)
    if (begins is not None and not data.startswith(begins)) or (begins is None and b"<svg" not in data[:2000]):
        return say.mark_unreadable(str(path), "it does not hold what its name says")
    return f"data:{kind};base64,{b64encode(data).decode()}"
