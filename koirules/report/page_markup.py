"""Markup that text can only enter escaped: every element of a page or a picture is made here."""

from __future__ import annotations

from collections.abc import Iterable
from html import escape

from koirules.report.templating import plain
from koirules.values import frozen

_VOID = frozenset({"br", "hr", "img", "input", "link", "meta"})
"""The elements of HTML that hold nothing and have no end tag."""


@frozen
class Markup:
    """Markup as it is written; only `element`, `joined`, the drawing of a fish and the templates of the page make it."""

    text: str


Inside = Markup | str
"""What stands in an element: markup as it is, or a text, which is escaped."""


def escaped(text: str) -> str:
    """A text as it stands in an element or between the quotation marks of an attribute; shows the same and acts never."""
    return escape(plain(text), quote=True)


def element(tag: str, *inside: Inside, **attributes: str | float | bool | None) -> Markup:
    """An element. tag and the names of attributes are ours, and never a stranger's text.

    attributes: a name with `_` at its end or inside (`class_`, `aria_label`) loses it or has `-` there. None and False leave
    an attribute out, True gives it without a value.
    """
    parts = [f"<{tag}"]
    for key, value in attributes.items():
        if value is None or value is False:
            continue
        name = key.rstrip("_").replace("_", "-")
        parts.append(f" {name}" if value is True else f' {name}="{escaped(str(value))}"')
    parts.append(">")
    if tag not in _VOID:
        parts.extend(_written(one) for one in inside)
        parts.append(f"</{tag}>")
    return Markup("".join(parts))


def joined(parts: Iterable[Inside]) -> Markup:
    """Several one after the other."""
    return Markup("".join(_written(part) for part in parts))


def _written(inside: Inside) -> str:
    return inside.text if isinstance(inside, Markup) else escaped(inside)
