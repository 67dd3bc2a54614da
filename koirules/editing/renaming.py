"""Giving something another name, everywhere at once; or saying why not."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path

from koirules.editing.desk import Desk
from koirules.editing.finding import use_at, uses_of, uses_of_bases
from koirules.editing.lines import Lines
from koirules.editing.meaning import Meaning
from koirules.editing.names import VALUE, Use
from koirules.language import statements as st
from koirules.language.diagnose.mending import edited
from koirules.language.parse.reader import Read, read_bytes, read_text
from koirules.loading.opening import bytes_of, installed_base
from koirules.problems import Edit, Place, Problem
from koirules.values import frozen
from koirules.vocabulary.kinds import words_of
from koirules.vocabulary.words import NOT_TRAITS, RESERVED, is_name

MOST_FILES = 2_000
"""So many rule files of a folder are looked through for those that are based on one."""


@frozen
class Changed:
    """The changes of one file."""

    path: Path | None
    lines: Lines
    edits: tuple[Edit, ...]


@frozen
class _File:
    """A rule file that may lean on another. based_on: the real file of its base."""

    path: Path
    lines: Lines
    read: Read
    based_on: Path | None
    is_sealed: bool


def can_rename(desk: Desk, key: str, line: int, column: int) -> Use | str:
    """The name at a place that can be given anew in this file, or why there is none."""
    use, page, look = use_at(desk, key, line, column), desk.pages[key], desk.last_look(key)
    if use is None:
        return "There is no name here that this file gives."
    name = use.name
    given = [each for each in page.uses if each.gives and (each.group, each.name) == (use.group, name)]
    of_base = [] if look is None else [each for each in uses_of_bases(look) if each.gives and _alike(each, use)]
    replaced = any(isinstance(each, st.Replace) and _holds(each.place, given) for each in page.read.rules.statements)
    if of_base or replaced:
        where = f' in "{Path(of_base[0].place.file).name}"' if of_base else ""
        return f'"{name}" is given in the base{where}; rename it there.'
    if not given:
        return (
            f'"{name}" is not given in this file: it belongs to the variety.'
            if use.group == VALUE
            else (f'There is no {use.group} "{name}" in this file.')
        )
    return _unread(page.read, name) or _doubtful(desk, key, use) or use


def _doubtful(desk: Desk, key: str, use: Use) -> str | None:
    """Why it cannot be told from the text alone where a name stands for this."""
    look = desk.last_look(key)
    for problem in () if look is None else look.checked.problems:
        if problem.code == "step-or-name" and isinstance(problem.site, Place):
            return f"Mend line {problem.site.line} first: {problem.cause}"
    others = {each.name for each in desk.pages[key].uses if each.group == VALUE}
    if use.group == "grade" and use.name in others:
        return f'"{use.name}" is compared with a term here, which may stand for the grade; change it by hand.'
    return None


def _alike(one: Use, other: Use) -> bool:
    return (one.group, one.name) == (other.group, other.name)


def _holds(place: Place, uses: Iterable[Use]) -> bool:
    return any(place.line <= use.place.line <= place.end_line for use in uses)


def _unread(read: Read, name: str) -> str | None:
    """Why a name cannot be changed in a file that does not read as a whole."""
    for problem in read.problems:
        if not problem.warning and isinstance(problem.site, Place):
            return f'Mend line {problem.site.line} first: it cannot be read, and may speak of "{name}".'
    return None


def renamed(
    desk: Desk, key: str, line: int, column: int, new: str, folders: Iterable[Path] = ()
) -> list[Changed] | str:
    """The changes that give the name at a place anew, in this file and in those that are based on it; or why not.

    folders: where files that are based on this one are looked for, beside those that are open.
    """
    use = can_rename(desk, key, line, column)
    if isinstance(use, str):
        return use
    page = desk.pages[key]
    why = _unfit(desk, key, use, new)
    if why is not None:
        return why
    changes = [Changed(page.path, page.lines, tuple(_edits(page.uses, use, new)))]
    for file in _leaning(desk, page.path, folders):
        found = Changed(file.path, file.lines, tuple(_edits(uses_of(file.read), use, new)))
        if file.is_sealed:
            return f'"{file.path.name}" is sealed to what this file says; its seal would no longer hold.'
        taken = any(each.gives and (each.group, each.name) == (use.group, new) for each in uses_of(file.read))
        if taken:
            return f'"{new}" is taken already in "{file.path.name}", which is based on this file.'
        if found.edits and (unread := _unread(file.read, use.name)):
            return f'"{file.path.name}" is based on this file. {unread}'
        changes.append(found)
    return [each for each in changes if each.edits]


def _unfit(desk: Desk, key: str, use: Use, new: str) -> str | None:
    """Why something cannot have a name."""
    if new == use.name:
        return None
    if not is_name(new):
        return f'"{new}" is no name: a name is letters, digits and "_", a letter first, in one script.'
    look = desk.last_look(key)
    meaning = None if look is None else look.meaning
    traits = {} if meaning is None else meaning.traits
    if new in (NOT_TRAITS if use.name in traits else RESERVED):
        return f'"{new}" is a word of the language and cannot be a name.'
    values = set(traits) | {each.name for each in desk.pages[key].uses if each.gives and each.group == VALUE}
    group = (
        values
        if use.group == VALUE
        else {each.name for each in desk.pages[key].uses if each.gives and each.group == use.group}
    )
    bases = set() if look is None else {e.name for e in uses_of_bases(look) if e.gives and e.group == use.group}
    if new in group | bases:
        return f'"{new}" is taken already.'
    return _reads_otherwise(desk, key, use, new)


def _reads_otherwise(desk: Desk, key: str, use: Use, new: str) -> str | None:
    """Why the file would not read the same with a name changed."""
    page, look = desk.pages[key], desk.last_look(key)
    read = page.read
    again = read_text(edited(read.rules.text, _edits(page.uses, use, new)), read.rules.file, page.memory)
    before = [(each.group, new if _alike(each, use) else each.name) for each in page.uses]
    if again.problems != read.problems or [(each.group, each.name) for each in page.uses_in(again)] != before:
        return f'With "{new}" for "{use.name}" the file would not read the same.'
    if look is not None and _could_be_a_step(look.meaning, use, new):
        # Only where it is compared with what has the step, which takes a look to tell.
        return next((each.cause for each in desk.problems_of(key, again) if each.code == "step-or-name"), None)
    return None


def _could_be_a_step(meaning: Meaning, use: Use, new: str) -> bool:
    if use.group == VALUE:
        return new in meaning.grades or any(new in words_of(trait.kind) for trait in meaning.traits.values())
    return use.group == "grade" and new in meaning.values


def _edits(uses: Iterable[Use], use: Use, new: str) -> list[Edit]:
    return [Edit(each.place, new) for each in uses if _alike(each, use)]


def _leaning(desk: Desk, path: Path | None, folders: Iterable[Path]) -> list[_File]:
    """The files that are based on one, directly or through others."""
    if path is None:
        return []
    files = {file.path: file for file in _files(desk, folders) if file.path != path}
    found: dict[Path, _File] = {}
    below = {path}
    while below:
        below = {each.path for each in files.values() if each.based_on in below and each.path not in found}
        found.update({each: files[each] for each in below})
    return list(found.values())


def _files(desk: Desk, folders: Iterable[Path]) -> Iterator[_File]:
    seen: set[Path] = set()
    for page in list(desk.pages.values()):
        if page.path is not None:
            seen.add(page.path)
            yield _file(page.path, page.lines, page.read, desk.registry.rulesets)
    for folder in folders:
        for number, path in enumerate(_rule_files(folder)):
            if path in seen or number >= MOST_FILES:
                continue
            seen.add(path)
            data = bytes_of(path)
            if not isinstance(data, Problem) and b"based" in data:
                read = read_bytes(data, str(path))
                lines = Lines(data.decode("utf-8", errors="replace"))
                yield _file(path, lines, read, desk.registry.rulesets)


def _rule_files(folder: Path) -> Iterator[Path]:
    try:
        for path in folder.rglob("*.koi"):
            yield path.resolve()
    except OSError:
        return


def _file(path: Path, lines: Lines, read: Read, rulesets: Mapping[str, Path]) -> _File:
    header = next((each for each in read.rules.statements if isinstance(each, st.Header)), None)
    based_on = None if header is None else header.based_on
    if based_on is None:
        return _File(path, lines, read, None, is_sealed=False)
    try:
        installed = installed_base(based_on.file.text, based_on.edition.text, path.parent, rulesets)
        real = (installed or path.parent / based_on.file.text).resolve()
    except (OSError, RuntimeError, ValueError):
        return _File(path, lines, read, None, is_sealed=False)
    return _File(path, lines, read, real, is_sealed=based_on.seal is not None)
