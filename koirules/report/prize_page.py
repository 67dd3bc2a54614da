"""A list of prizes as a page that can be published, and as certificates to print."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from attrs import evolve, field, frozen

from koirules.prizes.awarding import Award, Part, Placings, part_title
from koirules.prizes.listing import OWNER, PrizeList
from koirules.records.about import About
from koirules.records.not_graded import Row
from koirules.report.audience import Audience
from koirules.report.page_model import Fish, Page, page_of
from koirules.report.page_pictures import Pictures
from koirules.report.paper import write_sheet
from koirules.report.results_page import page_file, policy
from koirules.report.templating import rendered

_ORDINALS = ("First", "Second", "Third")
_MOST_DRAWN = 12
"""A prize with more places than this is a table without drawings, so that a page of many classes stays small."""


@frozen
class Drawn:
    """What is needed to draw the fish that won: their results, standard after standard, and what can be seen of them."""

    rows: tuple[Row, ...]
    about: About
    pictures: Pictures = field(factory=Pictures)


@frozen
class _Line:
    """A place as the page shows it."""

    part: str
    place: str
    fish: str
    variety: str
    owner: str
    standing: str
    told: str
    drawn: Fish | None


@frozen
class _Block:
    """A prize as the page shows it. waits: sentences, each with the fish that it is about."""

    title: str
    goes_by: str
    parted: str
    lines: tuple[_Line, ...]
    waits: tuple[tuple[str, str, str], ...]
    notes: tuple[str, ...]


@frozen
class _Sheet:
    """A certificate."""

    title: str
    place: str
    part: str
    fish: str
    facts: Mapping[str, str] = field(hash=False)
    drawn: Fish | None
    standard: str
    seal: str
    told: str


def write_prizes_page(
    path: Path, listed: PrizeList, drawn: Drawn, audience: Audience, cautions: tuple[str, ...] = ()
) -> None:
    """Write the list as one page that needs nothing else. Owners are shown to the house only."""
    style = page_file("page.css") + page_file("prizes.css")
    page, fish = _seen(drawn, audience)
    made = rendered(
        "prizes.html",
        listed=listed,
        blocks=[_block(one, listed, fish, audience) for one in listed.placings],
        owners=audience.is_house and listed.has_owners(),
        audience=audience,
        definitions=page.definitions if page else "",
        cautions=cautions,
        style=style,
        policy=policy(style),
    )
    path.write_text(made.lstrip(), encoding="utf-8", newline="\n")


def write_prize_certificates(path: Path, listed: PrizeList, drawn: Drawn, audience: Audience, paper: str) -> None:
    """Write a certificate for each place that is given, one a sheet of paper (`a4` or `a5`)."""
    page, fish = _seen(drawn, audience)
    # Drawings are shared within a page, so every sheet stands in one file.
    write_sheet(
        path,
        "prize_certificates.html",
        page=page or _NoPage(audience),
        listed=listed,
        sheets=[_sheet(one, part, award, listed, fish, drawn, audience) for one, part, award in listed.awards],
        name=f"Certificates of {listed.occasion.title}",
        paper=paper,
    )


@frozen
class _NoPage:
    """Stands for the page of fish where nobody won."""

    audience: Audience
    definitions: str = ""


def _seen(drawn: Drawn, audience: Audience) -> tuple[Page | None, dict[str, Fish]]:
    if not drawn.rows:
        return None, {}
    page = page_of(drawn.rows, drawn.about, drawn.pictures, evolve(audience, is_house=True))
    return page, {one.name: one for part in page.parts for one in part.table}


def _block(one: Placings, listed: PrizeList, fish: Mapping[str, Fish], audience: Audience) -> _Block:
    places = sum(len(part.awards) for part in one.parts)
    lines: list[_Line] = []
    waits: list[tuple[str, str, str]] = []
    notes: list[str] = []
    for part in one.parts:
        title = part_title(one.prize, part.names, listed.table)
        for number, award in enumerate(part.awards):
            lines.append(
                _Line(
                    part=title if number == 0 else "",
                    place=str(award.place),
                    fish=award.fish,
                    variety=listed.variety(award.fish),
                    owner=listed.told(award.fish, OWNER) if audience.is_house else "",
                    standing=", ".join(award.standing),
                    told=_told(award),
                    drawn=fish.get(award.fish) if places <= _MOST_DRAWN else None,
                )
            )
        waits += [(title, wait.words, ", ".join(wait.fish)) for wait in part.waiting]
        notes += [f"{title}: {part.note}" if title else part.note] if part.note else []
    if one.without:
        notes.append(f"Not parted, since something is not recorded: {', '.join(one.without)}")
    return _Block(
        title=one.prize.title,
        goes_by=", then ".join(key.removeprefix("section ") for key in one.prize.by),
        parted="class" if one.prize.for_each else "",
        lines=tuple(lines),
        waits=tuple(waits),
        notes=tuple(notes),
    )


def _told(award: Award) -> str:
    words = ["shared"] if award.shared else []
    if award.ruling is not None:
        words.append(f"decided by {award.ruling.by}{f': {award.ruling.reason}' if award.ruling.reason else ''}")
    return ", ".join(words)


def _sheet(
    one: Placings,
    part: Part,
    award: Award,
    listed: PrizeList,
    fish: Mapping[str, Fish],
    drawn: Drawn,
    audience: Audience,
) -> _Sheet:
    look = drawn.pictures.look_of(award.fish)
    length = None if look is None else look.length
    owner = listed.told(award.fish, OWNER) if audience.is_house else ""
    facts = {
        "variety": listed.variety(award.fish),
        "owner": owner,
        "length": "" if length is None else f"{length:.1f}".removesuffix(".0") + " cm",
        "by": ", ".join(award.standing),
        "among": f"{part.fish:,} fish",
    }
    return _Sheet(
        title=one.prize.title,
        place=_place(award),
        part=part_title(one.prize, part.names, listed.table),
        fish=award.fish,
        facts={name: words for name, words in facts.items() if words},
        drawn=fish.get(award.fish),
        standard=listed.told(award.fish, "standard"),
        seal=listed.told(award.fish, "seal"),
        told=_told(award),
    )


def _place(award: Award) -> str:
    words = _ORDINALS[award.place - 1] if award.place <= len(_ORDINALS) else ""
    return f"{words} place" if words else f"Place {award.place}"
