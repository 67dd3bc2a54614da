"""A list of prizes as a page that can be published, and as certificates to print."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

from attrs import evolve, field

from koirules.languages import to_say
from koirules.prizes.awarding import Award, Part, Placings
from koirules.prizes.listing import PrizeList
from koirules.prizes.occasion import SCORE
from koirules.prizes.wording import PrizeWords
from koirules.records.about import About
from koirules.records.columns import OWNER
from koirules.records.not_graded import Row
from koirules.report.audience import Audience
from koirules.report.page_model import Fish, Page, page_of
from koirules.report.page_pictures import Pictures
from koirules.report.paper import write_sheet
from koirules.report.results_page import footed, page_file, policy
from koirules.report.templating import rendered
from koirules.values import frozen

_PLACES = (to_say("First place"), to_say("Second place"), to_say("Third place"))
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
    """A place as the page shows it. among: of how many fish, beside the name of a part. score: where it decides nothing."""

    part: str
    place: str
    fish: str
    variety: str
    owner: str
    grade: str
    score: str
    among: str
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
    words = [listed.title, listed.day, *([listed.class_words] if listed.class_words else [])]
    style = footed(page_file("page.css") + page_file("prizes.css"), listed.tongue.joined(words))
    page, fish = _seen(drawn, audience)
    made = rendered(
        "prizes.html",
        listed.tongue,
        listed=listed,
        fish=drawn.about.subject.one,
        blocks=[_block(one, listed, fish, audience, drawn.about.counted) for one in listed.placings],
        owners=audience.names_owners and listed.has_owners(),
        audience=audience,
        definitions=page.definitions if page else "",
        cautions=tuple(map(listed.tongue.of, cautions)),
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
        fish=drawn.about.subject.one,
        sheets=[_sheet(one, part, award, listed, fish, drawn, audience) for one, part, award in listed.awards],
        name=listed.tongue("Certificates of {occasion}", occasion=listed.title),
        paper=paper,
        tongue=listed.tongue,
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


def _block(
    one: Placings, listed: PrizeList, fish: Mapping[str, Fish], audience: Audience, counted: Callable[[int], str]
) -> _Block:
    places = sum(len(part.awards) for part in one.parts)
    lines: list[_Line] = []
    waits: list[tuple[str, str, str]] = []
    notes: list[str] = []
    for part in one.parts:
        title = listed.words.part(one.prize, part.names)
        for number, award in enumerate(part.awards):
            lines.append(
                _Line(
                    part=title if number == 0 else "",
                    place=str(award.place),
                    fish=award.fish,
                    variety=listed.variety(award.fish),
                    owner=listed.told(award.fish, OWNER) if audience.names_owners else "",
                    grade=listed.grade_and_score(award.fish).grade,
                    score="" if SCORE in one.prize.by else listed.grade_and_score(award.fish).score,
                    among=counted(part.fish) if title and number == 0 else "",
                    standing=listed.tongue.joined(award.standing),
                    told=_told(award, listed.words),
                    drawn=fish.get(award.fish) if places <= _MOST_DRAWN else None,
                )
            )
        waits += [(title, wait.words, listed.tongue.joined(wait.fish)) for wait in part.waiting]
        if part.note:
            notes.append(listed.tongue("{title}: {words}", title=title, words=part.note) if title else part.note)
    if one.without:
        named = listed.tongue.joined(one.without)
        notes.append(listed.tongue("Not parted, since something is not recorded: {fish}", fish=named))
    return _Block(
        title=listed.tongue.of(one.prize.title),
        goes_by=listed.words.decided_by(one.prize),
        parted=listed.tongue("class") if one.prize.for_each else "",
        lines=tuple(lines),
        waits=tuple(waits),
        notes=tuple(notes),
    )


def _told(award: Award, words: PrizeWords) -> str:
    told = [words.tongue("shared")] if award.shared else []
    if award.ruling is not None:
        told.append(words.ruled(award.fish, award.ruling))
    return words.tongue.joined(told)


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
    tongue, seal = listed.tongue, listed.told(award.fish, "seal")
    owner = listed.told(award.fish, OWNER) if audience.names_owners else ""
    facts = {
        tongue("variety"): listed.variety(award.fish),
        tongue("owner"): owner,
        tongue("length"): "" if length is None else tongue.quantity(f"{length:.1f}".removesuffix(".0") + " cm"),
        tongue("by"): tongue.joined(award.standing),
        tongue("among"): drawn.about.counted(part.fish),
    }
    return _Sheet(
        title=tongue.of(one.prize.title),
        place=tongue(_PLACES[award.place - 1])
        if award.place <= len(_PLACES)
        else tongue("Place {number}", number=award.place),
        part=listed.words.part(one.prize, part.names),
        fish=award.fish,
        facts={name: words for name, words in facts.items() if words},
        drawn=fish.get(award.fish),
        standard=next((by.told(tongue) for by in listed.standards if by.seal == seal), ""),
        seal=seal,
        told=_told(award, listed.words),
    )
