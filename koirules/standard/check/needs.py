"""What needs what: the order of terms and limits, circles, criteria that come too early, and what comes with later versions."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence

from koirules.language import statements as st
from koirules.language import syntax
from koirules.language.round_parts import expressions_in
from koirules.language.syntax import Expression
from koirules.problems import Problem, naming, values
from koirules.standard.check.ordering import in_order, needs_of, parts_of


def expressions_of(statement: st.Statement) -> list[Expression]:
    """The expressions of a statement."""
    match statement:
        case st.Term(expression=expression):
            return [expression]
        case st.Points(by=by):
            return [by]
        case st.Extra(condition=condition):
            return [condition]
        case st.Limit(condition=condition, exception=exception):
            return [condition] if exception is None else [condition, exception]
        case st.Grade(condition=condition):
            return [] if condition is None else [condition]
        case st.Alert(condition=condition):
            return [condition]
        case st.Silence(entries=entries):
            return [entry.unless for entry in entries if entry.unless is not None]
        case st.Round(parts=parts_of_round):
            return [expression for part in parts_of_round for expression in expressions_in(part)]
        case _:
            return []


def key_of(statement: st.Term | st.Limit) -> str:
    """The key of a term, fault or lift."""
    head = statement.head if isinstance(statement, st.Limit) else "term"
    return f"{head} {statement.name.text}"


def working_order(
    terms: Mapping[str, st.Term],
    limits: Iterable[st.Limit],
    steps: Mapping[str, Collection[str]],
    problems: list[Problem],
) -> tuple[str, ...]:
    """The keys of terms, faults and lifts in an order in which they can be worked out; circles are problems."""
    statements: list[st.Term | st.Limit] = [*terms.values(), *limits]
    by_key = {key_of(statement): statement for statement in statements}
    needs = {
        key: [need for expression in expressions_of(statement) for need in needs_of(expression, terms, steps)]
        for key, statement in by_key.items()
    }
    order, circles = in_order(needs)
    for links in circles:
        problems.append(naming.circle(by_key[links[0]].name.place, links))
    return tuple(order)


def check_early_scores(
    statements: Sequence[st.Statement],
    terms: Mapping[str, st.Term],
    limits: Iterable[st.Limit],
    problems: list[Problem],
) -> None:
    """Report criteria that read the score or a section, through terms and faults too."""
    late = _late([*terms.values(), *limits], terms)
    for statement in statements:
        if not isinstance(statement, st.Points | st.Extra):
            continue
        for expression in expressions_of(statement):
            for part in parts_of(expression):
                through = _reads_late(part, late)
                if through:
                    problems.append(values.score_too_early(part.place, through))


def _late(statements: Sequence[st.Term | st.Limit], terms: Mapping[str, st.Term]) -> set[str]:
    """The keys of all that reads the score or a section, directly or through others."""
    late: set[str] = set()
    users: dict[str, list[str]] = {}
    for statement in statements:
        for expression in expressions_of(statement):
            if any(isinstance(part, syntax.ScoreRead | syntax.SectionRead) for part in parts_of(expression)):
                late.add(key_of(statement))
            for need in needs_of(expression, terms):
                users.setdefault(need, []).append(key_of(statement))
    waiting = list(late)
    while waiting:
        for user in users.get(waiting.pop(), ()):
            if user not in late:
                late.add(user)
                waiting.append(user)
    return late


def _reads_late(part: Expression, late: set[str]) -> str | None:
    match part:
        case syntax.ScoreRead():
            return "`score`"
        case syntax.SectionRead(name, _):
            return f"`section {name.text}`"
        case syntax.Word(text) if f"term {text}" in late:
            return f'the term "{text}", which reads the score or a section'
        case syntax.FaultRead(name, _) if f"fault {name.text}" in late:
            return f'the fault "{name.text}", which reads the score or a section'
        case _:
            return None
