"""What entries come to: the record of a fish, its grade so far, what it hangs on, and what could be asked next."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import TYPE_CHECKING

from attrs import frozen

from koirules import Decision, RecordError
from koirules.vocabulary.kinds import Choice, Count, Number, Patches, Places, Scale, YesNo
from koirules.vocabulary.readings import write_reading
from koirules_tub.store import Entry, Look, Store

if TYPE_CHECKING:
    from koirules import Result, Standard
    from koirules.vocabulary.traits import Trait

MAP = "hi_patches"
_MOST_BUTTONS = 10
_NOT_ASKED = frozenset(
    {"note", "photo", "sorter", "pond", "spawning", "bloodline", "batch_name", "look_date", "look_number"}
)


@frozen
class Chip:
    """A remark of a line as it was understood. at: the entry and the place of the remark in it. sort: as notes name it."""

    entry: str
    at: int
    text: str
    sort: str
    words: str


@frozen
class Told:
    """What one sorter's entries on a fish come to. values: set by button or drawing, by trait."""

    chips: tuple[Chip, ...]
    record: Mapping[str, str]
    values: Mapping[str, str]
    verdict: str
    unread: tuple[str, ...]
    done: bool


@frozen
class Judge:
    """A standard at the tub."""

    standard: Standard

    def told(self, entries: Sequence[Entry], lot: Sequence[Entry]) -> Told:
        """Put the entries of one sorter on one fish at one look together, in their order."""
        lines: dict[str, list[str]] = {}
        struck: set[tuple[str, int]] = set()
        values: dict[str, str] = {}
        done = False
        for entry in entries:
            body = entry.body
            match entry.kind:
                case "line":
                    lines[entry.id] = [remark.text for remark in self._remarks(str(body.get("text", "")))]
                case "strike":
                    struck.add((str(body.get("entry")), int(str(body.get("at", 0)))))
                case "set" if body.get("trait") in self.standard.traits:
                    values[str(body["trait"])] = str(body.get("value", ""))
                case "done" | "open":
                    done = entry.kind == "done"
        chips: list[Chip] = []
        said: list[str] = []
        for name, texts in lines.items():
            left = [(at, text) for at, text in enumerate(texts) if (name, at) not in struck]
            if left:
                said.append(f"again 1: {', '.join(text for _, text in left)}")
                read = self._remarks(", ".join(text for _, text in left))
                for (at, text), remark in zip(left, read, strict=False):
                    chips.append(Chip(name, at, text, remark.sort.value, self._words(remark)))
        notes = self.standard.read_notes(
            "\n".join([*self._lot(lot), "1:", *said]) if said else "\n".join([*self._lot(lot), "1: ."])
        )
        fish = notes.fish[0] if notes.fish else None
        record = dict(notes.records[0]) if notes.records else self._lot_record(lot)
        record.pop("fish", None)
        for trait, value in values.items():
            record.pop(trait, None)
            if value:
                record[trait] = value
        known = {name: value for name, value in record.items() if name in self.standard.traits}
        return Told(tuple(chips), known, values, fish.verdict if fish else "", fish.unread if fish else (), done)

    def _remarks(self, text: str) -> Sequence[object]:
        text = " ".join(text.split())
        notes = self.standard.read_notes(f"1: {text}")
        return notes.fish[0].remarks if notes.fish else ()

    def _lot(self, lot: Sequence[Entry]) -> list[str]:
        return [f"all: {text}" for entry in lot if (text := " ".join(str(entry.body.get("text", "")).split()))]

    def _lot_record(self, lot: Sequence[Entry]) -> dict[str, str]:
        notes = self.standard.read_notes("\n".join([*self._lot(lot), "1: no remark"]))
        return dict(notes.records[0]) if notes.records else {}

    def _words(self, remark: object) -> str:
        """What a remark was understood as: `outline: good`."""
        found = getattr(remark, "found", ())
        traits = self.standard.traits
        return "; ".join(dict.fromkeys(traits[one.trait].title for one in found if one.trait in traits))

    def graded(self, fish: str, record: Mapping[str, str]) -> tuple[Result | None, list[str]]:
        """The grade of a record so far, and the problems of cells, which are left out of it."""
        try:
            return self.standard.grade(record, fish), []
        except RecordError as error:
            wrong = {problem.site.column for problem in error.problems if hasattr(problem.site, "column")}
            rest = {name: value for name, value in record.items() if name not in wrong}
            causes = [f"{problem.cause} {problem.mend}" for problem in error.problems]
            if len(rest) == len(record):
                return None, causes
            return self.graded(fish, rest)[0], causes

    def look(self, fish: str, sorter: str, number: int, told: Told) -> Look:
        """What is kept of a look."""
        result, _ = self.graded(fish, told.record)
        if result is None:
            return Look(
                fish, sorter, number, told.record, told.verdict, told.unread, self.standard.grades, 0, 10000, ()
            )
        low, high = int(result.score_low * 100), int(result.score_high * 100)
        return Look(
            fish, sorter, number, told.record, told.verdict, told.unread, result.possible, low, high, result.faults
        )

    def shown(self, fish: str, told: Told) -> dict[str, object]:
        """A fish as the page shows it."""
        result, wrong = self.graded(fish, told.record)
        titles = self.standard.grade_titles
        faults, hangs = [], []
        if result is not None:
            faults = [
                reason.words for reason in result.reasons if reason.kind == "fault" and reason.name in result.faults
            ]
            hangs = [question.trait.title for question in self._questions(told)][:3]
        possible = result.possible if result is not None else self.standard.grades
        return {
            "grades": [titles[name] for name in possible],
            "settled": len(possible) == 1,
            "best": possible[0],
            "score": None if result is None else [float(result.score_low), float(result.score_high)],
            "faults": faults,
            "hangs": hangs,
            "chips": [
                {"entry": chip.entry, "at": chip.at, "text": chip.text, "sort": chip.sort, "words": chip.words}
                for chip in told.chips
            ],
            "record": dict(told.record),
            "values": dict(told.values),
            "unread": list(told.unread),
            "wrong": wrong,
            "verdict": told.verdict,
            "done": told.done,
        }

    def _questions(self, told: Told) -> Sequence[object]:
        try:
            return self.standard.questions(told.record)
        except RecordError:
            return ()

    def next_question(self, told: Told, untold: Iterable[str] = ()) -> dict[str, object] | None:
        """The look that settles such a fish soonest, as buttons; None where nothing is left to ask."""
        try:
            question = self.standard.next_question(told.record, tuple(untold))
        except RecordError:
            return None
        return None if question is None else self.buttons_of(question.trait)

    def buttons(self) -> list[dict[str, object]]:
        """The traits that this standard gives most for and that can be answered by a tap, in that order."""
        worth: dict[str, float] = {}
        for section in self.standard.rules.sections:
            whole = sum(part.weight * part.shape.most for part in section.points) or 1
            for part in section.points:
                for trait in _traits_of(part.by, self.standard.traits):
                    worth[trait] = worth.get(trait, 0) + section.worth * part.weight * part.shape.most / whole
        ranked = sorted(worth, key=lambda name: -worth[name])
        found = [self.buttons_of(self.standard.traits[name]) for name in ranked if name not in _NOT_ASKED]
        return [one for one in found if one["words"]][:_MOST_BUTTONS]

    def buttons_of(self, trait: Trait) -> dict[str, object]:
        """A trait as buttons: its words; none where a number or a text is wanted."""
        match trait.kind:
            case YesNo():
                words = ["yes", "no"]
            case Scale(steps):
                words = list(steps)
            case Choice(options):
                words = list(options)
            case Places(places):
                words = ["none", *places]
            case Count(high) if high <= 6:
                words = [str(number) for number in range(high + 1)]
            case _:
                words = []
        unit = trait.kind.unit.symbol if isinstance(trait.kind, Number) and trait.kind.unit else ""
        return {
            "trait": trait.name,
            "title": trait.title,
            "words": words,
            "several": isinstance(trait.kind, Places),
            "unit": unit,
            "number": isinstance(trait.kind, Number | Count),
            "about": trait.describe,
        }

    def figures(self, record: Mapping[str, str]) -> list[tuple[str, str]]:
        """What follows from a map: titles and values of the traits that are worked out, as records write them."""
        read = self.standard.reader.read(record, "fish")
        if not hasattr(read, "readings"):
            return []
        (measured,) = self.standard.measured([read], "tub").records
        traits = self.standard.traits
        return [
            (traits[name].title, _for_people(write_reading(traits[name].kind, reading)))
            for name, reading in measured.readings.items()
            if name not in record and name in traits and not isinstance(traits[name].kind, Patches)
        ]

    def has_map(self) -> bool:
        """Whether a pattern can be drawn."""
        return MAP in self.standard.traits

    def rounds(self, store: Store) -> list[dict[str, object]]:
        """What each round of the selection makes of the batch, with the decisions made by hand."""
        records = [{**look.record, "fish": name} for name, look in latest_of(store.looks()).items()]
        if not records or not self.standard.rules.rounds:
            return []
        rows = store.read("SELECT fish, round, grade, sorter, reason FROM decisions")
        known = {str(record["fish"]) for record in records}
        decisions = [
            Decision(str(fish), str(grade), str(name), str(sorter), str(reason))
            for fish, name, grade, sorter, reason in rows
            if fish in known
        ]
        try:
            batch = self.standard.grade_batch(records, decisions)
        except RecordError as error:
            return [{"problem": str(error)}]
        return [
            {
                "round": course.name,
                "title": course.title,
                "kept": list(course.kept),
                "tied": [one.fish for one in batch.results if one.tied_in == course.name],
                "places": None if course.places is None else course.places - len(course.kept),
            }
            for course in batch.rounds
        ]


def latest_of(looks: Iterable[Look]) -> dict[str, Look]:
    """The latest look at each fish; of several sorters' the one with the higher number, then the first by name."""
    found: dict[str, Look] = {}
    for look in looks:
        before = found.get(look.fish)
        if before is None or look.look > before.look:
            found[look.fish] = look
    return found


def _traits_of(node: object, traits: Mapping[str, Trait]) -> list[str]:
    """The traits that an expression names."""
    found, seen = [], [node]
    while seen:
        one = seen.pop()
        name = getattr(one, "trait", None) or getattr(one, "name", None)
        name = getattr(name, "name", name)
        if isinstance(name, str) and name in traits:
            found.append(name)
        for part in getattr(one, "__attrs_attrs__", ()):
            value = getattr(one, part.name)
            seen.extend(value if isinstance(value, tuple) else [value] if hasattr(value, "__attrs_attrs__") else [])
    return list(dict.fromkeys(found))


def _for_people(text: str) -> str:
    """A value with its numbers to three figures."""
    words = text.split(" ")
    return " ".join(
        f"{float(word):.3g}" if word.replace(".", "", 1).isdigit() and "." in word else word for word in words
    )
