"""Two editions compared, whole."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from itertools import islice

from attrs import evolve

from koirules.analysis.diff.aligning import Aligned, aligned
from koirules.analysis.diff.changes import Change
from koirules.analysis.diff.joint import Joint, Record
from koirules.analysis.diff.moves import Batch, Moves, moves_of
from koirules.analysis.diff.parting import Outcome, Parting, has_solver, parting
from koirules.analysis.diff.statements import changes_between
from koirules.candidates.places_to_move import every_telling_value
from koirules.grading.single import Grader
from koirules.results.record import Record as OneFish
from koirules.results.result import Result
from koirules.standard.parts import Setting
from koirules.values import frozen
from koirules.vocabulary.readings import anything

_MOST_TRIED = 2_000
_NOBODY = OneFish("a fish", 0, {}, looked=True)


@frozen
class Unmentioned:
    """A fish of which nobody mentioned a trait, and which the editions grade differently since silence means another thing.

    trait: what is blank. fish: what was recorded of it; ordinary: the fish that it is like. old, new: what comes of it.
    """

    trait: str
    fish: Record
    ordinary: Record
    old: Outcome
    new: Outcome


@frozen
class Comparison:
    """Two editions of a standard compared.

    changes: by statement, in the order of the language reference. parting: whether a fish can be graded differently. renamed:
    the old names of grades that only have a new one, by the new one. moves: what became of a batch, None without one.
    grades: those of both, best first, in the names of the newer edition. unmentioned: for each trait of which silence means
    another thing, a fish that shows it, where one was found among many that were tried.
    """

    changes: tuple[Change, ...]
    parting: Parting
    renamed: Mapping[str, str]
    moves: Moves | None = None
    grades: tuple[str, ...] = ()
    unmentioned: tuple[Unmentioned, ...] = ()

    def __repr__(self) -> str:
        with_batch = "" if self.moves is None else ", with a batch"
        return f"Comparison({len(self.changes)} changes, {len(self.counting)} of them count{with_batch})"

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
    unmentioned = tuple(_unmentioned(graders, changes, joint))
    return Comparison(changes, parted, renamed, moves, joint.grades, unmentioned)


def _unmentioned(graders: tuple[Grader, Grader], changes: Sequence[Change], joint: Joint) -> Iterator[Unmentioned]:
    """A fish for each trait of which silence means another thing: first the ordinary one, then with one other trait changed."""
    for name in dict.fromkeys(change.name for change in changes if change.head == "silence" and change.counts):
        for fish in islice(_blank(joint, name), _MOST_TRIED):
            old, new = (
                grader.grade(evolve(_NOBODY, readings=readings))
                for grader, readings in zip(graders, joint.as_recorded(fish), strict=True)
            )
            if old.possible != new.possible:
                yield Unmentioned(name, fish, joint.ordinary, _outcome(old), _outcome(new))
                break


def _blank(joint: Joint, name: str) -> Iterator[Record]:
    """Fish of which a trait was not recorded."""
    ordinary = {key: reading for key, reading in joint.ordinary.items() if key != name and key in joint.traits}
    yield ordinary
    for other, cuts in joint.cuts.items():
        trait = joint.traits.get(other)
        if trait is not None and other != name:
            for reading in every_telling_value(trait, anything(trait.kind), cuts):
                yield {**ordinary, other: reading}


def _outcome(result: Result) -> Outcome:
    return Outcome(result.possible, (int(100 * result.score_low), int(100 * result.score_high)))


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
