"""Checks the header, and finds the variety that it names."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from attrs import evolve

from koirules.language import statements as st
from koirules.language.syntax import Word
from koirules.problems import Place, Problem, naming, parts
from koirules.problems.naming import Elsewhere
from koirules.standard.check.phrasing import phrases_left_out
from koirules.standard.derivations import TypedMeasure
from koirules.standard.measured import in_common, measures_of, unsound_formulas
from koirules.values import frozen
from koirules.vocabulary.kinds import Label, Number
from koirules.vocabulary.measures import Constant
from koirules.vocabulary.nearness import near
from koirules.vocabulary.phrases import Saying, SpokenTogether
from koirules.vocabulary.skins import ANY_VARIETY, Varieties, clashes, lay_over, name_with, names_together
from koirules.vocabulary.spoken import said
from koirules.vocabulary.subject import ITEM, OCCASIONS, Subject
from koirules.vocabulary.traits import Trait, Variety
from koirules.vocabulary.units import Dimension


@frozen
class Spoken:
    """What a file speaks of: its name ("" where it names no variety), the traits it may read, and the skins over it.

    name: as `said_of` writes it. each: the varieties that it names, with their skins; none where it names none or is for
    any. alone: the variety without its skins, "" unless there is exactly one. measures, constants: what all of them have.
    subject: what their records are about.
    """

    name: str
    traits: Mapping[str, Trait]
    each: tuple[Variety, ...] = ()
    alone: str = ""
    skins: tuple[str, ...] = ()
    measures: tuple[TypedMeasure, ...] = ()
    constants: tuple[Constant, ...] = ()
    sayings: tuple[Saying, ...] = ()
    subject: Subject = ITEM


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
    said = header.occasion
    if said is not None and said.text not in OCCASIONS:
        problems.append(parts.no_such_occasion(said.place, said.text, near(said.text, OCCASIONS)))
    begins, ends = header.valid_from, header.valid_until
    if begins is not None and ends is not None and ends < begins and header.valid_place is not None:
        problems.append(parts.valid_backwards(header.valid_place))
    return header


def said_of(header: st.Header) -> str:
    """What varieties a header names, as it names them, in the one layout; "" where it names none."""
    if header.any_variety is not None:
        return ANY_VARIETY
    return name_with(names_together(_texts(header.varieties)), _texts(header.skins)) if header.varieties else ""


def spoken_variety(header: st.Header | None, varieties: Varieties, problems: list[Problem]) -> Spoken | None:
    """What a file speaks of; None where a variety or skin is not known or does not fit, so that no trait can be missed."""
    if header is None:
        return None
    if header.any_variety is not None:
        shared = varieties.shared or Variety(ANY_VARIETY, ANY_VARIETY, {})
        measures, sayings = measures_of(shared), _sayings(shared)
        return Spoken(
            ANY_VARIETY,
            shared.traits,
            measures=measures,
            constants=shared.constants,
            sayings=sayings,
            subject=shared.subject,
        )
    if not header.varieties:
        return Spoken("", {})
    found: list[Problem] = []
    laid: list[Variety] = []
    for position, word in enumerate(header.varieties):
        if word.text in _texts(header.varieties[:position]):
            found.append(naming.variety_twice(word.place, word.text))
            continue
        one = _with_skins(_known(word, varieties, found), header.skins, varieties, found)
        if one is not None:
            found += [naming.variety_unmeasured(word.place, one.name, problem) for problem in unsound_formulas(one)]
            phrases = phrases_left_out(word.place, one.phrases, one.traits)
            problems += [problem for problem in phrases if problem not in problems]
            laid.append(one)
    problems += dict.fromkeys(found)  # what is wrong with a skin is said once, whatever it lies over
    if found:
        return None
    whole = laid[0] if len(laid) == 1 else in_common(tuple(laid), said_of(header))
    alone = header.varieties[0].text if len(laid) == 1 else ""
    return Spoken(
        name=whole.name,
        traits=whole.traits,
        each=tuple(laid),
        alone=alone,
        skins=_texts(header.skins),
        measures=measures_of(whole),
        constants=whole.constants,
        sayings=_sayings(whole),
        subject=whole.subject,
    )


_FEWEST_ALIKE = 2


def subject_meant(house: Mapping[str, Trait], varieties: Varieties) -> Subject:
    """What a standard without a variety is about, by the traits that it declares itself.

    Where two of them or more, and at least half, are called as in a vocabulary and of the same kind, it is about what that is
    about: a house that sorts koi by its own traits sorts koi. Labels, lengths, weights and times say nothing; anything has
    those. Nothing is drawn, since a drawing goes by the traits of the vocabulary.
    """
    telling = {name: trait for name, trait in house.items() if _tells_of_a_subject(trait)}
    shared = [] if varieties.shared is None else [varieties.shared]
    alike: dict[Subject, set[str]] = {}
    for one in (*shared, *varieties.values()):
        same = {name for name, trait in telling.items() if name in one.traits and _same_kind(trait, one.traits[name])}
        alike.setdefault(one.subject, set()).update(same)
    subject, found = max(alike.items(), key=lambda each: len(each[1]), default=(ITEM, set[str]()))
    if subject == ITEM or len(found) < _FEWEST_ALIKE or 2 * len(found) < len(telling):
        return ITEM
    return evolve(subject, drawing="", grows_by=ITEM.grows_by)


def _tells_of_a_subject(trait: Trait) -> bool:
    match trait.kind:
        case Label():
            return False
        case Number(unit=unit):
            return unit is None or unit.dimension is Dimension.SHARE
        case _:
            return True


def _same_kind(one: Trait, other: Trait) -> bool:
    return type(one.kind) is type(other.kind)


def _sayings(variety: Variety) -> tuple[Saying, ...]:
    """How the traits of a variety are spoken of, single phrases first."""
    return (*(SpokenTogether(said, means) for said, means in variety.phrases.items()), *variety.sayings)


def _known(word: Word, varieties: Varieties, problems: list[Problem]) -> Variety | None:
    """The variety of a word, or a problem."""
    variety = varieties.get(word.text)
    if variety is None and word.text in varieties.skins:
        problems.append(naming.skin_alone(word.place, word.text))
    elif variety is None:
        known = list(varieties)
        meant = said(word.text, varieties)
        guess = meant.variety if meant is not None and not meant.skins else near(word.text, known)
        problems.append(naming.unknown_variety(word.place, word.text, guess, known))
    return variety


def _with_skins(
    variety: Variety | None, skins: Sequence[Word], varieties: Varieties, problems: list[Problem]
) -> Variety | None:
    """A variety with skins laid over it one by one; what is wrong with any of them joins the problems."""
    laid = variety
    missing: list[Word] = []
    for position, word in enumerate(skins):
        names = _texts(skins[: position + 1])
        skin = varieties.skins.get(word.text)
        if word.text in names[:-1]:
            problems.append(naming.skin_twice(word.place, word.text))
        elif skin is None and word.text in varieties:
            problems.append(naming.variety_as_skin(word.place, word.text))
        elif skin is None:
            missing.append(word)
        elif laid is not None and variety is not None:
            problems += [naming.skin_clash(word.place, word.text, laid.name, why) for why in clashes(laid, skin)]
            laid = lay_over(laid, skin, name_with(variety.name, names))
    if missing:
        known = list(varieties.skins)
        guess = near(missing[0].text, known) if len(missing) == 1 else None
        problems.append(naming.unknown_skin(missing[0].place, _texts(missing), guess, known))
    return laid


def _texts(words: Sequence[Word]) -> tuple[str, ...]:
    return tuple(word.text for word in words)


def elsewhere(spoken: Spoken | None, varieties: Varieties) -> dict[str, Elsewhere]:
    """What has each trait that the spoken variety lacks, or that not all of the spoken ones have alike."""
    own: Mapping[str, Trait] = {} if spoken is None else spoken.traits
    found: dict[str, Elsewhere] = {}
    if spoken is not None and len(spoken.each) > 1:
        for name in {name: None for one in spoken.each for name in one.traits if name not in own}:
            having = tuple(one.name for one in spoken.each if name in one.traits)
            found[name] = Elsewhere(having, tuple(one.name for one in spoken.each if name not in one.traits))
    for variety in varieties.values():
        for name in variety.traits:
            if name not in own:
                found.setdefault(name, Elsewhere((variety.name,)))
    if spoken is not None and spoken.alone:
        for skin in varieties.skins.values():
            for name in skin.traits:
                if name not in own:
                    found.setdefault(name, Elsewhere((name_with(spoken.alone, (*spoken.skins, skin.name)),)))
    if spoken is not None and spoken.name == ANY_VARIETY:
        return {name: evolve(one, any_variety=True) for name, one in found.items()}
    return found
