"""One remark: what its words say of a fish, by which phrases, and what could not be understood."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from enum import Enum

from attrs import evolve, field

from koirules.notes.comparisons import is_comparison
from koirules.notes.corrections import CORRECTIONS, CORRECTS_AHEAD, is_correction
from koirules.notes.digressions import is_digression
from koirules.notes.ends import Bound, praised, without_ends
from koirules.notes.extents import Topic, along
from koirules.notes.forecasts import is_forecast, may_become
from koirules.notes.found import OF_THE_FISH, Found, hedge
from koirules.notes.hedges import ASIDES, HEDGES, OPINIONS, SOFTENERS, plainly_told, softened, without
from koirules.notes.lexicon import Lexicon
from koirules.notes.numbers import in_cm, is_near, number_at, plain_numbers
from koirules.notes.retelling import retold
from koirules.notes.scan import GENERAL, NEGATIONS, WHERE, Scan, told
from koirules.notes.talk import is_aside, is_of_people, is_small_talk, is_talk
from koirules.notes.tree import SKIPPED, compared
from koirules.notes.verdicts import WHOLE_VERDICTS, Verdicts, verdict_beside, verdict_in_words, verdict_of
from koirules.notes.wishes import wished
from koirules.standard.check.phrasing import meet
from koirules.standard.parts import Said
from koirules.values import frozen
from koirules.vocabulary.kinds import Choice, Count, Number, Places, Scale
from koirules.vocabulary.wordings import tokens_of


class Sort(Enum):
    """What a remark is."""

    TRAITS = "traits"
    NOTHING = "nothing"
    VERDICT = "verdict"
    CORRECTION = "correction"
    NO = "no"
    FORECAST = "forecast"
    COMPARISON = "comparison"
    DETAIL = "detail"
    UNKNOWN = "not understood"


@frozen
class Remark:
    """A remark with what was understood.

    named: the traits that one which was not understood speaks of. about: those that its last name may stand for.
    instead: those of which it takes back what was said before. also: what stands beside what it says of traits.
    """

    text: str
    sort: Sort
    found: tuple[Found, ...] = ()
    verdict: str = ""
    named: tuple[str, ...] = ()
    about: tuple[str, ...] = ()
    instead: tuple[str, ...] = ()
    also: Sort | None = None

    @property
    def is_detail(self) -> bool:
        """Whether a remark says of a part how large it is or where it lies, and no trait holds that."""
        is_empty = self.sort is Sort.TRAITS and not self.found and not self.verdict and self.also is None
        return self.sort is Sort.DETAIL or is_empty


_ASKED = frozenset({("that",), ("there",), ("it",), ("this",), ("those",), ("these",)})
_NONE_OF_THEM = ("none", "of", "them")
_HAVE = (("has",), ("have",), ("show",))
"""`none of them has any red in the tail`: no red in the tail."""
_WOUNDS = frozenset(tokens_of("wound sore ulcer hole raw cut"))
_MINE = (("back",), ("head",), ("eye",), ("hand",), ("neck",), ("shoulder",), ("finger",), ("belly",), ("mouth",))
"""`my back is bent` is said of nobody in the net."""
_DRAWN = (("eye", "goe"), ("eye", "alway"), ("eye", "keep"), ("eye", "come"), ("eye", "jump"))
"""`my eye goes straight to her` is said of the fish."""
_NOT_YET = re.compile(
    r"(?:and |now |just )*(?:show|give) me |(?:\w+ )?(?:take|took|have|had|having|taking) (?:a |another |1 )?(?:\w+ )?look |"
    r"(?:to )?(?:watch|check|look|mind) (?:\w+ )?(?:out )?for |(?:\w+ )*see (?:the |her |his )?skin through"
)
"""`watch it for hikui` says of none that it is there."""
_AFTER_OUT = (("of",), ("in",), ("on",), ("to",), ("at",), ("there",), ("cold",), ("from",))
_THEM = (("them",), ("these",), ("those",))
_MANY = frozenset(
    tokens_of("a lot lots many some few half several quite more too good bunch couple 2 3 4 5 and but one")
)
_DO = (("have",), ("are",), ("is",), ("has",), ("show",), ("look",), ("got",), ("with",), ("had",), ("get",), ("run",))
_RED_OR_BLOODY = frozenset(
    words
    for part in ("eye", "belly", "gill", "vent", "stomach")
    for red in ("red", "pink")
    for words in ((red, part), (part, red))
)
_MORE_TO_COME = frozenset({"nice", "good", "lovely"})
_CLAUSES = frozenset({"but", "so", "though", "and", "while", "whereas", "because"})
_WHO_WILL = frozenset({"that", "which"})
_WILL = frozenset({"will", "should", "may", "might", "could"})
"""`a split in the tail | that will grow back`."""
_IN_CLAUSES = frozenset({Sort.TRAITS, Sort.NOTHING, Sort.FORECAST, Sort.COMPARISON})
_MOST_REMEMBERED = 10_000

LONGEST = 500
"""Of so many characters at most is a remark that is understood: nobody says more in one breath."""


@frozen(slots=False)
class RemarkReader:
    """Reads remarks by a lexicon. verdicts: those of its page."""

    lexicon: Lexicon
    verdicts: Verdicts
    corrections: frozenset[tuple[str, ...]] = CORRECTIONS
    _read: dict[tuple[str, bool], Remark] = field(factory=dict, init=False, repr=False, eq=False)
    _along: dict[tuple[tuple[str, ...], Topic, int | None], tuple[Found, ...] | None] = field(
        factory=dict, init=False, repr=False, eq=False
    )

    @classmethod
    def of(cls, lexicon: Lexicon, grades: Mapping[str, str], corrections: Iterable[str] = ()) -> RemarkReader:
        """The reader of a standard. grades: each grade's name by its name and its title. corrections: those of the page."""
        return cls(lexicon, Verdicts.of(grades), CORRECTIONS | {tokens_of(words) for words in corrections})

    def read(self, text: str, before: Sequence[Remark] = ()) -> Remark:
        """A remark. before: those of the same fish and line that stand before it, the last one last."""
        key = (text, bool(before) and before[-1].sort is Sort.COMPARISON)
        found = self._read.get(key)
        if found is None:
            if len(self._read) >= _MOST_REMEMBERED:
                self._read.clear()
            found = self._read_anew(text, before)
            if found.found and _is_of_something_else(found):
                found = Remark(found.text, Sort.UNKNOWN, named=tuple(one.trait for one in found.found))
            self._read[key] = found
        return found

    def _read_anew(self, text: str, before: Sequence[Remark], *, plain: bool = False) -> Remark:
        """plain: whether a remark is a clause that another one is told in, and is told in none itself."""
        shown = text.strip()
        if len(shown) > LONGEST:
            return Remark(shown, Sort.UNKNOWN)
        tokens = tokens_of(plain_numbers(in_cm(shown)))
        if tokens[:3] == _NONE_OF_THEM and tokens[3:4] in _HAVE and tokens[5:]:
            tokens = ("no", *tokens[4 + (tokens[4:5] == ("any",)) :])
        if not tokens:
            return Remark(shown, Sort.NOTHING)
        at = 1 + (tokens[1:2] == ("not",))
        if tokens[0] in {"is", "are"} and tokens[at : at + 1] in _ASKED:
            # "is that a speck" and "isn't that a speck" are said by somebody who is not sure.
            asked = self.read(" ".join(("maybe", tokens[0], *tokens[at:])), before)
            return Remark(shown, Sort.UNKNOWN) if asked.sort is Sort.VERDICT else evolve(asked, text=shown)
        if tokens[:3] in CORRECTS_AHEAD and tokens[0] == "no" and tokens[3:]:
            # "no that's a scale missing" answers what was said before it, and denies nothing.
            return evolve(self.read(" ".join(tokens[1:]), before), text=shown)
        tokens = plainly_told(tokens)
        if shown.endswith(("?", "？")):
            return evolve(self.read(f"maybe {shown.rstrip('?？ ')}", before), text=shown)
        if tokens in self.corrections:
            return Remark(shown, Sort.CORRECTION)
        verdict = verdict_of(tokens, self.verdicts)
        if verdict is not None:
            return Remark(shown, Sort.VERDICT, verdict=verdict)
        if tokens == ("no",):
            return Remark(shown, Sort.NO)
        if set(tokens) <= {"yes"}:
            return Remark(shown, Sort.UNKNOWN)  # whether the fish stays, or what was asked is so
        if (
            tokens[:2] == ("sick", "of")
            or (tokens[:1] == ("my",) and tokens[1:2] in _MINE and tokens[1:3] not in _DRAWN)
        ) and not self._is_own(tokens):
            return Remark(shown, Sort.NOTHING)
        if (
            _NOT_YET.match(" ".join(tokens))
            or self._of_many_fish(tokens)
            or tokens.count("here") > 1
            or self._is_blood(tokens)
        ):
            if verdict_in_words(tokens, self.verdicts) == "unsure":
                return Remark(shown, Sort.VERDICT, verdict="unsure")  # `give me another look at that in a week`
            return Remark(shown, Sort.UNKNOWN, named=Scan(self.lexicon, tokens, False, shown).named())
        bare = without(tokens, ASIDES)[0]
        for words in dict.fromkeys((tokens, bare or tokens)):
            whole = self._whole(words)
            if whole is not None:
                about = self._named_at_the_head(words)
                return Remark(shown, Sort.TRAITS if whole else Sort.NOTHING, whole, about=about)
        parted = self._with_verdict(shown, tokens)
        if parted is not None:
            return parted
        if not bare or self.lexicon.subject.issuperset(tokens) or is_talk(tokens, self._says):
            return Remark(shown, Sort.NOTHING)
        return self._in_words(shown, tokens, before, plain=plain)

    def others(self, text: str) -> Iterator[Remark]:
        """What else a remark may say by itself, by what was spoken of before: `like a carrot` of a colour, or of a body."""
        tokens, hedged = without(without(tokens_of(plain_numbers(text)), ASIDES)[0], HEDGES)
        for means in self.lexicon.by_itself(tokens) if tokens else ():
            found = told(means, means.wording)
            yield Remark(
                text.strip(), Sort.TRAITS, tuple(self.hedged(each, hedged=True) for each in found) if hedged else found
            )

    def _of_many_fish(self, tokens: tuple[str, ...]) -> bool:
        """Whether a remark is of some fish of several, and nobody can tell which: `a lot of them have red lips`."""
        start = next((at for at in range(len(tokens)) if tokens[at] == "of" and tokens[at + 1 : at + 2] in _THEM), None)
        return start is not None and set(tokens[:start]) <= _MANY and tokens[start + 2 : start + 3] in _DO

    def _is_blood(self, tokens: tuple[str, ...]) -> bool:
        """Whether red may be of the pattern or of blood: `red eyes`. What the page itself says goes before."""
        words = tuple(token for token in tokens if token not in SKIPPED)
        return words in _RED_OR_BLOODY and not self._is_own(tokens)

    def _is_own(self, tokens: tuple[str, ...]) -> bool:
        """Whether the page itself has a phrase that a remark begins with."""
        return any(hit.means is not None and hit.means.own for hit in self.lexicon.hits(tokens, 0))

    def _in_words(self, shown: str, tokens: tuple[str, ...], before: Sequence[Remark], *, plain: bool) -> Remark:
        """A remark that is no phrase as a whole."""
        if (wish := wished(tokens)) is not None and (short := self.read(" ".join(wish), before)).sort is Sort.TRAITS:
            return evolve(short, text=shown)
        for verdict, rest in verdict_beside(tokens, self.verdicts):
            beside = self._said(shown, rest, hedged=False)
            if beside.sort is Sort.TRAITS and not beside.verdict:
                return evolve(beside, verdict=verdict)
            if not self.speaks(rest):
                return Remark(shown, Sort.VERDICT, verdict=verdict)
        found = self._plainly(shown, tokens, before)
        decided = None if found.sort in {Sort.TRAITS, Sort.VERDICT} else verdict_in_words(tokens, self.verdicts)
        if decided is not None:
            return Remark(shown, Sort.VERDICT, verdict=decided)
        if found.sort in {Sort.UNKNOWN, Sort.COMPARISON, Sort.FORECAST}:
            found = self._in_clauses(shown, tokens, before) or found
        if found.sort is Sort.UNKNOWN and any(
            each(tokens, lambda: self.speaks(tokens)) for each in (is_aside, is_digression)
        ):
            return Remark(shown, Sort.NOTHING)
        if found.sort is Sort.UNKNOWN and is_correction(tokens):
            return Remark(shown, Sort.CORRECTION)
        if found.sort is Sort.UNKNOWN or (found.sort is Sort.FORECAST and found.also is None and "not" in tokens):
            found = (
                self._within_ends(shown, tokens) or found
            )  # `the mouth won't close however long you watch` is of today
        if found.sort is Sort.UNKNOWN and not plain:
            found = self.along(shown, tokens) or found
        if found.sort is Sort.UNKNOWN:
            again = (self._read_anew(" ".join(words), before, plain=plain) for words in retold(tokens))
            found = next((evolve(each, text=shown) for each in again if each.sort is Sort.TRAITS), found)
        if found.sort is Sort.UNKNOWN and (
            is_small_talk(tokens, lambda: self.speaks(tokens)) or is_of_people(tokens, self.lexicon.knows)
        ):
            return Remark(shown, Sort.NOTHING)
        return found

    def along(
        self, shown: str, tokens: tuple[str, ...], topic: Topic = Topic.OTHER, last: int | None = None
    ) -> Remark | None:
        """What a remark says of where red and white begin and end, or how long a part is; None where it is none of that.

        topic: what the remark before it is about. last: the number of the place that was named last.
        """
        key = (tokens, topic, last)
        if key not in self._along:
            if len(self._along) >= _MOST_REMEMBERED:
                self._along.clear()
            self._along[key] = self._told_along(tokens, topic, last)
        found = self._along[key]
        return None if found is None else Remark(shown, Sort.TRAITS if found else Sort.DETAIL, found)

    def _told_along(self, tokens: tuple[str, ...], topic: Topic, last: int | None) -> tuple[Found, ...] | None:
        bare, hedged = without(tokens, HEDGES)
        for words, unsure in dict.fromkeys(((tokens, False), (bare, hedged))):
            for clauses in along(" ".join(words), topic, last):
                each = [self._read_anew(clause, (), plain=True) for clause in clauses]
                if all(one.sort is Sort.TRAITS and one.found for one in each):
                    found = tuple(self.hedged(one) if unsure else one for one in (f for one in each for f in one.found))
                    found = tuple(dict.fromkeys(evolve(one, phrase=" ".join(tokens)) for one in found))
                    if not _contradicts_itself(found):
                        return found
        return None

    def _within_ends(self, shown: str, tokens: tuple[str, ...]) -> Remark | None:
        """A remark of which all is understood but words at its ends that say nothing: `look at the`, `isn't it`, `all decent`."""
        for words, bound in without_ends(tokens):
            remark = self._core(shown, words)
            if remark is not None and self._is_within(bound, remark):
                return remark
        for words in praised(tokens):
            remark = self._core(shown, words)
            if remark is not None and self._is_within(Bound.CHOICE, remark):
                return remark
        return None

    def _core(self, shown: str, words: tuple[str, ...]) -> Remark | None:
        whole = self._whole(words)
        if whole:
            return Remark(shown, Sort.TRAITS, whole, about=self._named_at_the_head(words))
        if words[0] in _CLAUSES or words[-1] in _CLAUSES:
            return None
        remark = self._plainly(shown, words, ())
        if remark.sort is Sort.UNKNOWN:
            remark = self._in_clauses(shown, words, ()) or remark
        return remark if remark.sort is Sort.TRAITS and remark.found else None

    def _is_within(self, bound: Bound, remark: Remark) -> bool:
        """Whether a remark says no more than it may behind what stood before it."""
        kinds = {Bound.CHOICE: (Choice,), Bound.MEASURE: (Scale, Number, Places)}.get(bound)
        told = (self.lexicon.traits[each.trait].kind for each in remark.found)
        return kinds is None or (
            all(isinstance(kind, kinds) for kind in told) and all(each.said for each in remark.found)
        )

    def _plainly(self, shown: str, tokens: tuple[str, ...], before: Sequence[Remark]) -> Remark:
        compared_before = bool(before) and before[-1].sort is Sort.COMPARISON
        for words in dict.fromkeys((tokens, without(tokens, OPINIONS)[0])):
            if words and is_comparison(words, after=compared_before):
                return Remark(shown, Sort.COMPARISON)
        if is_near(tokens) and (near := self._said(shown, tokens, hedged=False)).sort is Sort.TRAITS:
            return near
        bare, hedged = without(tokens, HEDGES)
        if is_forecast(bare) or may_become(tokens):
            return Remark(shown, Sort.FORECAST)
        if hedged and (told_anyway := verdict_of(bare, self.verdicts)) is not None:
            thought, firm = without(tokens, OPINIONS)
            firm = firm and verdict_of(thought, self.verdicts) is not None
            return Remark(shown, Sort.VERDICT, verdict=told_anyway if firm else "unsure")
        found = self._said(shown, bare, hedged=hedged)
        if found.sort is not Sort.UNKNOWN:
            return found
        shorter = without(bare, ASIDES)[0]
        if shorter and shorter != bare:
            again = self._said(shown, shorter, hedged=hedged)
            if again.sort is Sort.TRAITS:
                return again
        return found

    def _in_clauses(self, shown: str, tokens: tuple[str, ...], before: Sequence[Remark]) -> Remark | None:
        """A remark of two clauses, where each of them is understood and one at least says something of a trait."""
        for at in range(1, len(tokens) - 1):
            joined = tokens[at]
            foretold = joined in _WHO_WILL and tokens[at + 1] in _WILL
            if (joined not in _CLAUSES and not foretold) or (joined == "and" and not NEGATIONS.isdisjoint(tokens[:at])):
                continue
            if joined == "and" and tokens[at - 1] in _MORE_TO_COME:
                continue  # `nice and thick on the body` is one thing
            first = self.read(" ".join(tokens[:at]), before)
            then = self.read(" ".join(tokens[at + (not foretold) :]))
            if foretold and then.sort is not Sort.FORECAST:
                continue
            sorts = {first.sort, then.sort}
            if not sorts <= _IN_CLAUSES or Sort.TRAITS not in sorts or first.verdict or then.verdict:
                continue
            told_of = {one.trait for one in first.found}
            if any(one.after and told_of.isdisjoint(one.after) for one in then.found):
                continue  # `sharp kiwa by and large` says nothing of a size
            if self._is_of_the_first(tokens[:at], tokens[at + 1 :], told_of | {*first.about}, then):
                continue  # `front fins are small and see-through` says nothing of the red
            other = next(iter(sorts - {Sort.TRAITS, Sort.NOTHING}), None)
            if other is not None and (joined == "and" or (first.sort is other and joined != "but")):
                continue  # `will get a sharp kiwa and deep red` foretells both
            if _contradicts_itself((*first.found, *then.found)):
                continue  # `shiny on the back but dull on the head`
            about = then.about or first.about
            return Remark(
                shown, Sort.TRAITS, (*first.found, *then.found), about=about, also=other or first.also or then.also
            )
        return None

    def _is_of_the_first(self, first: tuple[str, ...], then: tuple[str, ...], told: set[str], remark: Remark) -> bool:
        """Whether a second clause names nothing, so that it is said of what the first one names."""
        if remark.sort is Sort.FORECAST:
            return False  # `white a bit creamy but that'll clear`
        named, traits = self._named_at_the_head(first), {one.trait for one in remark.found}
        if not named or traits <= OF_THE_FISH >= {one for one in told if one not in named}:
            return False
        return self.lexicon.by_itself(then) is not None and traits.isdisjoint(told | {*named})

    def speaks(self, tokens: tuple[str, ...]) -> bool:
        """Whether any words of a remark are said of some trait."""
        hits = (hit for at in range(len(tokens)) for hit in self.lexicon.hits(tokens, at))
        return any(hit.names or (hit.means is not None and hit.means.stated) for hit in hits)

    def _says(self, tokens: tuple[str, ...]) -> bool:
        """Whether any words of a remark say something of a trait, or name one by more than a word such as `red`."""
        hits = ((at, hit) for at in range(len(tokens)) for hit in self.lexicon.hits(tokens, at))
        return any(
            (hit.means is not None and hit.means.stated) or (hit.names and not {*tokens[at : hit.end]} <= GENERAL)
            for at, hit in hits
        )

    def _with_verdict(self, shown: str, tokens: tuple[str, ...]) -> Remark | None:
        """A remark without commas that ends or begins with a verdict: `sandan sharp kiwa out`."""
        for word, rest in ((tokens[-1:], tokens[:-1]), (tokens[:1], tokens[1:])):
            if rest == tokens[1:] and (word[0] in WHERE or (word[0] == "out" and rest[:1] in _AFTER_OUT)):
                continue  # `in tub 4` says where the fish is, and `in bad shape` how it is
            if word in self.verdicts.words and word not in WHOLE_VERDICTS and word not in HEDGES.each and len(rest) > 1:
                remark = self._said(shown, rest, hedged=False)
                if remark.found and remark.sort is Sort.TRAITS:
                    return evolve(remark, verdict=verdict_of(word, self.verdicts) or "")
        return None

    def _whole(self, tokens: tuple[str, ...]) -> tuple[Found, ...] | None:
        """What a phrase says that is the whole remark, hedges and all; None where there is none."""
        start = 0
        hedged = without(tokens, HEDGES)[1] or without(tokens, SOFTENERS)[1]
        while start < len(tokens) and tokens[start] in SKIPPED:
            start += 1
        for first in dict.fromkeys((0, start)):
            for hit in self.lexicon.hits(tokens, first):
                if hit.means is None:
                    break
                rest = tokens[hit.end :]
                if hedged and compared(tokens) != compared(tokens_of(hit.wording)):
                    continue
                if all(token in SKIPPED for token in rest):
                    return told(hit.means, hit.means.wording)
        return None

    def _named_at_the_head(self, tokens: tuple[str, ...]) -> tuple[str, ...]:
        """The traits that the first name in a phrase may stand for: `front edges` of `front edges half a scale`."""
        return next((hit.names for at in range(len(tokens)) for hit in self.lexicon.hits(tokens, at) if hit.names), ())

    def counted(self, text: str) -> tuple[str, tuple[str, ...]]:
        """What is counted in a remark, as it is called there, and the traits that may be: `a shimi on the shoulder`."""
        tokens = tokens_of(plain_numbers(text))
        for at in range(len(tokens)):
            for hit in self.lexicon.hits(tokens, at):
                if any(isinstance(self.lexicon.traits[name].kind, Count | Places) for name in hit.names):
                    return " ".join(tokens[at : hit.end]), hit.names
        return "", ()

    # ---- Phrases, names and numbers, one after another

    def _said(self, shown: str, tokens: tuple[str, ...], *, hedged: bool) -> Remark:
        tokens, softened = self._softened(tokens)
        scan = Scan(self.lexicon, tokens, hedged or softened, shown)
        if hedged and self._is_scale(tokens):
            return Remark(shown, Sort.UNKNOWN, named=scan.named())  # `belly almost`: as far as there
        if not scan.by_itself() and not scan.run():
            return Remark(shown, Sort.UNKNOWN, named=scan.named())
        found = tuple(scan.found)
        if _contradicts_itself(found):
            return Remark(shown, Sort.UNKNOWN, named=scan.named())
        verdict = "" if scan.verdict is None else scan.verdict
        if hedged or softened:
            found = tuple(self.hedged(each, hedged=hedged) for each in found)
        return Remark(shown, Sort.TRAITS if found else Sort.NOTHING, found, verdict, about=scan.about)

    def _is_scale(self, tokens: tuple[str, ...]) -> bool:
        """Whether tokens are the name of what is more or less so, and nothing else."""
        names = {name for hit in self.lexicon.hits(tokens, 0) if hit.end == len(tokens) for name in hit.names}
        return any(isinstance(self.lexicon.traits[name].kind, Scale) for name in names)

    def hedged(self, found: Found, *, hedged: bool = True) -> Found:
        """What a reading says where somebody is not sure of it, or says that it is only a little so."""
        trait = self.lexicon.traits[found.trait]
        if not hedged and not isinstance(trait.kind, Scale):
            return found  # `a bit to the left` is to the left
        if hedged and found.trait == "health" and not _WOUNDS.isdisjoint(tokens_of(found.phrase)):
            return evolve(found, said=None, hedged=True)  # `maybe a wound`: or a shadow, and the fish is well
        return hedge(found, trait, number_too=not found.hedged)

    def _softened(self, tokens: tuple[str, ...]) -> tuple[tuple[str, ...], bool]:
        """Without words such as `a bit`, which widen what they stand before; amounts and numbers keep theirs."""
        numbers = (number_at(tokens, at) for at in range(len(tokens)))
        if self.lexicon.is_bare(tokens) or is_near(tokens):
            return tokens, False
        if any(
            number is not None and number.more and tokens[number.end - 1] in {"bit", "little", "touch"}
            for number in numbers
        ):
            return tokens, False
        if any(
            hit.means is not None
            for at in range(len(tokens))
            for hit in self.lexicon.hits(tokens, at)
            if _starts(tokens, at)
        ):
            return tokens, False
        return softened(tokens)


_LAID = r"\b(?:fold|folded|flat|down|drop|over|collapse|lie|lay|flop|clamp|clamped)\b"
_AT_REST = r"\bwhen (?:it|she|he) (?:rest|stop|lie|turn|sit|is (?:resting|still|at rest|lying))\b"
"""A sound fish folds its dorsal fin at rest."""
_OF_SOMETHING_ELSE: tuple[tuple[frozenset[str], re.Pattern[str]], ...] = tuple(
    (frozenset(traits.split()), re.compile(form))
    for traits, form in (
        ("hi_on_fins", r"\b(?:red|hi|patch|orange) (?:\w+ )?at (?:the |its |her |his )?(?:tail|rear)\b(?! fin)"),
        ("windows", r"\bhole (?:\w+ ){0,3}(?:eye|gill|cheek|mouth|nose|nostril|lip|fin|belly|vent)\b"),
        ("hi_below_line makibara one_sided", r"\bon (?:this|that) side\b"),
        ("*", r"^(?:(?:oh|and|but|so) )*(?:please|let (?:it|her|him|this)) be\b"),
        (
            "*",
            r"^(?:the|this|that|our) (?:light|lamp|sun|water|net|lid|camera) (?:is|was|on|in|here|need|show|shine)\b",
        ),
        ("*", r"\b(?:on|of|with|in|to) the other (?:1|one|fish|tub|lot|bowl)\b"),
        ("*", r"^(?:all|everything) (?:but|except|bar|save) (?:the|for|her|its|his)\b"),
        ("hi_cover", r"\bwhite (?:after|from there)\b"),
        ("hi_tone", r"\borange (?:goe|going|gone|turning|turned|becoming|getting) red\b"),
        ("hi_cover", r"^(?:\w+ )?short (?:red|hi|beni|pattern)\b"),
        ("hi_thick", r"^(?:red|hi|beni) (?:\w+ )?heavy\Z|^heavy (?:red|hi|beni)\Z"),
        ("dorsal_fin", rf"{_LAID}.*{_AT_REST}|{_AT_REST}.*{_LAID}"),
        (
            "*",
            r"\ban? (?:good|proper|real|show|top|fine) (?:\w+ )?(?:fish|koi|kohaku|tosai) (?:has|need|want|should|must|ought)\b",
        ),
        ("spine back_line", r"\bback clean\b|\bclean back\b|^bad back\b"),
        (
            "windows head_windows shimi_count shimi_places tobihi tobihi_places",
            (
                r"\b(?:was|were|used to be|had)\b.*\b(?:it|that|they|those|1) (?:has |have |is |are )?(?:now |just |since |all )*"
                r"(?:closed|filled|gone|healed|disappeared|vanished|faded|dropped)\b"
            ),
        ),
        ("finish", r"\bsoft (?:an? )?(?!red\b|hi\b|beni\b|colour\b)\w+ (?:red|hi|beni|colour|tone|shade)\b"),
        ("interest", r"\b(?:red|hi|beni|colour) .*\bno life\b"),
        (
            "hi_tone",
            (
                r"\b(?:half|third|quarter|fifth|most|part|bit|rest|all|%) of (?:it|her|him|that|the \w+) "
                r"(?:is|are|in) (?:\w+ )?red\b"
            ),
        ),
        ("size_by_eye", r"^(?:and |but )?(?:then|all|both|each)\b|^there is (?:a |1 )?(?:\w+ )?lump\b"),
        ("kiwa", r"\bstop dead (?:before|at|short|by|near|in front)\b"),
        ("shiroji", r"\bbit of white\b"),
        ("build size_by_eye", r"\b1 (?:after|behind|next|then|before|further|below|above|beside)\b"),
    )
)
"""Words by which some trait is said of a part, of one side or of one of several, and not of what it is said of else."""


def _is_of_something_else(remark: Remark) -> bool:
    text, told = " ".join(tokens_of(remark.text)), {one.trait for one in remark.found}
    return any(
        (traits == {"*"} or not told.isdisjoint(traits)) and form.search(text) for traits, form in _OF_SOMETHING_ELSE
    )


def _contradicts_itself(found: Sequence[Found]) -> bool:
    """Whether words in one remark say of a trait what cannot both be: one of them is said of something else."""
    said: dict[str, Said] = {}
    for one in found:
        if one.said is None:
            continue
        together = meet(said[one.trait], one.said) if one.trait in said else one.said
        if together is None:
            return True
        said[one.trait] = together
    return False


def _starts(tokens: Sequence[str], at: int) -> bool:
    return any(tuple(tokens[at : at + len(words)]) == words for words in SOFTENERS.each)
