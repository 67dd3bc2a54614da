"""The checker: from the statements of a file to checked rules, or to every problem that it has."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from typing import TypeVar

from attrs import evolve

from koirules.classes.placing import CLASS_TRAITS
from koirules.language import statements as st
from koirules.problems import Place, Problem, is_refused
from koirules.standard.check.declarations import Names, check_constants, house_traits, settings, titled
from koirules.standard.check.expressions import Typer
from koirules.standard.check.guesses import with_names
from koirules.standard.check.header import Spoken, check_header, elsewhere, spoken_variety, subject_meant
from koirules.standard.check.limits import check_grades, check_limit
from koirules.standard.check.needs import check_early_scores, expressions_of, working_order
from koirules.standard.check.ordering import names_read
from koirules.standard.check.panels import check_panel
from koirules.standard.check.phrasing import check_phrases
from koirules.standard.check.round_checks import (
    check_alerts,
    check_rounds,
    check_where_read,
    of_the_batch,
    whole_settings,
)
from koirules.standard.check.samples import check_sample
from koirules.standard.check.sectioning import MOST_WORTH, check_sections, section_worths
from koirules.standard.check.silence import check_carried, check_silence, silent_traits
from koirules.standard.check.warnings import warnings_of
from koirules.standard.checked import Checked, Known
from koirules.standard.growth_settings import check_growth
from koirules.standard.inherit.merging import head_of
from koirules.standard.parts import Limit, Rules, Sample, Term
from koirules.standard.saying import check_languages, check_say, names_in, said_by
from koirules.values import frozen
from koirules.vocabulary.kinds import words_of
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.subject import ITEM
from koirules.vocabulary.traits import Trait

_T = TypeVar("_T")


@frozen
class _Declared:
    """What a file declares by name."""

    spoken: Spoken | None
    house: Mapping[str, Trait]
    terms: Mapping[str, st.Term]
    limits: Sequence[st.Limit]
    grades: Sequence[st.Grade]


def check(file: st.RuleFile, varieties: Varieties, found: Sequence[Problem] = ()) -> Checked:
    """Check the statements of a file. found: the problems that the reader had, which join ours."""
    problems = list(found)
    header = check_header(file, problems)
    declared, typer = _declare(file, header, varieties, problems)
    problems[:] = with_names(problems, file.text, typer, [*declared.terms])
    steps = {name: words_of(trait.kind) for name, trait in typer.traits.items()}
    order = working_order(declared.terms, declared.limits, steps, problems)
    for key in order:
        head, name = key.split(" ", 1)
        if head == "term":
            typer.terms[name] = _term(declared.terms[name], typer)
    sections = check_sections(file, typer)
    grade_names = [grade.name.text for grade in declared.grades]
    unread_grades = [name for head, name in file.unread if head == "grade"]
    limits = [check_limit(limit, typer, [*grade_names, *unread_grades]) for limit in declared.limits]
    place = header.place if header else Place(file.file, 1, 1, 1, 1)
    grades = check_grades(declared.grades, typer, place, unread=bool(unread_grades))
    alerts = check_alerts(_all(file.statements, st.Alert), typer)
    rounds = check_rounds(_all(file.statements, st.Round), typer)
    silence = check_silence(_all(file.statements, st.Silence), typer)
    carried = check_carried(_all(file.statements, st.Carry), typer)
    panel = check_panel(_all(file.statements, st.Panel), typer)
    samples = _samples(file, typer, [*grade_names, *unread_grades])
    phrases = check_phrases(_all(file.statements, st.Phrase), typer.traits, typer.vocabulary_known, problems)
    for statement in file.statements:
        check_languages(getattr(statement, "title", None), problems)
        for said in said_by(statement):
            check_languages(said, problems)
            known = of_the_batch(typer) if isinstance(statement, st.Alert) else typer.names()
            check_say(said, [*known, *typer.unread], problems, complete=typer.vocabulary_known)
    check_early_scores(file.statements, declared.terms, declared.limits, problems)
    told = Known(typer.traits, typer.settings, typer.terms, file)
    if header is None or is_refused(problems):
        return _done(None, problems, told)
    kept = [limit for limit in limits if limit is not None]
    rules = evolve(
        _rules(file, header, typer, declared, order, kept, varieties),
        sections=sections,
        grades=grades,
        samples=tuple(samples),
        settings=whole_settings(typer.settings, rounds),
        alerts=alerts,
        rounds=rounds,
        phrases=phrases,
        silence=silence,
        carried=carried,
        panel=panel,
    )
    check_where_read(rules, problems)
    check_growth(rules, problems)
    if is_refused(problems):
        return _done(None, problems, told)
    places = {t.name.text: t.place for t in _all(file.statements, st.HouseTrait)}
    problems.extend(warnings_of(rules, places))
    return _done(rules, problems, told)


def _declare(
    file: st.RuleFile, header: st.Header | None, varieties: Varieties, problems: list[Problem]
) -> tuple[_Declared, Typer]:
    names = Names(problems)
    spoken = spoken_variety(header, varieties, problems)
    vocabulary: Mapping[str, Trait] = {} if spoken is None else spoken.traits
    variety = "" if spoken is None else spoken.name
    house = house_traits(_all(file.statements, st.HouseTrait), vocabulary, variety, names)
    made_settings = settings(_all(file.statements, st.Setting), vocabulary, variety, names)
    check_constants(made_settings, () if spoken is None else spoken.constants, problems)
    terms = {
        term.name.text: term
        for term in _all(file.statements, st.Term)
        if names.take_value(term.name, vocabulary, variety)
    }
    # Of a name that is declared again in words that cannot be read, nobody knows which one is meant.
    doubtful = {(head, name) for head, name in file.unread}
    house = {name: trait for name, trait in house.items() if ("trait", name) not in doubtful}
    made_settings = {name: made for name, made in made_settings.items() if ("setting", name) not in doubtful}
    classes = _classes_read(file, {*vocabulary, *house, *made_settings, *terms})
    worths = section_worths(file, names)
    limits = _named(file, names)
    typer = Typer(
        traits={**vocabulary, **house, **classes},
        settings=made_settings,
        term_names=terms,
        sections=worths,
        faults=[limit.name.text for limit in limits if limit.head == "fault"],
        elsewhere=elsewhere(spoken, varieties),
        measures=() if spoken is None else spoken.measures,
        sayings=() if spoken is None else spoken.sayings,
        grows_by=ITEM.grows_by if spoken is None else spoken.subject.grows_by,
        grades=[grade.name.text for grade in _all(file.statements, st.Grade)]
        + [name for head, name in file.unread if head == "grade"],
        score_most=sum(worths.values()) + MOST_WORTH * sum(head == "section" for head, _ in file.unread),
        unread=_unread(file, {*house, *made_settings, *terms}),
        vocabulary_known=spoken is not None,
        silent=silent_traits(_all(file.statements, st.Silence), {**vocabulary, **house}),
        problems=problems,
    )
    return _Declared(spoken, house, terms, limits, _all(file.statements, st.Grade)), typer


def _classes_read(file: st.RuleFile, taken: Collection[str]) -> dict[str, Trait]:
    """The halves of a show's class that a file reads without declaring them."""
    found: dict[str, Trait] = {}
    for statement in file.statements:
        if isinstance(statement, st.Header | st.Replace | st.Drop | st.Rename):
            continue
        named = {name for expression in expressions_of(statement) for name in names_read(expression)}
        named |= {name for said in said_by(statement) for name in names_in(said.text)}
        if isinstance(statement, st.Sample):
            named |= {fact.trait.text for fact in statement.facts}
        found |= {name: trait for name, trait in CLASS_TRAITS.items() if name in named and name not in taken}
    unread = {name for _, name in file.unread}
    return {name: trait for name, trait in found.items() if name not in unread}


def _unread(file: st.RuleFile, made: Collection[str]) -> frozenset[str]:
    """The names that nobody misses: their statements could not be read, or have a problem of their own."""
    refused = {
        statement.name.text
        for statement in file.statements
        if isinstance(statement, st.HouseTrait | st.Setting | st.Term) and statement.name.text not in made
    }
    return frozenset(name for _, name in file.unread if name) | refused


def _named(file: st.RuleFile, names: Names) -> list[st.Limit]:
    """Take the names of criteria, limits and grades; the limits whose names are free."""
    limits: list[st.Limit] = []
    for statement in file.statements:
        match statement:
            case st.Limit():
                if names.take(statement.head, statement.head, statement.name):
                    limits.append(statement)
            case st.Points():
                names.take("points", "criterion", statement.name)
            case st.Extra():
                names.take(statement.head, statement.head, statement.name)
            case st.Grade():
                names.take("grade", "grade", statement.name)
            case st.Alert():
                names.take("alert", "alert", statement.name)
            case st.Round():
                names.take("round", "round", statement.name)
            case st.Panel():
                names.take("panel", "panel", statement.name)
            case _:
                pass
    return limits


def _term(statement: st.Term, typer: Typer) -> Term | None:
    node = typer.node(statement.expression)
    name = statement.name.text
    return None if node is None else Term(name, titled(statement.title, name), node, statement.place)


def _samples(file: st.RuleFile, typer: Typer, grades: Sequence[str]) -> list[Sample]:
    names: dict[str, list[str]] = {head: [] for head in st.OUTCOMES.values()}
    for statement in file.statements:
        if isinstance(statement, st.Section | st.Extra | st.Limit | st.Round):
            names.setdefault(head_of(statement), []).append(statement.name.text)
    for head, name in file.unread:
        names.get(head, []).append(name)
    names["grade"] = list(grades)
    checked = [check_sample(sample, typer, names) for sample in _all(file.statements, st.Sample)]
    return [sample for sample in checked if sample is not None]


def _rules(
    file: st.RuleFile,
    header: st.Header,
    typer: Typer,
    declared: _Declared,
    order: Sequence[str],
    limits: Sequence[Limit],
    varieties: Varieties,
) -> Rules:
    """The rules without their sections, grades and samples."""
    spoken = declared.spoken
    named = spoken is not None and bool(spoken.name)
    subject = spoken.subject if spoken is not None and named else subject_meant(declared.house, varieties)
    by_key: dict[str, Term | Limit] = {f"{limit.head} {limit.name}": limit for limit in limits}
    terms = {name: term for name, term in typer.terms.items() if term is not None}
    by_key.update({f"term {name}": term for name, term in terms.items()})
    return Rules(
        file=file.file,
        title=titled(header.title, ""),
        edition="" if header.edition is None else header.edition.text,
        variety=None if declared.spoken is None else declared.spoken.name or None,
        each_variety=() if declared.spoken is None else tuple(one.name for one in declared.spoken.each),
        stage=None if header.stage is None else header.stage.text,
        valid_from=header.valid_from,
        valid_until=header.valid_until,
        notes=tuple(note.text for note in header.notes),
        traits=typer.traits,
        measures=() if declared.spoken is None else declared.spoken.measures,
        constants=() if declared.spoken is None else declared.spoken.constants,
        sayings=() if declared.spoken is None else declared.spoken.sayings,
        subject=subject,
        occasion=None if header.occasion is None else header.occasion.text,
        house_traits=tuple(declared.house),
        settings=typer.settings,
        terms=terms,
        sections=(),
        limits=tuple(limits),
        order=tuple(by_key[key] for key in order),
        grades=(),
        samples=(),
        source=file,
    )


def _done(rules: Rules | None, problems: Sequence[Problem], known: Known) -> Checked:
    return Checked(rules, in_order(problems, known.source.file), known)


def in_order(problems: Iterable[Problem], file: str) -> tuple[Problem, ...]:
    """Problems in the order of the file, those of its bases after them."""

    def position(problem: Problem) -> tuple[bool, str, int, int]:
        site = problem.site
        if not isinstance(site, Place):
            return (False, "", 0, 0)
        return (site.file != file, "" if site.file == file else site.file, site.line, site.column)

    return tuple(sorted(dict.fromkeys(problems), key=position))


def _all(statements: Sequence[st.Statement], kind: type[_T]) -> list[_T]:
    return [statement for statement in statements if isinstance(statement, kind)]
