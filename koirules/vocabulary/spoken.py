"""A variety as people write it into a cell or a table: `Taisho Sanke`, `showa with ginrin`, `ginrin showa`."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence

from attrs import frozen

from koirules.vocabulary.plain_text import folded, plain
from koirules.vocabulary.skins import Varieties, name_with
from koirules.vocabulary.traits import Variety

_PARTING = re.compile(r"\s+with\s+|\s+and\s+|[,()+&/]", re.IGNORECASE)


@frozen
class Said:
    """A variety and the skins over it; two are alike whatever the order in which the skins were named."""

    variety: str
    skins: frozenset[str] = frozenset()

    @property
    def name(self) -> str:
        """As a header has it, skins in the order of the alphabet."""
        return name_with(self.variety, sorted(self.skins))


def said(text: str, varieties: Varieties) -> Said | None:
    """The variety that a text names, by names or titles, skins before or behind it; None where it names none, or two."""
    plainly = plain(text)
    bases, skins = _by_word(varieties), _by_word(varieties.skins)
    if folded(plainly) in bases:
        return Said(bases[folded(plainly)])
    found: list[tuple[str | None, frozenset[str]]] = []
    for part in _PARTING.split(plainly):
        if part.strip():
            read = _part(part.split(), bases, skins)
            if read is None:
                return None
            found.append(read)
    named = [base for base, _ in found if base is not None]
    return Said(named[0], frozenset().union(*(over for _, over in found))) if len(named) == 1 else None


def _part(
    words: Sequence[str], bases: Mapping[str, str], skins: Mapping[str, str]
) -> tuple[str | None, frozenset[str]] | None:
    """A variety (None where there is none) and skins that words in a row name."""
    whole = folded(" ".join(words))
    if whole in bases:
        return bases[whole], frozenset()
    if whole in skins:
        return None, frozenset({skins[whole]})
    for cut in range(1, len(words)):
        one, other = (_part(part, bases, skins) for part in (words[:cut], words[cut:]))
        if one is not None and other is not None and (one[0] is None or other[0] is None):
            return one[0] or other[0], one[1] | other[1]
    return None


def _by_word(known: Mapping[str, Variety]) -> dict[str, str]:
    titled = {folded(variety.title): name for name, variety in known.items()}
    return titled | {folded(name): name for name in known}
