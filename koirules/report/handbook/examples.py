"""The samples of a standard as worked examples: graded as every fish is, with the reasons."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from koirules.grading.sample_runs import SampleRun
from koirules.languages import to_say
from koirules.report.figures import figure, in_hundredths
from koirules.report.handbook.blocks import (
    Block,
    Column,
    Facts,
    Group,
    Heading,
    Line,
    Listed,
    Paragraph,
    Portrait,
    Row,
    Table,
    line,
    strong,
)
from koirules.report.handbook.voice import Voice
from koirules.results.reason import Reason, State
from koirules.results.result import Contribution, Result


def examples(voice: Voice, runs: Sequence[SampleRun]) -> Iterator[Block]:
    """Each sample with what was recorded, what came of it, and why."""
    if not runs:
        return
    yield Heading(2, line(voice.say("Worked examples")), "examples")
    yield Paragraph(
        line(
            voice.say(
                "The {fish} that the standard itself names as examples, graded by it. What is not listed was not recorded.",
                fish=voice.many,
            )
        )
    )
    worked = (Group("example", tuple(_example(voice, number, run))) for number, run in enumerate(runs, 1))
    yield Group("examples", tuple(worked))


def _example(voice: Voice, number: int, run: SampleRun) -> Iterator[Block]:
    result, title = run.result, voice.tongue.of(run.sample.title)
    yield Heading(3, line(f"{number}. {title}"), f"example-{number}")
    grades, scored = voice.graded(result.possible), _scored(voice, result)
    came = voice.line("Comes out {grade}{scored}.", grade=grades, scored=scored)
    if result.grade is None:
        came = voice.line("Not settled: could still be {grades}{scored}.", grades=grades, scored=scored)
    yield from voice.remarks_on(run.sample.place)
    yield Paragraph(came)
    for failure in run.failures:
        yield Paragraph(line(strong(voice.say("Not as the standard says: ")), f"{failure}."))
    yield Facts(((voice.say("recorded"), _recorded(voice, run)),))
    view = voice.drawer.view_now(run.sample.record, title)
    if view is not None and view.mapped:
        yield Portrait(f"example-{number}-fish", view.title(title, voice.tongue), view, voice.tongue)
    if result.sections:
        yield _points(voice, result)
    yield Listed((*_settling(voice, result), *_leaving(voice, run)))


def _settling(voice: Voice, result: Result) -> Iterator[Line]:
    """The faults and lifts that did anything, and the grades."""
    limits = [reason for reason in result.reasons if reason.kind in {"fault", "lift"}]
    sure = [reason for reason in limits if reason.state in {State.YES, State.HELD_BACK}]
    still_open = [reason.title for reason in limits if reason.state is State.OPEN]
    for reason in (*sure, *_grades(result)):
        yield line(voice.sentence(reason.words))
    if still_open:
        then = (
            to_say("could still show: {faults}; the grade is the same either way")
            if result.grade is not None
            else to_say("could still show: {faults}; what was not recorded decides")
        )
        yield voice.line(then, faults=voice.sentence(voice.tongue.joined(still_open)))
    elif limits and not sure:
        faults_only = all(reason.kind == "fault" for reason in limits)
        yield line(voice.say("no fault") if faults_only else voice.say("no fault, and no lift"))


def _leaving(voice: Voice, run: SampleRun) -> Iterator[Line]:
    """What the rounds that the sample is about make of it, and where it leaves: by itself a fish is no batch."""
    named = {outcome.name.text for outcome in run.sample.outcomes if outcome.name and outcome.names == "round"}
    for step in run.result.course if named else ():
        if step.kept and step.round in named:
            yield line(voice.sentence(voice.say("kept in {round}: {reason}", round=step.title, reason=step.why)))
        elif step.round == run.result.left_in:
            yield line(voice.sentence(voice.say("leaves in {round}: {reason}", round=step.title, reason=step.why)))


def _scored(voice: Voice, result: Result) -> str:
    if not result.sections:
        return ""
    return voice.say(", with {points} points", points=figure(result.score_low, result.score_high, voice.tongue))


def _recorded(voice: Voice, run: SampleRun) -> Line:
    told: list[Line] = []
    for name, trait in voice.rules.traits.items():
        if name in run.sample.record:
            value = voice.plain.recorded(trait, run.sample.record)
            if told:
                told.append(line(voice.tongue.of("; ")))
            told.append(voice.line("{title} {value}", title=voice.trait(trait), value=value))
    return line(*told) if told else line(voice.say("nothing"))


def _points(voice: Voice, result: Result) -> Table:
    rows: list[Row] = []
    for section in result.sections.values():
        title = next(one.title for one in voice.rules.sections if one.name == section.name)
        rows.append(
            Row(
                (
                    line(voice.title(title, strong=True)),
                    line(strong(in_hundredths(section.low, section.high, voice.tongue))),
                    line(strong(voice.tongue.figure(f"{section.worth:.2f}"))),
                ),
                sums=True,
            )
        )
        inside = [one for one in result.contributions if one.section == section.name]
        rows.extend(_criterion(voice, one) for one in inside if _counts(one))
    columns = (
        Column(voice.say("what was seen, and what it gave")),
        Column(voice.say("of the score"), number=True),
        Column(voice.say("at most"), number=True),
    )
    return Table(line(voice.say("How the points add up")), columns, tuple(rows), "working")


def _counts(one: Contribution) -> bool:
    """Whether a line of a score has anything to say: a criterion always has, the others where they gave or may give."""
    if one.reason is None:
        return bool(one.points)
    return one.kind == "points" or one.reason.state is not State.NO


def _criterion(voice: Voice, one: Contribution) -> Row:
    reason = one.reason
    if reason is None or reason.score_low is None or reason.score_high is None:
        return Row((line(one.title), line(voice.tongue.figure(f"{one.points:.2f}")), ()))
    most = reason.score_most if reason.kind == "points" else None
    return Row(
        (
            line(voice.sentence(reason.words)),
            line(in_hundredths(reason.score_low, reason.score_high, voice.tongue)),
            line("" if most is None else voice.tongue.figure(f"{most:.2f}")),
        )
    )


def _grades(result: Result) -> Iterator[Reason]:
    """The grades from the best down to the first whose condition surely holds; open ones only where they decide."""
    for reason in result.reasons:
        if reason.kind != "grade":
            continue
        if reason.state is not State.OPEN or result.grade is None:
            yield reason
        if reason.state is State.YES:
            return
