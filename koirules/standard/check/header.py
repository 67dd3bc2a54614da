"""Checks the header, and finds the variety that it names."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from attrs import frozen

from koirules.language import statements as st
from koirules.language.syntax import Word
from koirules.problems import Place, Problem, naming, parts
from koirules.standard.derivations import TypedMeasure
from koirules.standard.measured import measures_of, unsound_formulas
from koirules.vocabulary.measures import Constant
from koirules.vocabulary.nearness import near
from koirules.vocabulary.skins import Varieties, clashes, lay_over, name_with
from koirules.vocabulary.spoken import said
from koirules.vocabulary.traits import Trait, Variety


@frozen
class Spoken:
    """The variety that a file speaks of: its name ("" where it names none), its traits, and the skins over it.

    name: with the skins, as `name_with` writes it. alone: without them. measures, constants: of the variety with its skins.
    """

    name: str
    traits: Mapping[str, Trait]
    alone: str = ""
    skins: tuple[str, ...] = ()
    measures: tuple[TypedMeasure, ...] = ()
    constants: tuple[Constant, ...] = ()


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


def spoken_variety(header: st.Header | None, varieties: Varieties, problems: list[Problem]) -> Spoken | None:
    """The variety of a file with its skins; None where one is not known or does not fit, so that no trait can be missed."""
    if header is None:
        return None
    word = header.variety
    if word is None:
        return Spoken("", {})
    found: list[Problem] = []
    variety = varieties.get(word.text)
    if variety is None and word.text in varieties.skins:
        found.append(naming.skin_alone(word.place, word.text))
    elif variety is None:
        known = list(varieties)
        meant = said(word.text, varieties)
        guess = meant.variety if meant is not None and not meant.skins else near(word.text, known)
        found.append(naming.unknown_variety(word.place, word.text, guess, known))
    laid = _with_skins(variety, header.skins, varieties, found)
    if laid is not None:
        found += [naming.variety_unmeasured(word.place, laid.name, problem) for problem in unsound_formulas(laid)]
    problems += found
    if laid is None or found:
        return None
    return Spoken(laid.name, laid.traits, word.text, _texts(header.skins), measures_of(laid), laid.constants)


def _with_skins(
    variety: Variety | None, skins: Sequence[Word], varieties: Varieties, problems: list[Problem]
) -> Variety | None:
    """A variety with skins laid over it one by one; what is wrong with any of them joins the problems."""
    laid = variety
    for position, word in enumerate(skins):
        names = _texts(skins[: position + 1])
        skin = varieties.skins.get(word.text)
        if word.text in names[:-1]:
            problems.append(naming.skin_twice(word.place, word.text))
        elif skin is None and word.text in varieties:
            problems.append(naming.variety_as_skin(word.place, word.text))
        elif skin is None:
            known = list(varieties.skins)
            problems.append(naming.unknown_skin(word.place, word.text, near(word.text, known), known))
        elif laid is not None and variety is not None:
            problems += [naming.skin_clash(word.place, word.text, laid.name, why) for why in clashes(laid, skin)]
            laid = lay_over(laid, skin, name_with(variety.name, names))
    return laid


def _texts(words: Sequence[Word]) -> tuple[str, ...]:
    return tuple(word.text for word in words)


def elsewhere(spoken: Spoken | None, varieties: Varieties) -> dict[str, str]:
    """The variety, with a skin where one gives it, that each trait belongs to which the spoken one lacks."""
    own: Mapping[str, Trait] = {} if spoken is None else spoken.traits
    found: dict[str, str] = {}
    for variety in varieties.values():
        for name in variety.traits:
            if name not in own:
                found.setdefault(name, variety.name)
    if spoken is not None and spoken.alone:
        for skin in varieties.skins.values():
            for name in skin.traits:
                if name not in own:
                    found.setdefault(name, name_with(spoken.alone, (*spoken.skins, skin.name)))
    return found
