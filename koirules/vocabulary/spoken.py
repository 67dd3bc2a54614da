"""A variety as people write it into a cell or a table: `Taisho Sanke`, `showa with ginrin`, `gin rin showa`, `Shiro Utsuri`."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import lru_cache
from unicodedata import normalize

from attrs import field

from koirules.values import frozen
from koirules.vocabulary.plain_text import MARKS_FOR_UNKNOWN, folded, plain
from koirules.vocabulary.skins import Varieties, name_with
from koirules.vocabulary.traits import Variety

_PARTING = re.compile(r"\s+with\s+|\s+and\s+|[,()+&/]", re.IGNORECASE)
_BETWEEN_WORDS = re.compile(r"[\s_-]+")
_MOST_WORDS = 8  # so many that nobody names a variety with more, and few enough to try every way to part them
_OVER_LETTERS = re.compile("[\u0300-\u036f]")


@frozen
class Said:
    """A variety and the skins over it; two are alike whatever the order in which the skins were named.

    form: which of such fish it is, where that was said by a name of its own (`shiro_utsuri`), "" otherwise. It is the same
    variety, so that two are alike whatever their forms.
    """

    variety: str
    skins: frozenset[str] = frozenset()
    form: str = field(default="", eq=False)

    @property
    def name(self) -> str:
        """As a header has it, skins in the order of the alphabet."""
        return name_with(self.variety, sorted(self.skins))


def known(text: str) -> str:
    """What is written in a cell, "" where it is a mark for what is not known."""
    return "" if plain(text).casefold() in MARKS_FOR_UNKNOWN else text.strip()


def said(text: str, varieties: Varieties) -> Said | None:
    """The variety that a text names, skins before or behind it; None where it names none, or two.

    It goes by names, titles, what else people write for a variety or a skin, and names of forms; case, hyphens and the
    marks over long vowels (`Shōwa`) are passed over. A word that two varieties have is none.
    """
    words = _words_of(varieties)
    plainly = plain(text)
    if _word(plainly) in words.bases:
        return words.bases[_word(plainly)]
    found: list[Said] = []
    for part in _PARTING.split(plainly):
        if part.strip():
            read = _part(_BETWEEN_WORDS.split(part.strip()), words)
            if read is None:
                return None
            found.append(read)
    named = [one for one in found if one.variety]
    over = frozenset[str]().union(*(one.skins for one in found))
    return Said(named[0].variety, over, named[0].form) if len(named) == 1 else None


def skin_said(text: str, varieties: Varieties) -> str | None:
    """The skin that a text names, None where it names none."""
    found = _words_of(varieties).skins.get(_word(plain(text)))
    return None if found is None else next(iter(found.skins))


def every_word(varieties: Varieties) -> tuple[str, ...]:
    """All words that a variety can be named by, to guess from what was meant."""
    return tuple(_words_of(varieties).bases)


@frozen
class _Words:
    """What each word says; a skin by itself has the variety ""."""

    bases: Mapping[str, Said]
    skins: Mapping[str, Said]


def _part(words: Sequence[str], known: _Words) -> Said | None:
    """A variety ("" where there is none) and skins that words in a row name."""
    whole = _word(" ".join(words))
    read = known.bases.get(whole) or known.skins.get(whole)
    if read is not None:
        return read
    for cut in range(1, len(words) if len(words) <= _MOST_WORDS else 0):
        one, other = (_part(part, known) for part in (words[:cut], words[cut:]))
        if one is not None and other is not None and not (one.variety and other.variety):
            return Said(one.variety or other.variety, one.skins | other.skins, one.form or other.form)
    return None


@lru_cache(maxsize=4)
def _words_of(varieties: Varieties) -> _Words:
    bases = _by_word(varieties.values(), lambda name, form: Said(name, form=form))
    return _Words(bases, _by_word(varieties.skins.values(), lambda name, _: Said("", frozenset({name}))))


def _by_word(known: Iterable[Variety], make: Callable[[str, str], Said]) -> dict[str, Said]:
    """What each word says: a name goes before a title, a title before other words; what two share says nothing."""
    listed = list(known)
    names = {_word(one.name): make(one.name, "") for one in listed}
    titles = _unshared((_word(one.title), make(one.name, "")) for one in listed)
    others = [(_word(text), make(one.name, "")) for one in listed for text in one.also]
    forms = [(_word(text), make(one.name, _word(text))) for one in listed for text in one.forms]
    return _unshared([*forms, *others]) | titles | names


def _unshared(pairs: Iterable[tuple[str, Said]]) -> dict[str, Said]:
    found: dict[str, set[Said]] = {}
    for word, meant in pairs:
        found.setdefault(word, set()).add(meant)
    return {word: next(iter(meant)) for word, meant in found.items() if word and len(meant) == 1}


def _word(text: str) -> str:
    """A word in the form in which words are compared, without marks over letters."""
    if text.isascii():
        return folded(text)
    return folded(normalize("NFC", _OVER_LETTERS.sub("", normalize("NFD", text))))
