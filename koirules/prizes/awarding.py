"""Prizes awarded: fish put in order within each part of a prize, from the first prize of the table to the last.

Every value that decides has a low and a high end, since something may not be recorded. One fish is surely before another if
it is so whatever their values are between these ends. Where all keys are settled and equal the fish are tied. A place is
given only where one fish is surely before all others that may be in question; a tie is shared or waits for a decision, as
the prize says.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from enum import Enum

from attrs import field

from koirules.classes.placing import GROUP, SIZE
from koirules.classes.table import ClassTable
from koirules.languages import ENGLISH, Tongue
from koirules.prizes.occasion import SCORE, SHOWN_AS, VOTES, Fewer, Occasion, Prize, Ties, Winners, section_of
from koirules.prizes.wording import PrizeWords
from koirules.problems import Cell, Problem
from koirules.problems import awarding as say
from koirules.values import define, frozen
from koirules.vocabulary.nearness import near

Ends = tuple[Decimal, Decimal]
"""A value with its lowest and highest end."""


@frozen
class Entrant:
    """A graded fish. outside: why it is in no class of the table, "" where it is in one or there is no table.

    labels: those of its class, where they are settled, and the columns that were carried along. grades: those still possible.
    score, sections: in points. standard: its place among the standards.
    """

    fish: str
    outside: str
    labels: Mapping[str, str] = field(hash=False)
    grades: tuple[str, ...]
    score: Ends
    sections: Mapping[str, Ends] = field(hash=False)
    standard: int = 0


@frozen
class Ballot:
    """The vote of a judge for a fish; prize: its name, "" for every prize that goes by votes."""

    judge: str
    fish: str
    prize: str
    row: int


@frozen
class Ruling:
    """What a person decided about tied fish: this one first, or before those that later rows name."""

    prize: str
    fish: str
    by: str
    reason: str
    row: int


@frozen
class Award:
    """A fish in a place. shared: with fish tied with it. standing: the value of each key.

    ruling: what put it there; it may name another fish, where the place follows from what was decided about that.
    """

    place: int
    fish: str
    standing: tuple[str, ...]
    shared: bool = False
    ruling: Ruling | None = None

    @property
    def own_reason(self) -> str:
        """The reason of a ruling about this fish itself, "" where there is none."""
        return self.ruling.reason if self.ruling is not None and self.ruling.fish == self.fish else ""


class Why(Enum):
    """Why a place waits."""

    TIE = "tie"
    OPEN = "open"
    EARLIER = "earlier"
    VOTES = "votes"


@frozen
class Waiting:
    """Places that cannot be given yet, for these fish. upon: the titles of the prizes that have to be settled before."""

    why: Why
    first: int
    last: int
    fish: tuple[str, ...]
    standing: tuple[str, ...] = ()
    upon: tuple[str, ...] = ()
    tongue: Tongue = ENGLISH

    @property
    def places(self) -> str:
        """The places in words: `place 1`, `places 1 to 3`."""
        if self.first == self.last:
            return self.tongue("place {number}", number=self.first)
        return self.tongue("places {first} to {last}", first=self.first, last=self.last)

    @property
    def words(self) -> str:
        """What the places wait for, in a sentence."""
        tongue, one = self.tongue, self.first == self.last
        places = f"{self.places[:1].upper()}{self.places[1:]}"
        held = tongue("{places} waits", places=places) if one else tongue("{places} wait", places=places)
        match self.why:
            case Why.TIE:
                at = tongue(" ({values})", values=tongue.joined(self.standing)) if self.standing else ""
                return tongue("{held} for a decision: these are tied{values}.", held=held, values=at)
            case Why.OPEN:
                return tongue("{held} for a record: what is not recorded of these could change them.", held=held)
            case Why.VOTES:
                return tongue("{held} for votes: no judge has voted for one of these.", held=held)
            case Why.EARLIER:
                return tongue("{held} for what is not settled: {what}.", held=held, what=tongue.joined(self.upon))


@frozen
class Part:
    """A part of a prize, such as one class. names: one for each label of `for_each`. fish: how many are in question."""

    names: tuple[str, ...]
    fish: int
    awards: tuple[Award, ...]
    waiting: tuple[Waiting, ...]
    note: str = ""


@frozen
class Placings:
    """What came of a prize. without: fish that have nothing in a label by which it is parted. empty: parts without a fish."""

    prize: Prize
    parts: tuple[Part, ...]
    without: tuple[str, ...] = ()
    empty: tuple[tuple[str, ...], ...] = ()

    @property
    def is_settled(self) -> bool:
        """Whether nothing of it waits."""
        return not any(part.waiting for part in self.parts)


def award(
    occasion: Occasion,
    table: ClassTable | None,
    entrants: Sequence[Entrant],
    ballots: Sequence[Ballot] = (),
    rulings: Sequence[Ruling] = (),
    files: tuple[str, str] = ("votes", "decisions"),
    words: PrizeWords | None = None,
) -> tuple[tuple[Placings, ...], tuple[Problem, ...]]:
    """The placings of every prize, with what is wrong with votes and decisions. files: the names of these two.

    words: in which parts and standings are told.
    """
    told = words or PrizeWords(table)
    awarding = _Awarding(occasion, table, tuple(entrants), tuple(ballots), tuple(rulings), told)
    placings = tuple(awarding.placings(prize) for prize in occasion.prizes)
    return placings, tuple(awarding.problems(*files))


def _beats(one: Sequence[Ends], other: Sequence[Ends]) -> bool:
    """Whether a fish is surely before another."""
    for (low, _), (_, other_high) in zip(one, other, strict=True):
        if low != other_high:
            return low > other_high
        # At worst they are equal here, and the next key must part them.
    return False


def _foremost(keys: Mapping[str, Sequence[Ends]]) -> list[str]:
    """The fish that none of the others is surely before."""
    if not keys:
        return []
    # Whoever lies surely below the best low end of the first key is beaten, so that the others are few.
    line = max(values[0][0] for values in keys.values())
    upper = {fish: values for fish, values in keys.items() if values[0][1] >= line}
    return [fish for fish, mine in upper.items() if not any(_beats(values, mine) for values in upper.values())]


def _group(keys: Mapping[str, Sequence[Ends]], top: Sequence[str]) -> list[str]:
    """The foremost fish, with all that one of the group may not be before: the group is surely before all others."""
    group = list(top)
    for one in group:
        group += [fish for fish, values in keys.items() if fish not in group and not _beats(keys[one], values)]
    return group


def _tied(keys: Mapping[str, Sequence[Ends]], fish: Sequence[str]) -> bool:
    """Whether nothing can tell these fish apart any more."""
    first = keys[fish[0]]
    return all(low == high for low, high in first) and all(keys[one] == first for one in fish)


@frozen
class _Chance:
    """Between which places a fish may come in a prize. sure: whether it surely gets one of them. upon: titles, if not."""

    first: int
    last: int
    sure: bool
    title: str


@define
class _Awarding:
    occasion: Occasion
    table: ClassTable | None
    entrants: tuple[Entrant, ...]
    ballots: tuple[Ballot, ...]
    rulings: tuple[Ruling, ...]
    words: PrizeWords
    _chances: dict[str, dict[str, list[_Chance]]] = field(factory=dict)
    _used: set[int] = field(factory=set)
    _in_doubt: set[tuple[str, str]] = field(factory=set)
    _in_question: dict[str, dict[str, str]] = field(factory=dict)

    def placings(self, prize: Prize) -> Placings:
        """Award a prize whose earlier ones are awarded."""
        self._chances[prize.name] = {}
        self._in_question[prize.name] = {}
        parts: dict[tuple[str, ...], list[tuple[Entrant, tuple[str, ...]]]] = {}
        without: list[str] = []
        for one in self.entrants:
            upon = self._admitted(prize, one)
            if upon is None:
                continue
            names = tuple(one.labels.get(label, "") for label in prize.for_each)
            if all(names):
                parts.setdefault(names, []).append((one, upon))
            else:
                without.append(one.fish)
        order = sorted(parts, key=lambda names: self._rank(prize, names))
        made = tuple(self._part(prize, names, parts[names]) for names in order)
        empty = tuple(names for names in self._classes(prize) if names not in parts)
        return Placings(prize, made, tuple(without), empty)

    def problems(self, votes: str, decisions: str) -> Iterator[Problem]:
        """What is wrong with votes and decisions, once every prize is awarded."""
        names = [prize.name for prize in self.occasion.prizes]
        known = [one.fish for one in self.entrants]
        for ruling in self.rulings:
            is_known = ruling.prize in names and ruling.fish in known
            if is_known and ruling.row not in self._used:
                # Whether there is a tie may hang on what still waits; then the decision is kept for later.
                doubtful = (ruling.prize, ruling.fish) in self._in_doubt
                problem = say.prize_decision_waits if doubtful else say.prize_decision_idle
                yield problem(decisions, ruling.row, ruling.prize, ruling.fish)
        by_votes = [prize for prize in self.occasion.prizes if prize.goes_by_votes]
        seen: dict[tuple[str, str, str], int] = {}
        told: set[int] = set()
        for ballot in self.ballots:
            meant = [prize for prize in by_votes if ballot.prize in {"", prize.name}]
            places = [
                (prize, part) for prize in meant if (part := self._in_question[prize.name].get(ballot.fish)) is not None
            ]
            if ballot.fish in known and (not ballot.prize or ballot.prize in names) and not places:
                yield say.vote_idle(votes, ballot.row, ballot.fish, ballot.prize)
            for prize, part in places:
                before = seen.setdefault((ballot.judge, prize.name, part), ballot.row)
                if before != ballot.row and ballot.row not in told:
                    told.add(ballot.row)
                    yield say.voted_twice(votes, ballot.row, ballot.judge, prize.name, part, before)

    def _admitted(self, prize: Prize, one: Entrant) -> tuple[str, ...] | None:
        """None for a fish that is not in question, else what must be settled for it to be so; nothing where it surely is."""
        if one.outside and not prize.outside:
            return None
        wanted = {**prize.labels, GROUP: prize.groups, SIZE: prize.sizes}
        if any(names and one.labels.get(label, "") not in names for label, names in wanted.items()):
            return None
        upon: list[str] = []
        if prize.grades:
            fitting = [grade for grade in one.grades if grade in prize.grades]
            if not fitting:
                return None
            if len(fitting) < len(one.grades):
                upon.append(self.words.tongue("the grade of {fish}", fish=one.fish))
        if prize.among:
            won = [self._won(winners, one.fish) for winners in prize.among]
            if all(each is None for each in won):
                return None
            if () not in won:
                upon += [title for each in won for title in each or ()]
        for winners in prize.not_with:
            barred = self._won(winners, one.fish)
            if barred == ():
                return None
            upon += barred or ()
        return tuple(dict.fromkeys(upon))

    def _won(self, winners: Winners, fish: str) -> tuple[str, ...] | None:
        """Nothing to wait for where a fish surely won such a place, None where it surely did not, else what waits."""
        prize = next(one for one in self.occasion.prizes if one.name == winners.prize)
        most = winners.places or prize.places
        chances = [one for one in self._chances[winners.prize].get(fish, ()) if one.first <= most]
        if any(one.sure and one.last <= most for one in chances):
            return ()
        return tuple(dict.fromkeys(one.title for one in chances)) or None

    def _part(self, prize: Prize, names: tuple[str, ...], fish: Sequence[tuple[Entrant, tuple[str, ...]]]) -> Part:
        part = self.words.part(prize, names)
        votes = self._votes(prize, [one.fish for one, _ in fish])
        self._in_question[prize.name].update({one.fish: part for one, _ in fish})
        sure = [one for one, upon in fish if not upon]
        places, note = prize.places, ""
        if prize.fewest > len(fish):
            note = self.words.tongue(
                "{number} fish, and {fewest} are the fewest: {given}",
                number=len(fish),
                fewest=prize.fewest,
                given=self.words.tongue.of(prize.if_fewer.value),
            )
            places = {Fewer.NOTHING: 0, Fewer.FIRST: 1, Fewer.ALL: places}[prize.if_fewer]
        keys = {one.fish: tuple(_value(key, one, votes) for key in prize.by) for one, _ in fish}
        upon = {one.fish: told for one, told in fish if told}
        title = self.words.prize(prize, names)
        if len(sure) < prize.fewest <= len(fish) and prize.if_fewer is not Fewer.ALL:
            waiting = [self._wait(prize, Why.EARLIER, (1, min(prize.places, len(keys))), list(keys), upon, keys)]
            for name in keys:
                self._give(prize, name, _Chance(1, prize.places, sure=False, title=title))
            return Part(names, len(fish), (), tuple(waiting))
        if prize.by[0] == VOTES:
            voted = {name: values for name, values in keys.items() if values[0][0] > 0}
            if not voted and places:
                for name in keys:
                    self._give(prize, name, _Chance(1, places, sure=False, title=title))
                return Part(
                    names,
                    len(fish),
                    (),
                    (Waiting(Why.VOTES, 1, min(places, len(keys)), tuple(keys), tongue=self.words.tongue),),
                    note,
                )
            keys = voted
        awards, waiting = self._placed(prize, title, places, keys, upon)
        return Part(names, len(fish), tuple(awards), tuple(waiting), note)

    def _placed(
        self,
        prize: Prize,
        title: str,
        places: int,
        keys: Mapping[str, tuple[Ends, ...]],
        upon: Mapping[str, tuple[str, ...]],
    ) -> tuple[list[Award], list[Waiting]]:
        left, place = dict(keys), 1
        awards: list[Award] = []
        waiting: list[Waiting] = []
        while left and place <= places:
            top = _foremost(left)
            if any(fish in upon for fish in top) or (not _tied(left, top) and len(top) > 1):
                group = _group(left, top)
                if not any(fish in upon for fish in group):
                    # Who is where among these is open; those behind them stay behind.
                    waiting.append(self._open(prize, title, (place, places), {fish: left[fish] for fish in group}))
                    place += len(group)
                    left = {fish: values for fish, values in left.items() if fish not in group}
                    continue
                why = Why.EARLIER if any(fish in upon for fish in top) else Why.OPEN
                last = min(places, place + len(left) - 1)
                waiting.append(self._wait(prize, why, (place, last), top, upon, left))
                for fish in left:
                    before = sum(_beats(keys[other], keys[fish]) for other in left if other not in upon)
                    if place + before <= places:
                        self._give(prize, fish, _Chance(place + before, places, sure=False, title=title))
                break
            if prize.ties is Ties.SHARE or len(top) == 1:
                for fish in top:
                    awards.append(Award(place, fish, self.words.standing(prize, keys[fish]), len(top) > 1))
                    self._give(prize, fish, _Chance(place, place, sure=True, title=title))
            else:
                standing = self.words.standing(prize, keys[top[0]])
                given, waits = self._decided(prize, title, (place, places), top, standing)
                awards += given
                waiting += waits
            place += len(top)
            left = {fish: values for fish, values in left.items() if fish not in top}
        return awards, waiting

    def _open(
        self, prize: Prize, title: str, between: tuple[int, int], group: Mapping[str, tuple[Ends, ...]]
    ) -> Waiting:
        """Places of fish whose order among each other is open. between: the first of them, and the last that the prize gives."""
        place, places = between
        last = place + len(group) - 1
        for fish, mine in group.items():
            worst = last - sum(_beats(mine, values) for values in group.values())
            best = place + sum(_beats(values, mine) for values in group.values())
            if best <= places:
                self._give(prize, fish, _Chance(best, min(worst, places), sure=worst <= places, title=title))
        return self._wait(prize, Why.OPEN, (place, min(last, places)), _foremost(group), {}, group)

    def _decided(
        self, prize: Prize, title: str, between: tuple[int, int], tied: Sequence[str], standing: tuple[str, ...]
    ) -> tuple[list[Award], list[Waiting]]:
        """Give tied fish their places as far as a person has put them in order; the others wait.

        between: the place that they are tied for, and the last that the prize gives.
        """
        place, places = between
        awards: list[Award] = []
        rulings = [one for one in self.rulings if one.prize == prize.name and one.fish in tied]
        self._used |= {one.row for one in rulings}
        said = {one.fish: one for one in reversed(rulings)}
        order = [*dict.fromkeys(one.fish for one in rulings)]
        rest = [fish for fish in tied if fish not in said]
        if len(rest) == 1:
            order += rest
        for number, fish in enumerate(order, place):
            if number <= places:
                # The last of them has its place by what was decided about the fish that the ruling names.
                awards.append(Award(number, fish, standing, ruling=said.get(fish) or rulings[-1]))
                self._give(prize, fish, _Chance(number, number, sure=True, title=title))
        first, last = place + len(order), place + len(tied) - 1
        if len(rest) < 2 or first > places:
            return awards, []
        for fish in rest:
            self._give(prize, fish, _Chance(first, min(last, places), sure=last <= places, title=title))
        return awards, [Waiting(Why.TIE, first, min(last, places), tuple(rest), standing, tongue=self.words.tongue)]

    def _wait(
        self,
        prize: Prize,
        why: Why,
        between: tuple[int, int],
        fish: Sequence[str],
        upon: Mapping[str, tuple[str, ...]],
        keys: Mapping[str, tuple[Ends, ...]],
    ) -> Waiting:
        self._in_doubt |= {(prize.name, one) for one in keys}
        told = tuple(dict.fromkeys(title for one in fish for title in upon.get(one, ())))
        return Waiting(why, *between, tuple(fish), upon=told, tongue=self.words.tongue)

    def _give(self, prize: Prize, fish: str, chance: _Chance) -> None:
        self._chances[prize.name].setdefault(fish, []).append(chance)

    def _votes(self, prize: Prize, fish: Sequence[str]) -> Mapping[str, int]:
        counted = dict.fromkeys(fish, 0)
        for ballot in self.ballots:
            if ballot.fish in counted and ballot.prize in {"", prize.name}:
                counted[ballot.fish] += 1
        return counted

    def _rank(self, prize: Prize, names: tuple[str, ...]) -> tuple[tuple[int, tuple[tuple[int, str], ...]], ...]:
        """Groups and sizes in the order of the class table, other labels by their text, with 9 before 10."""
        return tuple(
            (order.index(name) if name in (order := self._order(label)) else len(order), _natural(name))
            for label, name in zip(prize.for_each, names, strict=True)
        )

    def _order(self, label: str) -> Sequence[str]:
        if self.table is None:
            return ()
        if label == GROUP:
            return [group.name for group in self.table.groups]
        sizes = self.table.sizes
        return [size.name for size in sizes.sizes] if label == SIZE and sizes is not None else ()

    def _classes(self, prize: Prize) -> list[tuple[str, ...]]:
        """Every part that a prize for each class could have; none where another label parts it."""
        if not prize.for_each or any(label not in SHOWN_AS for label in prize.for_each):
            return []
        wanted = {GROUP: prize.groups, SIZE: prize.sizes}
        found: list[tuple[str, ...]] = [()]
        for label in prize.for_each:
            named = [name for name in self._order(label) if not wanted[label] or name in wanted[label]]
            found = [(*names, name) for names in found for name in named]
        return found


def _natural(text: str) -> tuple[tuple[int, str], ...]:
    return tuple((int(digits or 0), words) for words, digits in re.findall(r"([^0-9]*)([0-9]*)", text.casefold()))


def _value(key: str, one: Entrant, votes: Mapping[str, int]) -> Ends:
    if key == SCORE:
        return one.score
    if key == VOTES:
        return Decimal(votes[one.fish]), Decimal(votes[one.fish])
    return one.sections[section_of(key)]


def check_named(
    occasion: Occasion, entrants: Sequence[Entrant], rows: Sequence[Ballot | Ruling], file: str
) -> tuple[Problem, ...]:
    """What votes or decisions name that is not there, and decisions about one thing twice."""
    prizes = {prize.name: prize for prize in occasion.prizes}
    fish = [one.fish for one in entrants]
    known = set(fish)
    found: list[Problem] = []
    seen: set[tuple[str, str]] = set()
    for row in rows:
        if row.fish not in known:
            found.append(say.awarded_fish_unknown(file, row.row, row.fish, near(row.fish, fish)))
        fitting = [name for name, one in prizes.items() if isinstance(row, Ruling) or one.goes_by_votes]
        if row.prize not in fitting and (row.prize or isinstance(row, Ruling)):
            kind = "a prize of the occasion" if isinstance(row, Ruling) else "a prize that goes by votes"
            site = Cell(file, row.row, "prize")
            guess = near(row.prize, fitting)
            found.append(say.prize_name_unknown(site, "in this row", kind, row.prize, guess, fitting))
        if isinstance(row, Ruling):
            if (row.prize, row.fish) in seen:
                found.append(say.prize_decided_twice(file, row.row, row.prize, row.fish))
            seen.add((row.prize, row.fish))
    return tuple(found)
