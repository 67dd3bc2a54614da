"""How sorters speak of traits: for authors of vocabularies. Readers of notes turn it into phrases.

Every trait is known by its name and its title already, and each of its words beside them ("kiwa sharp", "sharp kiwa"). What
stands here is what people say beside that.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import product
from types import MappingProxyType

from attrs import field, frozen


def _unchanging(words: Mapping[str, str]) -> Mapping[str, str]:
    return MappingProxyType(dict(words))


@frozen
class Spoken:
    """How people speak of one trait. Wordings stand with commas between them, in any language.

    trait: its name. nouns: what the trait itself is called, beside its name and title. beside: the same for words that say
    nothing of it without a level or place: "red" is red on an eye only beside the eye. levels: by a word of the trait (a
    level, an option, a place), what is said for it beside a noun: "sharp kiwa", "kiwa crisp". alone: by a reading of the
    trait without its name (`is sharp`, `at most fair`, `below 1 %`, `includes tail`), what says so without a noun. implies:
    what goes along with every level but the lowest, as in a `phrase`.
    """

    trait: str
    nouns: str = ""
    beside: str = ""
    levels: Mapping[str, str] = field(factory=dict, hash=False, converter=_unchanging)
    alone: Mapping[str, str] = field(factory=dict, hash=False, converter=_unchanging)
    implies: str = ""


@frozen
class SpokenTogether:
    """What says something of several traits at once, or nothing of any. means: as in a `phrase` of a rule file."""

    wordings: str
    means: str


Saying = Spoken | SpokenTogether


def each_of(pattern: str, **words: str) -> str:
    """Every wording of a pattern such as `{red} to the {place}`, with commas; words: for each name, wordings parted by `|`."""
    return ", ".join(
        " ".join(pattern.format(**dict(zip(words, chosen, strict=True))).split())
        for chosen in product(*(each.split("|") for each in words.values()))
    )


def wordings_in(text: str) -> tuple[str, ...]:
    """The wordings of a list with commas."""
    return tuple(word for part in text.split(",") if (word := part.strip()))
