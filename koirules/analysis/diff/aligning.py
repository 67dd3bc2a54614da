"""Two editions side by side: the older one in the names of the newer one, statement by statement."""

from __future__ import annotations

from collections.abc import Mapping

from koirules.analysis.diff.following import settings_by_name
from koirules.analysis.diff.pages import Key, Page
from koirules.analysis.diff.rechecking import measures_of, rechecked, vocabulary_of
from koirules.analysis.diff.renaming import in_new_names, renames_between
from koirules.standard.parts import Rules
from koirules.values import frozen


@frozen
class Aligned:
    """Two editions.

    old: the older one in the names of the newer one, which means the same; old_page: its statements. written: the older one
    as it was written, by the names of the newer one. was: the old names of what has a new one.
    """

    old: Rules
    new: Rules
    old_page: Page
    new_page: Page
    written: Mapping[Key, Key]
    as_written: Page
    was: Mapping[Key, str]


def aligned(old: Rules, new: Rules) -> Aligned:
    """Set two editions side by side."""
    old_page, new_page = Page.of(old.source.statements), Page.of(new.source.statements)
    renames = renames_between(old_page, new_page, settings_by_name(old, new))
    if renames:
        page = in_new_names(old_page, renames)
        rules = rechecked(page.statements, vocabulary_of(old), old, measures_of(old), old.constants)
        if rules is not None:
            keys = {(head, renames.get((head, name), name)): (head, name) for head, name in old_page.entries}
            was = {(head, new_name): name for (head, name), new_name in renames.items()}
            return Aligned(rules, new, page, new_page, keys, old_page, was)
    return Aligned(old, new, old_page, new_page, {key: key for key in old_page.entries}, old_page, {})
