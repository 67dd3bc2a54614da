"""Plain sentences in a rule file (`no bent fish`, `body is bent`): the line that says so in the language.

The phrases of the vocabulary, by which notes are read, tell which trait a sentence speaks of. A line is offered only where
the file has fewer problems with it than without, so that what is offered reads.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from itertools import chain, count
from pathlib import Path

from attrs import evolve

from koirules.language import statements as st
from koirules.language.diagnose.mending import edited
from koirules.language.parse.cleaning import without_remark
from koirules.language.parse.reader import Read, read_text
from koirules.language.syntax import Word
from koirules.loading.bases import Link, Shelf
from koirules.notes.reader import NotesReader
from koirules.notes.remarks import Sort
from koirules.problems import Place, Problem, reading, sentences
from koirules.standard.checked import Checked
from koirules.values import define
from koirules.vocabulary.conditions import condition_of, opposite_of
from koirules.vocabulary.kinds import Choice, Scale, words_of
from koirules.vocabulary.readings import Reading, step_bits
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.spoken import said
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.wordings import NUMBERS
from koirules.vocabulary.words import RESERVED, is_name

MOST_READ = 24
"""So many sentences of a file are read; more of them are a letter, and no rule file."""

_MOST_GUESSED = 3
"""In a sentence of so many words that say something, one of them by itself may tell which trait is meant."""


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


_COLOURS = _words("red white black yellow orange blue")
_UNWANTED = _words(
    "no not never without avoid reject cull don't doesn't mustn't shouldn't cannot can't refuse remove discard sell drop "
    "bad out exclude kill unwanted"
)
_WANTING = _words(
    "i we you my our they it must should shall has have having want wants like likes prefer need needs keep take be is are "
    "only always every each all any a an the fish koi with that which who do does to please good please for of this those "
    "these there best quality go goes come comes "
    "stay stays get gets us wanted allowed accepted kept taken we're i'm"
)
_HOW_MANY = r"(?P<many>[0-9]+|" + "|".join(NUMBERS) + ")"
_BEST = re.compile(
    rf"(?:(?:keep|pick|take|choose|select|only|those|the|my|our)\s+)*(?:best|top|first)\s+{_HOW_MANY}(?:\s+(?:fish|koi|of them))?"
    r"(?:\s+(?:for|into|to|in|from)\s.*)?"
)
_MANY_BEST = re.compile(
    rf"(?:keep|pick|take|choose|select)\s+(?:the\s+)?{_HOW_MANY}\s+best(?:\s+(?:fish|koi))?"
    r"(?:\s+(?:for|into|to|in|from)\s.*)?"
)
_GRADE_LINE = re.compile(r"^\s*grade\s+(\w+)", re.MULTILINE)
_REST = re.compile(
    r"(?:(?P<verb>[a-z]\w*)\s+)?(?:the\s+rest|all\s+(?:the\s+)?others?|everything\s+else|the\s+others?|all\s+else)"
    r"(?:\s+(?:(?:is|are|go(?:es)?\s+to|to)\s+)?(?P<grade>[a-z]\w*))?"
)
_WITH_GRADE = re.compile(
    r"keep\s+(?:(?:those|the|all|every|fish|only)\s+)*with\s+grade\s+(?:of\s+|is\s+|=\s*)?(?P<grade>\w+)"
)
_CLAUSE_CODES = frozenset(
    ("unknown-name", "unknown-step", "misspelt-word", "name-in-parts", "not-needed", "missing-word")
)
_HEADER_CODES = frozenset(("unexpected-word", "unknown-variety", "sign-for-word"))
_POINTS = re.compile(r'\s*points\s+(?P<words>"?[^\W\d][^:,"]*"?)\s*:\s*(?P<rows>.+)')
_ROWS = re.compile(r"([^\W\d]\w*)\s*(?:gives\s+|=\s*|:\s*)?([0-9]+)(?!\w)")
_VARIETY = re.compile(
    r"(?<!\w)variety\s+([^\W\d][\w-]*(?:[ ]+(?!(?:stage|for|valid|based|note|edition)(?!\w))[\w-]+)*)"
)
_OPENING = frozenset(("if", "and", "or", "except", "not", "means", "("))
_CLAUSE = re.compile(r'"[^"]*"|(?<!\w)(?:if|and|or|except|not|means|say)(?!\w)|[(:,)]|$')


@define
class _Sentences:
    """The sentences of a file while they are read.

    around: what stands before and behind its text where that is tried. worst: its last grade. readable: the names that a
    condition of it can read. taken: those and all other names that its statements have.
    """

    read: Read
    shelf: Shelf
    folder: Path | None
    chain: tuple[Link, ...]
    checked: Checked
    around: tuple[str, str]
    worst: str
    readable: frozenset[str]
    taken: set[str]

    def meant(self, problem: Problem) -> Problem | None:
        """The problem of a sentence with the line that says so; None where there is none that reads."""
        site = problem.site
        if not isinstance(site, Place) or site.file != self.read.rules.file:
            return None
        line = self.read.rules.text.split("\n")[site.line - 1]
        if problem.code == "unknown-head":
            sentence = without_remark(line).strip().rstrip(".!")
            place = Place(site.file, site.line, 1, site.line, len(without_remark(line).rstrip()) + 1)
            for rule in self._rules(sentence):
                told = sentences.sentence_for_a_rule(place, sentence, rule)
                if self._reads(told):
                    self.taken.add(rule.split()[1])
                    return told
            return self._rest(place, sentence)
        if problem.code in _HEADER_CODES:
            return self._variety(site, without_remark(line)) or self._points(site, without_remark(line))
        if problem.code == "name-in-parts" and problem.edit is not None and problem.edit.text in self.readable:
            return None  # a name that the page gives comes before a trait that the same words describe
        clause = _clause_at(without_remark(line), site.column - 1)
        if clause is None:
            return None
        start, words = clause
        said = self._said(words)
        condition = None if said is None else condition_of(*said)
        if said is not None and {*words.split()} & self.readable - (
            {said[0].name} if problem.code == "unknown-step" else {""}
        ):
            return None  # it names what there is, and something beside it is wrong
        if condition is None or condition == words:
            return None
        if problem.edit is not None and problem.edit.text in condition.split():
            return None  # its own mend is the same, and smaller
        told = sentences.words_for_a_condition(
            Place(site.file, site.line, start + 1, site.line, start + len(words) + 1), words, condition
        )
        return told if self._reads(told) else None

    def _variety(self, site: Place, line: str) -> Problem | None:
        """The problem of a variety in the words of every day: `variety Taisho Sanke`."""
        found = _VARIETY.search(line)
        named = None if found is None else said(found.group(1), self.shelf.varieties)
        if found is None or named is None or not found.start(1) <= site.column - 1 < found.end(1):
            return None
        meant = f"{named.variety} with {_listed(sorted(named.skins))}" if named.skins else named.variety
        place = Place(site.file, site.line, found.start(1) + 1, site.line, found.end(1) + 1)
        told = sentences.in_other_words(place, found.group(1), meant)
        # What the variety lacks that the file reads shows only then.
        return told if self._reads(told, by=0) else None

    def _points(self, site: Place, line: str) -> Problem | None:
        """The problem of a criterion without what it reads: `points white: snow 10, cream 4`."""
        found, reader = _POINTS.fullmatch(line.rstrip()), self.reader()
        if found is None or reader is None:
            return None
        traits = reader.rules.traits
        words = found["words"].strip().strip('"')
        rows = [(key.strip(), points) for key, points in _ROWS.findall(found["rows"])]
        named = [words] if words in traits else reader.called(words)
        fits = [one for one in named if all(key in words_of(traits[one].kind) for key, _ in rows)]
        if not rows or len(fits) != 1:
            return None
        name = words if is_name(words) and words not in self.taken else self._name(words)
        table = ", ".join(f"{key} gives {points}" for key, points in rows)
        begin = len(line) - len(line.lstrip())
        place = Place(site.file, site.line, begin + 1, site.line, len(line.rstrip()) + 1)
        told = sentences.criterion_for(place, words, f'points {name} "{words}" by {fits[0]}: {table}')
        return told if self._reads(told, by=0) else None

    def _reads(self, told: Problem, by: int = 1) -> bool:
        """Whether the file has fewer problems once a mend is carried out, by so many at least."""
        before, behind = self.around
        down = before.count("\n")
        text = before + self.read.rules.text + behind
        if told.edit is None:
            return False
        place = told.edit.place
        moved = evolve(told.edit, place=evolve(place, line=place.line + down, end_line=place.end_line + down))
        counts = []
        for tried in (text, edited(text, [moved])):
            checked = self.shelf.checked(read_text(tried, self.read.rules.file), self.folder, self.chain)
            counts.append(len(checked.problems))
        return counts[1] <= counts[0] - by

    def _rules(self, sentence: str) -> Iterator[str]:
        """The lines that may say what a sentence says, the likeliest first."""
        words = " ".join(sentence.casefold().split())
        many = _best(words)
        if many is not None:
            good = self._good_grade()
            kept = f"keep those with grade {good} " if good else ""
            yield f'round {self._name("best")} "the best {many}" {kept}pick {many} by highest score'
            return
        graded = _WITH_GRADE.fullmatch(words)
        if graded is not None:
            yield f'round {self._name("kept")} "kept" keep those with grade is {graded["grade"]}'
        if sentence.split(maxsplit=1)[0] in {"keep", "pick"}:
            yield f'round {self._name("kept")} "kept" {sentence}'
        tokens = re.findall(r"[\w'’.%-]+", words.replace("’", "'"))
        core = [token for token in tokens if token not in _UNWANTED and token not in _WANTING]
        if not core:
            return
        unwanted = sum(token in _UNWANTED for token in tokens) % 2 == 1  # `cull fish without red` wants red
        limit = f"no better than {self.worst}"
        title = sentence.replace('"', "")
        said = self._said(" ".join(core))
        if said is not None:
            condition = condition_of(*said, widened=True) if unwanted else opposite_of(*said)
        elif (said := self._said(f"no {' '.join(core)}")) is not None:
            condition = opposite_of(*said) if unwanted else condition_of(*said)
        elif len(core) <= _MOST_GUESSED and (said := self._by_a_word(core)) is not None:
            condition = condition_of(*said, widened=True) if unwanted else opposite_of(*said)
        else:
            condition = None
        if condition is not None:
            name = "_".join([*([] if unwanted else ["not"]), *core[:3]])
            yield f'fault {self._name(name)} "{title}" if {condition}: {limit}'

    def _rest(self, place: Place, sentence: str) -> Problem | None:
        """The problem of a sentence such as `sell the rest`, which the last grade says."""
        grade = _grade_of_the_rest(sentence)
        if grade is None:
            return None
        last = next((one for one in self.grades() if one.condition is None), None)
        if last is not None:
            return sentences.rest_is_said(place, sentence, last.name.text)
        return sentences.sentence_for_a_rule(place, sentence, f"grade {grade} otherwise")

    def _said(self, words: str) -> tuple[Trait, Reading] | None:
        """The one trait that words speak of, and how it is; None where they are not understood, or say more."""
        reader = self.reader()
        remark = None if reader is None else reader.remarks.read(words, [])
        if reader is None or remark is None or remark.sort is not Sort.TRAITS or len(remark.found) != 1:
            return None
        (found,) = remark.found
        if found.said is None or found.hedged:
            return None
        return reader.rules.traits[found.trait], found.said

    def _by_a_word(self, words: Sequence[str]) -> tuple[Trait, Reading] | None:
        """The one trait that has one of the words as its own, and that word; None where none has it, or several.

        Of several it is the one whose title has another of the words.
        """
        reader = self.reader()
        traits = () if reader is None else reader.rules.traits.values()
        found = [
            (trait, word)
            for word in words
            if word not in _COLOURS
            for trait in traits
            if isinstance(trait.kind, Scale | Choice) and word in words_of(trait.kind)
        ]
        if len(found) > 1:
            found = [(trait, word) for trait, word in found if {*re.findall(r"\w+", trait.title)} & {*words} - {word}]
        if len(found) != 1:
            return None
        ((trait, word),) = found
        assert isinstance(trait.kind, Scale | Choice)  # noqa: S101 - none else was found
        return trait, step_bits(trait.kind, [word])

    def _name(self, wanted: str) -> str:
        """A name that nothing of the file has yet."""
        name = re.sub(r"\W+", "_", wanted).strip("_")
        name = name if is_name(name) else "rule"
        numbers = (f"{name}_{number}" for number in count(2))
        return next(one for one in chain((name,), numbers) if one not in self.taken and one not in RESERVED)

    def _good_grade(self) -> str:
        """What asks a fish to be better than the worst: `is keep`, `at least hold`; "" where there is one grade."""
        names = [one.name.text for one in self.grades()]
        if len(names) < 2:
            return ""
        return f"is {names[0]}" if len(names) == 2 else f"at least {names[-2]}"

    def header(self) -> st.Header | None:
        """The header of the file."""
        return next((one for one in self.read.rules.statements if isinstance(one, st.Header)), None)

    def reader(self) -> NotesReader | None:
        """What reads notes of the variety of the file; of kohaku, which a first header names, where it has no header."""
        header = self.header()
        if header is None:
            spoken = "variety kohaku"
        elif header.any_variety is not None:
            spoken = "any variety"
        else:
            spoken = "variety " + _listed([word.text for word in header.varieties])
            spoken += " with " + _listed([word.text for word in header.skins]) if header.skins else ""
        return _reader(spoken, self.shelf.varieties)

    def grades(self) -> list[st.Grade]:
        """The grades of the file and of its bases, best first."""
        return _grades(self.read, self.checked)


def _listed(names: Sequence[str]) -> str:
    return names[0] if len(names) == 1 else f"({', '.join(names)})"


@lru_cache(maxsize=8)
def _reader(spoken: str, varieties: Varieties) -> NotesReader | None:
    text = f'standard "sentences"\n  edition 1\n  {spoken}\ngrade last otherwise\n'
    rules = Shelf.of(None, varieties, {}).checked(read_text(text, "sentences"), None).rules
    return None if rules is None else NotesReader.of(rules)


def with_rules_meant(
    read: Read, shelf: Shelf, folder: Path | None, chain: tuple[Link, ...], checked: Checked
) -> Checked:
    """What was checked, its problems of plain sentences with the lines that say so in the language."""
    found = [one for one in checked.problems if _may_be_said(one)]
    if not found or len(found) > MOST_READ:
        return checked
    known = checked.known
    readable = frozenset[str]() if known is None else frozenset((*known.traits, *known.settings, *known.terms))
    named = () if known is None else (getattr(one, "name", None) for one in known.source.statements)
    worst = _worst(read, checked)
    taken = {worst, *readable, *(one.text for one in named if isinstance(one, Word))}
    sentences_of = _Sentences(read, shelf, folder, chain, checked, _standing(checked, worst), worst, readable, taken)
    better: dict[Problem, Problem] = {}
    for problem in found:
        meant = sentences_of.meant(problem)
        if meant is not None:
            better[problem] = meant
    if not better:
        return checked
    told = _in_order([better.get(one, one) for one in checked.problems], read.rules.file)
    return evolve(checked, problems=tuple(_listing_once(told)))


def _in_order(problems: Sequence[Problem], file: str) -> Iterator[Problem]:
    """Problems, those of a file by their places: a line that is said as a whole begins before its words."""
    places = [one.site if isinstance(one.site, Place) and one.site.file == file else None for one in problems]
    own = [(place.line, place.column, at) for at, place in enumerate(places) if place is not None]
    ordered = iter(sorted(own))
    for at, place in enumerate(places):
        yield problems[at if place is None else next(ordered)[2]]


def _may_be_said(problem: Problem) -> bool:
    """Whether a problem may stand where somebody wrote a sentence."""
    if not isinstance(problem.site, Place) or problem.site.line != problem.site.end_line:
        return False
    if problem.code == "unknown-head":
        return problem.edit is None and problem.cause[1].isalpha()
    return problem.code in _CLAUSE_CODES or (problem.code in _HEADER_CODES and problem.edit is None)


def _grades(read: Read, checked: Checked) -> list[st.Grade]:
    source = read.rules if checked.known is None else checked.known.source
    return [one for one in source.statements if isinstance(one, st.Grade)]


def _worst(read: Read, checked: Checked) -> str:
    """The last grade of a file; where it has none, the one that it says of the rest, or what the problem of that offers."""
    grades = _grades(read, checked)
    if grades and grades[-1].condition is None:
        return grades[-1].name.text
    written = [found[1] for found in _GRADE_LINE.finditer(read.rules.text) if is_name(found[1])]
    if written:
        return written[-1]  # also of a line that cannot be read as it stands
    said = (_grade_of_the_rest(line.strip().rstrip(".!")) for line in read.rules.text.split("\n"))
    return next((grade for grade in said if grade is not None), "last")


def _grade_of_the_rest(sentence: str) -> str | None:
    """The grade that a sentence gives to the rest of the fish; None where it says no such thing."""
    found = _REST.fullmatch(" ".join(sentence.casefold().split()))
    grade = None if found is None else (found["grade"] or found["verb"])
    grade = None if grade is None else {"sold": "sell", "culled": "cull", "kept": "keep"}.get(grade, grade)
    return grade if grade is not None and is_name(grade) and grade not in RESERVED else None


def _standing(checked: Checked, worst: str) -> tuple[str, str]:
    """What must stand before and behind a text for its other parts to be looked at: a header, a last grade."""
    codes = {one.code for one in checked.problems}
    before = 'standard "sentences"\n  edition 1\n  variety kohaku\n' if "header-first" in codes else ""
    return before, f"\ngrade {worst} otherwise\n" if codes & {"no-otherwise", "no-grades"} else ""


def _listing_once(problems: Iterable[Problem]) -> Iterator[Problem]:
    """Problems, the first line that begins no statement with all words that do, wherever it stands now."""
    listed = False
    for problem in problems:
        if problem.code == "unknown-head" and problem.edit is None and isinstance(problem.site, Place):
            told = reading.unknown_head(problem.site, problem.cause.split('"')[1], None)
            if reading.names_head_words(told) or reading.is_another_unknown_head(problem):
                yield reading.another_unknown_head(problem) if listed else told
                listed = True
                continue
        yield problem


def _best(words: str) -> int | None:
    """How many of the best a sentence asks for; None where it asks for no such thing."""
    found = _BEST.fullmatch(words) or _MANY_BEST.fullmatch(words)
    if found is None:
        return None
    many = found["many"]
    number = int(many) if many.isdigit() else NUMBERS.index(many)
    return number or None


def _clause_at(line: str, at: int) -> tuple[int, str] | None:
    """Where the condition begins that stands around a place of a line, and its words; None where none does."""
    start = end = None
    for found in _CLAUSE.finditer(line):
        if found.end() <= at and found.group().strip() in _OPENING:
            start = found.end()
        elif found.start() > at and start is not None:
            end = found.start()
            break
    if start is None or end is None:
        return None
    words = line[start:end]
    begin = start + len(words) - len(words.lstrip())
    words = words.strip()
    return (begin, words) if re.fullmatch(r"[^\W\d]\w*(?:[ '-]+\w+)*", words) else None
