"""Checks a text together with the standards that it is based on: finds their files, and holds them to edition and seal."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from pathlib import Path, PureWindowsPath

from attrs import evolve, field

from koirules.language import statements as st
from koirules.language.parse.reader import MOST_STATEMENTS, Read, read_bytes
from koirules.loading.kept import Base, base_of
from koirules.loading.opening import bytes_of, earlier_editions, installed_base, why_not
from koirules.problems import Place, Problem, is_refused
from koirules.problems import sharing as say
from koirules.standard.canonical import FORMS, seal_of
from koirules.standard.check.checker import check, in_order
from koirules.standard.checked import Checked
from koirules.standard.inherit.merging import alone, merged
from koirules.standard.parts import Rules
from koirules.values import frozen
from koirules.vocabulary.nearness import near
from koirules.vocabulary.skins import Varieties

MOST_BASES = 8
"""So many standards may stand in a row, each based on the next."""

_NOTHING = Checked(None, ())

_NAME = re.compile(r"\w+")
"""What can be the name of a rule set, and is no path."""

_SEAL = re.compile(r"([0-9]+)-[0-9a-f]{64}")


@frozen
class Link:
    """A standard in a chain: what it is called, and its real file. root: its real folder, of a rule set that is installed."""

    shown: str
    real: Path
    root: Path | None = None


@frozen
class Shelf:
    """Where bases are looked for. root: the real folder that those given by a path lie in, None where there is none.

    rulesets: the rule file of each installed rule set, by its name. opened: what a real file holds, and read: how its bytes
    read; for who has files open that are not saved yet, and reads the same bases again and again.
    used: the bases that were found, for the cache.
    """

    varieties: Varieties
    rulesets: Mapping[str, Path]
    root: Path | None
    opened: Callable[[Path], bytes | Problem] = bytes_of
    read: Callable[[bytes, str], Read] = read_bytes
    used: list[Base] = field(factory=list, eq=False)

    @classmethod
    def beside(cls, path: Path, varieties: Varieties, rulesets: Mapping[str, Path]) -> Shelf:
        """The shelf of a rule file: its folder."""
        try:
            return cls(varieties, rulesets, path.parent.resolve())
        except (OSError, RuntimeError, ValueError):
            return cls(varieties, rulesets, None)

    @classmethod
    def of(cls, folder: Path | None, varieties: Varieties, rulesets: Mapping[str, Path]) -> Shelf:
        """The shelf of a text: a folder, or none."""
        if folder is None:
            return cls(varieties, rulesets, None)
        return cls.beside(folder / "text", varieties, rulesets)

    def checked(self, read: Read, folder: Path | None, chain: tuple[Link, ...] = ()) -> Checked:
        """The standard of a text that was read, with its bases. folder: the one that its paths begin in."""
        whole, base = self.whole(read, folder, chain)
        return evolve(whole, problems=_as_told(whole.problems, base, read.rules.file))

    def whole(self, read: Read, folder: Path | None, chain: tuple[Link, ...]) -> tuple[Checked, Checked]:
        """The standard of a text with all that is to be said of it and of its base, and the base, checked by itself."""
        rules, problems = read.rules, list(read.problems)
        if not rules.text and is_refused(problems):
            return Checked(None, read.problems), _NOTHING  # a file that is no text has no header to miss
        header = next((one for one in rules.statements if isinstance(one, st.Header)), None)
        if header is None or header.based_on is None:
            return check(alone(rules, problems), self.varieties, problems), _NOTHING
        base = self._base(header.based_on, folder, chain)
        if base.rules is None:
            return Checked(None, in_order([*problems, *base.problems], rules.file)), _NOTHING
        whole = merged(rules, header, base.rules, problems)
        problems += _about_seal(header.based_on, whole, base.rules, rules)
        return check(whole, self.varieties, problems), base

    def _base(self, based_on: st.BasedOn, folder: Path | None, chain: tuple[Link, ...]) -> Checked:
        """The base, checked by itself, of the edition and with the seal that are asked for; or the problems."""
        name, place = based_on.file.text, based_on.file.place
        if len(chain) > MOST_BASES:
            return Checked(None, (say.too_many_bases(place, MOST_BASES),))
        found = self._find(name, based_on.edition.text, place, folder)
        if isinstance(found, Problem):
            return Checked(None, (found,))
        if any(link.real == found.real for link in chain):
            links = [link.shown for link in chain]
            links = links[[link.real for link in chain].index(found.real) :]
            return Checked(None, (say.base_circle(place, [*links, links[0]]),))
        data = self.opened(found.real)
        if isinstance(data, Problem):
            return Checked(None, (say.no_base_file(place, name, "it cannot be read"),))
        self.used.append(base_of(name, based_on.edition.text, folder, found.real, data))
        shelf = self if found.root is None else evolve(self, root=found.root)
        whole, below = shelf.whole(shelf.read(data, found.shown), Path(found.shown).parent, (*chain, found))
        if whole.rules is None or is_refused(whole.problems):
            told = _as_told(whole.problems, below, found.shown)
            count = sum(not problem.warning for problem in told)
            return Checked(None, (say.base_has_problems(place, name, count), *told))
        wrong = self._wrong_base(based_on, whole.rules, is_installed=found.root is not None)
        return whole if wrong is None else Checked(None, (wrong,))

    def _wrong_base(self, based_on: st.BasedOn, base: Rules, *, is_installed: bool) -> Problem | None:
        name, edition, seal = based_on.file.text, based_on.edition, based_on.seal
        if base.edition != edition.text:
            if is_installed:
                earlier = earlier_editions(name, self.rulesets)
                return say.edition_not_kept(edition.place, name, edition.text, base.edition, earlier)
            return say.other_edition(edition.place, name, edition.text, base.edition)
        if seal is None:
            return None
        form = _SEAL.fullmatch(seal.text)
        if form is None or int(form.group(1)) not in FORMS:
            return say.not_a_seal(seal.place, seal.text)
        found = seal_of(base)
        return None if found == seal.text else say.other_seal(seal.place, name, found)

    def _find(self, name: str, edition: str, place: Place, folder: Path | None) -> Link | Problem:
        """The file that a path, or the name of an installed rule set with an edition, means.

        A path never means one outside of the root, whatever links lead there; a name never one that is not installed.
        """
        if (path := installed_base(name, edition, folder, self.rulesets)) is not None:
            try:
                return Link(str(path), path.resolve(), path.parent.resolve())
            except (OSError, RuntimeError, ValueError) as error:
                return say.no_base_file(place, name, why_not(error))
        if folder is None or self.root is None:
            is_name = _NAME.fullmatch(name) is not None
            return say.no_ruleset(place, name, near(name, self.rulesets)) if is_name else say.base_without_folder(place)
        if "\\" in name or name.startswith("/") or PureWindowsPath(name).drive or not name.strip():
            return say.base_not_relative(place, name)
        try:
            shown = folder / name
            real = shown.resolve()
            if not real.is_relative_to(self.root):
                return say.base_outside(place, name)
            if not real.is_file():
                if real.is_dir():
                    return say.no_base_file(place, name, "it is a folder")
                if _NAME.fullmatch(name):
                    return say.no_ruleset(place, name, near(name, self.rulesets))
                return say.no_base_file(place, name, "there is no such file")
        except (OSError, RuntimeError, ValueError) as error:  # a loop of links, a name that no file can have
            return say.no_base_file(place, name, why_not(error))
        return Link(str(shown), real)


def first_link(path: Path) -> tuple[Link, ...]:
    """The chain of a file that is loaded itself."""
    try:
        return (Link(str(path), path.resolve()),)
    except (OSError, RuntimeError, ValueError):
        return ()


def _about_seal(based_on: st.BasedOn, whole: st.RuleFile, base: Rules, own: st.RuleFile) -> list[Problem]:
    found: list[Problem] = []
    if based_on.seal is None and any(isinstance(one, st.Replace | st.Drop | st.Rename) for one in own.statements):
        found.append(say.unsealed_base(based_on.place, seal_of(base)))
    if len(whole.statements) > MOST_STATEMENTS:
        found.append(say.too_many_together(based_on.place, len(whole.statements), MOST_STATEMENTS))
    return found


def _as_told(problems: Sequence[Problem], base: Checked, file: str) -> tuple[Problem, ...]:
    """The problems of a whole: warnings that the base has by itself are its keeper's, other problems in it are new."""
    old = frozenset(base.problems)
    told: list[Problem] = []
    for problem in problems:
        if problem in old:
            continue
        in_base = base.rules is not None and isinstance(problem.site, Place) and problem.site.file != file
        told.append(say.after_changes(problem, file) if in_base and not problem.warning else problem)
    return tuple(told)
