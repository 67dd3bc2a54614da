"""The pages of a fish and of a year as HTML: one file each, without a script, to look at and to print."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from importlib.resources import files

from jinja2 import Environment, FunctionLoader, select_autoescape
from markupsafe import Markup

from koirules_book.book import Event, Fish, Look
from koirules_book.histories import FishHistory, YearHistory
from koirules_book.statistics import Share


def fish_page(history: FishHistory, pictures: Mapping[int, str] | None = None) -> str:
    """The page of a fish. pictures: drawings of looks as SVG, by the number of the look."""
    fish = history.fish
    facts = [("tag", fish.tag), ("spawning", fish.spawning), ("bloodline", fish.bloodline), ("pond", fish.pond)]
    safe = {look: Markup(svg) for look, svg in (pictures or {}).items()}  # noqa: S704 - our own drawing
    return (
        _environment()
        .get_template("fish.html")
        .render(
            history=history,
            facts=[fact for fact in facts if fact[1]],
            style=Markup(_text("page.css")),  # noqa: S704 - a file of ours
            pictures=safe,
        )
    )


def album_page(fish: Sequence[tuple[Fish, Look]], pictures: Mapping[int, str]) -> str:
    """The latest picture of each fish with its name. pictures: drawings as SVG, by the number of the look."""
    safe = {look: Markup(svg) for look, svg in pictures.items() if svg}  # noqa: S704 - our own drawing
    style = Markup(_text("page.css"))  # noqa: S704 - a file of ours
    return _environment().get_template("album.html").render(fish=fish, pictures=safe, style=style)


def year_page(history: YearHistory) -> str:
    """The page of a year."""
    tables = [
        ("By first grade", "Grade", history.by_grade),
        ("By spawning", "Spawning", history.by_spawning),
        ("By pond", "Pond", history.by_pond),
        ("By bloodline", "Bloodline", history.by_bloodline),
    ]
    return (
        _environment()
        .get_template("year.html")
        .render(
            history=history,
            tables=tables,
            style=Markup(_text("page.css")),  # noqa: S704 - a file of ours
        )
    )


def _text(name: str) -> str:
    return files("koirules_book").joinpath("templates", name).read_text(encoding="utf-8")


def _environment() -> Environment:
    made = Environment(
        loader=FunctionLoader(_text), autoescape=select_autoescape(), trim_blocks=True, lstrip_blocks=True
    )
    made.filters.update(told=event_words, points=points_words, part=part_words, amount=amount_words)
    return made


def event_words(event: Event) -> str:
    """What an event says, without its kind and day."""
    match event.kind:
        case "sold":
            parts = [event.value and f"for {event.value}", event.what and f"to {event.what}"]
        case "shown":
            parts = [event.what, event.value and f"place {event.value}"]
        case "decided":
            parts = [event.value, event.what and f"in round {event.what}", event.who and f"by {event.who}"]
        case _:
            parts = [event.what, event.value]
    return ", ".join(part for part in [*parts, event.note] if part)


def points_words(ends: tuple[int, int]) -> str:
    """Hundredths of points as people read them."""
    low, high = (round(end / 100) for end in ends)
    return f"{low} points" if low == high else f"{low} to {high} points"


def part_words(part: Share) -> str:
    """A share as a number of fish, with its interval in whole per cent."""
    if not part.whole:
        return ""
    return f"{part.part} ({part.low:.0%} to {part.high:.0%})" if part.part else "0"


def amount_words(amount: float) -> str:
    """A sum of money without its currency, in whole units."""
    return f"{amount:,.0f}"
