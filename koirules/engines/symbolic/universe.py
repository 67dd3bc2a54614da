"""A context of the solver with what holds in it, and the fish that are asked about there."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import z3
from attrs import evolve

from koirules.engines.symbolic.arithmetic import Arithmetic
from koirules.engines.symbolic.fish import Fish
from koirules.engines.symbolic.grown import worked_from
from koirules.engines.symbolic.meaning import Meaning
from koirules.engines.symbolic.points import Giving
from koirules.engines.symbolic.values import Logic
from koirules.measures.grown_traits import Ahead
from koirules.results.parts_read import asked_whether_recorded
from koirules.standard.cuts import cuts_of
from koirules.standard.parts import Rules, Setting
from koirules.values import frozen


@frozen(eq=False)
class Universe:
    """One context of the solver, and what holds in it."""

    context: z3.Context
    facts: list[Any]
    meaning: Meaning
    giving: Giving

    @classmethod
    def made(cls) -> Universe:
        """A new one."""
        context, facts = z3.Context(), list[Any]()
        arithmetic, logic = Arithmetic(context, facts), Logic(context)
        giving = Giving(arithmetic, logic, [])
        facts.extend([arithmetic.slack >= 0, arithmetic.slack <= 1])
        return cls(context, facts, Meaning(arithmetic, logic), giving)

    @property
    def logic(self) -> Logic:
        """And, or and not of this context."""
        return self.meaning.logic


def fish_of(rules: Rules, settings: Mapping[str, Setting], universe: Universe, *, whole: bool = False) -> Fish:
    """The variables of a fish of one standard. whole: every trait is recorded."""
    texts = {name: cut.texts for name, cut in cuts_of(rules, settings).items()}
    optional = frozenset[str]() if whole else asked_whether_recorded(rules)
    ahead = Ahead.of(rules, settings)
    growers = {one.key: one.grower for one in ahead.wanted if one.grower.least >= 0}
    context, exact, made = universe.context, universe.giving.exact, universe.meaning.arithmetic.made
    return Fish(context, universe.facts, exact, made, optional, texts, growers, worked_from(ahead), ahead.any_length)


def twin_of(base: Fish, trait: str) -> Fish:
    """The variables of a fish that differs from another one in one trait, and in what is grown from it."""
    return evolve(base, base=base, moved=base.moved_by(trait), mark=f" of the better {trait}", slots={})
