"""Checks the header, and finds the variety that it names."""

from __future__ import annotations

from collections.abc import Mapping

from attrs import frozen

from koirules.language import statements as st
from koirules.problems import Place, Problem, naming, parts
from koirules.vocabulary.nearness import near
from koirules.vocabulary.traits import Trait, Variety


@frozen
class Spoken:
    """The variety that a file speaks of: its name ("" where it names none) and its traits."""

    name: str
    traits: Mapping[str, Trait]


def check_header(file: st.RuleFile, problems: list[Problem]) -> st.Header | None:
    """The header of a file, None where there is none."""
    headers = [statement for statement in file.statements if isinstance(statement, st.Header)]
    for extra in headers[1:]:
        problems.append(parts.header_once(extra.place))
    if not headers:
        if not any(head == "standard" for head, _ in file.unread):
            problems.append(parts.header_first(Place(file.file, 1, 1, 1, 1)))
        return None
    header = headers[0]
    if file.statements[0] is not header:
        problems.append(parts.header_first(header.place))
    for repeated in header.repeated:
        problems.append(parts.header_twice(repeated.place, repeated.text))
    if header.edition is None:
        problems.append(parts.no_edition(header.place))
    begins, ends = header.valid_from, header.valid_until
    if begins is not None and ends is not None and ends < begins and header.valid_place is not None:
        problems.append(parts.valid_backwards(header.valid_place))
    return header


def spoken_variety(
    header: st.Header | None, varieties: Mapping[str, Variety], problems: list[Problem]
) -> Spoken | None:
    """The variety of a file; None where it is not known, so that no trait can be missed."""
    if header is None:
        return None
    word = header.variety
    if word is None:
        return Spoken("", {})
    variety = varieties.get(word.text)
    if variety is None:
        known = list(varieties)
        problems.append(naming.unknown_variety(word.place, word.text, near(word.text, known), known))
        return None
    return Spoken(variety.name, variety.traits)


def elsewhere(spoken: Spoken | None, varieties: Mapping[str, Variety]) -> dict[str, str]:
    """The variety that each trait belongs to which the spoken one lacks."""
    own: Mapping[str, Trait] = {} if spoken is None else spoken.traits
    found: dict[str, str] = {}
    for variety in varieties.values():
        for name in variety.traits:
            if name not in own:
                found.setdefault(name, variety.name)
    return found
