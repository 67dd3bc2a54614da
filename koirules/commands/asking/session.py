"""The conversation at the tub: one fish after another, one question at a time, in plain lines."""

from __future__ import annotations

import shutil
import textwrap
from fractions import Fraction

import click
from attrs import field

from koirules.api import Standard
from koirules.commands.asking.forms import DONE_KEY, KEYS, Order, Unread, chosen_of, form_of
from koirules.commands.asking.keyboard import Keyboard
from koirules.commands.asking.session_file import Book
from koirules.commands.inputs import shown_titles
from koirules.commands.output import counted, shown
from koirules.commands.render.batch import score_words
from koirules.grading.next_look import Asker, Noting
from koirules.grading.questions import Known, Question
from koirules.records.asked_journal import Looked, Noted, Untold
from koirules.records.told_records import name_of
from koirules.results.course import Fate
from koirules.results.record import Record
from koirules.standard.tree import ScoreRead, SectionRead, TraitRead, walk
from koirules.values import define
from koirules.vocabulary.readings import show_reading
from koirules.vocabulary.traits import Trait

_WIDEST = 80
_AGAIN = "again "


class Stopped(Exception):  # noqa: N818 - nothing went wrong
    """The sorter wants to stop."""


@define
class Session:
    """A run of `koirules ask`. only_listed: no fish is added to those of a file. thorough: nothing is noted together."""

    standard: Standard
    book: Book
    keyboard: Keyboard
    only_listed: bool
    thorough: bool
    _aside: set[str] = field(factory=set)
    _done: set[str] = field(factory=set)
    _reopened: str | None = None
    _asker: tuple[str, Asker] | None = None

    def run(self) -> None:
        """Ask until there is no fish left; raises Stopped, or Ended of the keyboard."""
        say(self._keys)
        while (fish := self._next_fish()) is not None:
            self._ask_about(fish)

    @property
    def _keys(self) -> str:
        return f"{KEYS}, {DONE_KEY}" if self.standard.rules.silence else KEYS

    def _next_fish(self) -> str | None:
        """The fish to ask about: one that is not finished, or a new one."""
        if self._reopened is not None:
            fish, self._reopened = self._reopened, None
            return fish
        unfinished = next((fish for fish in self.book.records if fish not in self._aside and self._is_open(fish)), None)
        if unfinished is not None:
            return unfinished
        return self._last() if self.only_listed else self._named()

    def _last(self) -> str | None:
        """What follows when no fish of a file is left: its last answer may still be taken back."""
        while True:
            say(
                f"No {self.standard.subject.one} is left to ask about. u goes back, {_AGAIN}NAME opens one again, Enter ends"
            )
            text = self.keyboard.line()
            text = text.lower() if text.lower() in {Order.STOP.value, Order.BACK.value} else text
            if text in {"", Order.STOP.value}:
                return None
            if self._reopen(text):
                continue
            if text == Order.BACK.value:
                self._back()
                if self._reopened is not None:
                    return self._next_fish()

    def _is_open(self, fish: str) -> bool:
        """Whether a fish is still to be asked about; one that was recorded elsewhere and has a grade is not."""
        if fish in self._done:
            return False
        record = self.book.records[fish]
        elsewhere = record.readings and not self.book.steps_of(fish)
        if elsewhere and self.standard.grade_record(record).grade is not None and not self._is_placed(record):
            return False
        return self._question(fish) is not None

    def _named(self) -> str | None:
        """The name of a new fish."""
        number = next(n for n in range(1, len(self.book.records) + 2) if str(n) not in self.book.records)
        while True:
            say(f"Next {self.standard.subject.one}: name, or Enter for {number}")
            text = self.keyboard.line()
            order = text.lower()
            if order == Order.EXPLAIN.value:
                say(
                    f"Any name or number that no other {self.standard.subject.one} has. u goes back, "
                    f"{_AGAIN}NAME opens one again, q stops."
                )
            elif order == Order.CANNOT_TELL.value:
                say("There is no question here. Type a name, or Enter.")
            elif self._reopen(text):
                continue
            elif order == Order.BACK.value:
                self._back()
                if self._reopened is not None:
                    return self._next_fish()
            elif order == Order.STOP.value:
                raise Stopped
            else:
                name = text or str(number)
                if name in self.book.records and name in self._aside:
                    self._aside.discard(name)
                    return name
                if name in self.book.records:
                    self._tell_end(name)
                    say(f'"{_AGAIN}{shown(name)}" opens it again.')
                elif name != name_of(name) or order in {one.value for one in Order}:
                    say(
                        f'"{shown(name)}" cannot be the name of {self.standard.subject.with_article} here. Type another one.'
                    )
                else:
                    self.book.begin(name)
                    return name

    def _reopen(self, text: str) -> bool:
        """Open a finished fish again, `again K01`: its answers are listed, and those that are named are asked anew."""
        fish = text.removeprefix(_AGAIN).strip()
        if not text.startswith(_AGAIN) or fish not in self.book.records:
            return False
        held = self.book.records[fish].readings
        traits = [trait for name, trait in self.standard.traits.items() if name in held or name in self._asked_of(fish)]
        options = {str(i): trait for i, trait in enumerate(traits, 1)}
        for key, trait in options.items():
            seen = show_reading(trait.kind, held[trait.name]) if trait.name in held else "can't tell"
            say(f"{key} {trait.within(self.standard.language)}: {seen.replace('_', ' ')}")
        say(f"{fish}: which are to be asked again? Numbers, or 0 for none, then Enter")
        keys: dict[str, Trait | None] = {**options, "0": None}
        while (chosen := chosen_of(keys, self.keyboard.line() or "0")) is None:
            say(f"Type 0, or numbers from 1 to {len(options)} with spaces between them.")
        self._aside.discard(fish)
        self._done.discard(fish)
        self._asker = None
        for one in chosen:
            if one is not None and not self._ask(fish, Question(one, (), Fraction(0), Fraction(0), changes=False)):
                return True
        self._ask_about(fish)
        return True

    def _asked_of(self, fish: str) -> set[str]:
        return {step.trait for step in self.book.steps_of(fish) if isinstance(step, Untold)}

    def _ask_about(self, fish: str) -> None:
        while (question := self._question(fish)) is not None:
            go_on = self._note(fish, question) if isinstance(question, Noting) else self._ask(fish, question)
            if not go_on:
                return
        self._tell_end(fish)

    def _question(self, fish: str) -> Question | Noting | None:
        """What to ask next of a fish, answers being as likely as in the other fish when its turn came."""
        if self._asker is None or self._asker[0] != fish:
            others = [self.book.known(name).readings for name in self.book.records if name != fish]
            self._asker = fish, Asker.of(self.standard.questioner_of(self.book.records[fish]), others)
        asker, known = self._asker[1], self.book.known(fish)
        again = self.thorough or self.book.was_noted(fish)
        question = asker.next_one(known) if again else asker.next_asked(known)
        if question is not None:
            return question
        # What the sorter marked as noted is asked and kept, whether or not it can still change the grade.
        marked = [name for name in self.book.marked(fish) if name not in known.readings and name not in known.untold]
        if marked:
            return Question(self.standard.traits[marked[0]], (), Fraction(0), Fraction(0), changes=False)
        return self._placing(fish, known)

    def _placing(self, fish: str, known: Known) -> Question | None:
        """What to ask of a fish that a round picks by its score, or by traits, as long as its place is not settled."""
        record = self.book.records[fish]
        if not self._is_placed(record):
            return None
        keys = [node for one in self.standard.rules.rounds for key in one.keys for node in walk(key.by)]
        by_score = any(isinstance(node, ScoreRead | SectionRead) for node in keys)
        traits = {node.trait.name for node in keys if isinstance(node, TraitRead)}
        return next(iter(self.standard.questioner_of(record).to_place(known, traits, by_score)), None)

    def _is_placed(self, record: Record) -> bool:
        """Whether a round orders the fish that it looks at, and does not surely leave this one out before."""
        ordering = {one.name for one in self.standard.rules.rounds if one.keys}
        if not ordering:
            return False
        (result,) = self.standard.grade_records([record]).results
        looked = {step.round: step for step in result.course}
        return any(name in looked and (looked[name].fate is not Fate.LEFT or looked[name].open) for name in ordering)

    def _ask(self, fish: str, question: Question) -> bool:
        """Ask for one trait; False where this fish is left."""
        trait = question.trait
        form = form_of(trait.kind)
        title = trait.within(self.standard.language)
        say(f"{fish}: {title}?")
        held = self.book.records[fish].readings.get(trait.name)
        if held is not None:
            say(f"So far: {show_reading(trait.kind, held).replace('_', ' ')}")
        while True:
            say(form.listed)
            typed = form.read(self.keyboard.line() if not form.single else self.keyboard.key())
            if typed is Order.WRITE:
                say("Write it as in a sheet (also what it could be), then Enter")
                typed = form.sheet(self.keyboard.line())
            if typed is Order.EXPLAIN:
                say(trait.describe or f"No more is said about it than its name: {title}.")
                say(self._keys)
            elif typed is Order.CANNOT_TELL:
                say("Can't tell.")
                self.book.keep(Untold(fish, trait.name))
                return True
            elif isinstance(typed, Order):
                return self._ordered(typed, fish)
            elif isinstance(typed, Unread):
                say(typed.words)
            elif typed is not None:
                say(f"{show_reading(trait.kind, typed).replace('_', ' ')}.")
                self.book.answer(fish, trait, typed)
                return True

    def _note(self, fish: str, noting: Noting) -> bool:
        """Ask what else is to be noted, all at once; False where this fish is left."""
        options = {str(i): trait for i, trait in enumerate(noting.traits, 1)}
        say(f"{fish}: anything else to note? 0 no, ? shows the list; or numbers, then Enter")
        while True:
            text = self.keyboard.line()
            order = next((order for order in Order if order.value == text.lower()), None)
            chosen: tuple[Trait, ...] | None = ()
            if order is Order.EXPLAIN:
                say("Counted only where somebody noted it:")
                for key, trait in options.items():
                    say(f"{key} {trait.within(self.standard.language)}")
                say("0 none of these")
                continue
            if order is Order.CANNOT_TELL:
                text = "0"
            elif order is Order.WRITE or not text:
                continue
            elif order is not None:
                return self._ordered(order, fish)
            if text != "0":
                chosen = chosen_of(options, text)
            if chosen is None:
                say(f"Type 0, or numbers from 1 to {len(options)} with spaces between them.")
                continue
            titles = ", ".join(trait.within(self.standard.language) for trait in chosen)
            say(f"To note: {titles}." if chosen else "Nothing else to note.")
            asked = tuple(trait.name for trait in noting.traits)
            self.book.keep(Noted(fish, asked, tuple(trait.name for trait in chosen)))
            return True

    def _ordered(self, order: Order, fish: str) -> bool:
        """Do what was ordered about a fish; True where its next question follows."""
        if order is Order.STOP:
            raise Stopped
        if order is Order.DONE:
            if not self.standard.rules.silence:
                say("This page does not say what silence means, so a look is done when nothing is left to ask.")
                return True
            say("The look is done; what was not mentioned is as the page says.")
            self.book.keep(Looked(fish))
            self._asker = None
            return True
        if order is Order.ASIDE:
            self._aside.add(fish)
            say(f"{fish} is set aside; its answers are kept.")
            return False
        self._back()
        return False

    def _back(self) -> None:
        fish = self.book.back()
        if fish is None:
            say("This is the first question.")
            return
        say("One back.")
        self._aside.discard(fish)
        self._done.discard(fish)
        self._reopened = fish

    def is_settled(self, fish: str) -> bool:
        """Whether nothing that may still be told could change the grade of a fish, or it came with one."""
        told = self.book.records[fish].readings or self.book.steps_of(fish)
        return (
            bool(told)
            and self.standard.grade_record(self.book.records[fish]).grade is not None
            and not self._is_open(fish)
        )

    def _tell_end(self, fish: str) -> None:
        """Say in one line what came of a fish, and why."""
        self._done.add(fish)
        result = self.standard.grade_record(self.book.records[fish])
        titles = shown_titles(self.standard)
        asked = counted(len(self.book.steps_of(fish)), "question")
        graded = " or ".join(titles[name] for name in result.possible)
        why = f"; {result.grounds.first}" if result.grounds.first else ""
        open_still = "" if result.grade is not None else " (not settled; nothing more can be told)"
        say(f"{fish}: {graded}{open_still}, score {score_words(result)}{why}. {asked}.")


def say(text: str) -> None:
    """Print a plain line, broken where the window is narrow."""
    width = min(_WIDEST, shutil.get_terminal_size((_WIDEST, 24)).columns)
    click.echo("\n".join(textwrap.wrap(shown(text), max(width, 20), break_on_hyphens=False)))
