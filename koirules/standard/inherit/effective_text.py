"""A standard with its bases as one text, and where each line of it was written."""

from __future__ import annotations

from collections.abc import Sequence
from os.path import relpath
from pathlib import Path

from koirules.language import statements as st
from koirules.language.format.writer import laid_statement
from koirules.problems import Place
from koirules.standard.parts import Rules
from koirules.values import frozen


@frozen
class Line:
    """A line of the whole. origin: where it was written. instead_of: where what it replaces stands, on its first line.

    opens: whether it begins a section, or statements of another kind.
    """

    text: str
    origin: Place
    instead_of: Place | None = None
    opens: bool = False


_COLUMN = 70
"""Where the origin of a line stands, unless the line is longer."""

_GROUPS: Sequence[type[st.Statement] | tuple[type[st.Statement], ...]] = (
    st.Header,
    (st.Setting, st.HouseTrait, st.Term, st.Silence, st.Carry, st.Panel),
    st.Limit,
    (st.Section, st.Points, st.Extra),
    st.Grade,
    (st.Alert, st.Round),
    st.Phrase,
    st.Sample,
)


def whole_lines(rules: Rules) -> list[Line]:
    """The lines of a standard in the one layout, all changes made to its bases."""
    found: list[Line] = []
    before: st.Statement | None = None
    for statement in rules.source.statements:
        origin, instead_of = statement.place, rules.source.replaced.get(statement.place)
        opens = isinstance(statement, st.Section) or _group(before) != _group(statement)
        for text, at in laid_statement(statement):
            origin = at or origin
            found.append(Line(text, origin, instead_of, opens))
            instead_of, opens = None, False
        before = statement
    return found


def _group(statement: st.Statement | None) -> int:
    return next((i for i, kinds in enumerate(_GROUPS) if isinstance(statement, kinds)), -1)


def whole_text(rules: Rules) -> str:
    """The standard as one text: that of its file where it has no base."""
    if not rules.source.bases:
        return rules.source.text
    return "".join(f"{line.text}\n" for line in whole_lines(rules))


def told_lines(rules: Rules) -> list[str]:
    """The lines of a standard with their origin behind them, as remarks; files are named from the folder of its own.

    A rule set that was found by its name lies elsewhere, and is named by its folder.
    """
    folder = Path(rules.file).parent

    def words(place: Place) -> str:
        file = relpath(place.file, folder)
        if file.startswith(".."):
            file = str(Path(Path(place.file).parent.name, Path(place.file).name))
        return f"{file}:{place.line}".replace("\\", "/")

    told: list[str] = []
    for line in whole_lines(rules):
        if line.opens and told:
            told.append("")
        instead = "" if line.instead_of is None else f", in place of {words(line.instead_of)}"
        told.append(f"{line.text:<{_COLUMN}}  # {words(line.origin)}{instead}")
    return told
