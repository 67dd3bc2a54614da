"""Checks statements that were put together from checked ones: an edition in other names, or one between two others."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from attrs import evolve

from koirules.language import statements as st
from koirules.language.syntax import Word
from koirules.problems import is_refused
from koirules.standard.checker import check
from koirules.standard.parts import Rules
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.traits import Trait, Variety


def vocabulary_of(rules: Rules) -> dict[str, Trait]:
    """The traits that a standard has from its variety, and not from its own page."""
    return {name: trait for name, trait in rules.traits.items() if name not in rules.house_traits}


def rechecked(statements: Iterable[st.Statement], vocabulary: Mapping[str, Trait], like: Rules) -> Rules | None:
    """The rules of statements of which the header is the first; None where they do not hold together.

    vocabulary: the traits of the variety. like: the standard whose variety and texts these are taken to have.
    """
    header, *rest = statements
    if not isinstance(header, st.Header):
        raise AssertionError("the header comes first")
    called = "kohaku" if header.variety is None else header.variety.text
    varieties = Varieties({called: Variety(called, called, vocabulary)})
    spoken = evolve(header, variety=Word(called, header.place), skins=(), based_on=None)
    file = evolve(like.source, statements=(spoken, *rest), unread=())
    checked = check(file, varieties)
    if checked.rules is None or is_refused(checked.problems):
        return None
    return evolve(checked.rules, variety=like.variety, source=evolve(file, statements=(header, *rest)))
