"""Two editions compared, whole."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from attrs import evolve, frozen

from koirules.analysis.diff.aligning import Aligned, aligned
from koirules.analysis.diff.changes import Change
from koirules.analysis.diff.joint import Joint
from koirules.analysis.diff.moves import Batch, Moves, moves_of
from koirules.analysis.diff.parting import Parting, has_solver, parting
from koirules.analysis.diff.statements import changes_between
from koirules.grading.single import Grader
from koirules.standard.parts import Setting


@frozen
class Comparison:
    """Two editions of a standard compared.

    changes: by statement, in the order of the language reference. parting: whether a fish can be graded differently. renamed:
    the old names of grades that only have a new one, by the new one. moves: what became of a batch, None without one.
    grades: those of both, best first, in the names of the newer edition.
    """

    changes: tuple[Change, ...]
    parting: Parting
    renamed: Mapping[str, str]
    moves: Moves | None = None
    grades: tuple[str, ...] = ()

    @property
    def counting(self) -> tuple[Change, ...]:
        """The changes that can bear on a grade or a score."""
        return tuple(change for change in self.changes if change.counts)

    @property
    def of_judges(self) -> bool:
        """Whether judges are put together otherwise, which no fish with one record shows."""
        return any(change.head == "panel" for change in self.counting)

    def in_old_names(self, grades: Sequence[str]) -> tuple[str, ...]:
        """Grades with the names that the older edition itself has for them."""
        return tuple(self.renamed.get(name, name) for name in grades)


def compared(
    old: Grader, new: Grader, batch: Batch | None = None, progress: Callable[[str], None] = lambda _: None
) -> Comparison:
    """Compare two editions, with the settings that their graders have. batch: records, as each of them reads them.

    Raises RecordError for records that cannot be measured, and where a library for measuring is missing.
    """
    progress("what changed")
    both = aligned(old.rules, new.rules)
    changes = changes_between(both)
    graders = (old_grader(both, old), new)
    # What is wrong with the records shows before anything is worked out of the editions.
    measured = None if batch is None else batch.measured(graders)
    joint = Joint.of(graders[0].of_known_fish, graders[1].of_known_fish)
    parted = parting(joint, solver=has_solver(), progress=progress)
    renamed = {name: was for (head, name), was in both.was.items() if head == "grade"}
    moves = None
    if batch is not None and measured is not None:
        moves = moves_of(both, graders, changes, batch, measured, progress)
    return Comparison(changes, parted, renamed, moves, joint.grades)


def old_grader(both: Aligned, old: Grader) -> Grader:
    """The grader of the older edition in the names of the newer one."""
    if not both.was:
        return old
    values = old.reasoner.teller.settings
    settings: dict[str, Setting] = {}
    for name, setting in both.old.settings.items():
        was = both.was.get(("setting", name), name)
        settings[name] = evolve(setting, value=values[was].value)
    return Grader.of(both.old, settings)
