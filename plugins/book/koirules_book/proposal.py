"""A proposed edition: the rule file with the weights, worths and grade lines that were learnt, rounded as a person would write.

Nothing else is changed: faults, lifts, curves and remarks stay. Each changed number is followed by a remark with what stood
there and how sure the new one is.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from decimal import ROUND_HALF_UP, Decimal
from math import isnan
from typing import TYPE_CHECKING

from attrs import frozen

from koirules import Cell, Problem, StandardError, read_standard, tidy
from koirules_book.learning import Learnt, Weight

if TYPE_CHECKING:
    from koirules import Place, Standard

_TENTH = Decimal("0.1")
_WHOLE = Decimal(1)


@frozen
class Proposal:
    """A proposed edition. text: the rule file. notes: what could not be carried out, each as a sentence."""

    text: str
    notes: tuple[str, ...]


@frozen
class _Change:
    place: Place
    pattern: str
    text: str
    remark: str


def proposal(standard: Standard, learnt: Learnt, edition: str) -> Proposal:
    """The edition that the picks propose. Raises StandardError where the changed text no longer reads."""
    text = standard.whole_text
    plain = read_standard(text, "proposal.koi")
    worths, weights = _rounded(plain, learnt.weights)
    notes: list[str] = []
    changes = [
        *_weight_changes(plain, learnt, worths, weights),
        *_line_changes(plain, learnt, notes),
        *_section_bars(plain, worths, notes),
    ]
    edited = _edition(_carried_out(text, changes), edition)
    head = _head(standard, learnt, notes)
    try:
        return Proposal(tidy(f"{head}\n{edited}", "proposal.koi"), tuple(notes))
    except StandardError as error:
        raise StandardError([*error.problems, _no_longer_reads()]) from None


def _rounded(standard: Standard, learnt: Sequence[Weight]) -> tuple[dict[str, Decimal], dict[str, Decimal]]:
    """The worth of each section in whole points, and the weight of each criterion, to a tenth of the smallest in its section."""
    by_name = {weight.name: weight for weight in learnt}
    worths: dict[str, Decimal] = {}
    weights: dict[str, Decimal] = {}
    total = sum((Decimal(section.worth) / 100 for section in standard.rules.sections), Decimal(0))
    raw = {
        section.name: sum((Decimal(str(by_name[part.name].learnt)) for part in section.points), Decimal(0))
        for section in standard.rules.sections
    }
    scale = total / sum(raw.values(), Decimal(0))
    floors = {name: (value * scale).to_integral_value(rounding="ROUND_FLOOR") for name, value in raw.items()}
    # The largest remainders take what is left, so that the worths still add up.
    left = int(total - sum(floors.values()))
    for name in sorted(raw, key=lambda name: floors[name] - raw[name] * scale)[:left]:
        floors[name] += 1
    for section in standard.rules.sections:
        worths[section.name] = max(_WHOLE, floors[section.name])
        gives = {part.name: Decimal(str(by_name[part.name].learnt)) * 1000 / part.shape.most for part in section.points}
        smallest = min((give for give in gives.values() if give > max(gives.values()) / 20), default=_WHOLE)
        for name, give in gives.items():
            weights[name] = (give / smallest).quantize(_TENTH, ROUND_HALF_UP).normalize() if smallest else _WHOLE
    return worths, weights


def _weight_changes(
    standard: Standard, learnt: Learnt, worths: Mapping[str, Decimal], weights: Mapping[str, Decimal]
) -> Iterable[_Change]:
    by_name = {weight.name: weight for weight in learnt.weights}
    for section in standard.rules.sections:
        before = Decimal(section.worth) / 100
        if worths[section.name] != before:
            yield _Change(
                section.place,
                r"\bworth\s+[0-9.]+",
                f"worth {_plain(worths[section.name])}",
                f"worth {_plain(before)} before",
            )
        for part in section.points:
            old = Decimal(part.weight) / 100
            one = by_name[part.name]
            sure = f"gives {one.learnt:.1f} of the score at most (95 %: {one.low:.1f} to {one.high:.1f}), {one.before:.1f} before"
            if one.held:
                sure = f"gives {one.before:.1f} of the score at most, as before: nothing was learnt of it"
            if weights[part.name] != old:
                yield _Change(part.place, r"\bweight\s+[0-9.]+", f"weight {_plain(weights[part.name])}", sure)
            else:
                yield _Change(part.place, "", "", sure)


def _line_changes(standard: Standard, learnt: Learnt, notes: list[str]) -> Iterable[_Change]:
    grades = {grade.name: grade for grade in standard.rules.grades}
    settings = standard.rules.settings
    for name, line, low, high in learnt.lines:
        grade = grades.get(name)
        if grade is None:
            notes.append(
                f"The line above which a fish was picked “{name}” lies at {line:.0f} points ({low:.0f} to {high:.0f}): "
                "no grade has that name."
            )
            continue
        words = standard.rules.words_at(grade.place)
        found = re.search(r"\bscore at least ([0-9.]+|[^\W\d]\w*)", words)
        if not found or isnan(line):
            notes.append(
                f"The grade {name} asks for no score alone, so its condition stays: the picks put its line at {line:.0f} points."
            )
            continue
        sure = f"the picks put the line at {line:.1f} (95 %: {low:.1f} to {high:.1f}); {found.group(1)} before"
        if found.group(1) in settings:
            setting = settings[found.group(1)]
            kept = min(max(Decimal(round(line)), setting.low), setting.high)
            if kept != round(line):
                notes.append(
                    f"The line of {name}, {line:.0f}, lies outside of what {setting.name} may be: {_plain(kept)} is written."
                )
            yield _Change(
                setting.place, r"=\s*[0-9.]+", f"= {_plain(kept)}", sure.replace(found.group(1), _plain(setting.value))
            )
        else:
            yield _Change(grade.place, r"\bscore\s+at\s+least\s+[0-9.]+", f"score at least {round(line)}", sure)


def _section_bars(standard: Standard, worths: Mapping[str, Decimal], notes: list[str]) -> Iterable[_Change]:
    """Lines on the points of a section, in grades and lifts, move with its worth; those in faults are only named."""
    before = {section.name: Decimal(section.worth) / 100 for section in standard.rules.sections}
    for part in (*standard.rules.grades, *standard.rules.limits):
        words = standard.rules.words_at(part.place)
        for name, number in re.findall(r"\bsection (\w+) (?:at least|at most|above|below) ([0-9.]+)", words):
            if worths.get(name) == before.get(name):
                continue
            if part.head == "fault":
                notes.append(
                    f"The fault {part.name} reads the points of section {name}, whose worth has changed: look at its {number}."
                )
                continue
            moved = (Decimal(number) * worths[name] / before[name]).quantize(_TENTH, ROUND_HALF_UP)
            yield _Change(
                part.place,
                rf"(\bsection\s+{re.escape(name)}\s+(?:at\s+least|at\s+most|above|below)\s+){re.escape(number)}",
                rf"\g<1>{_plain(moved)}",
                f"{number} of section {name} before",
            )


def _carried_out(text: str, changes: Iterable[_Change]) -> str:
    lines = text.split("\n")
    remarks: dict[int, list[str]] = {}
    for change in changes:
        first, last = change.place.line - 1, change.place.end_line
        statement = "\n".join(lines[first:last])
        if change.pattern:
            changed, count = re.subn(change.pattern, change.text, statement, count=1)
            if not count and change.pattern.startswith(r"\bweight"):
                changed = re.sub(r"\s+by\b", f" {change.text} by", statement, count=1)
            statement = changed
        lines[first:last] = statement.split("\n")
        remarks.setdefault(first, []).append(change.remark)
    out: list[str] = []
    for number, line in enumerate(lines):
        out.extend(f"# Learnt: {remark}." for remark in remarks.get(number, ()))
        out.append(line)
    return "\n".join(out)


def _edition(text: str, edition: str) -> str:
    return re.sub(r"^(\s+edition\s+)\S+", rf"\g<1>{edition}", text, count=1, flags=re.MULTILINE)


def _head(standard: Standard, learnt: Learnt, notes: Sequence[str]) -> str:
    what = "pairs" if learnt.pairs else "picks"
    prior = (
        "without a prior"
        if learnt.prior is None
        else f"held near edition {standard.edition} (each weight within {learnt.prior:.0%} of itself, one standard deviation)"
    )
    before = (
        ""
        if isnan(learnt.agreed_before)
        else f"the edition before gives {learnt.agreed_before:.0%} as they were made, "
    )
    lines = [
        f"PROPOSED from {learnt.used} past {what}, {prior}.",
        f"Of these {what}, {before}this one gives {learnt.agreed_after:.0%} as they were made (cross-validated).",
        "Faults are as they were. Read it, change it, and put your own name to it before anybody sorts by it.",
        *notes,
        *(
            f"{one.fish} was picked “{one.picked}” against {', '.join(one.faults)} (no better than {one.allowed})."
            for one in learnt.contradictions[:20]
        ),
    ]
    return "\n".join(f"# {line}" for line in lines)


def _plain(number: Decimal) -> str:
    return f"{number.normalize():f}"


def _no_longer_reads() -> Problem:
    return Problem(
        "proposal-no-longer-reads",
        Cell("proposal.koi"),
        "With the learnt worths, a statement above no longer holds.",
        "Change that statement first, or hold the weights nearer with a smaller `--hold`.",
    )
