"""What comes of checking a rule file."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from attrs import field

from koirules.problems import Problem
from koirules.values import frozen
from koirules.vocabulary.traits import Trait

if TYPE_CHECKING:
    from koirules.language import statements as st
    from koirules.standard.parts import Rules, Setting, Term


@frozen
class Known:
    """What the names of a file mean as far as it could be told, the file refused or not: for who writes at it.

    terms: None for one that has problems. source: all statements, those of bases among them.
    """

    traits: Mapping[str, Trait]
    settings: Mapping[str, Setting]
    terms: Mapping[str, Term | None]
    source: st.RuleFile


@frozen
class Checked:
    """The rules, None where the file is refused, and every problem, in the order of the file.

    known: None where the file was not looked at, as when its base is refused. seal: of rules from the cache, else "".
    kept_as: the name under which it is kept and the digest of what is kept, parted by a point; "" where it is not kept.
    """

    rules: Rules | None
    problems: tuple[Problem, ...]
    known: Known | None = field(default=None, repr=False, eq=False)
    seal: str = field(default="", repr=False, eq=False)
    kept_as: str = field(default="", repr=False, eq=False)
