"""The rule files that somebody has open: each with its text as it stands, saved or not, and what the last look at it told."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from threading import Lock

from attrs import evolve

from koirules.editing.lines import Lines
from koirules.editing.meaning import Meaning
from koirules.editing.names import Use, uses_in
from koirules.language.parse.incremental import Memory
from koirules.language.parse.reader import Read, read_bytes, read_text
from koirules.language.statements import Statement
from koirules.loading.bases import MOST_BASES, Shelf, first_link
from koirules.loading.opening import bytes_of, without_collector
from koirules.loading.tidying import Tidied, tidied_read
from koirules.plugins import Registry, load_registry
from koirules.problems import Problem
from koirules.standard.checked import Checked, Known
from koirules.values import frozen

_Used = dict[int, tuple[Statement, tuple[Use, ...]]]
"""The names of each statement, by its identity; the statement is kept, so that no other can have that."""


def _listed(used: _Used) -> list[Use]:
    return [use for _, found in used.values() for use in found]


class Page:
    """A rule file that is open. path: its real file, None where it has none yet; file: what problems call it."""

    def __init__(self, file: str, path: Path | None, text: str) -> None:
        self.file = file
        self.path = path
        self._memory = Memory()
        self._lock = Lock()
        self._used: _Used = {}
        self.put(text)

    def put(self, text: str) -> None:
        """Take a new text."""
        self.lines = Lines(text)
        self._read: tuple[Lines, Read] | None = None

    @property
    def text(self) -> str:
        """The text as it stands."""
        return self.lines.text

    @property
    def read(self) -> Read:
        """The text as it reads now. Whoever asks first waits for it; any thread may."""
        return self.read_of(self.lines)

    def read_of(self, lines: Lines) -> Read:
        """A text of this page as it reads."""
        with self._lock:
            if self._read is None or self._read[0] is not lines:
                with without_collector():
                    self._read = (lines, read_text(lines.text, self.file, self._memory))
            return self._read[1]

    @property
    def memory(self) -> Memory:
        """What the statements were read as, for a reading that is only tried."""
        return self._memory.copy()

    @property
    def uses(self) -> list[Use]:
        """Every name of the text as it reads now."""
        read = self.read
        with self._lock:
            self._used = self._used_in(read)
            return _listed(self._used)

    def uses_in(self, read: Read) -> list[Use]:
        """Every name of a text that was read with the memory of this one."""
        with self._lock:
            return _listed(self._used_in(read))

    def _used_in(self, read: Read) -> _Used:
        """The names of each statement; of one that has not changed as they were."""
        lines = read.rules.text.split("\n")
        return {
            id(each): self._used.get(id(each)) or (each, tuple(uses_in(each, lines))) for each in read.rules.statements
        }


@frozen
class Look:
    """What a look at a page told. lines: its text then. leans_on: the real files of its bases."""

    lines: Lines
    checked: Checked
    meaning: Meaning
    leans_on: frozenset[Path]


class Desk:
    """All pages that are open. registry: the plugins to use, by default all that are installed, found at the first look."""

    def __init__(self, registry: Registry | None = None) -> None:
        self._registry = registry
        self._read_base = lru_cache(maxsize=MOST_BASES)(read_bytes)
        self.pages: dict[str, Page] = {}
        self._looks: dict[str, Look] = {}

    @property
    def registry(self) -> Registry:
        """The plugins."""
        return load_registry() if self._registry is None else self._registry

    def open(self, key: str, path: Path | None, text: str) -> Page:
        """Put a page on the desk under a key of the caller's."""
        real = None if path is None else path.resolve()
        self._looks.pop(key, None)
        self.pages[key] = Page(key if real is None else str(real), real, text)
        return self.pages[key]

    def close(self, key: str) -> None:
        """Take a page away."""
        self.pages.pop(key, None)
        self._looks.pop(key, None)

    def last_look(self, key: str) -> Look | None:
        """What the last look at a page told, at an older text perhaps."""
        return self._looks.get(key)

    def look(self, key: str) -> Look:
        """Look at a page: check it with its bases, those that are open as they stand here. Any thread may."""
        page = self.pages[key]
        lines = page.lines
        before = self._looks.get(key)
        read = page.read_of(lines)
        leans_on: set[Path] = set()
        with without_collector():
            checked = self._checked(page, read, leans_on)
        known: Known | None = checked.known or (None if before is None else before.meaning.known)
        look = Look(lines, checked, Meaning(self.registry.varieties, read, checked, known), frozenset(leans_on))
        if self.pages.get(key) is page:
            self._looks[key] = look
        return look

    def leaning_on(self, path: Path) -> list[str]:
        """The pages that had a file among their bases when they were looked at."""
        return [key for key, look in self._looks.items() if path in look.leans_on]

    def tidied(self, key: str) -> Tidied:
        """A page in the one layout, or the problems that keep it from that."""
        page, look = self.pages[key], self._looks.get(key)
        lines, read = page.lines, page.read

        def problems(again: Read) -> tuple[Problem, ...]:
            if again is read and look is not None and look.lines is lines:
                return look.checked.problems
            return self._checked(page, again, set()).problems

        with without_collector():
            return tidied_read(lines.text, read, problems, page.memory)

    def problems_of(self, key: str, read: Read) -> tuple[Problem, ...]:
        """The problems that a page would have if it read like this."""
        with without_collector():
            return self._checked(self.pages[key], read, set()).problems

    def _checked(self, page: Page, read: Read, leans_on: set[Path]) -> Checked:
        def opened(path: Path) -> bytes | Problem:
            leans_on.add(path)
            page = next((each for each in list(self.pages.values()) if each.path == path), None)
            return bytes_of(path) if page is None else page.text.encode(errors="replace")

        if page.path is None:
            return Shelf.of(None, self.registry.varieties, self.registry.rulesets).checked(read, None)
        shelf = evolve(
            Shelf.beside(page.path, self.registry.varieties, self.registry.rulesets),
            opened=opened,
            read=self._read_base,
        )
        return shelf.checked(read, page.path.parent, first_link(page.path))
