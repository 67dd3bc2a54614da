"""How sorters speak of traits: for authors of vocabularies. Readers of notes turn it into phrases.

Every trait is known by its name and its title already, and each of its words beside them ("kiwa sharp", "sharp kiwa"). What
stands here is what people say beside that.

A wording may be a pattern: of words in round brackets, parted by `|`, any one stands there, and none where one of them is
empty: `(red|hi) (goes|runs|) to the (nose|snout)`. Brackets may stand within brackets. A wording that is written out goes before
a pattern, and a pattern before a later one.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from functools import lru_cache
from types import MappingProxyType
from typing import Any, Literal

from attrs import field

from koirules.values import frozen
from koirules.vocabulary.wordings import tokens_of


def _unchanging(words: Any) -> Any:
    # What is no mapping is told with the name of the plugin, when its vocabularies are looked through.
    return MappingProxyType(dict(words)) if isinstance(words, Mapping) else words


@frozen
class Spoken:
    """How people speak of one trait. Wordings stand with commas between them, in any language.

    trait: its name. nouns: what the trait itself is called, beside its name and title. beside: the same for words that say
    nothing of it without a level or place: "red" is red on an eye only beside the eye. levels: by a word of the trait (a
    level, an option, a place) or by a reading without its name (`at most fair`), what is said for it beside a noun: "sharp
    kiwa", "kiwa crisp". alone: by a reading of the trait without its name (`is sharp`, `at most fair`, `below 1 %`,
    `includes tail`), what says so without a noun. implies: what goes along with every level but the lowest, as in a
    `phrase`. of_parts: of which parts it is said as of the whole: "all", as in "kiwa soft on the last patch" and "at the tail",
    or "patches", of what has red alone. apart: whether its
    levels are said beside its own nouns alone, which say nothing by themselves: "good depth" is thick, "good red" is not.
    after: traits of which the remark before has to speak, where there is one, since what stands in `alone` does not name
    what it is said of: "stops at the eyes" is said of red after "red on the head", and not after "black on the head".
    bare: as alone, for words that say so only where they are all that is said: "straight", which before "edges" is said of
    the edges. anywhere: whether a place beside a fault says no more than where it is ("a kink near the tail").
    greatest: whether of several numbers that are told of one fish the greatest is meant: of its gaps, the widest.
    """

    trait: str
    nouns: str = ""
    beside: str = ""
    levels: Mapping[str, str] = field(factory=dict, hash=False, converter=_unchanging)
    alone: Mapping[str, str] = field(factory=dict, hash=False, converter=_unchanging)
    implies: str = ""
    of_parts: Literal["", "patches", "all"] = ""
    apart: bool = False
    after: tuple[str, ...] = ()
    bare: Mapping[str, str] = field(factory=dict, hash=False, converter=_unchanging)
    anywhere: bool = False
    greatest: bool = False


@frozen
class SpokenTogether:
    """What says something of several traits at once, or nothing of any. means: as in a `phrase` of a rule file."""

    wordings: str
    means: str


Saying = Spoken | SpokenTogether


def each_of(pattern: str, **words: str) -> str:
    """A pattern such as `{red} to the {place}` with its words; words: for each name, wordings parted by `|`."""
    return pattern.format(**{name: f"({each})" for name, each in words.items()})


def wordings_in(text: str) -> tuple[str, ...]:
    """The wordings of a list with commas."""
    return tuple(word for part in text.split(",") if (word := part.strip()))


def said_in(saying: Saying) -> Iterator[str]:
    """Every wording of a table of sayings."""
    if isinstance(saying, SpokenTogether):
        yield from wordings_in(saying.wordings)
        return
    for each in (saying.nouns, saying.beside, *saying.levels.values(), *saying.alone.values(), *saying.bare.values()):
        yield from wordings_in(each)


Sequel = tuple["str | Choices", ...]
"""What follows one another in a pattern: words, and places where one of several stands."""


@frozen(cache_hash=True)
class Choices:
    """A place in a pattern. each: what may stand there; an empty one where nothing has to."""

    each: tuple[Sequel, ...]


_PART = re.compile(r"[()|]|[^()|]+")


def sequel_of(wording: str) -> Sequel:
    """A wording as what follows one another in it; its words alone where it is no pattern or its brackets do not match."""
    return _pattern(wording) or (wording,)


def brackets_match(wording: str) -> bool:
    """Whether a wording is a pattern, or has nothing of one."""
    return _pattern(wording) is not None or not set("()|") & set(wording)


@lru_cache(maxsize=32_768)
def _pattern(wording: str) -> Sequel | None:
    parts = iter(_PART.findall(wording))
    read, closed = _alternatives(parts)
    return None if read is None or closed or len(read) > 1 else read[0]


def _alternatives(parts: Iterator[str]) -> tuple[list[Sequel] | None, bool]:
    """What stands up to a closing bracket or the end, and whether there was a bracket; None where one is not closed."""
    found: list[list[str | Choices]] = [[]]
    for part in parts:
        if part == ")":
            return [tuple(each) for each in found], True
        if part == "|":
            found.append([])
        elif part == "(":
            within, closed = _alternatives(parts)
            if not closed or within is None:
                return None, False
            found[-1].append(Choices(tuple(within)))
        elif part.strip():
            found[-1].append(part.strip())
    return [tuple(each) for each in found], False


def examples_of(sequel: Sequel) -> Iterator[str]:
    """Every wording of a pattern, its first one first."""
    if not sequel:
        yield ""
        return
    first, *rest = sequel
    heads = (first,) if isinstance(first, str) else (said for each in first.each for said in examples_of(each))
    for head in heads:
        for tail in examples_of(tuple(rest)):
            yield " ".join(f"{head} {tail}".split())


def spread(wordings: str) -> Iterator[tuple[str, ...]]:
    """The tokens of every wording of a list of patterns with commas."""
    for pattern in wordings_in(wordings):
        for text in examples_of(sequel_of(pattern)):
            if tokens := tokens_of(text):
                yield tokens
