"""`koirules prizes`: the list of prizes of a show, over the fish of several standards."""

from __future__ import annotations

import shutil
import sys
import textwrap
from collections.abc import Callable, Mapping, Sequence
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING

import click
from attrs import evolve

from koirules.commands.classing import class_table
from koirules.commands.grade_mixed import Several, about_several, graded_by_several
from koirules.commands.inputs import (
    Graded,
    is_same_file,
    label_option,
    language_option,
    replace_option,
    rule_files_in,
    setting_option,
    stop_if_there,
    varieties_installed,
)
from koirules.commands.output import (
    DOES_NOT_HOLD,
    show_paragraph,
    show_problems,
    shown,
    stop,
    stop_if_refused,
)
from koirules.commands.page_options import house_options, reader_option
from koirules.languages import Tongue
from koirules.prizes.awarding import Why, check_named
from koirules.prizes.awarding import award as award_all
from koirules.prizes.files import read_ballots, read_rulings, write_prizes_csv, write_prizes_json, write_prizes_xlsx
from koirules.prizes.listing import By, Left, PrizeList, entrants_of, graded_as
from koirules.prizes.reading import Entered, check_names, lowest_placed, read_occasion, votes_wanted
from koirules.prizes.wording import PrizeWords
from koirules.problems import Problem
from koirules.problems.saving import unknown_output_ending
from koirules.records.columns import OWNER
from koirules.records.writing import check_folder, write_beside
from koirules.report.audience import Audience
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.subject import SHOW, Subject, in_common

if TYPE_CHECKING:
    from koirules.api import Standard
    from koirules.classes.table import ClassTable
    from koirules.prizes.awarding import Entrant, Placings
    from koirules.prizes.occasion import Occasion

_ENDINGS = (".html", ".csv", ".xlsx", ".json")
_PAPERS = ("a5", "a4")


@click.command("prizes")
@click.argument("occasion", metavar="OCCASION")
@click.argument("records", type=click.Path())
@click.option(
    "--rules",
    multiple=True,
    required=True,
    metavar="RULES",
    help="A rule file, a folder of them, or a rule set; several.",
)
@click.option("--votes", type=click.Path(), metavar="FILE", help="The votes of judges: judge, fish, prize.")
@click.option(
    "--decisions", type=click.Path(), metavar="FILE", help="What a person decided about ties: prize, fish, by, reason."
)
@click.option(
    "--out", "outs", type=click.Path(), multiple=True, metavar="FILE", help="Write it (.html, .csv, .xlsx, .json)."
)
@click.option(
    "--certificates", type=click.Path(), metavar="FILE", help="Write a certificate for each place, .html to print."
)
@click.option("--paper", type=click.Choice(_PAPERS), default="a5", help="The size of the certificates.")
@label_option
@setting_option
@language_option
@replace_option
@reader_option("Whether owners are named: to the house they are, to a customer or the public not.")
@house_options
def command(
    occasion: str,
    records: str,
    rules: tuple[str, ...],
    votes: str | None,
    decisions: str | None,
    outs: tuple[str, ...],
    certificates: str | None,
    paper: str,
    labels: tuple[str, ...],
    changes: tuple[str, ...],
    language: str | None,
    replace: bool,
    reader: str,
    house: Audience,
) -> None:
    """Award the prizes of OCCASION, a table (.toml) that a committee writes, to the fish in RECORDS.

    Each fish is graded by the rules of its variety and put into its class by the class table that OCCASION names. Fish in no
    class are named first. Fish that nothing tells apart share a place or wait for a decision, as OCCASION says; a place
    that waits, and every later prize that depends on it, is named with what it waits for, and the exit status is then 1.
    """
    written = [*outs, *([certificates] if certificates else [])]
    _check_paths(outs, certificates, [occasion, records, *rules, *filter(None, (votes, decisions))])
    stop_if_there(written, replace=replace)
    found = read_occasion(Path(occasion))
    ballots, of_votes = ((), ()) if votes is None else read_ballots(Path(votes))
    rulings, of_rulings = ((), ()) if decisions is None else read_rulings(Path(decisions))
    if isinstance(found, tuple):
        stop_if_refused([*found, *of_votes, *of_rulings])
        raise AssertionError("an occasion without problems is an occasion")
    unvoted = () if votes is not None else votes_wanted(found)
    stop_if_refused([*unvoted, *of_votes, *of_rulings])
    table = class_table_of(found)
    headings = _headings(Path(records))
    wanted = [*labels, *(name for name in (*found.columns, "owner") if folded(name) in headings)]
    carried = {folded(name): name for name in reversed(wanted) if folded(name) not in {"variety", "stage"}}
    every = [file for given in rules for file in rule_files_in(Path(given)) or (given,)]
    several = graded_by_several(every, records, tuple(carried.values()), changes, language, None, table)
    used = [standard for standard, part in zip(several.standards, several.graded, strict=True) if part.results]
    words = words_of(found, table, several.standards, language)
    lowest = [standard.grades[-1] for standard in several.standards]
    entrants = entrants_of([part.results for part in several.graded], table, lowest, words.tongue)
    entered = [
        evolve(entered_by(standard), fish=tuple(one.labels for one in entrants if one.standard == number))
        for number, standard in enumerate(several.standards)
        if standard in used or not used
    ]
    stop_if_refused(
        [
            *check_names(found, table, entered, list(headings.values()), shown(records)),
            *check_named(found, entrants, ballots, votes or ""),
            *check_named(found, entrants, rulings, decisions or ""),
        ]
    )
    _stop_where_owners_part(found, evolve(house, is_house=reader == "house"))
    placings, problems = award_all(found, table, entrants, ballots, rulings, (votes or "", decisions or ""), words)
    graded = [standard.grades for standard in several.standards]
    stop_if_refused([*problems, *lowest_placed(found, placings, entrants, graded)])
    if house.title:
        found = evolve(found, title=house.title)
    listed = _listed(found, words, placings, several, entrants, Path(records).name)
    house = evolve(house, is_house=reader == "house")
    _write(listed, several, outs, certificates, paper, house)
    _tell(listed, _subject(several), owners=house.names_owners)
    show_paragraph(words.tongue.of(_caution(several)), dim=True)
    if listed.waiting or several.batch.left:
        sys.exit(DOES_NOT_HOLD)


def _check_paths(outs: Sequence[str], certificates: str | None, given: Sequence[str]) -> None:
    """End the command where something cannot be written, before anything is graded."""
    found: list[Problem | None] = []
    for out in outs:
        ending = Path(out).suffix
        wrong = unknown_output_ending(out, ending, _ENDINGS) if ending.lower() not in _ENDINGS else None
        found.append(wrong or check_folder(Path(out)))
    if certificates is not None:
        ending = Path(certificates).suffix
        wrong = unknown_output_ending(certificates, ending, (".html",)) if ending.lower() != ".html" else None
        found.append(wrong or check_folder(Path(certificates)))
    problems = [one for one in found if one is not None]
    if problems:
        show_problems(problems)
        stop("Nothing was written.")
    written = [*outs, *([certificates] if certificates else [])]
    for number, out in enumerate(written):
        if any(is_same_file(out, one) for one in given):
            stop(f"{shown(out)} is what was given: the prizes would take its place. Nothing was written.")
        if any(is_same_file(out, one) for one in written[:number]):
            stop(f"{shown(out)} is named twice as a file to write. Nothing was written.")


def class_table_of(occasion: Occasion) -> ClassTable | None:
    """The class table of an occasion: a file beside it, or a shipped one by its name."""
    if not occasion.classes:
        return None
    name = occasion.classes
    beside = Path(occasion.file).parent / name
    return class_table(str(beside) if name.lower().endswith(".toml") else name, varieties_installed())


def _headings(records: Path) -> dict[str, str]:
    """The headings of the records as they are written, by their folded names; none where they cannot be read."""
    from koirules.records.records import read_table

    return {folded(heading.text): heading.text for heading in read_table(records).headings if heading.text}


def _stop_where_owners_part(occasion: Occasion, house: Audience) -> None:
    parted = [prize.title for prize in occasion.prizes if "owner" in map(folded, prize.for_each)]
    if parted and not house.names_owners:
        asked = "--no-owners" if house.is_house else "--for customer"
        stop(f"The prize {shown(parted[0])} is for each owner, so that {asked} cannot leave owners out.")


def entered_by(standard: Standard) -> Entered:
    """A standard as far as prizes read it."""
    sections = {section.name: Decimal(section.worth) / 100 for section in standard.rules.sections}
    return Entered(f"{standard.title}, edition {standard.edition}", standard.grades, sections)


def words_of(
    occasion: Occasion | None, table: ClassTable | None, standards: Sequence[Standard], language: str | None
) -> PrizeWords:
    """In which words prizes are told: those of the catalogues beside the occasion, its class table and the rules."""
    from koirules.languages import ENGLISH, CatalogueError, beside

    sections = {one.name: standard.section_title(one.name) for standard in standards for one in standard.rules.sections}
    if language is None or not standards:
        return PrizeWords(table, ENGLISH, sections)
    files = [one.file for one in (occasion, table) if one is not None]
    try:
        tongue = standards[0].tongue.also(beside(files, language.lower()))
    except CatalogueError as error:
        stop(f"{shown(str(error))}. Nothing was written.")
    return PrizeWords(table, tongue, sections)


def _listed(
    occasion: Occasion,
    words: PrizeWords,
    placings: tuple[Placings, ...],
    several: Several,
    entrants: Sequence[Entrant],
    records: str,
) -> PrizeList:
    admits = any(prize.outside for prize in occasion.prizes)
    left = [Left(one.fish, one.outside, admits) for one in entrants if one.outside]
    left += [
        Left(
            one.fish or words.tongue("row {number}", number=one.row),
            words.tongue("not graded: {why}", why=one.told(words.tongue)),
        )
        for one in several.batch.left
    ]
    used = [one for one, part in zip(several.standards, several.graded, strict=True) if part.results]
    labels = {one.fish: {**result.labels, **one.labels} for one, result in zip(entrants, several.results, strict=True)}
    standards = tuple(By(one.title, one.edition, one.seal) for one in used)
    graded = {
        result.fish: graded_as(result, standard.grade_titles, words.tongue, scores=bool(standard.rules.sections))
        for standard, part in zip(several.standards, several.graded, strict=True)
        for result in part.results
    }
    return PrizeList(occasion, words.table, placings, tuple(left), standards, labels, records, words, graded)


def _caution(several: Several) -> str:
    """What to bear in mind at a show with what its standards are about."""
    return _subject(several).cautions_for(SHOW).short


def _subject(several: Several) -> Subject:
    return in_common(one.subject for one in several.standards)


def _write(
    listed: PrizeList, several: Several, outs: Sequence[str], certificates: str | None, paper: str, house: Audience
) -> None:
    """Write every file; ends the command where one of them could not be written."""
    from koirules.commands.writing_results import pictures_of
    from koirules.report.page_pictures import Pictures
    from koirules.report.prize_page import Drawn, write_prize_certificates, write_prizes_page

    if not outs and certificates is None:
        return
    winners = {award.fish for _, _, award in listed.awards}
    graded = [
        Graded(
            evolve(part.batch, records=tuple(one for one in part.batch.records if one.fish in winners)),
            evolve(part.outcome, results=tuple(one for one in part.results if one.fish in winners)),
        )
        for part in several.graded
    ]
    given = [(standard, part.batch) for standard, part in zip(several.standards, graded, strict=True)]
    drawn = any(Path(out).suffix.lower() == ".html" for out in outs) or certificates is not None
    pictures = pictures_of(given) if drawn else Pictures()
    about = about_several(several.standards, graded, listed.records)
    seen = Drawn(tuple(row for part in graded for row in part.results), about, pictures)
    owners = house.names_owners
    makers: Mapping[str, Callable[[Path], None]] = {
        ".html": lambda path: write_prizes_page(path, listed, seen, house, (_caution(several),)),
        ".csv": lambda path: write_prizes_csv(path, listed, owners=owners),
        ".xlsx": lambda path: write_prizes_xlsx(path, listed, owners=owners),
        ".json": lambda path: write_prizes_json(path, listed, owners=owners),
    }
    jobs = [(out, makers[Path(out).suffix.lower()]) for out in outs]
    if certificates is not None:
        jobs.append((certificates, lambda path: write_prize_certificates(path, listed, seen, house, paper)))
    failed: list[Problem] = []
    for name, make in jobs:
        problem = write_beside(Path(name), make)
        if problem is None:
            click.echo(f"Wrote {shown(name)}.")
        else:
            failed.append(problem)
    if failed:
        show_problems(failed)
        stop("Not everything was written.")


def _tell(listed: PrizeList, subject: Subject, *, owners: bool) -> None:
    """Print the list: what is in no class, the places, and last what waits, which a person has to do something about."""
    tongue = listed.tongue
    click.echo(click.style(f"{shown(listed.title)}, {shown(listed.day)}", bold=True))
    if listed.table is not None:
        click.echo(f"{tongue('Classes')}: {shown(listed.class_words)}")
    if listed.left:
        many = tongue.counted(subject.one, subject.many, len(listed.left))
        left = tongue("In no class, not graded, or kept from prizes by a fault: {fish}", fish=many)
        click.echo(click.style(f"\n{left}", bold=True))
        for why, fish in listed.left_together:
            _line(f"{shown(why)}: {', '.join(map(shown, fish))}")
    for one in listed.placings:
        click.echo(click.style(f"\n{shown(listed.tongue.of(one.prize.title))}", bold=True))
        _tell_prize(listed, one, subject, owners=owners)
    click.echo()
    given, waiting = len(listed.awards), listed.waiting
    places = tongue.plural("{number} place given", "{number} places given", given)
    settle = tongue("{number} to settle", number=tongue.whole(len(waiting))) if waiting else tongue("none to settle")
    click.echo(click.style(tongue.joined([places, settle]), bold=True))
    for placings, part, wait in waiting:
        head = listed.words.prize(placings.prize, part.names)
        _line(f"{shown(head)}: {shown(wait.words)} {_few(subject, wait.fish, tongue)}")
    tied = dict.fromkeys(one.prize.name for one, _, wait in waiting if wait.why is Why.TIE)
    if tied:
        names = shown(", ".join(tied))
        _line(
            tongue("Decide ties in a table with the columns prize, fish, by and reason, and give it with --decisions.")
        )
        _line(tongue("In the column prize write the name of the prize: {names}.", names=names))
    click.echo()


def _tell_prize(listed: PrizeList, one: Placings, subject: Subject, *, owners: bool) -> None:
    tongue = listed.tongue
    if not one.parts:
        click.echo(f"  {tongue('no {fish} in question', fish=tongue.of(subject.one))}")
    titles = [shown(listed.words.part(one.prize, part.names)) for part in one.parts]
    wide = min(max(map(len, titles), default=0), 26)
    names = [award.fish for part in one.parts for award in part.awards]
    width = min(max((len(shown(name)) for name in names), default=0), 16)
    for title, part in zip(titles, one.parts, strict=True):
        head = f"{title:<{wide}}  " if wide else ""
        blank = " " * len(head)
        for award in part.awards:
            words = [listed.variety(award.fish), listed.told(award.fish, OWNER) if owners else "", *award.standing]
            words += [tongue("shared")] if award.shared else []
            if award.ruling is not None:
                words.append(listed.words.ruled(award.fish, award.ruling))
            told = shown(tongue.joined(filter(None, words)))
            line = f"{head}{award.place:>2}  {shown(award.fish):<{width}}  {told}"
            _line(line, len(head) + width + 6)
            head = blank
        for wait in part.waiting:
            _line(f"{head}{tongue('{number} to settle, see below', number=wait.places)}", len(head) + 2)
            head = blank
        if part.note:
            _line(f"{head}{shown(part.note)}", len(head) + 2)
    if one.without:
        named = tongue.joined(map(shown, one.without))
        _line(tongue("not parted, since something is not recorded: {fish}", fish=named))
    if one.empty:
        nothing = tongue.of(subject.one)
        _line(
            tongue.plural("no {fish} in {number} class", "no {fish} in {number} classes", len(one.empty), fish=nothing)
        )


def _few(subject: Subject, fish: Sequence[str], tongue: Tongue) -> str:
    named = tongue.joined(map(shown, fish[:12]))
    if len(fish) > 12:
        named = tongue("{fish} and {number} more", fish=named, number=tongue.whole(len(fish) - 12))
    return f"{tongue.sentence(tongue.of(subject.many)).rstrip('.。')}: {named}{tongue.of('.', 'end of a sentence')}"


def _line(text: str, indent: int = 4) -> None:
    """Print a line under a heading; what is too long for the terminal goes on below, indented."""
    width = min(100, shutil.get_terminal_size((100, 24)).columns)
    later = " " * min(indent + 2, width // 2)
    wrapped = textwrap.wrap(text, width, initial_indent="  ", subsequent_indent=later, drop_whitespace=False)
    click.echo("\n".join(line.rstrip() for line in wrapped))
