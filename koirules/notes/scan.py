"""Goes over the words of a remark that is no phrase as a whole: phrases, names and numbers, one after another."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.notes.adjuncts import is_exception, past_adjunct, past_the_lot
from koirules.notes.found import Found, hedge
from koirules.notes.lexicon import Hit, Lexicon
from koirules.notes.numbers import Written, number_at, past_comparison, plain_numbers
from koirules.notes.parts import past_everywhere, past_owner, past_part
from koirules.notes.tree import (
    INSIDE,
    SKIPPED,
    Means,
    is_text,
    none_of,
    noted_at_least,
    opposite_of,
    takes_number,
)
from koirules.standard.check.phrasing import meet
from koirules.standard.parts import Said, Stated
from koirules.vocabulary.kinds import Choice, Count, Kind, Number, Places, Scale, YesNo
from koirules.vocabulary.phrases import spread, wordings_in
from koirules.vocabulary.plain_text import plain
from koirules.vocabulary.readings import NO, YES, PlaceSet, Span
from koirules.vocabulary.traits import Better, Trait
from koirules.vocabulary.units import OWN_UNITS, Dimension
from koirules.vocabulary.wordings import NUMBERS, tokens_of

NEGATIONS = frozenset({"no", "not", "without", "never", "neither", "zero", "0", "nothing"})
_NONE_BEHIND = frozenset({"none", "no", "nil", "absent", "missing", "0", "nowhere", "nashi"})
_SIZES = frozenset({"small", "tiny", "little", "big", "large", "fine", "minute", "single", "lone", "odd", "isolated"})
_PRAISE = frozenset(
    wordings_in("good, nice, fine, clear, clean, proper, true, typical, strong, great, everyday, simple, decent")
)
_PASSED = SKIPPED | _SIZES | {"good", "full", "whole", "clear"}
_BEFORE_NAMES = _SIZES | _PRAISE
WHERE = frozenset({"in"})
_PLACED = frozenset({"near", "at", "in", "on", "behind", "before", "by", "over", "under", "along"})
_THE_FISH = frozenset({"it", "her", "him"})
_A_FISH = frozenset(tokens_of("fish girl boy lady lad lass one fellow chap koi thing baby youngster"))
_NONE_THERE = tuple((word,) for word in _NONE_BEHIND)
_OF_A_PATCH = frozenset(
    tokens_of("patch field block piece plate saddle island band bar stripe blob spot mark marking lump")
)
_ADDING = frozenset({"and", "then", "plus"})
_ON = frozenset({"on", "in", "at", "over", "across"})
_THE = frozenset({"the", "a", "its", "her", "his"})
_OF_STEPS = frozenset({"big", "small", "little", "the"})
"""`on the big one` is as likely said of a step."""
_WHICH_FISH = frozenset(
    tokens_of("this that a the such little young old big small lovely good nice poor of its my such")
)
_NO_LABELS = frozenset({"grade", "fish", "quality", "good", "bad", "fine", "ok"})
_NO_LABEL_BEGINS = frozenset(
    tokens_of("it her him this that them for again me us now and or so before after till until")
)
"""`pond it one more summer` is no name of a pond."""
_SCALES = (("scale",), ("row",))
_OF_SCALES = frozenset({"of", "scale", "deep", "wide"})
"""`sashi two rows of scales`: what is counted in scales has no unit."""
_ACROSS = (("big",), ("wide",), ("long",), ("across",), ("large",))
_ALL_OVER = (
    ("everywhere",),
    ("galore",),
    ("throughout",),
    ("all", "over"),
    ("all", "down"),
    ("all", "along"),
    ("all", "through"),
)
_TRACES = frozenset({"trace", "touch", "hint", "sign", "start", "beginning", "suggestion", "spot", "case"})
"""`a touch of hikui`, `no sign of hikui`."""
_ONE = frozenset({"a", "an"})
"""`not a strong red` is less than strong; `not strong red` may be another red."""
_POINTING = frozenset({"this", "that"})
"""`a cooler red, this one`: no number stands there."""
_EVEN = frozenset({"even"})
_LIKENESS = frozenset({"like", "as"})
"""`front edges like fog` says how they are."""
_FREE = frozenset({"free", "clear", "clean", "devoid"})
_AFTER_NOT = frozenset({"a", "an", "any", "single", "1", "find", "see", "spot"})
_EMPHASIS = tuple(
    tuple(words.split())
    for words in (
        "to speak of",
        "at all",
        "in all",
        "for my liking",
        "for my taste",
        "to my eye",
        "to my mind",
        "in my book",
        "for a tosai",
        "for its age",
        "for the age",
        "for its size",
        "for the size",
        "at this age",
        "at this size",
        "in total",
        "altogether",
        "all told",
        "i is afraid",
        "i am afraid",
        "whatsoever",
        "whatever",
        "in sight",
        "to be seen",
        "to be found",
        "that i can see",
        "as far as i can see",
        "that i can find",
        "on this 1",
    )
)
"""`no shimi at all`."""
_THROUGHOUT = tuple(
    spread(
        "from (head|nose) to (tail|stem), head to tail, nose to tail, (on|) both sides, all (the way|) (along|down|"
        "through), all over, throughout, (along|over) (its|the) whole length, from end to end, from 1 end to the other"
    )
)
"""`the spine is true from head to tail`."""
GENERAL = frozenset(
    {
        "hi",
        "red",
        "beni",
        "colour",
        "orange",
        "white",
        "black",
        "sumi",
        "head",
        "body",
        "skin",
        "eye",
        "shape",
        "fish",
        "lot",
        "line",
        "whole",
        "state",
    }
)
_OF_BODIES = frozenset({"long", "wide", "broad", "deep", "high"})
_MERE_WORDS = (("fine",), ("ok",), ("okay",), ("well",), ("right",))
_OF_THE_WHOLE = frozenset(tokens_of("body fish frame bodied"))
_NEEDS_UNIT = frozenset({"odome_gap", "white_gap_width"})
"""Small lengths: `gap seven` is said of 7 mm, and a bare number would be 7 cm."""
_SOME = {"few": (2, None), "several": (2, None), "couple": (2, 3), "some": (1, None), "many": (3, None)}
_SOME |= {"lot": (3, None), "plenty": (3, None), "another": (1, None), "any": (1, None), "a": (1, 1), "an": (1, 1)}
_SOME |= {"single": (1, 1), "lone": (1, 1), "pair": (2, 2), "handful": (3, None), "load": (3, None), "masse": (3, None)}
_SOME |= {"sprinkling": (3, None), "dusting": (3, None), "scattering": (3, None)}


def told(means: Means, wording: str) -> tuple[Found, ...]:
    """What words say of traits, by the wording that was heard."""
    return tuple(Found(each.trait, each.said, wording, after=means.after) for each in means.stated)


def _is_even(number: Written) -> bool:
    """Whether a number has no part of one: `gap 1.5` is in cm, since nobody measures a gap to half a mm."""
    return all(end is None or end == end.to_integral_value() for end in (number.low, number.high))


def _is_exact(said: Said) -> bool:
    """Whether a number was told, and not words for about so much: `two scales on the left and one on the right` are two."""
    return isinstance(said, Span) and said.low == said.high


class Scan:
    """Goes over the words of a remark from the left: leftmost, then longest."""

    def __init__(self, lexicon: Lexicon, tokens: tuple[str, ...], hedged: bool, shown: str) -> None:
        self.lexicon, self.tokens, self.hedged, self.shown = lexicon, tokens, hedged, shown
        self.found: list[Found] = []
        self.verdict: str | None = None
        self.about: tuple[str, ...] = ()
        self.bare = -1
        self.negation = ""
        self.spared = False
        self.number = 0
        self.last = (0, 0)
        self.places: tuple[str, ...] = ()

    def by_itself(self) -> bool:
        """Whether the whole is a word that says so only by itself: `straight`."""
        size = len(self.tokens)
        ends = (
            at
            for at in range(size - 1, 0, -1)
            if self.tokens[at] not in _LIKENESS and past_adjunct(self.tokens, at) == size
        )
        tried = (self.lexicon.by_itself(self.tokens[:end]) for end in (size, *ends))
        means = next((each[0] for each in tried if each), None)
        self.found = [] if means is None else list(told(means, means.wording))
        return means is not None

    def run(self) -> bool:
        """Whether every word was understood."""
        at, negated = 0, False
        owner = past_owner(self.tokens, 0)
        if owner and self._at(0, negated=False) is None:
            # `the second patch has a window`: what it has is read where it is said of parts as of the whole.
            at = owner
        else:
            at, owner = past_the_lot(self.tokens), 0
        self.found.clear()
        while at < len(self.tokens):
            if self.found and not negated and (past := self._past_no_reading(at)) > at:
                at = past
                continue
            end = None if not negated and self._denies(at) else self._at(at, negated)
            if end is not None:
                self.last = (at, end)
                at, negated = self._past_part(end), False
                continue
            token = self.tokens[at]
            behind = self.tokens[at + 1 : at + 2]
            if behind == ("of",) and (token in _TRACES or (token in _FREE and not negated)):
                at, negated = at + 2, negated or token in _FREE
                continue
            if token in _POINTING and behind == ("1",) and not negated:
                at += 2
                continue
            if token in _ADDING and not negated and (place := self._one_more_place(at + 1)) is not None:
                at = place
                continue
            if self.found and not negated and (past := self._past_emphasis(at)) > at:
                at = past
                continue
            if self.found and not negated and is_exception(self.tokens, at):
                return self._with_an_exception()
            if negated and token in _AFTER_NOT and self.negation == "not":
                at += 1
                continue
            if token in WHERE and not negated and self.lexicon.is_label(self.tokens, at + 1):
                at += 1
                continue
            if not negated and (past := self._past_extent(at)) > at:
                at = past
                continue
            if self.found and not negated and (past := self._past_the_fish(at)) > at:
                at = past
                continue
            if token in NEGATIONS and not negated:
                negated, self.negation = True, token
            elif token not in SKIPPED or negated:
                return False
            at += 1
        of_parts = all(each.trait in self.lexicon.of_parts for each in self.found)
        return not negated and (not owner or (bool(self.found) and of_parts))

    def _with_an_exception(self) -> bool:
        """Widen what was said where it does not hold everywhere; whether that is possible."""
        traits = [self.lexicon.traits[each.trait] for each in self.found]
        self.found[:] = [hedge(each, trait) for each, trait in zip(self.found, traits, strict=True)]
        return all(isinstance(trait.kind, Scale) for trait in traits)

    def _past_part(self, at: int) -> int:
        """The place behind the name of a part, where what was said last is said of a part as of the whole.

        What holds of nothing but a part is not said of the whole: `only on the left`.
        """
        last = self.found[-1] if self.found else None
        parts = None if last is None else self.lexicon.of_parts.get(last.trait)
        if last is None or parts is None:
            return at
        if self.spared or last.said == none_of(self.lexicon.traits[last.trait].kind):
            return past_everywhere(self.tokens, at)
        while (end := self._past_one_part(self._past_size(at), parts)) > at:
            at = end
        return at

    def _past_one_part(self, at: int, parts: frozenset[str]) -> int:
        end = past_part(self.tokens, at, INSIDE, parts)
        longer = (hit.end > end for start in range(at, end) for hit in self.lexicon.hits(self.tokens, start))
        return at if "only" in self.tokens[at : end + 1] or any(longer) else end

    def _past_emphasis(self, at: int) -> int:
        told = self.found[-1].said if self.found else None
        if isinstance(told, int) and isinstance(self.lexicon.traits[self.found[-1].trait].kind, Scale):
            through = next((len(words) for words in _THROUGHOUT if self.tokens[at : at + len(words)] == words), 0)
            if through and at + through == len(self.tokens):
                return len(self.tokens)
        emphasis = next((len(words) for words in _EMPHASIS if self.tokens[at : at + len(words)] == words), 0)
        return at + emphasis if emphasis else past_adjunct(self.tokens, at)

    def _past_no_reading(self, at: int) -> int:
        """The end of words that are no reading here, although they may be one elsewhere."""
        if self.tokens[at] in _EVEN and (past := past_adjunct(self.tokens, at)) > at:
            return past  # `a sheen even in the shade` says nothing of how even it is
        return self._past_likeness(at)

    def _past_likeness(self, at: int) -> int:
        """The end of the words, where all that is left says what it is like: `runs into the white | like a wet painting`."""
        likened = self.tokens[at] == "like" or "size" in self.tokens[at : at + 3]
        if not likened or past_adjunct(self.tokens, at) < len(self.tokens):
            return at
        hits = self.lexicon.hits(self.tokens, at)
        means = hits[0].means if hits and hits[0].end == len(self.tokens) else None
        of_another = means is not None and means.after and {each.trait for each in self.found}.isdisjoint(means.after)
        return at if means is not None and not of_another else len(self.tokens)

    def _past_the_fish(self, at: int) -> int:
        """The place behind `on it`, `to her` or `on this young lady`, behind what is said of the fish; the same place else."""
        end = at + 1
        if self.tokens[at] not in {"on", "to", "about", "in", "of", "for", "with"}:
            return at
        if (
            self.tokens[at] in {"on", "to", "about", "in"}
            and self.tokens[end : end + 1]
            and self.tokens[end] in _THE_FISH
        ):
            behind = self.tokens[end + 1 : end + 2]
            return end + 1 if not behind or behind[0] in SKIPPED else at
        while end < len(self.tokens) - 1 and self.tokens[end] in _WHICH_FISH:
            end += 1
        if end == at + 1 or end != len(self.tokens) - 1 or self.tokens[end] not in _A_FISH:
            return at
        of_a_step = self.tokens[end] == "1" and not _OF_STEPS.isdisjoint(self.tokens[at:end])
        return at if of_a_step else end + 1

    def _past_size(self, at: int) -> int:
        """The place behind a size in scales, which is no count of what was spoken of: `a window | of two scales`."""
        start = at + (self.tokens[at : at + 1] == ("of",))
        number = number_at(self.tokens, start)
        if number is None or self.tokens[number.end : number.end + 1] != ("scale",):
            return at
        end = number.end + 1
        return end + 1 if self.tokens[end : end + 1] in _ACROSS else end

    def _is_of_a_patch(self) -> bool:
        """Whether a length is that of what lies where was just told: `one patch on the back, 6 cm long`."""
        last = self.found[-1] if self.found else None
        return last is not None and isinstance(self.lexicon.traits[last.trait].kind, Places)

    def _past_extent(self, at: int) -> int:
        """The end of the words, where nothing but the size in mm of what was spoken of is left: `white nose for | 6 mm`."""
        number = number_at(self.tokens, at + (self.tokens[at : at + 1] == ("by",)))
        told = (
            number is not None
            and number.unit is not None
            and (
                number.unit.symbol == "mm"
                or self._is_of_a_mark(number, at)
                or (self._is_of_a_patch() and self.tokens[number.end : number.end + 1] in _ACROSS)
            )
        )
        compared = past_comparison(self.tokens, at)
        if not self.found or (compared == at and not told):
            return at
        kind = self.lexicon.traits[self.found[-1].trait].kind
        rest = self.tokens[compared if number is None or not told else number.end :]
        rest = rest[1:] if rest[:1] in _ACROSS else rest
        if rest[:1] == ("by",) and (other := number_at(rest, 1)) is not None:
            rest = rest[other.end :]
        measured = isinstance(kind, Number) and kind.dimension is not Dimension.SHARE
        return at if rest or measured else len(self.tokens)

    def _denies(self, at: int) -> bool:
        """Whether `no` here is no part of a phrase, but stands before a longer one: `no red | on the left pectoral`."""
        if self.tokens[at] not in NEGATIONS:
            return False
        here, behind = (next(iter(self.lexicon.hits(self.tokens, i)), None) for i in (at, at + 1))
        return here is not None and behind is not None and behind.end > here.end

    def named(self) -> tuple[str, ...]:
        """The traits that the words speak of."""
        named: list[str] = []
        at = 0
        while at < len(self.tokens):
            hit = next(iter(self.lexicon.hits(self.tokens, at)), None)
            if hit is not None and not (hit.names and hit.end - at == 1 and self.tokens[at] in GENERAL):
                named += hit.names or [each.trait for each in ([] if hit.means is None else hit.means.stated)]
            at = at + 1 if hit is None else hit.end
        return tuple(dict.fromkeys(named))

    def _at(self, at: int, negated: bool) -> int | None:
        """The place behind what is understood here; None where nothing is."""
        hits = self.lexicon.hits(self.tokens, at)
        best = next((hit for hit in hits if hit.means is not None), None)
        number = None if self._is_set(at) else number_at(self.tokens, at)
        if number is not None and (best is None or number.end >= best.end) and not negated:
            self.number = at
            end = self._number(number, ())
            if end is not None:
                return end
        named = next((hit for hit in hits if hit.names), None)
        if self.about and not negated and (best is None or (best.whole and not best.about)) and named is None:
            level = self.lexicon.level(self.tokens, at, self.about)
            if level is not None and (best is None or level.end >= best.end) and not self._is_a_mere_word(at):
                best = level
        if best is not None and hits and hits[0].names and hits[0].end == best.end:
            best = None  # `white gap at the shoulder` has a name of its own
        if best is not None and not negated and self._is_another_patch(at, best):
            return None
        if best is not None and not best.whole and self.tokens[best.end : best.end + 1] in _NONE_THERE:
            best = None  # `head red missing`
        if best is not None and negated and self.negation == "without" and not best.whole and len(best.about) > 0:
            return None  # `without the head patch a good nidan`
        if best is not None and (named is None or named.end <= best.end) and not self._measured(named, best):
            self.about = best.about or self._names_within(at, best)
            if not negated:
                if self.bare == at and best.whole and self._is_a_level(at, best.end):
                    return None  # `sumi nothing special`: such a word is of the name before it, and says nothing that it can be
                if self.bare == at and best.means is not None and not best.means.stated:
                    return None  # `shimi fine`: small ones, or no harm in them
                self.found += () if best.means is None else told(best.means, best.wording)
                return self.lexicon.behind_a_fault(
                    self.tokens, best.end, () if best.means is None else best.means.stated
                )
            return self._negated(best, at)
        if named is not None:
            return self._named(named, negated)
        if negated:
            return None
        return self._some(at) or self._sized(at) or self._one_more_place(at)

    def _is_another_patch(self, at: int, hit: Hit) -> bool:
        """Whether what stands right before a patch may say what sort of patch it is: `dull | patch on the shoulder`."""
        of_places = hit.means is not None and all(
            isinstance(self.lexicon.traits[each.trait].kind, Places) for each in hit.means.stated
        )
        return (
            of_places and self.last[1] == at > 0 and not _OF_A_PATCH.isdisjoint(self.tokens[at : min(at + 2, hit.end)])
        )

    def _one_more_place(self, at: int) -> int | None:
        """The place behind a further place of what was said to be at one: `red on the head and | in the middle`."""
        start, end = self.last
        if (
            not self.found
            or at == len(self.tokens)
            or not _ADDING & {*self.tokens[end:at]}
            or not {*self.tokens[end:at]} <= SKIPPED | _ADDING
        ):
            return None
        kinds = [self.lexicon.traits[each.trait].kind for each in self.found]
        if not all(isinstance(kind, Places | Scale) for kind in kinds):
            return None
        names = self.lexicon.places_of(self.tokens[start:end]) or self.places
        place = at + (self.tokens[at] in _ON)
        while place < len(self.tokens) and self.tokens[place] in _THE:
            place += 1
        tries = (self.lexicon.level(self.tokens, each, names) for each in dict.fromkeys((at, place)))
        level = next((each for each in tries if each is not None), None)
        if level is None or level.means is None:
            return None
        self.found += told(level.means, level.wording)
        self.about, self.places, self.last = names, names, (at, level.end)
        return level.end

    def _is_a_mere_word(self, at: int) -> bool:
        """Whether a word of praise is the last one behind a phrase, and may be said to anybody: `pattern's a stripe, fine`."""
        return self.found != [] and self.tokens[at:] in _MERE_WORDS

    def _is_a_level(self, at: int, end: int) -> bool:
        """Whether words are a level of some trait, and need its name beside them."""
        levels = self.lexicon.levels_of(self.tokens[at:end])
        return any(isinstance(self.lexicon.traits[name].kind, Scale) for name in levels)

    def _sized(self, at: int) -> int | None:
        """The place behind words of size or praise before what is counted or named: `big shimi`, `good nidan`."""
        end = at
        while end < len(self.tokens) and self.tokens[end] in _BEFORE_NAMES:
            end += 1
            if end < len(self.tokens) and self._stands_behind_sizes(at, end):
                return end
        return None

    def _stands_behind_sizes(self, at: int, end: int) -> bool:
        sizes = set(self.tokens[at:end]) <= _SIZES
        if sizes and self._counted_at(end):
            return True
        best = next((hit for hit in self.lexicon.hits(self.tokens, end) if hit.means is not None), None)
        if best is None or best.means is None or not best.means.stated:
            return False
        kind = self.lexicon.traits[best.means.stated[0].trait].kind
        if sizes:
            return isinstance(kind, Places)
        # `good nidan` is nidan, and `good sharp kiwa` sharp.
        return isinstance(kind, Choice if best.whole else Scale)

    def _counted_at(self, at: int) -> bool:
        names = [name for hit in self.lexicon.hits(self.tokens, at) for name in hit.names]
        return any(isinstance(self.lexicon.traits[name].kind, Count | Places) for name in names)

    def _measured(self, named: Hit | None, best: Hit) -> bool:
        """Whether the name of a number stands here with its number, so that its words are no phrase."""
        if named is None or named.end < best.end or best.means is None or best.means.own:
            return False
        at = named.end
        while at < len(self.tokens) and self.tokens[at] in SKIPPED:
            at += 1
        return number_at(self.tokens, at) is not None and any(
            takes_number(self.lexicon.traits[name].kind) for name in named.names
        )

    def _names_within(self, at: int, hit: Hit) -> tuple[str, ...]:
        """What a name within a phrase may stand for, where it is one of what the phrase says: `odome` in `clean odome`."""
        inside = self.tokens[at : hit.end]
        said = {each.trait for each in ([] if hit.means is None else hit.means.stated)}
        named = [each.names for i in range(len(inside)) for each in self.lexicon.hits(inside, i)]
        return tuple(name for names in named if said & {*names} for name in names)

    def _some(self, at: int) -> int | None:
        """`a window`, `a few specks`, `another splash`."""
        bounds = _SOME.get(self.tokens[at])
        if bounds is None:
            return None
        start = at + 1
        while start < len(self.tokens) and (self.tokens[start] in _SOME or self.tokens[start] == "of"):
            bounds = _SOME.get(self.tokens[start], bounds)
            start += 1
        while start < len(self.tokens) and self.tokens[start] in _SIZES and not self._counted_at(start):
            start += 1
        for hit in self.lexicon.hits(self.tokens, start):
            for name in hit.names:
                kind = self.lexicon.traits[name].kind
                if isinstance(kind, Count):
                    low, high = bounds
                    more = high == 1 and self.tokens[hit.end : hit.end + 2] == ("or", "2")
                    counted = Span(float(low), 2.0 if more else float(high or kind.high))
                    self.found.append(Found(name, counted, hit.wording))
                    end = hit.end + 2 if more else self._where(hit, start)
                    return self.lexicon.behind_a_fault(self.tokens, end, [Stated(name, counted)])
                if isinstance(kind, YesNo):
                    self.found.append(Found(name, YES, hit.wording))
                    return hit.end
        return None

    def _where(self, hit: Hit, start: int) -> int:
        """The place behind a counted name, or behind the places that are told of it."""
        longer = next((one for one in self.lexicon.hits(self.tokens, start) if one.means and one.end > hit.end), None)
        if longer is None or longer.means is None:
            return hit.end
        self.found += told(longer.means, longer.wording)
        self.about = longer.about
        return longer.end

    def _number(self, number: Written, before: Sequence[str]) -> int | None:
        """A number with the trait that it is of: named before it, behind it, or told by its unit."""
        if self.tokens[number.end : number.end + 1] in _SCALES:
            before = [name for name in before if not isinstance(self.lexicon.traits[name].kind, Count)]
        for name in before:
            if self._counts(name, number, ""):
                return self._behind(number)
        start = number.end
        while start < len(self.tokens):
            one_of = number.unit is None and "of" in self.tokens[number.end : start]
            for hit in self.lexicon.hits(self.tokens, start):
                for name in hit.names:
                    if one_of and isinstance(self.lexicon.traits[name].kind, Number):
                        continue  # `one of the pectorals` is 1 cm of nothing
                    if self._counts(name, number, hit.wording):
                        self.about = hit.names
                        return self.lexicon.behind_a_fault(
                            self.tokens, self._where(hit, start), [Stated(name, self.found[-1].said or 0)]
                        )
            if self.tokens[start] not in _PASSED or self.tokens[start] in {"for", "but", "with"}:
                break
            start += 1
        for name in self.about:
            # `clean odome of 3 cm`: the number is of what was just spoken of.
            if self._counts(name, number, ""):
                return self._behind(number)
        if not before and (number.measured or self.hedged) and number.unit is None and self._is_whole(number):
            return number.end if self._counts("length", number, "length") else None
        if before or number.unit is None:
            return None
        if number.unit.dimension is Dimension.SHARE and self._alone(number) and "sumi_cover" not in self.lexicon.traits:
            return number.end if self._counts("hi_cover", number, "%") else None
        for dimension, symbol, name in ((Dimension.LENGTH, "cm", "length"), (Dimension.MASS, "", "weight")):
            coarse = number.unit.symbol not in OWN_UNITS and number.unit.exact >= 1  # a sun is of a body, as a cm is
            fits = number.unit.dimension is dimension and (not symbol or number.unit.symbol == symbol or coarse)
            if fits and name == "length" and (not self._is_of_a_body(number) or self._is_of_a_patch()):
                return None
            if fits and name in self.lexicon.traits and self._counts(name, number, name):
                return number.end
        return None

    def _is_set(self, at: int) -> bool:
        """Whether a number says no more than which ones are meant: `sashi on all | three`."""
        return self.tokens[at - 1 : at] == ("all",)

    def _is_whole(self, number: Written) -> bool:
        """Whether a number is the whole remark and a usual length at the stage: `about 14`."""
        usual, ends = self.lexicon.lengths, [end for end in (number.low, number.high) if end is not None]
        if usual is None or (
            "more" in self.tokens[: number.end] and "look" not in self.tokens
        ):  # `ten or more` is said of marks
            return False
        return self._alone(number) and all(usual[0] <= end <= usual[1] for end in ends)

    def _alone(self, number: Written) -> bool:
        """Whether nothing stands beside a number that says anything."""
        behind, ahead = self.tokens[number.end :], self.tokens[: self.number]
        return not self.found and all(token in SKIPPED for token in (*ahead, *behind))

    def _is_of_a_body(self, number: Written) -> bool:
        """Whether a length without a name is one that a fish has: `1 cm` is said of a mark."""
        ends = [end for end in (number.low, number.high) if end is not None]
        return number.unit is None or all(number.unit.to_held(end) >= self.lexicon.shortest for end in ends)

    def _is_of_a_mark(self, number: Written, at: int) -> bool:
        """Whether a length in cm is too small for a fish, and told to be one across something."""
        aside = self.tokens[number.end : number.end + 1] in _ACROSS or self.tokens[at] == "by"
        return number.unit is not None and number.unit.symbol == "cm" and aside and not self._is_of_a_body(number)

    def _behind(self, number: Written) -> int:
        """The place behind a number and a further name of the same thing: `length 14 cm long`."""
        trait = self.found[-1].trait
        again = next((hit for hit in self.lexicon.hits(self.tokens, number.end) if trait in hit.names), None)
        end = number.end if again is None else again.end
        kind = self.lexicon.traits[trait].kind
        in_scales = isinstance(kind, Number) and kind.unit is None and number.unit is None
        if again is None and in_scales and self.tokens[end : end + 1] in _SCALES:
            end += 1
            while end < len(self.tokens) and self.tokens[end] in _OF_SCALES:
                end += 1
        return end

    def _counts(self, name: str, number: Written, wording: str) -> bool:
        kind = self.lexicon.traits[name].kind
        if not isinstance(kind, Number | Count):
            return False
        bare_share = isinstance(kind, Number) and kind.dimension is Dimension.SHARE and number.unit is None
        if number.unit is not None and number.unit.symbol == "mm" and wording in _OF_BODIES:
            return False  # bodies are measured in cm: `8 mm wide` is said of a mark
        if name in _NEEDS_UNIT and number.unit is None and _is_even(number):
            return False
        if (
            name in {"depth", "width"}
            and wording in _OF_BODIES
            and _OF_THE_WHOLE.isdisjoint(self.tokens)
            and not self.found
        ):
            return False  # `two centimetres deep`: a notch or a patch
        if bare_share and (wording or (number.low is not None and 0 < number.low < 1)):
            return False  # `four reds` are patches
        if name in {"length", "width", "depth"} and wording in _OF_BODIES and self._is_of_a_patch():
            return False
        if name == "length" and wording in _OF_BODIES and not self._is_of_a_body(number):
            return False
        if (
            name == "length"
            and number.unit is None
            and any(end is not None and end < self.lexicon.shortest for end in (number.low, number.high))
        ):
            return False  # `size two` is a class
        span = number.within(kind, hedged=self.hedged)
        if span is None:
            return False
        # `mostly red, 75 %`: the number says it better than the words.
        self.found = [
            one
            for one in self.found
            if one.trait != name or one.said is None or _is_exact(one.said) or meet(one.said, span) is not None
        ]
        self.found.append(Found(name, span, wording or name.replace("_", " "), hedged=self.hedged))
        return True

    def _named(self, hit: Hit, negated: bool) -> int | None:
        """The name of a trait: with a number, with `none`, behind `no`, or alone."""
        traits = self.lexicon.traits
        at = hit.end
        while at < len(self.tokens) and self.tokens[at] in SKIPPED:
            number = number_at(self.tokens, at)
            if number is not None and number.near:
                break
            at += 1
        if not negated and any(takes_number(traits[name].kind) for name in hit.names):
            number = None if self._is_set(at) else number_at(self.tokens, at)
            if number is None and any(name in self.lexicon.of_parts for name in hit.names):
                number = number_at(self.tokens, past_part(self.tokens, hit.end))  # `sashi on the last patch | 4 scales`
            bare = number is not None and number.unit is None and hit.wording in _OF_BODIES  # `deep one`
            if number is not None and not bare and (end := self._number(number, hit.names)) is not None:
                self.about = hit.names
                return end
        if not negated and at < len(self.tokens) and self.tokens[at] in _NONE_BEHIND:
            negated, end = True, at + 1
        else:
            end = hit.end
        if not negated and len(hit.names) == 1 and is_text(traits[hit.names[0]].kind):
            words = self._as_written(hit.end)
            if words and not _NO_LABELS & set(self.tokens[hit.end :]) and self.tokens[hit.end] not in _NO_LABEL_BEGINS:
                self.found.append(Found(hit.names[0], words, hit.wording))
                return len(self.tokens)
            return None
        said = [
            (name, said)
            for name in hit.names
            if (said := (none_of if negated else noted_at_least)(traits[name].kind)) is not None
        ]
        if not negated and self.tokens[end : end + 2] == ("or", "2"):
            said, end = [(name, Span(1.0, 2.0)) for name, _ in said if isinstance(traits[name].kind, Count)], end + 2
        elif (not negated and self.tokens[end : end + 1] in _ALL_OVER) or self.tokens[end : end + 2] in _ALL_OVER:
            # `specks everywhere` are more than two.
            said = [(name, Span(3.0, each.high) if isinstance(each, Span) else each) for name, each in said]
        self.found += [Found(name, each, hit.wording) for name, each in said]
        self.bare = -1 if negated else end
        if said and not negated:
            return self.lexicon.behind_a_fault(self.tokens, end, [Stated(name, each) for name, each in said])
        return end if said else None

    def _as_written(self, at: int) -> str:
        """The words from a place on as they stand in the remark, so that a label is the one that a sheet has: `A`, `B-2`."""
        while at < len(self.tokens) and self.tokens[at] in SKIPPED and len(self.tokens[at]) > 1:
            at += 1
        tail = self.tokens[at:]
        words = plain(plain_numbers(self.shown)).split()
        for start in range(len(words)):
            for end in range(len(words), start, -1):
                written = " ".join(words[start:end]).strip("#:.()'\"")
                if tail and tokens_of(written) == tail and written.casefold() not in NUMBERS:
                    return written
        return " ".join(tail)

    def _negated(self, hit: Hit, at: int) -> int | None:
        """`no` before a phrase: where its opposite is one reading."""
        if hit.means is None or not hit.means.stated:
            return None
        if hit.means.denied:
            self.found += [Found(each.trait, each.said, f"no {hit.wording}") for each in hit.means.denied]
            return hit.end
        one = self.tokens[at] in _ONE
        for stated in hit.means.stated:
            kind = self.lexicon.traits[stated.trait].kind
            opposite = self._opposite(kind, stated.said)
            if opposite is None and self.negation == "not" and isinstance(kind, Scale) and (one or not hit.whole):
                opposite = opposite_of(kind, stated.said)
            if opposite is None and self.negation == "no" and _PLACED.isdisjoint(self.tokens[at : hit.end]):
                opposite = _without_the_worst(self.lexicon.traits[stated.trait], stated.said)
                self.spared = opposite is not None
            if opposite is None:
                return None
            self.found.append(Found(stated.trait, opposite, f"no {hit.wording}"))
        return hit.end

    def _opposite(self, kind: Kind, said: Said) -> Said | None:
        match kind, said:
            case YesNo(), int(bits) if bits in {NO, YES}:
                return NO + YES - bits
            case Count(high), Span(low, most) if low >= 1 and (low, most) in {(1.0, 1.0), (1.0, float(high))}:
                return Span(0.0, 0.0)
            case Scale(steps), int(bits) if "none" in steps:
                some = 1 << steps.index("none") << 1
                return none_of(kind) if bits & some else opposite_of(kind, said)  # `no hood` may be a smaller patch
            case Places(), PlaceSet(sure, possible) if sure.bit_count() == 1 and sure != possible:
                free = possible & ~sure
                return PlaceSet(0, free, 0, free.bit_count())
            case Places(), PlaceSet(0, _, 1, _):
                return PlaceSet.exactly(0)
            case _:
                return None


def _without_the_worst(trait: Trait, said: Said) -> Said | None:
    """What `no` before a fault says, where the fault is the worst that a trait can be: `no bent back`, `no cloudy eyes`."""
    if trait.better is not Better.MORE or not isinstance(trait.kind, Scale) or not isinstance(said, int):
        return None
    every = (1 << len(trait.kind.steps)) - 1
    is_worst = said & 1 and not said & (said + 1)
    return every & ~said if is_worst and said.bit_count() * 2 <= len(trait.kind.steps) else None
