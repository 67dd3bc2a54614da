"""Near names: what somebody may have meant."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import lru_cache

from koirules.values import frozen
from koirules.vocabulary.phrases import Saying, Spoken, wordings_in
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.wordings import singular

_MOST = 3


@frozen
class _Form:
    """A known name as it is compared. letters: one bit for each letter that stands in it."""

    name: str
    low: str
    joined: str
    letters: int


def distance(one: str, other: str, limit: int) -> int:
    """Edit distance with neighbouring letters swapped counted as one (optimal string alignment), cut off above limit."""
    if abs(len(one) - len(other)) > limit:
        return limit + 1
    before: list[int] = []
    row = list(range(len(other) + 1))
    for i, letter in enumerate(one, 1):
        current = [i]
        for j, against in enumerate(other, 1):
            cost = 0 if letter == against else 1
            best = min(row[j] + 1, current[j - 1] + 1, row[j - 1] + cost)
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == against:
                best = min(best, before[j - 2] + 1)
            current.append(best)
        before, row = row, current
        if min(row) > limit:
            return limit + 1
    return row[-1]


def traits_called(words: str, traits: Mapping[str, Trait], sayings: Iterable[Saying]) -> list[str]:
    """The traits that people call so: by a title in any language, as sorters do, else by titles that begin so."""
    low = _without_articles(words.casefold().replace("_", " ").strip())
    begins: list[str] = []
    for name, trait in traits.items():
        titles = [_without_articles(title.casefold()) for title in (trait.title, *trait.titles.values())]
        if low in titles:
            return [name]
        if len(low) > 2 and any(title.startswith(f"{low} ") for title in titles):
            begins.append(name)
    spoken = _spoken_of(low, traits, sayings)
    both = [name for name in spoken if name in begins]
    if len(both) == 1:
        return both
    return spoken or sorted(begins, key=lambda name: len(traits[name].title))


def titles_with(word: str, traits: Mapping[str, Trait]) -> list[str]:
    """The traits in whose titles a word stands, as it is or without the `s` of a plural; the shortest title first."""
    asked = singular(word.casefold())
    found = [
        name
        for name, trait in traits.items()
        if asked in map(singular, trait.title.casefold().removesuffix(", by eye").split())
    ]
    return sorted(found, key=lambda name: len(traits[name].title))


def _without_articles(words: str) -> str:
    return words.replace(" the ", " ")


def _spoken_of(low: str, traits: Mapping[str, Trait], sayings: Iterable[Saying]) -> list[str]:
    """The traits among whose nouns the words stand, those first in which they stand nearer to the front."""
    found: dict[str, int] = {}
    for one in sayings:
        if isinstance(one, Spoken) and one.trait in traits:
            nouns = wordings_in(one.nouns.casefold())
            if low in nouns:
                found[one.trait] = min(nouns.index(low), found.get(one.trait, len(nouns)))
    return sorted(found, key=lambda trait: found[trait])


def near(word: str, known: Iterable[str]) -> str | None:
    """The known name that is nearest to a word, or None where none is near; the first of equals."""
    return _near(word, tuple(known))


# A file can ask for many thousand words, mostly the same ones or against the same names; both memories are bounded.
@lru_cache(maxsize=1024)
def _near(word: str, known: tuple[str, ...]) -> str | None:
    asked = _form(word)
    low, length = asked.low, len(asked.low)
    best: str | None = None
    best_key = (10_000, 1)
    for form in _forms(known):
        within = length >= 4 and asked.joined in form.joined
        # An edit takes away or brings in one letter at most, so a distance is no less than what either side lacks.
        lacking = (asked.letters & ~form.letters).bit_count()
        if not within and (lacking > _MOST or (form.letters & ~asked.letters).bit_count() > _MOST):
            continue
        other = form.low
        limit = max(1, min(_MOST, max(length, len(other)) // 3))
        key = (distance(low, other, limit) if lacking <= limit else limit + 1, 0 if low[:1] == other[:1] else 1)
        if within and low != other:
            key = min(key, (limit, 1))
        if key[0] <= limit and key < best_key:
            best, best_key = form.name, key
    return best


@lru_cache(maxsize=32)
def _forms(known: tuple[str, ...]) -> tuple[_Form, ...]:
    return tuple(_form(name) for name in known)


def _form(name: str) -> _Form:
    low = name.casefold()
    letters = 0
    for letter in low:
        letters |= 1 << (ord(letter) & 63)
    return _Form(name, low, low.replace("_", ""), letters)
