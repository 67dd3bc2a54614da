"""Checks what a page states of traits outside of rules: the readings of its phrases."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from decimal import Decimal
from functools import lru_cache

from attrs import evolve

from koirules.language import statements as st
from koirules.language.syntax import Title
from koirules.problems import Cell, Place, Problem, naming, phrasing
from koirules.standard.check.samples import fact_reading
from koirules.standard.parts import Phrase, Said, Stated
from koirules.vocabulary.kinds import Colours, Count, Number, Patches, Places, Scale, words_of
from koirules.vocabulary.nearness import near
from koirules.vocabulary.phrases import Saying, Spoken
from koirules.vocabulary.readings import PlaceSet, Reading, Span, anything, step_bits
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.wordings import MOST_LETTERS, tokens_of

MILLIONTH = Decimal("0.000001")
"""`above` and `below` stop this much of the held unit short of the value."""


def check_phrases(
    statements: Iterable[st.Phrase], traits: Mapping[str, Trait], known: bool, problems: list[Problem]
) -> tuple[Phrase, ...]:
    """The phrases of a file. known: whether the traits are known; else none is missed."""
    found: list[Phrase] = []
    places: dict[tuple[str, ...], tuple[str, Place]] = {}
    for statement in statements:
        wordings = tuple(each for title in statement.wordings for each in wordings_of(title))
        for (_, wording), place in zip(wordings, _places(statement), strict=True):
            _check_wording(wording, place, places, problems)
        stated = check_stated(statement.stated, traits, known, problems, statement.title.text)
        if stated is not None:
            found.append(Phrase(wordings, stated, statement.place, statement.corrects))
    return tuple(found)


@lru_cache(maxsize=4096)
def _parsed(means: str) -> tuple[tuple[st.Stated, ...], tuple[Problem, ...]]:
    from koirules.language.parse.reader import read_text

    read = read_text(f'phrase "x" means {means}\n', "")
    alone = read.rules.statements[0] if len(read.rules.statements) == 1 else None
    if isinstance(alone, st.Phrase) and not read.problems:
        return alone.stated, ()
    return (), tuple(read.problems) or (phrasing.no_single_meaning(Place("", 1, 1, 1, 1)),)


def read_means(
    means: str, traits: Mapping[str, Trait], problems: list[Problem] | None = None
) -> tuple[Stated, ...] | None:
    """What the words behind `means` in a vocabulary say of traits; None, with problems, where they cannot be read."""
    told = [] if problems is None else problems
    stated, unread = _parsed(means)
    told.extend(unread)
    return None if unread else check_stated(stated, traits, True, told, means)


def read_alone(
    trait: str, reading: str, traits: Mapping[str, Trait], problems: list[Problem] | None = None
) -> tuple[Stated, ...] | None:
    """What a reading without the name of its trait says, as `alone` of a `Spoken` has it; else as `read_means`."""
    counts = reading.startswith("count ")
    return read_means(f"count of {trait} {reading[6:]}" if counts else f"{trait} {reading}", traits, problems)


def phrases_left_out(site: Cell | Place, phrases: Mapping[str, str], traits: Mapping[str, Trait]) -> Iterator[Problem]:
    """A warning for each phrase of a vocabulary that cannot be read. site: whose they are."""
    for said, means in phrases.items():
        problems: list[Problem] = []
        if read_means(means, traits, problems) is None:
            yield phrasing.phrase_left_out(site, said, means, problems[0])


def sayings_left_out(site: Cell | Place, sayings: Iterable[Saying], traits: Mapping[str, Trait]) -> Iterator[Problem]:
    """The same for tables of sayings. They may speak of traits that a variety lacks: then nobody says so of its fish."""
    for saying in sayings:
        wrong: list[Problem] = []
        found: list[Problem]
        if not isinstance(saying, Spoken):
            read_means(saying.means, traits, wrong)
            tried = [(saying.wordings, saying.means, wrong)]
        elif saying.trait in traits:
            tried = [(saying.trait, saying.implies, wrong)]
            if saying.implies:
                read_means(saying.implies, traits, wrong)
            words = words_of(traits[saying.trait].kind)
            readings = [each for each in saying.levels.items() if each[0] not in words]
            for reading, wordings in (*readings, *saying.alone.items()):
                read_alone(saying.trait, reading, traits, found := [])
                tried.append((wordings, f"{saying.trait} {reading}", found))
        else:
            continue
        for said, means, found in tried:
            if any(problem.code != "unknown-name" for problem in found):
                yield phrasing.phrase_left_out(site, said, means, found[0])


def wordings_of(title: Title) -> tuple[tuple[str, str], ...]:
    """A wording with its further languages, each with the code of its language."""
    return (("", title.text), *sorted(title.others.items()))


def _places(statement: st.Phrase) -> list[Place]:
    return [title.place for title in statement.wordings for _ in wordings_of(title)]


def _check_wording(
    wording: str, place: Place, places: dict[tuple[str, ...], tuple[str, Place]], problems: list[Problem]
) -> None:
    if len(wording) > MOST_LETTERS:
        problems.append(phrasing.long_phrase(place, MOST_LETTERS))
        return
    tokens = tokens_of(wording)
    if not tokens:
        problems.append(phrasing.empty_phrase(place))
    elif tokens in places:
        problems.append(phrasing.same_phrase(place, wording, *places[tokens]))
    else:
        places[tokens] = (wording, place)


def check_stated(
    statements: Iterable[st.Stated], traits: Mapping[str, Trait], known: bool, problems: list[Problem], wording: str
) -> tuple[Stated, ...] | None:
    """What a phrase says of each trait, its readings of one trait together; None, with problems, where it cannot."""
    before = len(problems)
    found: dict[str, Stated] = {}
    for statement in statements:
        name = statement.trait.text
        trait = traits.get(name)
        if trait is None:
            if known:
                problems.append(naming.unknown_name(statement.trait.place, name, near(name, traits), None))
            continue
        said = read_stated(statement, trait, problems)
        if said is None:
            continue
        if name in found:
            said = meet(found[name].said, said)
            if said is None:
                problems.append(phrasing.contradicting_phrase(statement.place, wording, name))
                continue
        found[name] = Stated(name, said)
    return None if len(problems) > before or not known else tuple(found.values())


def read_stated(statement: st.Stated, trait: Trait, problems: list[Problem]) -> Said | None:
    """What one reading says of its trait; None, with a problem, where it cannot be read, or where it allows everything."""
    said = _said(statement, trait, problems)
    whole = anything(trait.kind)
    if said is not None and said == whole:
        problems.append(phrasing.whole_range(statement.place, trait.name))
        return None
    return said


def _said(statement: st.Stated, trait: Trait, problems: list[Problem]) -> Said | None:
    kind, operator = trait.kind, statement.operator
    if isinstance(kind, Patches | Colours):
        problems.append(phrasing.wrong_reading(statement.place, trait.name, operator, "a trait that is judged by eye"))
        return None
    if statement.counts:
        return _counted(statement, trait, problems)
    if operator == "is":
        return fact_reading(statement.fact, trait, problems)
    if operator == "includes":
        return _included(statement, trait, problems)
    if not isinstance(kind, Number | Count | Scale):
        needs = "`is`, `includes` or `count of`" if isinstance(kind, Places) else f"`{trait.name} is …`"
        problems.append(phrasing.wrong_reading(statement.place, trait.name, operator, needs))
        return None
    reading = fact_reading(statement.fact, trait, problems)
    return None if reading is None else _beyond(reading, kind, operator, statement, problems)


def _beyond(
    limit: Reading, kind: Number | Count | Scale, operator: str, statement: st.Stated, problems: list[Problem]
) -> Reading | None:
    """The values on one side of a limit."""
    rises = operator in {"at least", "above"}
    inside = operator in {"at least", "at most"}
    if isinstance(limit, int):
        at, all_bits = limit.bit_length() - 1, (1 << len(words_of(kind))) - 1
        above = all_bits & ~((1 << (at if inside else at + 1)) - 1)
        below = (1 << (at + 1 if inside else at)) - 1
        bits = above if rises else below
        if not bits:
            problems.append(_nothing_beyond(statement))
        return bits or None
    whole = anything(kind)
    if not isinstance(limit, Span) or not isinstance(whole, Span):
        raise AssertionError("a number or count is read as a span")
    step = Decimal(0) if inside else Decimal(1) if isinstance(kind, Count) else MILLIONTH
    end = Decimal(repr(limit.low)) + (step if rises else -step)
    span = Span(float(end), whole.high) if rises else Span(whole.low, float(end))
    if span.low > span.high:
        problems.append(_nothing_beyond(statement))
        return None
    return span


def _nothing_beyond(statement: st.Stated) -> Problem:
    return phrasing.nothing_beyond(statement.place, statement.trait.text, statement.operator)


def _included(statement: st.Stated, trait: Trait, problems: list[Problem]) -> PlaceSet | None:
    kind = trait.kind
    if not isinstance(kind, Places):
        needs = f"`{trait.name} is …`"
        problems.append(phrasing.wrong_reading(statement.place, trait.name, "includes", needs))
        return None
    good = True
    for word in statement.fact.words:
        if word.text not in kind.places:
            guess = near(word.text, kind.places)
            problems.append(naming.unknown_step(word.place, word.text, f'"{trait.name}"', kind.places, guess))
            good = False
    if not good:
        return None
    bits = step_bits(kind, [word.text for word in statement.fact.words])
    return PlaceSet(bits, PlaceSet.any_of(kind).possible).narrowed()


def _counted(statement: st.Stated, trait: Trait, problems: list[Problem]) -> PlaceSet | None:
    kind = trait.kind
    if not isinstance(kind, Places):
        needs = f"`{trait.name} {statement.operator} …`"
        problems.append(phrasing.wrong_reading(statement.place, trait.name, "count of", needs))
        return None
    size = len(kind.places)
    number = fact_reading(statement.fact, evolve(trait, kind=Count(size)), problems)
    if not isinstance(number, Span):
        return None
    wanted = int(number.low)
    least, most = {"is": (wanted, wanted), "at least": (wanted, size), "at most": (0, wanted)}[statement.operator]
    return PlaceSet(0, PlaceSet.any_of(kind).possible, least, most).narrowed()


def meet(one: Said, other: Said) -> Said | None:
    """What two statements about one trait leave together; None where nothing is left. Both are of one kind."""
    match one, other:
        case Span(), Span():
            low, high = max(one.low, other.low), min(one.high, other.high)
            return Span(low, high) if low <= high else None
        case PlaceSet(), PlaceSet():
            return one.meet(other)
        case int(), int():
            return one & other or None
        case _:
            return one if one == other else None
