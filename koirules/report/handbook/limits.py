"""Grades, faults, lifts and alerts: what settles a fish, whatever its points."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from koirules.report.handbook.blocks import Block, Column, Heading, Line, Paragraph, Row, Table, line, strong
from koirules.report.handbook.voice import Voice, anchor
from koirules.standard.parts import Limit


def grades(voice: Voice) -> Iterator[Block]:
    """The grades, best first, each with what it asks for."""
    every, base = voice.rules.grades, voice.base
    if base is not None and not voice.told_here(every) and len(every) == len(base.grades):
        return
    yield Heading(2, line(voice.say("The grades")), "grades")
    yield Paragraph(
        line(voice.say("From the best down: {a_fish} gets the first grade whose condition holds.", a_fish=voice.a_fish))
    )
    rows = []
    for place, grade in enumerate(voice.rules.grades):
        condition: Line = (
            line(voice.say("all others")) if grade.condition is None else voice.told(grade.condition.place)
        )
        title = voice.title(grade.title, strong=True)
        rows.append(Row((line(f"{place + 1}. ", title), condition), anchor("grade", grade.name)))
    table = Table(
        line(voice.say("Grades and their bounds")),
        (Column(voice.say("grade")), Column(voice.say("asks for"))),
        tuple(rows),
        "grades",
    )
    yield voice.remarked(table, [grade.place for grade in voice.rules.grades])


def faults(voice: Voice) -> Iterator[Block]:
    """The faults by the grade that they leave, the worst first."""
    every = [limit for limit in voice.told_here(voice.rules.limits) if limit.head == "fault"]
    found = [limit for limit in every if not limit.lowers]
    if not every:
        return
    yield Heading(2, line(voice.say("Faults")), "faults")
    if found and not voice.explained("fault"):
        yield Paragraph(
            line(
                voice.say(
                    "A fault leaves {a_fish} no better a grade than the one named here, whatever its points. Of two faults the "
                    "worse one counts, and a fault counts more than any lift.",
                    a_fish=voice.a_fish,
                )
            )
        )
    if len(found) < len(every):
        told = voice.say(
            "Some faults lower {a_fish} by so many grades instead, never below the last. Those that are found are added up. They "
            "count after any lift, and before faults that name a grade.",
            a_fish=voice.a_fish,
        )
        yield Paragraph(line(told))
    for by in sorted({fault.lowers for fault in every} - {0}, reverse=True):
        told = voice.plain.lowering(by)
        yield Heading(3, line(f"{told[:1].upper()}{told[1:]}"))
        yield _limits(voice, [fault for fault in every if fault.lowers == by], "fault")
    for place in sorted({fault.grade for fault in found}, reverse=True):
        heading = Heading(3, voice.line("No better than {grade}", grade=voice.grade(place)))
        yield heading
        yield _limits(voice, [fault for fault in found if fault.grade == place], "fault")


def lifts(voice: Voice) -> Iterator[Block]:
    """The lifts by the grade that they give, the best first."""
    found = [limit for limit in voice.told_here(voice.rules.limits) if limit.head == "lift"]
    if not found:
        return
    yield Heading(2, line(voice.say("Lifts")), "lifts")
    if not voice.explained("lift"):
        told = voice.say(
            "A lift gives {a_fish} no worse a grade than the one named here, unless a fault takes it away.",
            a_fish=voice.a_fish,
        )
        yield Paragraph(line(told))
    for place in sorted({lift.grade for lift in found}):
        yield Heading(3, voice.line("No worse than {grade}", grade=voice.grade(place)))
        yield _limits(voice, [lift for lift in found if lift.grade == place], "lift")


def _limits(voice: Voice, found: Sequence[Limit], head: str) -> Table:
    rows = tuple(Row((line(voice.title(one.title)), _condition(voice, one)), anchor(head, one.name)) for one in found)
    title, column = (
        (voice.say("Faults"), voice.say("fault")) if head == "fault" else (voice.say("Lifts"), voice.say("lift"))
    )
    table = Table(line(title), (Column(column), Column(voice.say("where"))), rows, "conditions")
    return voice.remarked(table, [one.place for one in found])


def _condition(voice: Voice, limit: Limit) -> Line:
    condition = voice.told(limit.condition.place)
    if limit.exception is None:
        return condition
    except_ = strong(voice.say("except"))
    return voice.line(
        "{condition}; {except_} where {exception}",
        condition=condition,
        except_=except_,
        exception=voice.told(limit.exception.place),
    )


def alerts(voice: Voice) -> Iterator[Block]:
    """Words of warning about a batch as a whole."""
    found = voice.told_here(voice.rules.alerts)
    if not found:
        return
    yield Heading(2, line(voice.say("Alerts")), "alerts")
    yield Paragraph(
        line(voice.say("Said of a batch as a whole, before its {fish}; they change no grade.", fish=voice.many))
    )
    rows = tuple(
        Row((line(voice.title(alert.title)), voice.told(alert.condition.place)), anchor("alert", alert.name))
        for alert in found
    )
    table = Table(
        line(voice.say("Alerts")), (Column(voice.say("alert")), Column(voice.say("where"))), rows, "conditions"
    )
    yield voice.remarked(table, [alert.place for alert in found])
