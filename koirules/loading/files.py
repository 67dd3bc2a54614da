"""From a path or a name to a checked standard, from the cache where it is there."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from koirules.loading.kept import keep_standard, kept_standard, name_of
from koirules.loading.opening import bytes_of, earlier_edition, without_collector
from koirules.problems import Problem, reading
from koirules.vocabulary.nearness import near
from koirules.vocabulary.skins import Varieties

if TYPE_CHECKING:
    from koirules.standard.checked import Checked


def load(name: str, varieties: Varieties, rulesets: Mapping[str, Path], key: str = "") -> Checked:
    """The checked standard of a rule file, given by its path or by the name of a rule set; never raises for bad input.

    key: what the meaning of a file follows from beside its bytes (`Registry.key`); with one, the standard is kept in the cache.
    """
    path = find(name, rulesets)
    if isinstance(path, Problem):
        return _refused(path)
    data = bytes_of(path)
    if isinstance(data, Problem):
        return _refused(data)
    kept_as = name_of(key, path, data)
    with without_collector():
        kept = kept_standard(kept_as, varieties, rulesets)
        return _checked(path, data, varieties, rulesets, kept_as) if kept is None else kept


def _refused(problem: Problem) -> Checked:
    from koirules.standard.checked import Checked

    return Checked(None, (problem,))


def _checked(path: Path, data: bytes, varieties: Varieties, rulesets: Mapping[str, Path], kept_as: str) -> Checked:
    # What reads and checks is imported where nothing was kept.
    from koirules.loading.reading import checked_file

    checked, bases = checked_file(path, data, varieties, rulesets)
    return keep_standard(kept_as, checked, bases, varieties)


def find(name: str, rulesets: Mapping[str, Path]) -> Path | Problem:
    """The rule file that a path, the name of a rule set, or a name with an earlier edition (`NAME-EDITION`) means."""
    path = Path(name)
    for candidate in (path, path / "standard.koi"):
        try:
            if candidate.is_file():
                return candidate
        except (OSError, ValueError) as error:  # a name that is too long, or that no file can have
            return reading.unreadable_file(name, str(getattr(error, "strerror", None) or error).lower())
    if name in rulesets:
        return rulesets[name]
    if path.is_dir() and (inside := sorted(str(one) for one in path.glob("*.koi"))):
        return reading.folder_of_rules(name, inside)
    ruleset, _, edition = name.partition("-")
    if (earlier := earlier_edition(ruleset, edition, rulesets)) is not None:
        return earlier
    return reading.no_such_file(name, near(name, rulesets))
