"""A language to speak in: texts, lists, numbers and days, as its catalogues have them, and in English where they have not."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from datetime import date
from functools import cache
from importlib.util import find_spec
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from attrs import evolve, field

from koirules.languages.catalogue import Catalogue, CatalogueError, read_catalogue
from koirules.values import frozen

if TYPE_CHECKING:
    from importlib.metadata import EntryPoints

_T = TypeVar("_T")

_HERE = Path(__file__).parent
_CODE = re.compile("[a-z]{2,3}")
_NAME = re.compile(r"\{(\w+)\}")

_TEENS = range(11, 14)
_MONTHS = (
    *("January", "February", "March", "April", "May", "June"),
    *("July", "August", "September", "October", "November", "December"),
)


def to_say(text: str) -> str:
    """Marks a text that is looked up in the catalogue later, where it stands in a table."""
    return text


@frozen
class Tongue:
    """A language, by its two-letter code; None for English.

    speaks: whether the tool itself has a catalogue of it; without one a page stays English, with titles of the rule file in
    the language. own: what the catalogues beside rule files have.
    """

    language: str | None = None
    speaks: bool = True
    _texts: Catalogue = field(factory=Catalogue, repr=False)

    @property
    def page(self) -> str:
        """The code of the language in which a page is written."""
        return self.language if self.language and self.speaks else "en"

    @property
    def foreign(self) -> str | None:
        """The code of the language that titles have on a page in English; None where all is of one language."""
        return None if self.speaks else self.language

    def __call__(self, text: str, /, **values: object) -> str:
        """A text of the tool, with what stands in its braces filled in."""
        return _filled(self.of(text), values)

    def of(self, text: str, context: str = "") -> str:
        """A text in this language, or as it is. context: what tells it from another text that reads the same in English."""
        return self.found(text, context) or text

    def found(self, text: str, context: str = "") -> str | None:
        """A text in this language, None where it has no translation."""
        texts = self._texts.texts
        forms = (texts.get((context, text)) if context else None) or texts.get(("", text))
        return None if forms is None else forms[0]

    def plural(self, one: str, many: str, number: int, /, **values: object) -> str:
        """A text for so many, with `{number}` in it: the translation of `one`, which has a form for each plural."""
        forms = self._texts.texts.get(("", one))
        forms = forms or (one, many)
        text = forms[0] if number == 1 or len(forms) == 1 else forms[1]
        return _filled(text, {"number": self.whole(number), **values})

    def counted(self, one: str, many: str, number: int) -> str:
        """How many of something: `1 pot`, `1,200 pots`."""
        return self.plural(f"{{number}} {one}", f"{{number}} {many}", number)

    def pieces(self, text: str, /, **values: _T) -> Iterator[str | _T]:
        """A text in pieces: what stands between its braces, and the values in their place."""
        for place, piece in enumerate(_parts(self.of(text))):
            if place % 2:
                yield values[piece]
            elif piece:
                yield piece

    def joined(self, parts: Iterable[str], joint: str = ", ", context: str = "") -> str:
        """Parts one after the other: `a, b`. context: what tells the joint from another one."""
        return self.of(joint, context).join(parts)

    def listed(self, parts: Sequence[str], last: str = " and ") -> str:
        """A list in a sentence: `a, b and c`."""
        if len(parts) < 2:
            return "".join(parts)
        return f"{self.joined(parts[:-1])}{self.of(last)}{parts[-1]}"

    def sentence(self, text: str) -> str:
        """A text as a sentence of its own: the first letter a capital, a full stop at the end."""
        return f"{text[:1].upper()}{text[1:]}{self.of('.', 'end of a sentence')}" if text else ""

    def figure(self, text: str) -> str:
        """A number as it is written in this language: `3,5` in German."""
        if self.language is None:
            return text
        point, comma = self.of(".", "decimal sign"), self.of(",", "between thousands")
        return text.translate({ord("."): point, ord(","): comma})

    def whole(self, number: int) -> str:
        """A whole number: `1,200`."""
        return self.figure(f"{number:,}")

    def ordinal(self, place: int) -> str:
        """A place as it is said: `1st`, `22nd`."""
        if self.language is not None:
            return self("{number}th", number=self.whole(place))
        ending = "th" if place % 100 in _TEENS else {1: "st", 2: "nd", 3: "rd"}.get(place % 10, "th")
        return f"{place}{ending}"

    def quantity(self, text: str) -> str:
        """A number with its unit behind it: `3.5 weeks`."""
        number, space, symbol = text.partition(" ")
        unit = self.of(symbol, "unit") if symbol else ""
        return f"{self.figure(number)}{space if unit.isascii() else ''}{unit}"

    def stretch(self, low: str, high: str) -> str:
        """From one end to the other: `3 cm to 5 cm`."""
        return self("{low} to {high}", low=low, high=high)

    def day(self, day: date) -> str:
        """A day: `18 April 2026`."""
        return self("{day} {month} {year}", day=str(day.day), month=self.of(_MONTHS[day.month - 1]), year=str(day.year))

    def also(self, files: Iterable[Path]) -> Tongue:
        """The same with the catalogues of some files, as far as they are there. Raises CatalogueError."""
        if self.language is None:
            return self
        found = Catalogue()
        for file in files:
            if file.is_file():
                found |= read_catalogue(file)
        return evolve(self, texts=self._texts | found) if found.texts else self

    def knowing(self, texts: Mapping[str, str]) -> Tongue:
        """The same with more texts, where its catalogues have none."""
        more = Catalogue({("", text): (said,) for text, said in texts.items()})
        return evolve(self, texts=more | self._texts) if texts else self


ENGLISH = Tongue()
"""The language in which everything is written."""


def beside(files: Iterable[str], language: str) -> list[Path]:
    """The catalogues of files: `standard.ja.po` for `standard.koi`. There are none for what is no code of a language."""
    if not _CODE.fullmatch(language):
        return []
    return [Path(file).with_suffix(f".{language}.po") for file in files if Path(file).name]


def languages_known() -> tuple[str, ...]:
    """The languages that the tool speaks beside English."""
    return tuple(sorted(path.stem for path in _HERE.glob("*.po")))


@cache
def said_by_the_tool() -> tuple[tuple[str, str], ...]:
    """Every text that the tool says, each behind its context; `texts.pot` has them, made from the source."""
    return tuple(read_catalogue(_HERE / "texts.pot", untranslated=True).texts)


@cache
def tongue_of(language: str | None) -> Tongue:
    """A language, with what the tool and the vocabularies of installed plugins have of it."""
    if language is None or language == "en":
        return ENGLISH
    if not _CODE.fullmatch(language):
        return Tongue(language, False)
    found = Catalogue()
    for folder in _folders():
        path = folder / f"{language}.po"
        try:
            found |= read_catalogue(path)
        except CatalogueError:
            continue  # most plugins have none, and one that is broken is no reason to grade nothing
    return Tongue(language, language in languages_known(), found)


def entry_points(group: str) -> EntryPoints:
    """Those of a group, of all distributions. Most who import this room ask for none, and what lists them is large."""
    from importlib import metadata

    return metadata.entry_points(group=group)


def _folders() -> Iterator[Path]:
    """Where catalogues are: those of vocabularies first, so that nothing of a plugin changes what the tool says."""
    packages = dict.fromkeys(entry.module.partition(".")[0] for entry in entry_points(group="koirules"))
    for name in packages:
        spec = find_spec(name) if name != "koirules" else None
        yield from map(Path, (spec.submodule_search_locations or ()) if spec is not None else ())
    yield _HERE.parent / "builtin"
    yield _HERE


def _filled(text: str, values: Mapping[str, object]) -> str:
    parts = _parts(text)
    if len(parts) == 1:
        return text
    return "".join(str(values.get(part, "")) if place % 2 else part for place, part in enumerate(parts))


@cache
def _parts(text: str) -> tuple[str, ...]:
    """A text in pieces: what stands between its braces, and the names in them."""
    return tuple(_NAME.split(text))
