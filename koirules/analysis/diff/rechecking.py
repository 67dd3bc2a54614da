"""Checks statements that were put together from checked ones: an edition in other names, or one between two others."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence

from attrs import evolve

from koirules.language import statements as st
from koirules.language.syntax import Word
from koirules.problems import is_refused
from koirules.standard.check.checker import check
from koirules.standard.derivations import TypedFormula, inputs_of
from koirules.standard.parts import Rules
from koirules.vocabulary.measures import Constant, Formula, Measure
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.traits import Trait, Variety


def vocabulary_of(rules: Rules) -> dict[str, Trait]:
    """The traits that a standard has from its variety, and not from its own page."""
    return {name: trait for name, trait in rules.traits.items() if name not in rules.house_traits}


def measures_of(rules: Rules, other: Rules | None = None, changed: Collection[str] = ()) -> tuple[Measure, ...]:
    """How the traits of a variety follow from others, so that it can be checked again.

    other: an edition that says it of what the first says nothing of, and of the traits in `changed`.
    """
    kept = [one for one in rules.measures if not set(changed).intersection(one.outputs)]
    if other is not None:
        known = {name for one in kept for name in one.outputs}
        kept += [one for one in other.measures if not known.intersection(one.outputs)]
    return tuple(Formula(one.trait.name, one.expression) if isinstance(one, TypedFormula) else one for one in kept)


def rechecked(
    statements: Iterable[st.Statement],
    vocabulary: Mapping[str, Trait],
    like: Rules,
    measures: Sequence[Measure],
    constants: Sequence[Constant],
) -> Rules | None:
    """The rules of statements of which the header is the first; None where they do not hold together.

    vocabulary, measures, constants: those of the variety. like: the standard whose variety and texts these are taken to have.
    """
    header, *rest = statements
    if not isinstance(header, st.Header):
        raise AssertionError("the header comes first")
    called = header.varieties[0].text if header.varieties else "kohaku"
    spoken_of = Variety(
        called,
        called,
        vocabulary,
        measures=tuple(one for one in measures if _names_in(one) <= vocabulary.keys()),
        constants=tuple(constants),
        subject=like.subject,
    )
    varieties = Varieties({called: spoken_of})
    named = (Word(called, header.place),)
    spoken = evolve(header, varieties=named, any_variety=None, skins=(), based_on=None)
    file = evolve(like.source, statements=(spoken, *rest), unread=())
    checked = check(file, varieties)
    if checked.rules is None or is_refused(checked.problems):
        return None
    return evolve(checked.rules, variety=like.variety, source=evolve(file, statements=(header, *rest)))


def _names_in(measure: Measure) -> set[str]:
    """The traits that a measure gives, and those that it reads as far as that shows without its formula being read."""
    return {measure.trait} if isinstance(measure, Formula) else {*inputs_of(measure), *measure.outputs}
