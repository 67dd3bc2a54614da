"""What a standard says about growth: its coefficients, the lengths that it asks for, and where it asks."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from koirules.problems import Problem, growing
from koirules.standard.check.growing import COEFFICIENTS
from koirules.standard.folding import folded
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Apply, Grown, Node, SettingRead, Supplied, TermRead, walk


def grown_in(rules: Rules) -> dict[str, Supplied]:
    """Every grown trait that the rules ask for, by its key, in the order in which they ask."""
    found: dict[str, Supplied] = {}
    for root in (*rules.roots, *(term.node for term in rules.terms.values())):
        for node in walk(root, into_terms=False, into_sources=True):
            if isinstance(node, Supplied) and isinstance(node.source, Grown):
                found.setdefault(node.key, node)
    return found


def check_growth(rules: Rules, problems: list[Problem]) -> None:
    """Report settings with the names of coefficients of growth that cannot be such, where growth is asked for."""
    if not grown_in(rules):
        return
    for name, (low, high, meaning) in COEFFICIENTS.items():
        setting = rules.settings.get(name)
        if setting is not None and (setting.unit is not None or setting.low < low or setting.high > high):
            problems.append(growing.not_a_coefficient(setting.place, name, str(low), str(high), meaning))


def length_grown_to(source: Grown, settings: Mapping[str, Setting]) -> float:
    """The length in cm that a fish shall grow to, by the settings of a run."""

    def leaf(node: Node) -> Any:
        if isinstance(node, SettingRead):
            value = float(settings[node.name].value)
            return (value, value)
        return None if isinstance(node, Apply | TermRead) else node.range

    def joined(node: Apply | TermRead, inner: list[Any]) -> Any:
        return node.operation.range_of(*inner) if isinstance(node, Apply) else inner[0]

    low, _ = folded(source.target, leaf, joined)
    return float(low)
