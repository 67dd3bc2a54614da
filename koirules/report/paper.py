"""Sheets to print: the certificate of one fish, labels for bags and tubs, lists of ponds to hang up, and a page for each pond."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping, Sequence
from pathlib import Path
from typing import Literal, assert_never, get_args

from attrs import field

from koirules.languages import ENGLISH, Tongue, to_say
from koirules.problems import Problem
from koirules.records.about import About
from koirules.records.columns import VARIETY
from koirules.records.writing import write_beside
from koirules.report.audience import Audience
from koirules.report.page_model import Fish, Page, page_of
from koirules.report.page_pictures import Pictures
from koirules.report.results_page import page_file, policy
from koirules.report.templating import rendered
from koirules.results.ranking import best_first
from koirules.results.result import Result
from koirules.values import frozen

Sheet = Literal["certificate", "labels", "lists", "ponds"]
Size = Literal["a5", "a4"]

SHEETS: tuple[Sheet, ...] = get_args(Sheet)
"""What can be printed."""

SIZES: tuple[Size, ...] = get_args(Size)

_DRAWN = 112.0
"""How long a fish is drawn on a certificate, in mm."""
_BARS = (1, 2, 5, 10, 20, 50)
_LONGEST_BAR = 46.0
_ORDER = (to_say("first of its lot"), to_say("second of its lot"), to_say("third of its lot"))


def _one_of(what: str, names: Collection[str]) -> Callable[[object, object, object], None]:
    """A check that a field has one of some names, as Python tells a wrong value."""

    def check(_paper: object, _field: object, value: object) -> None:
        if value not in names:
            raise ValueError(f"there is no {what} {value!r}; there are {', '.join(names)}")

    return check


@frozen
class Paper:
    """A sheet to print. fish, size: of which fish a certificate is, and its size. by: the label that says where a fish goes.

    Without `by` a fish goes where a round sends it, or to the place that its record names. Raises ValueError for a sheet or a
    size that there is none of.
    """

    sheet: Sheet = field(validator=_one_of("sheet", SHEETS))
    fish: str = ""
    by: str = ""
    size: Size = field(default="a5", validator=_one_of("size", SIZES))


@frozen
class _Bar:
    """The bar that shows the scale of a drawing: its length in cm of the fish, and in mm of the paper."""

    words: str
    long: str


@frozen
class Place:
    """The fish that go to one place, best first. name: of a pond, a tub or a round's target."""

    name: str
    fish: tuple[Fish, ...]
    counts: str


def write_paper(
    path: Path,
    wanted: Paper,
    results: Sequence[Result],
    about: About,
    pictures: Pictures | None = None,
    house: Audience | None = None,
) -> Problem | None:
    """Write a sheet, whole or not at all; a problem says why it could not be written.

    Raises ValueError where a certificate is wanted, and no settled fish has the name.
    """
    house, pictures, fish, by = house or Audience(), pictures or Pictures(), wanted.fish, wanted.by
    match wanted.sheet:
        case "certificate":
            one = next((one for one in results if one.fish == fish and one.grade is not None), None)
            if one is None:
                raise ValueError(f"there is no settled {about.subject.one} {fish!r}")
            return write_beside(
                path, lambda to: write_certificate(to, one, results, about, pictures, house, wanted.size)
            )
        case "labels":
            return write_beside(path, lambda to: write_labels(to, results, about, by, house))
        case "lists":
            return write_beside(path, lambda to: write_places(to, results, about, by, house))
        case "ponds":
            return write_beside(path, lambda to: write_places(to, results, about, by, house, pictures))
        case _:
            assert_never(wanted.sheet)


def write_certificate(
    path: Path,
    result: Result,
    results: Sequence[Result],
    about: About,
    pictures: Pictures,
    house: Audience,
    size: str = "a5",
) -> None:
    """Write the certificate of a fish whose grade is settled; results: of its whole lot. size: one of `SIZES`."""
    page = page_of([result], about, pictures, house)
    fish = page.parts[0].table[0]
    ranked = best_first(tuple(page.parts[0].wording.grades), results)
    place = next(at for at, one in enumerate(ranked) if one is result)
    tongue = about.tongue
    standing = tongue("place {number} of {all}", number=place + 1, all=tongue.whole(len(ranked)))
    if place < len(_ORDER):
        standing = tongue(_ORDER[place])
    look = pictures.look_of(result.fish)
    length = None if look is None else look.length
    facts = {
        tongue("variety"): tongue.of((result.labels.get(VARIETY) or about.variety or "").replace("_", " ")),
        tongue("length"): "" if length is None else tongue.quantity(f"{length:.1f}".removesuffix(".0") + " cm"),
        tongue("stage"): tongue.of(about.stage or ""),
        tongue("line"): result.labels.get("bloodline", ""),
        tongue("lot"): about.counted(len(results)),
    }
    write_sheet(
        path,
        "certificate.html",
        page=page,
        fish=fish,
        rank=standing,
        facts={name: words for name, words in facts.items() if words},
        bar=_bar(length, tongue),
        paper=size,
        tongue=tongue,
        name=tongue("Certificate of {fish}", fish=result.fish),
    )


def _bar(length: float | None, tongue: Tongue) -> _Bar | None:
    if not length:
        return None
    fitting = [step for step in _BARS if step / length * _DRAWN <= _LONGEST_BAR]
    step = max(fitting, default=_BARS[0])
    return _Bar(tongue("{length} on the drawing", length=f"{step} cm"), f"{step / length * _DRAWN:.1f}")


def write_labels(path: Path, results: Sequence[Result], about: About, by: str, house: Audience) -> None:
    """Write a label for each fish: its name, its grade, and where it goes. by: the label of the records that names the place."""
    page = page_of(results, about, Pictures(), house)
    places = _places_of(results, by, about.subject.place)
    fish = [(one, places.get(one.name, "")) for part in page.parts for one in part.table]
    write_sheet(
        path, "labels.html", page=page, labels=fish, tongue=about.tongue, name=about.tongue("Labels"), paper="a4"
    )


def write_places(
    path: Path, results: Sequence[Result], about: About, by: str, house: Audience, pictures: Pictures | None = None
) -> None:
    """Write the fish of each place as lists to hang up; with pictures as a page for each place."""
    page = page_of(results, about, pictures or Pictures(), house)
    write_sheet(
        path,
        "places.html",
        page=page,
        places=_gathered(page, _places_of(results, by, about.subject.place)),
        apart=pictures is not None,
        tongue=about.tongue,
        name=about.tongue.of(about.subject.places),
        paper="a4",
    )


def _places_of(results: Sequence[Result], by: str, place: str) -> Mapping[str, str]:
    """Where each fish goes: where a round sends it, else what its records name."""
    label = by or place
    return {one.fish: (one.sent_to if not by else "") or one.labels.get(label, "") for one in results}


def _gathered(page: Page, places: Mapping[str, str]) -> tuple[Place, ...]:
    found: dict[str, list[Fish]] = {}
    for part in page.parts:
        for fish in part.table:
            found.setdefault(places.get(fish.name, ""), []).append(fish)
    names = sorted(found, key=lambda name: (not name, name.casefold()))
    nowhere = page.tongue("no place")
    return tuple(Place(name or nowhere, tuple(found[name]), _counts(found[name], page.tongue)) for name in names)


def _counts(fish: Sequence[Fish], tongue: Tongue) -> str:
    """How many fish each grade has there, in words."""
    counted: dict[str, int] = {}
    for one in fish:
        counted[one.badge.title] = counted.get(one.badge.title, 0) + 1
    return tongue.joined(
        tongue("{number} {grade}", number=tongue.whole(number), grade=title) for title, number in counted.items()
    )


def write_sheet(path: Path, template: str, *, paper: str, tongue: Tongue = ENGLISH, **values: object) -> None:
    """Write a template that extends `paper.html`; size: one of `SIZES`."""
    style = page_file("paper.css").replace("@page { size: A4;", f"@page {{ size: {paper.upper()};")
    made = rendered(template, tongue, style=style, policy=policy(style), paper=paper, **values)
    path.write_text(made.lstrip(), encoding="utf-8", newline="\n")
