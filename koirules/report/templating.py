"""The templates of pages and drawings: files beside this one, in which every text is escaped."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Any

from koirules.languages import ENGLISH, Tongue
from koirules.records.safe_text import without_controls

if TYPE_CHECKING:
    from jinja2 import Environment

_TURNS = dict.fromkeys([*range(0x202A, 0x202F), *range(0x2066, 0x206A), 0xFFFE, 0xFFFF])
"""Letters that turn the direction of what follows, with which a text could show as another, and those that XML has not."""


def rendered(template: str, tongue: Tongue = ENGLISH, **values: Any) -> str:
    """A template filled in, in a language: its texts stand in `_("…")`."""
    return _environment().get_template(template).render(_=tongue, tongue=tongue, **values)


@cache
def _environment() -> Environment:
    # Imported late: what prints no page need not wait for it.
    from jinja2 import Environment, PackageLoader, StrictUndefined

    return Environment(
        loader=PackageLoader("koirules.report"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        finalize=_shown,
    )


def _shown(value: object) -> object:
    """A text as it can stand on a page: shows the same and steers nothing. Markup that a template made stays as it is."""
    if isinstance(value, str) and not hasattr(value, "__html__"):
        return plain(value)
    return "" if value is None else value


def plain(text: str) -> str:
    """A text without control characters, turns of direction and the ends of lines of other systems."""
    return without_controls(text.replace("\r\n", "\n").replace("\r", "\n")).translate(_TURNS)
