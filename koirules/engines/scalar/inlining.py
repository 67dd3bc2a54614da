"""Rearranges the lines of a generated function: what is used once goes where it is used, what a result needs is picked out."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Container, Sequence

_NAME = re.compile(r"\b[aqt]\d+\b")
# Two ends on one line are compared with each other, and stay.
_ASSIGNED = re.compile(r"(a\d+) = ([^;]*)")
_DEEPEST = 12
"""Python's compiler takes a hundred levels of brackets or so."""


def inlined(lines: Sequence[str]) -> list[str]:
    """The lines with every `aN = source` left out that one later line uses once. No name is assigned twice."""
    uses = Counter(name for line in lines for name in _NAME.findall(line))
    waiting: dict[str, tuple[str, int]] = {}
    made: list[str] = []
    for line in lines:
        assigned = _ASSIGNED.fullmatch(line)
        name, source = assigned.groups() if assigned else ("", line)
        used = [each for each in _NAME.findall(source) if each in waiting]
        depth = 1 + max((waiting[each][1] for each in used), default=0)
        parts = {each: waiting.pop(each)[0] for each in used}
        source = _NAME.sub(lambda found, parts=parts: parts.get(found[0], found[0]), source)
        if name and uses[name] == len(("assigned", "used")) and depth < _DEEPEST:
            waiting[name] = (f"({source})", depth)
        else:
            made.append(f"{name} = {source}" if name else source)
    return made


def needed_by(result: str, lines: Sequence[str], kept: Container[str]) -> tuple[list[str], list[str]]:
    """The lines that a result needs, and the names that it and they take as they are: those kept, and inputs."""
    needed = set(_NAME.findall(result))
    found: list[str] = []
    for line in reversed(lines):
        assigned = _ASSIGNED.fullmatch(line)
        if assigned and assigned[1] in needed and assigned[1] not in kept:
            found.append(line)
            needed.remove(assigned[1])
            needed.update(_NAME.findall(assigned[2]))
    return found[::-1], sorted(needed)
