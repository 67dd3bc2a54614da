"""Remarks that lean on those before them: `no, two`, `both sides`, `two more by the dorsal`, `only the left, actually`."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from decimal import Decimal

from attrs import evolve

from koirules.notes.comparisons import is_simile
from koirules.notes.corrections import (
    CHANGES_OF_MIND,
    CORRECTS_AHEAD,
    CORRECTS_BEHIND,
    CORRECTS_BETWEEN,
    MILD_CORRECTIONS,
    is_correction,
    is_doubt,
    is_how_it_lay,
    is_little,
    is_not_of_the_fish,
)
from koirules.notes.extents import last_place, topic_of
from koirules.notes.found import Found, hedge
from koirules.notes.hedges import ASIDES, HEDGES, without
from koirules.notes.numbers import in_cm, number_at, plain_numbers
from koirules.notes.parts import SIZE, WITHIN_A_FIN, is_place, past_where
from koirules.notes.remarks import LONGEST, Remark, RemarkReader, Sort
from koirules.notes.tree import SKIPPED, noted_at_least
from koirules.standard.check.phrasing import meet
from koirules.values import frozen
from koirules.vocabulary.kinds import Choice, Count, Number, Places, Scale, YesNo
from koirules.vocabulary.readings import YES, PlaceSet, Span
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.wordings import tokens_of

_OF_A_PART = frozenset({"even", "uneven", "regular", "irregular", "rough", "round", "oval", "ragged"})
"""Words that say how a part is, and nothing of a whole fish."""

_PLACING = frozenset(
    {"left", "right", "both", "on", "in", "at", "near", "behind", "before", "over", "under", "by", "beside"}
)
_NONE_THERE = frozenset({"nothing", "none", "no", "not", "clean", "free", "clear", "without"})
_WITH_A_SIDE = frozenset(
    tokens_of(
        "the on side sides one too as well also and is it same again thing here has down of in at story goes for that"
    )
)
_ONLY = frozenset({"only", "just", "alone"})
_MOSTLY = frozenset(
    {
        "mostly",
        "mainly",
        "especially",
        "particularly",
        "worst",
        "also",
        "too",
        "again",
        "most",
        "and",
        "all",
        "out",
        "up",
        "down",
    }
)
_OF_A_POSTURE = frozenset(
    {"spine", "back_line", "body_symmetry", "outline", "tail_stem", "fin_faults", "mouth", "belly_shape"}
)
_DESCRIBED = frozenset({Sort.TRAITS, Sort.UNKNOWN, Sort.COMPARISON})
"""Behind these a simile says no more than they do: `spots everywhere, like measles`."""
_TAKING_BACK = frozenset({Sort.CORRECTION, Sort.NO})
_BEGINS = frozenset(words[0] for words in CORRECTS_AHEAD)
_ENDS = frozenset(words[-1] for words in CORRECTS_BEHIND)
_AMID = frozenset(words[0] for words in CORRECTS_BETWEEN)
"""With which words those begin or end that take something back: most remarks have none of them."""
_SIDES = frozenset({"left", "right"})
_NO_PLACE = frozenset(
    tokens_of("left right tail dorsal fin eye gill pectoral pec pelvic anal belly flank head shoulder back side")
)
_OTHER_SIDE = {"left": "right", "right": "left"}
_OF_THEM = frozenset(
    tokens_of("of them those these actually there are is in all altogether now i make it this that total")
)
_ENDS_OF_IT = frozenset({"front", "rear", "back", "left", "right"})
_SEASONS = frozenset({"year", "season", "summer", "winter", "spring", "autumn", "go", "chance", "try", "look"})
_MORE = frozenset({"more", "another", "other", "further"})


_WITH_A_LENGTH = frozenset(
    tokens_of(
        "fish body length size long total overall measure altogether then again exactly dead flat huge only just in all"
    )
)
_BEFORE_NUMBERS = frozenset(
    tokens_of(
        "tub pond vat tank line number row week month age price year lot batch girth weighs weight basket box bowl shelf "
        "from for of to than as like out day hour degree"
    )
)
"""Behind these a number is theirs: `tub, 15`."""
_PRICED = re.compile(r"\bfor (?:(?:this|that|the) 1|this|that|it|her|him|the (?:pair|lot|2))(?!\S)")
_AGAIN = frozenset(
    tokens_of(
        "again stretched straight still properly rather actually now second flattened relaxed wait remeasured corrected"
    )
)
_MEASURING = _AGAIN | frozenset(
    tokens_of(
        "then it she he was is and when on the try go look time measured make that i held lay lies stopped got to at once this "
        "stretched out itself up with tail open in make makes first says board ruler nearer more like but so well"
    )
)
"""What is said of measuring a fish once more: `then it stretched and it was 18.5`."""
_PASSED_OVER = frozenset({Sort.NOTHING, Sort.CORRECTION, Sort.NO})
_NUMBER = re.compile(r"[0-9]+(?:\.[0-9]+)?\Z")
_GRAMS = (0.01, 0.025)
"""Between how many grams a cm of length, cubed, a koi lies: common practice, no source."""

_PART_OF = {
    "hi_on_eyes": ("eye",),
    "hi_on_cheeks": ("cheek",),
    "hi_on_fins": ("fin", "pectoral", "pec"),
    "motoaka": ("fin", "pectoral", "pec"),
}
"""The part that a side is of, where it is named again: `hi on one eye, left eye`."""
_ONE_PATCH = re.compile(
    r"\b(?:patch|field|saddle|step|block|band|stripe|island|plate|slab|piece|one|spot|cap|blob|strip)\b", re.IGNORECASE
)
_OF_THE_FISH = frozenset(tokens_of("fish body she he overall whole total"))
_UNITS = re.compile(r"\d\s?(?:cm|mm|%|scale|finger)|\b(?:finger|thumb)\b")


def _has_its_number(remark: Remark) -> bool:
    """Whether a remark of something that is measured or counted has its number, so that the next one is of something else."""
    return _UNITS.search(" ".join(tokens_of(plain_numbers(remark.text)))) is not None


@frozen(slots=False)
class Leaning:
    """Reads remarks of a fish one after another, each with those before it."""

    remarks: RemarkReader
    traits: Mapping[str, Trait]

    def read(self, text: str, before: Sequence[Remark]) -> Remark:
        """A remark with those before it, the last one last."""
        if len(text) > LONGEST:
            return Remark(text, Sort.UNKNOWN)
        last = _last_of_traits(before)
        if last is not None:
            remark = (
                self._sided(text, last, before) or self._recounted(text, last, before) or self._further_ones(text, last)
            )
            if remark is not None:
                return remark
        tokens = tokens_of(text)
        if last is not None and (remark := self._doubted(text, tokens, last, before)) is not None:
            return remark
        if tokens[-1:] == ("another",) or (tokens[-2:-1] == ("another",) and tokens[-1] not in _SEASONS):
            return Remark(text, Sort.UNKNOWN)  # of what, nobody can tell
        if last is not None and before[-1] is last and (remark := self._numbered(text, last)) is not None:
            return remark
        remark = self._taken_back(text, before) or self._between(text) or self.remarks.read(text, before)
        if before and self._is_count_of(remark, before[-1]):
            return Remark(text, Sort.UNKNOWN)
        if last is not None and before[-1] is last and self._is_of_a_patch(remark, last):
            return self._size_of_a_patch(remark, last)
        if remark.sort is Sort.UNKNOWN and before:
            remark = self.of_a_part(text, before[-1]) or remark
        if remark.sort is not Sort.UNKNOWN:
            return remark
        if (behind := self.behind(text, before)) is not None:
            return behind
        if before and before[-1].sort in _DESCRIBED and is_simile(tokens) and not self.remarks.speaks(tokens):
            return Remark(text, Sort.NOTHING)
        return remark

    def along(self, text: str, before: Sequence[Remark]) -> Remark | None:
        """Where what was spoken of goes on, ends or lies, or how long it is."""
        earlier = [
            " ".join(tokens_of(plain_numbers(in_cm(one.text)))) for one in before if one.sort is not Sort.NOTHING
        ]
        if not earlier:
            return None
        tokens = tokens_of(plain_numbers(in_cm(text)))
        return self.remarks.along(text, tokens, topic_of(earlier), last_place(earlier))

    def _doubted(self, text: str, tokens: tuple[str, ...], last: Remark, before: Sequence[Remark]) -> Remark | None:
        """What is left of the last remark behind one that it was dirt, that it is not sure, or is so only a little."""
        if before[-1] is not last and before[-1].sort not in _TAKING_BACK:
            return None
        kinds = [self.traits[one.trait].kind for one in last.found]
        traits = tuple(one.trait for one in last.found)
        seen = is_not_of_the_fish(tokens) and all(isinstance(kind, Count | Places | YesNo) for kind in kinds)
        if seen or (is_how_it_lay(tokens) and set(traits) <= _OF_A_POSTURE):
            # Of `2 shimi` one may be there all the same.
            left = tuple(
                evolve(one, said=None) for one in last.found if isinstance(one.said, Span) and one.said.low > 1
            )
            return Remark(text, Sort.CORRECTION, left, instead=traits)
        little = is_little(tokens)
        if before[-1] is not last or not (little or is_doubt(tokens)):
            return None
        if self.remarks.read(text, before).sort is Sort.VERDICT:
            return None
        if little and not all(isinstance(kind, Scale) for kind in kinds):
            return None
        hedged = tuple(hedge(one, self.traits[one.trait]) for one in last.found if one.said is not None)
        return Remark(text, Sort.TRAITS, hedged, about=last.about, instead=traits) if hedged else None

    def _is_of_a_patch(self, remark: Remark, last: Remark) -> bool:
        """Whether a length is told right behind one patch, and may be of that: `one field on the back, 6 cm long`."""
        if {one.trait for one in remark.found} != {"length"} or _ONE_PATCH.search(last.text) is None:
            return False
        tokens = tokens_of(plain_numbers(remark.text))
        return "cm" in tokens and not _OF_THE_FISH & {*tokens} and ("long" in tokens or self._is_short(remark))

    def _is_short(self, remark: Remark) -> bool:
        usual, said = self.remarks.lexicon.lengths, remark.found[0].said
        return usual is not None and isinstance(said, Span) and said.high < float(usual[0])

    def _size_of_a_patch(self, remark: Remark, last: Remark) -> Remark:
        """What says no more of the traits than the remark before it; unclear where a fish may be as long."""
        if self._is_short(remark):
            return Remark(remark.text, Sort.TRAITS, about=_spoken_of(last))
        return Remark(remark.text, Sort.UNKNOWN, named=("length",))

    def behind(self, text: str, before: Sequence[Remark]) -> Remark | None:
        """What a remark that says nothing by itself adds to the one before it: where that is, how large, how many of it."""
        last = _last_of_traits(before)
        if last is None or not self._leans(before, last) or self._limits(text, last):
            return None
        there = None if self._begins_with_a_number(text) else self._merely_placed(text, last)
        return self._placed(text, last) or there or self._more_of_it(text, last)

    def _limits(self, text: str, last: Remark) -> bool:
        """Whether a place says of something that it is nowhere else: `all in front`, `top half only` of red on a fin."""
        tokens = tokens_of(text)
        on_fins = any(isinstance(self.traits[one.trait].kind, Places) for one in last.found)
        return ("all" in tokens and not _ENDS_OF_IT.isdisjoint(tokens)) or ("only" in tokens and on_fins)

    def _begins_with_a_number(self, text: str) -> bool:
        """Whether a remark begins with a number that has no unit: `one by the tail` may be another one."""
        number = number_at(tokens_of(plain_numbers(text)), 0)
        return number is not None and number.unit is None

    def _leans(self, before: Sequence[Remark], last: Remark) -> bool:
        """Whether nothing stands behind a remark but how large it is what that speaks of."""
        between = before[len(before) - 1 - next(i for i, one in enumerate(reversed(before)) if one is last) + 1 :]
        return all(not one.found and one.about == _spoken_of(last) for one in between)

    def length(self, text: str, before: Sequence[Remark]) -> Remark | None:
        """`15` by itself, on a page that tells lengths: a usual one at the stage, unless it goes on about another number."""
        number = self._bare_length(text)
        if number is None or any(found.trait == "length" for remark in before for found in remark.found):
            return None
        last = before[-1] if before else None
        if last is not None and (last.sort in _TAKING_BACK or self._wants_number(last, float(number))):
            return None
        ahead = () if last is None else tokens_of(last.text)
        if len(ahead) in {1, 2} and ahead[-1] in _BEFORE_NUMBERS:
            return None
        return self._as(text, f"{number} cm")

    def _is_count_of(self, remark: Remark, last: Remark) -> bool:
        """Whether a length without a unit may be a number of what was spoken of: `about fifteen` behind `scales missing`."""
        tokens = without(tokens_of(plain_numbers(remark.text)), HEDGES)[0]
        if tokens[:1] and tokens[0].isdigit() and len(tokens) == 1:
            return False  # `fifteen` by itself is told apart by what the page tells
        if {found.trait for found in remark.found} != {"length"} or (number := number_at(tokens, 0)) is None:
            return False
        value = number.low if number.low is not None else number.high
        bare = number.unit is None and value is not None and set(tokens[number.end :]) <= SKIPPED
        if not bare or value != int(value or 0) or (number.more and not number.less):
            return False
        return any(self._is_open_count(found) for found in last.found) or self._wants_number(last, float(value or 0))

    def _is_open_count(self, found: Found) -> bool:
        kind = self.traits[found.trait].kind
        return isinstance(kind, Count) and isinstance(found.said, Span) and found.said.high == float(kind.high)

    def length_again(self, text: str, before: Sequence[Remark]) -> Remark | None:
        """`no eighteen` behind a length: what holds instead."""
        tokens = tokens_of(plain_numbers(text))
        if tokens[:1] != ("no",) or not before or {one.trait for one in before[-1].found} != {"length"}:
            return None
        number = self._bare_length(" ".join(tokens[1:]))
        return None if number is None or len(tokens) > 3 else self._as(text, f"{number} cm")

    def is_fine_length(self, text: str) -> bool:
        """Whether a remark is a usual length with tenths of a cm: `fifteen point eight`. No other number is given so."""
        number = self._bare_length(text)
        return number is not None and "." in number and "." in plain_numbers(text)

    def _bare_length(self, text: str) -> str | None:
        """The number of cm that a remark may be, where it is nothing else: `15`, `body eighteen`, `eleven nine` for 11.9."""
        usual = self.remarks.lexicon.lengths
        spoken = without(tokens_of(plain_numbers(text)), ASIDES)[0]
        if "by" in spoken or "them" in spoken or _PRICED.search(" ".join(spoken)) is not None:
            return None  # `thirty by then`, `twelve of them`, `twenty for this one`
        spoken = spoken[spoken[:1] == ("right",) :]
        tokens = [token for token in spoken if token not in SKIPPED and token not in _WITH_A_LENGTH]
        numbers = [token for token in tokens if _NUMBER.match(token)]
        if usual is None or not numbers or len(numbers) < len(tokens) or len(numbers) > 2:
            return None
        if len(numbers) == 2:
            first, then = numbers
            if not first.isdigit() or not then.isdigit() or not 0 < int(then) < 10 or int(then) == int(first) + 1:
                return None
            numbers = [f"{first}.{then}"]
        return numbers[0] if usual[0] <= Decimal(numbers[0]) <= usual[1] else None

    def _wants_number(self, last: Remark, number: float) -> bool:
        """Whether a number behind a remark may be of what that speaks of: of what is counted there, or named last."""
        if _has_its_number(last):
            return False
        noun, names = self.remarks.counted(last.text)
        if noun and any(
            isinstance(self.traits[name].kind, Count) and not self._is_counted(name, last) for name in names
        ):
            return True
        named = self._named_last(last.text) if last.found else (*last.named, *self._named_last(last.text))
        if any(isinstance(self.traits[name].kind, Count) for name in named):
            return True
        if not last.found:
            return any(map(self._takes_number, self._named_last(last.text)))
        told = ((self.traits[one.trait].kind, one.said) for one in last.found)
        return any(
            isinstance(kind, Number) and (said is None or meet(said, Span(number, number)) is not None)
            for kind, said in told
        )

    def _is_counted(self, name: str, last: Remark) -> bool:
        return any(one.trait == name and self._is_told(name, one.said) for one in last.found)

    def _named_last(self, text: str) -> tuple[str, ...]:
        """The traits that the last words of a remark name, and say nothing of: `girth`."""
        tokens = [token for token in tokens_of(text) if token not in SKIPPED]
        for at in range(len(tokens)):
            for hit in self.remarks.lexicon.hits(tokens, at):
                if hit.end == len(tokens):
                    return hit.names
        return ()

    def weight(self, text: str, before: Sequence[Remark]) -> Remark | None:
        """`forty-six` behind the length, on a page that tells weights: where a fish of that length may weigh so much."""
        tokens = [token for token in tokens_of(text) if token not in SKIPPED]
        last = before[-1] if before else None
        told = [found.said for found in last.found if found.trait == "length"] if last is not None else []
        if len(tokens) != 1 or not tokens[0].isdigit() or len(told) != 1 or not isinstance(told[0], Span):
            return None
        if any(found.trait == "weight" for remark in before for found in remark.found):
            return None
        least, most = (share * end**3 for share, end in zip(_GRAMS, (told[0].low, told[0].high), strict=True))
        return self._as(text, f"{tokens[0]} g") if least <= int(tokens[0]) <= most else None

    def _takes_number(self, trait: str) -> bool:
        return isinstance(self.traits[trait].kind, Count | Number)

    def _recounted(self, text: str, last: Remark, before: Sequence[Remark]) -> Remark | None:
        """`two` behind `three patches, no`."""
        tokens = tokens_of(text)
        if before[-1].sort not in {Sort.CORRECTION, Sort.NO} or len(tokens) != 1 or not tokens[0].isdigit():
            return None
        again = re.sub(
            r"\b(?:\d+|[a-z]+)\b", lambda m: tokens[0] if tokens_of(m[0])[0].isdigit() else m[0], last.text, count=9
        )
        return self._as(text, again) if again != last.text else None

    def _numbered(self, text: str, last: Remark) -> Remark | None:
        """`two of them`, `about three` behind what can be counted: how many of it there are."""
        tokens, hedged = without(tokens_of(plain_numbers(text)), HEDGES)
        number = number_at(tokens, 0)
        rest = () if number is None else tokens[number.end :]
        if number is None or number.unit is not None or not set(rest) <= _OF_THEM:
            return None
        noun, names = self.remarks.counted(last.text)
        if hedged:
            # `dots like pepper, maybe eight`: of them, or the length of the fish.
            counted = any(isinstance(self.traits[name].kind, Count) for name in names)
            return Remark(text, Sort.UNKNOWN) if counted and not rest else None
        counts = {name for name in names if isinstance(self.traits[name].kind, Count)}
        earlier = {found.trait: found.said for found in last.found}
        if not counts or not earlier.keys() & set(names):
            return None
        if "them" not in rest and any(self._is_told(name, earlier.get(name)) for name in counts):
            return None  # `two shimi, three`: three of what, nobody can tell
        usual = self.remarks.lexicon.lengths
        if not rest and usual is not None and (number.high is None or number.high >= usual[0]):
            return None  # as likely the length of the fish
        remark = self.remarks.read(f"{' '.join(tokens[: number.end])} {noun}")
        found = tuple(one for one in remark.found if one.trait in counts)
        if remark.sort is not Sort.TRAITS or not found or len(found) != len(remark.found):
            return None
        return evolve(remark, text=text, instead=tuple(one.trait for one in found))

    def _is_told(self, name: str, said: object) -> bool:
        """Whether a count was told, and not only that there are some."""
        kind = self.traits[name].kind
        return isinstance(said, Span) and isinstance(kind, Count) and said != Span(1.0, float(kind.high))

    def _sided(self, text: str, last: Remark, before: Sequence[Remark]) -> Remark | None:
        """`nothing on the right`, `the right one too`, `both sides`, `same on the left`, `the other one clean`, `left only`."""
        tokens, hedged = without(tokens_of(text), HEDGES)
        parts = {word for one in last.found for word in _PART_OF.get(one.trait, ()) if _NONE_THERE.isdisjoint(tokens)}
        beside = _WITH_A_SIDE | parts | {"1", "actually", *_MOSTLY}
        bare = [token for token in tokens if token not in beside]
        negated = not _NONE_THERE.isdisjoint(bare) or tokens[:1] == ("no",)
        only = not _ONLY.isdisjoint(bare)
        sides = [token for token in bare if token not in _NONE_THERE and token not in _ONLY]
        corrects = before[-1].sort in {Sort.CORRECTION, Sort.NO}
        if len(sides) != 1 or sides[0] not in {*_SIDES, "both", "other"} or (before[-1] is not last and not corrects):
            return None
        said = [side for side in _SIDES if re.search(rf"\b{side}\b", last.text, re.IGNORECASE)]
        if len(said) > 1 or (sides[0] == "other" and not said):
            return None
        if re.search(r"\bboth\b", last.text, re.IGNORECASE) and sides[0] in _SIDES:
            of_one = re.sub(r"\bboth\b", sides[0], last.text, flags=re.IGNORECASE)
            remark = self._instead(text, of_one, last) if only else None
            return None if remark is None else self._alone(remark)
        if said:
            other = _OTHER_SIDE[said[0]]
            side = other if sides[0] == "other" else sides[0]
            if side == said[0]:
                return None
            again = re.sub(rf"\b{said[0]}\b", side, last.text, flags=re.IGNORECASE)
            if (
                tokens[0] == "no"
                and not only
                and sides == list(bare)[-1:]
                and len(tokens) > 1
                and _NONE_THERE & set(bare) == {"no"}
            ):
                return self._instead(text, again, last)  # `tejima on the left, no the right`
            remark = self._as(text, f"no {again}" if negated else again)
        else:
            tries = (f"{sides[0]} {last.text}", f"{last.text} on {'the ' if sides[0] in _SIDES else ''}{sides[0]}")
            tried = (self.remarks.read(f"no {each}" if negated else each) for each in tries)
            remark = next((one for one in tried if one.sort is Sort.TRAITS and self._same(one, last)), None)
            remark = (
                self._on_a_side(text, sides[0], last, negated=negated) if remark is None else evolve(remark, text=text)
            )
            if remark is None and only:
                return Remark(text, Sort.UNKNOWN, named=tuple(one.trait for one in last.found))
        if remark is None or hedged:
            return (
                None
                if remark is None
                else evolve(remark, found=tuple(evolve(one, hedged=True, said=None) for one in remark.found))
            )
        return self._alone(remark) if only and not negated else remark

    def _on_a_side(self, text: str, side: str, last: Remark, *, negated: bool) -> Remark | None:
        """A side of what was said to be somewhere, where one place on that side can be meant: `motoaka, left`."""
        found = []
        for one in last.found:
            kind, earlier = self.traits[one.trait].kind, one.said
            if (
                negated
                or not isinstance(kind, Places)
                or not isinstance(earlier, PlaceSet)
                or earlier.sure
                or side == "other"
            ):
                continue
            bits = [
                1 << i
                for i, place in enumerate(kind.places)
                if place.partition("_")[0] in ({side} if side != "both" else _SIDES)
            ]
            bits = [bit for bit in bits if bit & earlier.possible]
            if len(bits) == (2 if side == "both" else 1):
                sure = sum(bits)
                found.append(
                    evolve(one, said=PlaceSet(sure, earlier.possible, len(bits), max(earlier.most, len(bits))))
                )
        return Remark(text, Sort.TRAITS, tuple(found), about=last.about) if found else None

    def _alone(self, remark: Remark) -> Remark:
        """A remark on one side, said to be the only one."""
        found = tuple(
            evolve(one, said=PlaceSet.exactly(one.said.sure))
            if isinstance(one.said, PlaceSet) and one.said.sure
            else one
            for one in remark.found
        )
        return evolve(remark, found=found, instead=tuple(one.trait for one in found if isinstance(one.said, PlaceSet)))

    def _same(self, remark: Remark, last: Remark) -> bool:
        return bool(remark.found) and {one.trait for one in remark.found} <= {one.trait for one in last.found}

    def _instead(self, text: str, other: str, last: Remark) -> Remark | None:
        remark = self._as(text, other)
        if remark is None or not self._same(remark, last):
            return None
        return evolve(remark, instead=tuple(one.trait for one in remark.found))

    def _further_ones(self, text: str, last: Remark) -> Remark | None:
        """`two more by the dorsal` behind `shimi on the shoulder`: the count grows, and the places are added."""
        tokens = tokens_of(text)
        rest = tuple(token for token in tokens if token not in {"and", "then", "there", "is", "are", "also", "plus"})
        number = rest[0] if rest and rest[0].isdigit() else "1" if rest[:1] == ("another",) else ""
        if not number or _MORE.isdisjoint(rest[:2]):
            return None
        at = rest[1:] if rest[0] == "another" or rest[1] not in _MORE else rest[2:]
        at = at[1:] if at[:1] in {("1",), ("one",), ("of",)} else at
        noun, names = self.remarks.counted(last.text)
        if not noun or (at and at[0] not in _PLACING and self.remarks.counted(" ".join(at))[0] != noun):
            return None
        where = " ".join(at if not at or at[0] in _PLACING else at[len(tokens_of(noun)) :])
        remark = self.remarks.read(f"{number} {noun} {where}".strip())
        known_ones = {one.trait for one in last.found} & set(names)
        if remark.sort is not Sort.TRAITS or not known_ones or not {one.trait for one in remark.found} <= set(names):
            return None
        known = {one.trait: one.said for one in last.found}
        found, instead = [], []
        for one in remark.found:
            kind, earlier = self.traits[one.trait].kind, known.get(one.trait)
            if isinstance(kind, Count) and isinstance(one.said, Span):
                if isinstance(earlier, Span):
                    ends = (earlier.low + one.said.low, min(earlier.high + one.said.high, float(kind.high)))
                    instead.append(one.trait)
                else:
                    ends = (1 + one.said.low, float(kind.high))  # the place of one at least was told
                found.append(evolve(one, said=Span(*ends)))
            else:
                found.append(one)
        return evolve(remark, text=text, found=tuple(found), instead=tuple(instead))

    def of_a_part(self, text: str, last: Remark) -> Remark | None:
        """`even` after `sashi deep`: such a word is of what was just spoken of, where that has not been said of it yet."""
        tokens = tuple(token for token in tokens_of(text) if token not in SKIPPED)
        said = {found.trait for found in last.found}
        about = tuple(trait for trait in last.about if trait not in said)
        if len(tokens) != 1 or tokens[0] not in _OF_A_PART or not about:
            return None
        level = self.remarks.lexicon.level(tokens, 0, about)
        if level is None or level.means is None:
            return None
        stated = level.means.stated[0]
        return Remark(text, Sort.TRAITS, (Found(stated.trait, stated.said, level.wording),), about=last.about)

    def _placed(self, text: str, last: Remark) -> Remark | None:
        """`on the back` after `a few specks`: what the two say together, beyond what the first says alone."""
        tokens, hedged = without(tokens_of(text), HEDGES)
        while tokens and tokens[0] in _MOSTLY:
            tokens = tokens[1:]
        while tokens and tokens[-1] in _MOSTLY:
            tokens = tokens[:-1]
        if not tokens or tokens[0] not in _PLACING or hedged or not _NONE_THERE.isdisjoint(tokens):
            return None  # `right eye clear` after red on the left one is no red there
        together = self.remarks.read(f"{last.text} {' '.join(tokens)}")
        if together.sort is not Sort.TRAITS:
            return None
        known = {found.trait for found in last.found}
        fits = (one for one in together.found if (not one.after or known & {*one.after}) and not self._says_none(one))
        more = tuple(one for one in fits if one.trait not in known or self._adds(one, last))
        return Remark(text, Sort.TRAITS, more) if more else None

    def _says_none(self, found: Found) -> bool:
        """Whether a reading of places names none of them, as `on the back` where that may be any."""
        kind, said = self.traits[found.trait].kind, found.said
        return isinstance(kind, Places) and said == noted_at_least(kind)

    def _merely_placed(self, text: str, last: Remark) -> Remark | None:
        """`above the belly fin` after `a scale missing`: where a fault is that is recorded without its place: there is one."""
        tokens = tokens_of(text)
        spoken = {*last.about, *(found.trait for found in last.found)}
        lexicon = self.remarks.lexicon
        unplaced = all(
            each in lexicon.anywhere or (each in lexicon.of_parts and isinstance(self.traits[each].kind, Count))
            for each in spoken
        )
        # `at the tail` behind a torn dorsal fin may be said of the tail fin: of fins and eyes, only how far it goes.
        names = any(isinstance(self.traits[each].kind, Places) for each in spoken) and not _NO_PLACE.isdisjoint(tokens)
        if not last.found or not unplaced or names or not tokens or past_where(tokens, 0) < len(tokens):
            return None
        if any(number_at(tokens, at) is not None for at in range(len(tokens))):
            return Remark(text, Sort.TRAITS, about=_spoken_of(last))  # how large it is
        return evolve(last, text=text, verdict="", instead=(), also=None)

    def _more_of_it(self, text: str, last: Remark) -> Remark | None:
        """A place or a size alone behind what is there: it says no more of the traits than that, and nothing else of the fish."""
        tokens = tuple(token for token in tokens_of(plain_numbers(text)) if token not in {"maybe", "perhaps", "nearly"})
        if not last.found or not tokens or not all(self._is_there(one, tokens) for one in last.found):
            return None
        if SIZE.fullmatch(" ".join(tokens)) is not None:
            measured = any(isinstance(self.traits[one.trait].kind, Number) for one in last.found)
            return None if measured else Remark(text, Sort.TRAITS, about=_spoken_of(last))
        if not self._begins_with_a_number(text) and is_place(tokens) and not any(map(self._is_choice, last.found)):
            return evolve(last, text=text, verdict="", instead=(), also=None)
        return self._some_of_them(text, tokens, last)

    def _is_choice(self, found: Found) -> bool:
        return isinstance(self.traits[found.trait].kind, Choice)

    def _is_there(self, found: Found, tokens: tuple[str, ...]) -> bool:
        """Whether what was said is of something that is somewhere, as a mark or a fault is."""
        kind, said = self.traits[found.trait].kind, found.said
        of_parts = found.trait in self.remarks.lexicon.anywhere or found.trait in self.remarks.lexicon.of_parts
        match kind, said:
            case Choice(), int():
                return True
            case YesNo(), int(bits):
                return bits == YES
            case Count(), Span(low, _):
                return low >= 1 and of_parts
            case Places(), PlaceSet():
                # A place beside those that were named may be one more of them.
                return said.least >= 1 and (
                    not said.sure or set(tokens) <= WITHIN_A_FIN or SIZE.fullmatch(" ".join(tokens)) is not None
                )
            case Scale(steps), int(bits):
                return of_parts and "only" not in tokens and not bits >> (len(steps) - 1)
            case _:
                return False

    def _some_of_them(self, text: str, tokens: tuple[str, ...], last: Remark) -> Remark | None:
        """`two on the cheek` behind `shimi`: so many at least."""
        counts = [one for one in last.found if isinstance(self.traits[one.trait].kind, Count)]
        if not tokens[0].isdigit() or len(counts) != 1 or not is_place(tokens[1:]) or tokens[1] not in _PLACING:
            return None
        one, said, number = counts[0], counts[0].said, float(tokens[0])
        placed = any(token in _PLACING for token in tokens_of(last.text))
        if not isinstance(said, Span) or self._is_told(one.trait, said) or placed:
            return None  # `one on the cheek, one by the tail` may be two
        more = evolve(one, said=Span(max(said.low, number), said.high))
        found = tuple(more if each is one else each for each in last.found)
        return evolve(last, text=text, found=found, verdict="", instead=(), also=None)

    def _adds(self, found: Found, last: Remark) -> bool:
        """Whether a place says more of a trait of places than was said before."""
        earlier = next((one.said for one in last.found if one.trait == found.trait), None)
        is_of_places = isinstance(self.traits[found.trait].kind, Places)
        return (
            is_of_places
            and earlier != found.said
            and found.said is not None
            and earlier is not None
            and meet(earlier, found.said) is not None
        )

    def _taken_back(self, text: str, before: Sequence[Remark]) -> Remark | None:
        """A remark that begins or ends with a word that takes back what stands before it: `no wait there's a third one`."""
        tokens = tokens_of(plain_numbers(text))
        measured = self._measured_anew(text, tokens, before)
        if measured is not None:
            return measured
        if not tokens or (tokens[0] not in _BEGINS and tokens[-1] not in _ENDS):
            return None
        ahead = max((words for words in CORRECTS_AHEAD if tokens[: len(words)] == words), key=len, default=())
        if ahead and len(ahead) < len(tokens):
            remark = self.read(" ".join(tokens[len(ahead) :]), before)
            if remark.sort is not Sort.TRAITS:
                return None
            back = self._contradicted(remark, before)
            return (
                evolve(remark, text=text, instead=(*remark.instead, *back))
                if back or ahead in MILD_CORRECTIONS
                else None
            )
        behind = max((words for words in CORRECTS_BEHIND if tokens[-len(words) :] == words), key=len, default=())
        if behind and before and len(behind) < len(tokens):
            remark = self.read(" ".join(tokens[: -len(behind)]), before)
            back = self._contradicted(remark, before) if remark.sort is Sort.TRAITS else ()
            return evolve(remark, text=text, instead=(*remark.instead, *back)) if back else None
        return None

    def _measured_anew(self, text: str, tokens: tuple[str, ...], before: Sequence[Remark]) -> Remark | None:
        """`no 16, I held it wrong`, `make that eighteen`, `18.5 when it lay still` after `14 cm`."""
        if not any(token[0].isdigit() for token in tokens):
            return None
        last = next((one for one in reversed(before) if one.sort not in _PASSED_OVER), None)
        if last is None or {found.trait for found in last.found} != {"length"}:
            return None
        ahead = max((words for words in CORRECTS_AHEAD if tokens[: len(words)] == words), key=len, default=tokens[:1])
        anew = ahead == ("no",) or ahead in CORRECTS_AHEAD
        rest = without(tokens[len(ahead) :] if anew else tokens, ASIDES)[0]
        if not anew and _AGAIN.isdisjoint(rest):
            return None
        kept = [at for at in range(len(rest)) if rest[at] not in _MEASURING]
        number, usual = number_at(rest, kept[0]) if kept else None, self.remarks.lexicon.lengths
        if number is None or usual is None or not set(rest[number.end :]) <= _MEASURING:
            return None
        if (
            number.low is None
            or number.low != number.high
            or (number.unit is None and not usual[0] <= number.low <= usual[1])
        ):
            return None
        words = " ".join(rest[kept[0] : number.end])
        remark = self._as(text, words if number.unit is not None else f"{words} cm")
        return None if remark is None or not self._same(remark, last) else evolve(remark, instead=("length",))

    def _contradicted(self, remark: Remark, before: Sequence[Remark]) -> tuple[str, ...]:
        """The traits of a remark that were said to be something else."""
        earlier = {found.trait: found.said for one in before for found in one.found}
        found = {each.trait: each.said for each in remark.found}
        return tuple(trait for trait in found if trait in earlier and found[trait] != earlier[trait])

    def _between(self, text: str) -> Remark | None:
        """`81 no 82 grams`, `nidan sorry sandan`: what stands behind the word holds."""
        tokens = tokens_of(plain_numbers(text))
        if _AMID.isdisjoint(tokens):
            return None
        for at in range(1, len(tokens) - 1):
            words = max((each for each in CORRECTS_BETWEEN if tokens[at : at + len(each)] == each), key=len, default=())
            first, then = tokens[:at], tokens[at + len(words) :]
            if not words or not then:
                continue
            remark = self.remarks.read(" ".join(then))
            taken = self.remarks.read(" ".join(first))
            number = len(first) == 1 and first[0][0].isdigit() and then[0][0].isdigit()
            same = taken.sort is Sort.TRAITS and {each.trait for each in taken.found} == {
                each.trait for each in remark.found
            }
            if remark.sort is Sort.TRAITS and (number or (same and words != ("no",))):
                return evolve(remark, text=text)
        return None

    def _as(self, text: str, other: str) -> Remark | None:
        remark = self.remarks.read(other)
        return evolve(remark, text=text) if remark.sort is Sort.TRAITS else None


def _last_of_traits(before: Sequence[Remark]) -> Remark | None:
    return next((one for one in reversed(before) if one.sort is Sort.TRAITS and one.found), None)


def _spoken_of(remark: Remark) -> tuple[str, ...]:
    return remark.about or tuple(one.trait for one in remark.found)


def corrected(remarks: Sequence[Remark]) -> list[Remark]:
    """Remarks with what later ones take back taken out."""
    kept: list[Remark] = []
    taking: Remark | None = None
    for remark in remarks:
        if remark.sort is Sort.CORRECTION and remark.instead:
            kept[:] = [_less(one, set(remark.instead)) for one in kept]
            kept.append(evolve(remark, sort=Sort.TRAITS if remark.found else Sort.NOTHING))
            taking = None
            continue
        if remark.sort is Sort.CORRECTION and is_correction(tokens_of(remark.text)):
            kept.append(_in_vain(remark, kept))
            continue
        if remark.sort in {Sort.CORRECTION, Sort.NO}:
            if taking is not None:
                kept.append(_in_vain(taking, kept))
            taking = remark
            continue
        if taking is not None and remark.sort is Sort.VERDICT:
            back = next((i for i in range(len(kept) - 1, -1, -1) if kept[i].sort is Sort.VERDICT), None)
            if back is not None and (taking.sort is Sort.CORRECTION or back == len(kept) - 1):
                kept[back] = evolve(kept[back], sort=Sort.NOTHING, verdict="")
            elif tokens_of(taking.text) not in CHANGES_OF_MIND:
                kept.append(_in_vain(taking, kept))
            taking = None
        if taking is not None:
            traits = {found.trait for found in remark.found}
            back = next((i for i in range(len(kept) - 1, -1, -1) if traits & {f.trait for f in kept[i].found}), None)
            if back is not None and (taking.sort is Sort.CORRECTION or back == len(kept) - 1):
                kept[back] = _less(kept[back], traits)
            elif taking.sort is Sort.NO or not remark.found or any(one.sort is Sort.VERDICT for one in kept):
                kept.append(_in_vain(taking, kept))
            taking = None
        for i, one in enumerate(kept) if remark.instead else ():
            kept[i] = _less(one, set(remark.instead))
        kept.append(remark)
    return [*kept, *([_in_vain(taking, kept)] if taking is not None else [])]


def _less(remark: Remark, traits: set[str]) -> Remark:
    """A remark without what it says of some traits."""
    left = tuple(found for found in remark.found if found.trait not in traits)
    return (
        remark
        if len(left) == len(remark.found)
        else evolve(remark, found=left, sort=remark.sort if left else Sort.NOTHING)
    )


def _in_vain(remark: Remark, before: Sequence[Remark]) -> Remark:
    """A correction of which nobody can tell what it corrects: what stands before it cannot be trusted."""
    last = next((one for one in reversed(before) if one.sort is Sort.TRAITS), None)
    return evolve(remark, named=() if last is None else tuple(found.trait for found in last.found))
