"""What a rule says, in pieces that know what they name."""

from __future__ import annotations

from koirules.standard.titles import Titled
from koirules.values import frozen


@frozen
class Said:
    """A piece of what a rule says.

    head: the head word of the statement whose title or value it is (`trait`, `term`, `setting`, `section`, `fault`, `round`,
    `grade`), "" for the words between; name: its name; titled: its title, which the text is.
    """

    text: str
    head: str = ""
    name: str = ""
    titled: Titled | None = None
