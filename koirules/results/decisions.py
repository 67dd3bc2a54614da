"""A person's word about a fish, above the rules."""

from __future__ import annotations

from attrs import field

from koirules.values import frozen


@frozen
class Decision:
    """What a person decided: the grade of a fish, or that a round keeps it ("" where it is not that), by whom and why.

    row, file: where it stands; 0 and "" where it comes from no file.
    """

    fish: str
    grade: str
    round: str
    by: str
    reason: str
    row: int = 0
    file: str = field(default="", eq=False)
