"""The canonical text of a standard and its seal, as the guide specifies them (reference/seal.md).

They say what a standard says, not how it looks.

A standard is written in the first form that has words for all that it says, so that a page keeps its seal for good.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from hashlib import sha256

from attrs import evolve, fields, has

from koirules.classes.placing import classes_read
from koirules.language import statements as st
from koirules.language.format.statements import statement_line
from koirules.language.round_parts import Pick, Quota
from koirules.meaning.operators import MEDIAN
from koirules.standard.check.needs import expressions_of
from koirules.standard.check.ordering import names_read
from koirules.standard.parts import Rules
from koirules.standard.rounds import Share
from koirules.standard.saying import names_in, said_by
from koirules.standard.tree import Apply, Node, walk
from koirules.vocabulary.kinds import describe_kind
from koirules.vocabulary.readings import PlaceSet
from koirules.vocabulary.units import Unit, added_units

FORMS = (1, 2, 3)
"""The numbers of the canonical forms.

2: with silence, looks that rounds judge at, what is carried forward, or an occasion. 3: with a pick of a share or for each
group, the classes of a show, a panel, the median of several values, a fault that lowers, silence that counts places, or a unit of
a plugin.
"""

_KINDS: Sequence[type[st.Statement] | tuple[type[st.Statement], ...]] = (
    st.Header,
    st.Setting,
    st.HouseTrait,
    st.Term,
    st.Silence,
    st.Carry,
    st.Panel,
    (st.Section, st.Points, st.Extra),
)
_LATE_KINDS: Sequence[type[st.Statement]] = (st.Grade, st.Alert, st.Round)


def form_of(rules: Rules) -> int:
    """The number of the canonical form of a standard."""
    if rules.panel is not None or any(one.each or isinstance(one.amount, Share) for one in rules.rounds):
        return 3
    if any(one.lowers for one in rules.limits):
        return 3
    if any(isinstance(one.reading, PlaceSet) and one.reading.is_counted for one in rules.silence.values()):
        return 3
    if _units_of_plugins(rules):
        return 3
    if classes_read(rules.traits) or any(map(_is_median, _every_node(rules))):
        return 3
    return (
        2
        if rules.occasion or rules.silence or rules.carried or any(one.look is not None for one in rules.rounds)
        else 1
    )


def _every_node(rules: Rules) -> Iterator[Node]:
    for root in (*rules.roots, *(term.node for term in rules.terms.values())):
        yield from walk(root, into_terms=False, into_sources=True)


def _is_median(node: Node) -> bool:
    return isinstance(node, Apply) and node.operation is MEDIAN


def seal_of(rules: Rules) -> str:
    """The seal: the number of the canonical form, a hyphen, and the SHA-256 of the canonical text in hexadecimal."""
    return f"{form_of(rules)}-{sha256(canonical_text(rules).encode('utf-8', 'surrogatepass')).hexdigest()}"


def canonical_text(rules: Rules) -> str:
    """What a standard says: its statements by kind, a line each, then the traits that it reads."""
    lines = [f"koirules canonical form {form_of(rules)}"]
    lines += [statement_line(_bare(statement)) for statement in _by_kind(rules.source.statements)]
    read = {name for statement in rules.source.statements for name in _names_read(statement)}
    own = set(rules.house_traits)
    for name in sorted(read):
        if name in rules.traits and name not in own:
            lines.append(f"reads {name} as {describe_kind(rules.traits[name].kind)}")
    # So that the seal means the same where nobody has the plugin.
    lines += [f"unit {unit.symbol} is {unit.told}" for unit in _units_of_plugins(rules)]
    return "".join(f"{line}\n" for line in lines)


def _units_of_plugins(rules: Rules) -> list[Unit]:
    """The units of plugins in what a standard says, in the order of their symbols."""
    added = {unit.symbol: unit for unit in added_units()}
    found = {symbol for one in _by_kind(rules.source.statements) for symbol in _units_in(one)} if added else set()
    return [added[symbol] for symbol in sorted(found & added.keys())]


def _units_in(part: object) -> Iterator[str]:
    """The symbols of the units in a statement, an expression, or any part of them."""
    kind: type = type(part)
    if has(kind):
        for one in fields(kind):
            value = getattr(part, one.name)
            if one.name == "unit" and isinstance(value, str):
                yield value
            else:
                yield from _units_in(value)
    elif isinstance(part, tuple | list):
        for value in part:
            yield from _units_in(value)
    elif isinstance(part, Mapping):
        for value in part.values():
            yield from _units_in(value)


def _by_kind(statements: Sequence[st.Statement]) -> Iterator[st.Statement]:
    for kind in _KINDS:
        found = [one for one in statements if isinstance(one, kind)]
        yield from sorted(found, key=_trait_of) if kind in {st.Silence, st.Carry} else found
    for head in ("fault", "lift"):
        yield from (one for one in statements if isinstance(one, st.Limit) and one.head == head)
    for kind in _LATE_KINDS:
        yield from (one for one in statements if isinstance(one, kind))


def _trait_of(statement: st.Statement) -> str:
    return statement.name.text if isinstance(statement, st.Silence | st.Carry) else ""


def _bare(statement: st.Statement) -> st.Statement:
    """A statement without what does not count: notes, and what the standard was based on."""
    return evolve(statement, notes=(), based_on=None) if isinstance(statement, st.Header) else statement


def _names_read(statement: st.Statement) -> Iterator[str]:
    """The names in the expressions of a statement and in the braces of its `say`."""
    for expression in expressions_of(statement):
        yield from names_read(expression)
    if isinstance(statement, st.Silence):
        yield from (entry.stated.trait.text for entry in statement.entries)
    if isinstance(statement, st.Carry):
        yield from (trait.text for trait in statement.traits)
    if isinstance(statement, st.Round):
        yield from (word.text for part in statement.parts if isinstance(part, Quota) for word in part.same)
        yield from (word.text for part in statement.parts if isinstance(part, Pick) for word in part.each)
    for said in said_by(statement):
        yield from (name for text in (said.text, *said.others.values()) for name in names_in(text))
