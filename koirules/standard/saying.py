"""The words of a `say`: plain text, and names in braces that are filled in."""

from __future__ import annotations

import re
from collections.abc import Collection
from typing import TYPE_CHECKING

from koirules.problems import Place, Problem, naming
from koirules.vocabulary.nearness import near

if TYPE_CHECKING:
    from koirules.language import statements as st
    from koirules.language.syntax import Title

_BRACES = re.compile(r"\{([^{}]*)\}")


def names_in(text: str) -> list[str]:
    """The names in braces, in order."""
    return [name.strip() for name in _BRACES.findall(text)]


def fill(text: str, values: dict[str, str]) -> str:
    """The text with each name in braces replaced by its value."""
    return _BRACES.sub(lambda found: values.get(found.group(1).strip(), found.group()), text)


def said_by(statement: st.Statement) -> list[Title]:
    """The words of every `say` of a statement."""
    from koirules.language import statements as st
    from koirules.language.round_parts import Saying

    match statement:
        case st.Points(say=say) | st.Extra(say=say) | st.Limit(say=say) | st.Grade(say=say) | st.Alert(say=say):
            return [] if say is None else [say]
        case st.Round(parts=parts):
            return [part.words for part in parts if isinstance(part, Saying)]
        case _:
            return []


def check_languages(title: Title | None, problems: list[Problem]) -> None:
    """Report a language that a title or a `say` gives twice."""
    if title is not None and title.repeated is not None:
        problems.append(naming.language_twice(title.repeated.place, title.repeated.text))


def check_say(title: Title | None, known: Collection[str], problems: list[Problem], *, complete: bool = True) -> None:
    """Report braces that do not pair, and names in braces that nothing has.

    complete: whether all names are known; where the variety is not, no name can be missed.
    """
    if title is None:
        return
    for text in (title.text, *title.others.values()):
        rest = _BRACES.sub("", text)
        if "{" in rest or "}" in rest or "" in names_in(text):
            problems.append(naming.braces_in_say(title.place))
        told = set(known)
        for found in _BRACES.finditer(text):
            name = found.group(1).strip()
            if complete and name and name not in told:
                told.add(name)
                precise = text is title.text
                place = _within(title.place, found.start(), found.end()) if precise else title.place
                problems.append(naming.unknown_in_say(place, name, near(name, known), precise=precise))


def _within(place: Place, start: int, end: int) -> Place:
    # The first text of a title stands at its place, behind a quote.
    return Place(place.file, place.line, place.column + 1 + start, place.line, place.column + 1 + end)
