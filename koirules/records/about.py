"""What results say about where they come from."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from types import MappingProxyType
from typing import TYPE_CHECKING

from attrs import field

from koirules.languages import ENGLISH, Tongue
from koirules.records.recorded_values import Recorded
from koirules.results.course import AlertShown, RoundCourse
from koirules.values import frozen
from koirules.vocabulary.subject import ITEM, Subject

if TYPE_CHECKING:
    from koirules.explain.score_lines import GradeLine


def _unchanging(settings: Mapping[str, str]) -> Mapping[str, str]:
    return MappingProxyType(dict(settings))


@frozen
class About:
    """The standard that results come from.

    title, edition, variety, stage: as its header has them. file: the rule file. settings: the settings that this run
    changed, by name, with their values as text. cautions: what a reader of the results should bear in mind. alerts: words of
    warning about the batch. rounds: what each round of the selection did. seal: by which text the standard is known. grades: best
    first, with their lines (empty where nobody said: formats name them as the results do). tongue: the language
    that they are told in. records: the name of the file of records, without its folder. parts: of a batch that
    several standards graded, each of them; title, edition, file and seal are then those of none. fish: how many fish a part
    graded; the results of a batch stand part after part. day: that of the grading. recorded: the values
    that tables have beside the results. classes: the class table
    that fish were put into classes by, with its edition. subject: what the results are about, as sentences name it.
    traits: titles of traits by name.
    """

    title: str
    edition: str
    variety: str | None
    file: str
    settings: Mapping[str, str] = field(factory=dict, converter=_unchanging, hash=False)
    stage: str | None = None
    cautions: tuple[str, ...] = ()
    alerts: tuple[AlertShown, ...] = ()
    rounds: tuple[RoundCourse, ...] = ()
    seal: str = ""
    grades: tuple[GradeLine, ...] = ()
    tongue: Tongue = ENGLISH
    records: str = ""
    parts: tuple[About, ...] = ()
    fish: int = 0
    day: date | None = None
    classes: str = ""
    recorded: Recorded = field(factory=Recorded, hash=False)
    subject: Subject = ITEM
    traits: Mapping[str, str] = field(factory=dict, hash=False)

    @property
    def language(self) -> str | None:
        """The two-letter code of the language, None for that of the rule file."""
        return self.tongue.language

    def counted(self, number: int) -> str:
        """How many of what the results are about, with its noun."""
        return self.tongue.counted(self.subject.one, self.subject.many, number)
