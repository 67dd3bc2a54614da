"""Checks the rounds and the alerts of a file."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from decimal import ROUND_FLOOR, Decimal

from attrs import evolve

from koirules.language import round_parts as rp
from koirules.language import statements as st
from koirules.language.syntax import Quantity
from koirules.problems import Problem, is_refused, values
from koirules.problems import batch as say
from koirules.problems.silence import no_such_look
from koirules.standard.check.declarations import maybe_titled, titled
from koirules.standard.check.expressions import Typer
from koirules.standard.check.figures import in_common
from koirules.standard.numbers import dimension_of, held, unit_of, written
from koirules.standard.parts import Alert, Rules, Setting
from koirules.standard.rounds import Amount, Key, Quota, Round, Share
from koirules.standard.tree import (
    Apply,
    Constant,
    Figure,
    GradeRead,
    Node,
    Recorded,
    SettingRead,
    Supplied,
    TermRead,
    TraitRead,
    walk,
)
from koirules.standard.types import Numeric, Steps, type_words
from koirules.vocabulary.nearness import near
from koirules.vocabulary.units import Dimension, Unit

MOST_FISH = 1_000_000
MOST_LOOKS = 60

_PLACES = {"pool": 0, "keep": 1, "pick": 2, "quota": 3, "ties": 3, "send": 4, "rescues": 5, "saying": 6}
_WORDS = {
    "pool": "from",
    "keep": "keep",
    "pick": "pick",
    "quota": "no more than",
    "ties": "ties",
    "send": "send to",
    "rescues": "rescues",
    "saying": "say",
}


def check_rounds(statements: Sequence[st.Round], typer: Typer) -> tuple[Round, ...]:
    """The rounds, as far as they have no problems, in the order of the file."""
    made: list[Round] = []
    before: list[str] = []
    for statement in statements:
        found = len(typer.problems)
        one = _round(statement, before, typer)
        if not is_refused(typer.problems[found:]):
            made.append(one)
        before.append(statement.name.text)
    return tuple(made)


def _round(statement: st.Round, before: Sequence[str], typer: Typer) -> Round:
    _check_order(statement, typer.problems)
    pool, pool_of = ("kept", before[-1]) if before else ("all", "")
    possibly, keep, ordered = False, None, False
    amount: Amount | Share | None = None
    keys: list[Key] = []
    quotas: list[Quota] = []
    send, again, rescues, ties, words = "", None, 0, "", None
    named: Amount | None = None
    each: list[Node] = []
    for part in statement.parts:
        match part:
            case rp.Pool(word=pool, round=of):
                pool_of = "" if of is None else of.text
                if of is not None and of.text not in before:
                    typer.problems.append(say.round_not_before(of.place, of.text, before, near(of.text, before)))
            case rp.Keep(possibly=possibly, condition=condition):
                keep = typer.condition(condition)
            case rp.Pick(amount=many, orders=orders, each=names):
                each = [node for word in names if (node := in_common(typer, word)) is not None]
                ordered = True
                amount = None if many is None else _amount_or_share(many, typer)
                keys = [key for order in orders if (key := _key(order, typer)) is not None]
            case rp.Quota():
                quotas += _quota(part, typer)
            case rp.Send(to=send, again=later):
                again = None if later is None else _days(later, typer.problems)
            case rp.Rescues(amount=many):
                named = _amount(many, typer)
            case rp.Ties(word=ties):
                pass
            case rp.Saying(words=title):
                words = maybe_titled(title)
    name = statement.name.text
    return Round(
        name,
        titled(statement.title, name),
        pool,
        pool_of,
        possibly,
        keep,
        ordered,
        amount,
        tuple(keys),
        tuple(quotas),
        send,
        again,
        rescues if named is None else named,
        ties,
        words,
        statement.place,
        _look(statement, typer.problems),
        tuple(each),
    )


def _look(statement: st.Round, problems: list[Problem]) -> int | None:
    """At which look a round judges a fish; None for everything known."""
    if statement.look is None:
        return None
    if statement.look.value not in range(1, MOST_LOOKS + 1):
        problems.append(no_such_look(statement.look.place))
        return None
    return int(statement.look.value)


def _check_order(statement: st.Round, problems: list[Problem]) -> None:
    """Report parts that stand twice, in the wrong order, or without the pick that they belong to."""
    latest, seen = "", set[str]()
    picks = any(isinstance(part, rp.Pick) for part in statement.parts)
    for part in statement.parts:
        kind = type(part).__name__.lower()
        if kind in seen and kind != "quota":
            problems.append(say.round_part_twice(part.place, _WORDS[kind]))
        elif latest and _PLACES[kind] < _PLACES[latest]:
            problems.append(say.round_part_late(part.place, _WORDS[kind], _WORDS[latest]))
        else:
            latest = kind
        if kind in {"quota", "ties"} and not picks:
            problems.append(say.only_with_pick(part.place, _WORDS[kind]))
        seen.add(kind)


def _key(order: rp.Order, typer: Typer) -> Key | None:
    if order.word == "those":
        node = typer.condition(order.by)
        return None if node is None else Key(node, True, order.place)
    node = typer.node(order.by)
    if node is None:
        return None
    if not isinstance(node.type, Numeric) and not (isinstance(node.type, Steps) and node.type.ordered):
        typer.problems.append(say.not_an_order(order.by.place, order.word, type_words(node.type)))
        return None
    return Key(node, order.word == "highest", order.place)


def _quota(quota: rp.Quota, typer: Typer) -> list[Quota]:
    amount = _amount(quota.amount, typer)
    if quota.condition is not None:
        condition = typer.condition(quota.condition)
        return [] if condition is None or amount is None else [Quota(amount, condition, (), quota.place)]
    same = [in_common(typer, word) for word in quota.same]
    good = tuple(node for node in same if node is not None)
    return [] if amount is None or len(good) != len(same) else [Quota(amount, None, good, quota.place)]


def _amount(amount: rp.Amount, typer: Typer) -> Amount | None:
    """A number of fish."""
    made = _amount_or_share(amount, typer, or_share=False)
    return None if isinstance(made, Share) else made


def _amount_or_share(amount: rp.Amount, typer: Typer, *, or_share: bool = True) -> Amount | Share | None:
    """A number of fish, or a share of them where one may stand there too."""
    name = "" if isinstance(amount, Quantity) else amount.text
    setting = typer.settings.get(name)
    if isinstance(amount, Quantity):
        unit = unit_of(amount)
        why = _no_amount(amount.value, amount.value, amount.value, unit, or_share=or_share)
    elif setting is not None:
        unit = setting.unit
        why = _no_amount(setting.value, setting.low, setting.high, unit, or_share=or_share)
    elif name in typer.unread:
        return None
    else:
        unit, why = None, "is no setting"
    if why:
        guess = near(name, typer.settings) if name and setting is None else None
        word = written(amount) if isinstance(amount, Quantity) else f'"{name}"'
        typer.problems.append(say.not_an_amount(amount.place, word, why, guess, or_share=or_share))
        return None
    if not isinstance(amount, Quantity):
        return name if unit is None else Share(name)
    value = held(amount, typer.problems)
    return None if value is None else int(value) if unit is None else Share(value)


def _no_amount(value: Decimal, low: Decimal, high: Decimal, unit: Unit | None, *, or_share: bool) -> str:
    """Why a number from low to high, now at `value`, is no number of fish, nor a share of them; "" where it is one."""
    most, symbol = (MOST_FISH, "") if unit is None else (100, " %")
    if unit is not None and not (or_share and unit.dimension is Dimension.SHARE):
        return f"has the unit {unit.symbol}"
    if unit is None and value != value.to_integral_value():
        return f"is no whole number from 0 to {MOST_FISH:,}"
    lies = "lies" if low == high else "may lie"
    return "" if low >= 0 and high <= most else f"{lies} outside 0{symbol} to {most:,}{symbol}"


def _days(again: Quantity, problems: list[Problem]) -> Decimal | None:
    """The whole days until the next look, half up."""
    value = held(again, problems)
    if value is None:
        return None
    days = (value + Decimal("0.5")).to_integral_value(ROUND_FLOOR)
    if dimension_of(again) is not Dimension.TIME or days < 1:
        problems.append(say.not_a_time(again.place, written(again)))
        return None
    return days


def check_alerts(statements: Iterable[st.Alert], typer: Typer) -> tuple[Alert, ...]:
    """The alerts, as far as they have no problems."""
    made: list[Alert] = []
    for statement in statements:
        condition = typer.condition(statement.condition)
        if condition is None:
            continue
        of_fish = next((what for node in walk(condition) if (what := _of_a_fish(node))), "")
        if of_fish:
            typer.problems.append(say.alert_of_a_fish(statement.condition.place, of_fish))
            continue
        name = statement.name.text
        label = titled(statement.title, name)
        made.append(Alert(name, label, condition, maybe_titled(statement.say), statement.place))
    return tuple(made)


def of_the_batch(typer: Typer) -> list[str]:
    """The names that an alert can say: settings, and terms that read nothing of one fish."""
    terms = (term for term in typer.terms.values() if term is not None)
    return [*typer.settings, *(term.name for term in terms if not any(_of_a_fish(node) for node in walk(term.node)))]


def _of_a_fish(node: Node) -> str:
    """What of a node differs from fish to fish; "" where nothing does."""
    match node:
        case Constant() | SettingRead() | TermRead() | Apply():
            return ""
        case Supplied(source=Figure(kind=kind, same=same)):
            return "a standing" if kind.own else "`among the same`" if same else ""
        case Supplied():
            return "`earlier`"
        case Recorded(of=of):
            return _of_a_fish(of)
        case TraitRead(trait=trait):
            return f'"{trait.name}"'
        case GradeRead():
            return "the grade"
        case _:
            return "this"


def check_where_read(rules: Rules, problems: list[Problem]) -> None:
    """Report `grade` read by what is worked out before it, and `among those kept by` a round that has not run."""
    early = [root for part in rules.parts for root in part.roots]
    for root in early:
        for node in walk(root, into_sources=True):
            if isinstance(node, GradeRead):
                problems.append(values.grade_read_early(node.place))
    names = [each.name for each in rules.rounds]
    readers: list[tuple[list[str] | None, tuple[Node, ...]]] = [
        (None, (*early, *(alert.condition for alert in rules.alerts))),
        *((names[:i], each.roots) for i, each in enumerate(rules.rounds)),
    ]
    for before, roots in readers:
        for root in roots:
            for node in walk(root, into_sources=True):
                kept_by = _kept_by(node)
                if not kept_by:
                    continue
                if before is None:
                    problems.append(say.kept_by_not_here(node.place))
                elif kept_by not in before:
                    problems.append(say.round_not_before(node.place, kept_by, before, near(kept_by, before)))


def _kept_by(node: Node) -> str:
    return node.source.kept_by if isinstance(node, Supplied) and isinstance(node.source, Figure) else ""


def whole_settings(settings: Mapping[str, Setting], rounds: Sequence[Round]) -> dict[str, Setting]:
    """The settings, those that hold a number of fish marked as whole."""
    counted = {amount for each in rounds for amount in each.amounts if isinstance(amount, str)}
    return {name: evolve(one, whole=True) if name in counted else one for name, one in settings.items()}
