"""Puts criteria into their sections."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from koirules.language import statements as st
from koirules.problems import Problem, is_refused, parts
from koirules.standard.check.criteria import check_extra, check_points
from koirules.standard.check.declarations import Names, titled
from koirules.standard.check.expressions import Typer
from koirules.standard.numbers import points_scaled
from koirules.standard.parts import Extra, Points, Section

MOST_WORTH = 100_000
"""The largest worth, in hundredths."""

MOST_SECTION = 100_000_000 * 100 * 100 * 1000
"""Worth x sum(weight x largest points) at most 100,000,000, in hundredths x hundredths x thousandths."""


def section_worths(file: st.RuleFile, names: Names) -> dict[str, int]:
    """The worth of each section in hundredths; for one that has a problem the largest, so that no score is missed."""
    worths: dict[str, int] = {}
    for section in file.statements:
        if not isinstance(section, st.Section):
            continue
        names.take("section", "section", section.name)
        if section.worth is None:
            names.problems.append(parts.no_worth(section.place, section.name.text))
            worths[section.name.text] = MOST_WORTH
            continue
        worth = points_scaled(section.worth, "A worth", 100, names.problems)
        worths[section.name.text] = MOST_WORTH if worth is None else worth
    return worths


def check_sections(file: st.RuleFile, typer: Typer) -> tuple[Section, ...]:
    """Every section with its criteria, as far as they have no problems."""
    contents = _contents(file, typer.problems)
    made: list[Section] = []
    typer.in_section = True
    for name, inside in contents.items():
        before = len(typer.problems)
        points: list[Points] = []
        extras: list[Extra] = []
        for statement in inside:
            if isinstance(statement, st.Points):
                one = check_points(statement, typer)
                points.extend([] if one is None else [one])
            else:
                other = check_extra(statement, typer)
                extras.extend([] if other is None else [other])
        opening = _opening(file.statements).get(name)
        if opening is None:
            continue
        label = titled(opening.title, name)
        section = Section(name, label, typer.sections[name], tuple(points), tuple(extras), opening.place)
        whole = len(points) + len(extras) == len(inside)
        if whole and not is_refused(typer.problems[before:]):
            _check_sums(section, file, typer.problems)
        made.append(section)
    typer.in_section = False
    return tuple(made)


def _opening(statements: Sequence[st.Statement]) -> Mapping[str, st.Section]:
    return {s.name.text: s for s in reversed(statements) if isinstance(s, st.Section)}


def _contents(file: st.RuleFile, problems: list[Problem]) -> dict[str, list[st.Points | st.Extra]]:
    inside: dict[str, list[st.Points | st.Extra]] = {}
    current: str | None = None
    # Criteria under a section whose own line could not be read are not homeless.
    section_unread = any(head == "section" for head, _ in file.unread)
    for statement in file.statements:
        match statement:
            case st.Section(name=name):
                current = name.text
                inside.setdefault(current, [])
            case st.Points() | st.Extra():
                if current is None and not section_unread:
                    head = "points" if isinstance(statement, st.Points) else statement.head
                    problems.append(parts.outside_section(statement.place, head, statement.name.text))
                inside.setdefault(current or "", []).append(statement)
            case _:
                pass
    return inside


def _check_sums(section: Section, file: st.RuleFile, problems: list[Problem]) -> None:
    if section.divisor == 0 and not any(head == "points" for head, _ in file.unread):
        problems.append(parts.empty_section(section.place, section.name))
    if section.worth * section.divisor > MOST_SECTION:
        problems.append(parts.section_too_large(section.place, section.name))
