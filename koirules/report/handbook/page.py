"""The page of a standard, part by part."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from attrs import Factory, field

from koirules.grading.sample_runs import SampleRun
from koirules.grading.single import Grader
from koirules.language.statements import Header
from koirules.report.drawer import Drawer
from koirules.report.handbook.blocks import Block, Facts, Group, Heading, Line, Listed, Paragraph, line, strong
from koirules.report.handbook.criteria import sections
from koirules.report.handbook.differences import differences
from koirules.report.handbook.examples import examples
from koirules.report.handbook.glossary import glossary, panel, phrases, settings, silence
from koirules.report.handbook.limits import alerts, faults, grades, lifts
from koirules.report.handbook.selection import selection
from koirules.report.handbook.voice import Voice
from koirules.standard.parts import Rules
from koirules.standard.titles import Titled
from koirules.values import frozen
from koirules.vocabulary.skins import ANY_VARIETY


@frozen
class Subject:
    """What a page is about.

    runs: the samples of the standard, run. cautions: what to bear in mind before work begins. remarks: whether the remarks of
    the rule file are shown beside what they are on. drawer: draws the samples, and knows afterwards what went wrong with that.
    """

    grader: Grader
    runs: Sequence[SampleRun]
    seal: str
    cautions: Sequence[str]
    remarks: bool = False
    drawer: Drawer = field(default=Factory(lambda self: _drawer(self.grader), takes_self=True), eq=False, repr=False)

    def voice(self, base: Rules | None = None) -> Voice:
        """The words of its page. base: where only the differences from it are told."""
        remarks = self.grader.rules.source.remarks if self.remarks else {}
        return Voice(self.grader, self.drawer, remarks, base)


def _drawer(grader: Grader) -> Drawer:
    return Drawer(grader.rules, tongue=grader.reasoner.teller.plain.tongue)


def blocks_of(subject: Subject) -> tuple[Block, ...]:
    """The whole page."""
    voice = subject.voice()
    return (
        Heading(1, line(voice.title(voice.rules.title))),
        *opening(voice, subject.seal),
        *cautions(voice, subject.cautions),
        *parts(voice, subject.runs),
        *glossary(voice),
    )


def parts(voice: Voice, runs: Sequence[SampleRun]) -> tuple[Block, ...]:
    """What a standard says, part by part, or how it differs from its base."""
    base = voice.base
    return (
        *differences(voice),
        *(_way(voice) if base is None else ()),
        *grades(voice),
        *sections(voice),
        *faults(voice),
        *lifts(voice),
        *alerts(voice),
        *selection(voice),
        *panel(voice),
        *settings(voice),
        *examples(voice, [run for run in runs if base is None or run.sample.place.file == voice.rules.file]),
        *silence(voice),
        *phrases(voice),
    )


def opening(voice: Voice, seal: str) -> Iterator[Block]:
    """What a standard is for, under its title."""
    rules = voice.rules
    yield Facts(tuple(_facts(voice, seal)))
    for note in rules.notes:
        yield Paragraph(line(voice.tongue.of(note)))
    yield from voice.remarks_on(next(one.place for one in rules.source.statements if isinstance(one, Header)))


def _facts(voice: Voice, seal: str) -> Iterator[tuple[str, Line]]:
    rules, tongue = voice.rules, voice.tongue
    yield voice.say("edition"), line(strong(rules.edition))
    if rules.variety is not None:
        names = (
            voice.say("any variety") if name == ANY_VARIETY else tongue.of(name.replace("_", " "))
            for name in rules.each_variety or (rules.variety,)
        )
        yield voice.say("variety"), line(tongue.joined(names))
    if rules.stage is not None:
        yield voice.say("stage"), line(tongue.of(rules.stage.replace("_", " ")))
    if rules.occasion is not None:
        yield voice.say("for"), line(tongue.of(rules.occasion, "occasion"))
    begins, ends = rules.valid_from, rules.valid_until
    if begins is not None or ends is not None:
        told = [voice.say("from {day}", day=begins)] if begins is not None else []
        told += [voice.say("until {day}", day=ends)] if ends is not None else []
        yield voice.say("valid"), line(tongue.joined(told, " "))
    for number, base in enumerate(rules.source.chain):
        title = voice.title(Titled(base.title.text, base.title.others))
        held = ""  # in the book of a show the base is a chapter, with its seal
        if voice.base is None:
            held = voice.say(", seal {seal}", seal=base.seal) if base.seal else voice.say(", not held by a seal")
        yield (
            voice.say("based on") if number == 0 else voice.say("which is based on"),
            voice.line(
                "{title} ({name}), edition {edition}{held}",
                title=title,
                name=base.named,
                edition=base.edition,
                held=held,
            ),
        )
    yield voice.say("seal"), line(seal)


def cautions(voice: Voice, told: Sequence[str]) -> Iterator[Block]:
    """What to bear in mind before work begins."""
    if told:
        title = Heading(2, line(voice.tongue.of(voice.rules.subject.in_hand)), "cautions")
        yield Group("caution", (title, Listed(tuple(line(voice.tongue.of(caution)) for caution in told))))


def _way(voice: Voice) -> Iterator[Block]:
    """How a grade comes about, by what the standard has of it."""
    rules, say = voice.rules, voice.say
    told: list[str] = []
    if rules.sections:
        told.append(
            say(
                "Each criterion gives points for what is seen; of two criteria the one with twice the weight counts twice."
            )
        )
        told.append(
            say(
                "A section adds up its criteria to what it is worth, then its bonuses and penalties, and is never below 0 nor "
                "above its worth."
            )
        )
        worth = voice.points(sum(section.worth for section in rules.sections))
        told.append(say("The score is the sum of the sections, {points} at most, to the hundredth.", points=worth))
    told.append(say("The grade is the best one whose condition holds."))
    heads = {limit.head for limit in rules.limits}
    if "lift" in heads:
        told.append(say("A lift raises it to the grade that the lift names."))
    if "fault" in heads:
        told.append(say("A fault brings it down to the grade that the fault names: a fault has the last word."))
    if rules.rounds:
        told.append(say("Then the rounds choose among the {fish} of the batch.", fish=voice.many))
    yield Heading(2, line(say("How a grade comes about")), "way")
    yield Listed(tuple(line(sentence) for sentence in told), numbered=True)
    open_words = say(
        "What was not recorded is not guessed: it may be anything. The {fish} then keeps each grade and each score that it "
        "could still get.",
        fish=voice.fish,
    )
    yield Paragraph(line(open_words))
