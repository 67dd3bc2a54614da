"""Builds the rounds of a rule file from Lark's trees."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from decimal import Decimal

from lark import Token

from koirules.language import round_parts as parts
from koirules.language import statements as st
from koirules.language.parse.builder import Builder, Node
from koirules.language.syntax import Quantity


def build_round(build: Builder, node: Node) -> st.Round:
    """A round with its parts."""
    name, title, look, *rest = node.children
    made = tuple(_BUILD[part.data](build, part) for part in rest)
    number = None if look is None else Quantity(Decimal(str(look)), None, build.place(look))
    return st.Round(build.word(name), build.title(title), made, build.place(node), number)


def _amount(build: Builder, node: Node) -> parts.Amount:
    first = node.children[0]
    return build.word(first) if first.type == "NAME" else build.quantity(node)


def _pool(build: Builder, node: Node) -> parts.Pool:
    word = node.data.removeprefix("pool_")
    return parts.Pool(word, build.word(node.children[0]) if node.children else None, build.place(node))


def _keep(build: Builder, node: Node) -> parts.Keep:
    possibly, condition = node.children
    return parts.Keep(possibly is not None, build.expression(condition), build.place(node))


def _pick(build: Builder, node: Node) -> parts.Pick:
    amount, each, *orders = node.children
    many = None if isinstance(amount, Token) else _amount(build, amount)
    made = (
        parts.Order(order.data.split("_")[0], build.expression(order.children[0]), build.place(order))
        for order in orders
    )
    names = () if each is None else tuple(build.word(name) for name in each.children)
    return parts.Pick(many, tuple(made), build.place(node), names)


def _quota(build: Builder, node: Node) -> parts.Quota:
    amount, rest = node.children
    if node.data == "quota_with":
        return parts.Quota(_amount(build, amount), build.expression(rest), (), build.place(node))
    same = tuple(build.word(name) for name in rest.children)
    return parts.Quota(_amount(build, amount), None, same, build.place(node))


def _send(build: Builder, node: Node) -> parts.Send:
    to, again = node.children
    return parts.Send(str(to)[1:-1], build.maybe_quantity(again), build.place(node))


def _rescues(build: Builder, node: Node) -> parts.Rescues:
    return parts.Rescues(_amount(build, node.children[0]), build.place(node))


def _ties(build: Builder, node: Node) -> parts.Ties:
    return parts.Ties("all" if node.data == "ties_all_in" else "first", build.place(node))


def _say(build: Builder, node: Node) -> parts.Saying:
    words = build.say(node)
    if words is None:
        raise AssertionError("the grammar gives a say without words")
    return parts.Saying(words, build.place(node))


_BUILD: Mapping[str, Callable[[Builder, Node], parts.RoundPart]] = {
    "pool_all": _pool,
    "pool_kept": _pool,
    "pool_passed": _pool,
    "keep": _keep,
    "pick": _pick,
    "quota_with": _quota,
    "quota_same": _quota,
    "send": _send,
    "rescues": _rescues,
    "ties_all_in": _ties,
    "ties_first": _ties,
    "say": _say,
}
