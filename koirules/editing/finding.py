"""What stands at a place of a page, where its name is given, and where it is used."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

from koirules.editing.context import Context, Role, context_of
from koirules.editing.desk import Desk, Look
from koirules.editing.meaning import Meaning
from koirules.editing.mends import problems_now
from koirules.editing.names import VALUE, Use, group_of, uses_in
from koirules.editing.telling import Told, told_name, told_step, told_unit, told_word
from koirules.editing.words import about
from koirules.language import statements as st
from koirules.language.parse.partial_statement import SoFar, so_far
from koirules.language.parse.reader import Read
from koirules.loading.opening import installed_base
from koirules.problems import Place, Problem
from koirules.problems.pages import pages
from koirules.standard.types import Steps
from koirules.values import frozen
from koirules.vocabulary.units import UNITS

_WORD = re.compile(r"[^\W\d]\w*|%")


@frozen
class Spot:
    """A word at a place, with what stands before it and what fits there (None within a text and at a head word)."""

    word: str
    place: Place
    before: SoFar
    context: Context | None


def spot_at(desk: Desk, key: str, line: int, column: int) -> Spot | None:
    """The word at a place of a page, None where there is none that means something."""
    page, look = desk.pages[key], desk.last_look(key)
    text = page.lines.counted[line - 1]
    for found in _WORD.finditer(text):
        if found.start() + 1 <= column <= found.end() + 1:
            before = so_far(page.lines.counted, line, found.start() + 1)
            if before.within == "remark" or look is None:
                return None
            place = Place(page.file, line, found.start() + 1, line, found.end() + 1)
            context = None if before.is_fresh or before.within else context_of(before.words, look.meaning)
            return Spot(found.group(), place, before, context)
    return None


def told_at(desk: Desk, key: str, line: int, column: int) -> tuple[str, Place] | None:
    """What there is to tell about the word at a place, and about the problems that lie there."""
    page, look, spot = desk.pages[key], desk.last_look(key), spot_at(desk, key, line, column)
    if look is None:
        return None
    told = None if spot is None else _told(spot, look.meaning)
    here = [problem for problem in problems_now(look, page.lines) if _holds(problem.site, page.file, line, column)]
    texts = ([] if told is None else [told.text]) + [explained(problem) for problem in here]
    place = here[0].site if here and told is None else None if spot is None else spot.place
    return ("\n\n".join(texts), place) if texts and isinstance(place, Place) else None


def explained(problem: Problem) -> str:
    """What a problem means and how it is mended, as `koirules explain` has it."""
    page = pages().get(problem.code)
    return problem.code if page is None else f"{problem.code}: {page.means}\n{page.mend}"


def _holds(site: object, file: str, line: int, column: int) -> bool:
    if not isinstance(site, Place) or site.file != file:
        return False
    return (site.line, site.column) <= (line, column) <= (site.end_line, site.end_column)


def _told(spot: Spot, meaning: Meaning) -> Told | None:
    word, before, context = spot.word, spot.before, spot.context
    if context is None:
        if before.within:
            return told_name(Role.VALUE, "", word, meaning) if _is_said(before) else None
        return told_word(word, begins=True)
    takes = before.takes or frozenset()
    if "UNIT" in takes and word in UNITS:
        return told_unit(word)
    if context.role in {Role.VALUE, Role.STEP}:
        step = told_step(word, context.wanted)
        if step is not None:
            return step
    if word.upper() in takes:
        last = before.words[-1].text
        phrases = [phrase for phrase in before.phrases if phrase.split(maxsplit=1)[0] == word]
        text = next((about(each) for each in (f"{last} {word}", *phrases, word) if about(each)), "")
        return Told("", lambda: text) if text else None
    return told_name(context.role, context.head, word, meaning)


def _is_said(before: SoFar) -> bool:
    opened = before.part.rpartition("{")[2]
    return "{" in before.part and not opened.strip() and any(word.name == "SAY" for word in before.words)


def uses_of(read: Read) -> list[Use]:
    """Every name of a file as it reads."""
    lines = read.rules.text.split("\n")
    return [use for statement in read.rules.statements for use in uses_in(statement, lines)]


def use_at(desk: Desk, key: str, line: int, column: int) -> Use | None:
    """The name at a place of a page, None for what no file gives a name to, as a step."""
    page, look = desk.pages[key], desk.last_look(key)
    use = next((use for use in page.uses if _holds(use.place, page.file, line, column)), None)
    if use is None:
        use = None if look is None else _named(spot_at(desk, key, line, column), look.meaning)
    if use is None or use.group != VALUE or use.gives or look is None:
        return use
    return use if use.name in look.meaning.values else None


def _named(spot: Spot | None, meaning: Meaning) -> Use | None:
    """The name at a place of a statement that does not read as a whole yet."""
    if spot is None or spot.context is None:
        return None
    context = spot.context
    match context.role:
        case Role.VALUE | Role.TRAIT | Role.SETTING:
            wanted = context.wanted
            if isinstance(wanted, Steps) and spot.word in wanted.words:
                return Use("grade", spot.word, spot.place) if wanted == meaning.grade_type else None
            return Use(VALUE, spot.word, spot.place)
        case Role.SECTION | Role.FAULT | Role.LIFT | Role.BONUS | Role.PENALTY | Role.GRADE | Role.ROUND:
            return Use(context.role.name.lower(), spot.word, spot.place)
        case Role.OF_BASE:
            return Use(group_of(context.head), spot.word, spot.place)
        case _:
            return None


def _all_uses(desk: Desk, key: str) -> Iterator[Use]:
    """The names of a page as it reads now, of its bases as they were read last, and of open pages that are based on it."""
    page, look = desk.pages[key], desk.last_look(key)
    yield from page.uses
    if look is not None:
        yield from uses_of_bases(look)
    for other in [] if page.path is None else desk.leaning_on(page.path):
        if other in desk.pages:
            yield from desk.pages[other].uses


def uses_of_bases(look: Look) -> Iterator[Use]:
    """The names in the statements of bases that hold."""
    source = None if look.meaning.known is None else look.meaning.known.source
    if source is None:
        return
    texts = {file: text.split("\n") for file, text in source.bases.items()}
    for statement in source.statements:
        if not isinstance(statement, st.Header) and statement.place.file in texts:
            yield from uses_in(statement, texts[statement.place.file])


def places_of(desk: Desk, key: str, line: int, column: int, *, given: bool) -> list[Place]:
    """Where the name at a place is given, or (given False) every place where it stands, in the file and in its bases."""
    use = use_at(desk, key, line, column)
    if use is None:
        return []
    same = [each for each in _all_uses(desk, key) if (each.group, each.name) == (use.group, use.name)]
    return [each.place for each in same if each.gives or not given]


def base_at(desk: Desk, key: str, line: int, column: int) -> Path | None:
    """The file of the base whose name stands at a place."""
    page = desk.pages[key]
    header = next((each for each in page.read.rules.statements if isinstance(each, st.Header)), None)
    based_on = None if header is None else header.based_on
    if based_on is None or not _holds(based_on.file.place, page.file, line, column):
        return None
    folder = None if page.path is None else page.path.parent
    installed = installed_base(based_on.file.text, based_on.edition.text, folder, desk.registry.rulesets)
    return installed or (None if folder is None else folder / based_on.file.text)
