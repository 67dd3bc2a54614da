"""What each criterion gave of a score, so that the lines add up to it exactly.

The share of a criterion is rounded to a hundredth for a person to read, and a section is rounded and held within 0 and its
worth as a whole. What lies between is a line of its own: `held`, what the section lost or gained by being held, and
`rounding`, the rest, some hundredths. For a fish that is not settled everything is told at its low end: the least that each
criterion could give.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal

from koirules.engines.scalar.evaluator import Trace
from koirules.explain.reasons import hundredths
from koirules.languages import ENGLISH, Tongue
from koirules.meaning.panels import PanelWay
from koirules.results.reason import Reason
from koirules.results.result import Contribution, SectionResult
from koirules.standard.parts import Rules, Section
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest


@frozen
class Contributor:
    """Tells what each criterion of a standard gave. of_judges: of a fish of which results of judges were put together."""

    rules: Rules
    tongue: Tongue = ENGLISH
    of_judges: bool = False

    def contributions(
        self, trace: Trace, score: Decimal, sections: Mapping[str, SectionResult], reasons: Sequence[Reason]
    ) -> tuple[Contribution, ...]:
        """The lines of a score, section by section; their points add up to its low end."""
        found: list[Contribution] = []
        points = extras = 0
        for section in self.rules.sections:
            inside = [one for one in reasons if one.section == section.name and one.score_low is not None]
            found.extend(
                Contribution(one.section, one.kind, one.name, one.title, one.score_low or Decimal(0), one)
                for one in inside
            )
            added = hundredths(_added(section, trace, points, extras))
            given = sum((one.score_low or Decimal(0) for one in inside), Decimal(0))
            result = sections[section.name]
            held, rounding = result.low - added, added - given
            most = self.tongue.figure(shortest(result.worth))
            bound = (
                self.tongue("left over where judges are put together")
                if self.of_judges
                else self.tongue("a section gives at most {points}", points=most)
                if held < 0
                else self.tongue("a section gives no less than 0")
            )
            found.append(Contribution(section.name, "held", "", bound, held, None))
            left = self.tongue("left over by rounding to hundredths")
            found.append(Contribution(section.name, "rounding", "", left, rounding, None))
            points += len(section.points)
            extras += len(section.extras)
        if self.rules.panel is not None and self.rules.panel.way is not PanelWay.TRAITS:
            # Of a mean or a median the sections need not add up to the score.
            rest = score - sum((one.points for one in found), Decimal(0))
            title = self.tongue("left over where judges are put together")
            found.append(Contribution("", "panel", "", title, rest, None))
        return tuple(found)


def _added(section: Section, trace: Trace, points: int, extras: int) -> int:
    """The hundredths that the criteria of a section add up to at the low end, before it is held within 0 and its worth."""
    divisor = section.divisor
    low = section.worth * sum(
        part.weight * trace.points[points + i][2] for i, part in enumerate(section.points)
    ) + divisor * sum(
        part.sign * part.amount * (trace.extras[extras + i][0 if part.sign > 0 else 1])
        for i, part in enumerate(section.extras)
    )
    return (2 * low + divisor) // (2 * divisor)
