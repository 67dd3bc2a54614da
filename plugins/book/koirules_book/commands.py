"""`koirules book` and `koirules learn`."""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Sequence
from datetime import date
from functools import wraps
from math import isnan
from pathlib import Path
from typing import TYPE_CHECKING, Any, NoReturn, cast

import click

from koirules import KoirulesError, Problem, load_standard
from koirules_book.problems import BookError, stop_at_judges

if TYPE_CHECKING:
    from koirules import Result, Standard
    from koirules_book.histories import FishHistory

PROBLEMS = 2
_CLEAN = dict.fromkeys([*range(9), *range(11, 32), *range(0x7F, 0xA0)])


def _told(command: Callable[..., None]) -> Callable[..., None]:
    """Ends a command with status 2 and every problem, where it meets some."""

    @wraps(command)
    def run(*given: Any, **named: Any) -> None:
        try:
            command(*given, **named)
        except (BookError, KoirulesError) as error:
            _stop(error.problems)

    return run


def _stop(problems: Sequence[Problem]) -> NoReturn:
    for problem in problems[:200]:
        word = click.style("warning" if problem.warning else "problem", bold=True)
        click.echo(
            f"{word}: {_clean(str(problem.site))}\n  {_clean(problem.cause)}\n  {_clean(problem.mend)}  [{problem.code}]",
            err=True,
        )
    sys.exit(PROBLEMS)


def _clean(text: str) -> str:
    return text.translate(_CLEAN)


def _count(number: int, one: str, many: str) -> str:
    return f"{number:,} {one if number == 1 else many}"


BOOK = click.argument("book_file", metavar="BOOK", type=click.Path(path_type=Path))


@click.group("book", no_args_is_help=True)
def book() -> None:
    """Keep a book of fish over the years, and ask it what became of them.

    BOOK is one SQLite file. Everything in it stays on this machine.
    """


@book.command("start")
@BOOK
@_told
def start(book_file: Path) -> None:
    """Start a new book."""
    from koirules_book.book import Book

    Book.start(book_file).close()
    click.echo(f"Started {book_file}.")


@book.command("enter")
@click.argument("rules")
@BOOK
@click.argument("records", type=click.Path(path_type=Path))
@click.option("--day", type=click.DateTime(["%Y-%m-%d"]), help="The day of looks without a date.")
@click.option("--same", multiple=True, metavar="FISH", help="This fish was moved from another pond. Again for several.")
@click.option("--other", multiple=True, metavar="FISH", help="This is another fish of a known name. Again for several.")
@_told
def enter(rules: str, book_file: Path, records: Path, day: Any, same: tuple[str, ...], other: tuple[str, ...]) -> None:
    """Enter looks from RECORDS, graded by RULES.

    The columns `date`, `sorter`, `pond`, `photo`, `spawning`, `bloodline` and `tag` say when, who, where and which fish.
    A file that was entered before adds nothing. A look of the same fish, day and sorter that says something else corrects it.
    """
    from koirules_book.adding import Names, add_looks
    from koirules_book.book import Book

    standard = load_standard(rules)
    labels = [
        name for name in ("pond", "sorter", "photo", "spawning", "bloodline", "tag") if name not in standard.traits
    ]
    read = standard.read_records(records, labels)
    stop_at_judges(str(records), read)
    with Book.open(book_file) as opened, _Progress(len(read), "Entering") as told:
        added = add_looks(
            opened, standard, read, records, day and day.date(), Names(frozenset(same), frozenset(other)), told
        )
    new = f"{_count(added.looks, 'look', 'looks')} entered, {_count(added.fish, 'new fish', 'new fish')}"
    known = f"; {added.known:,} known already" if added.known else ""
    corrected = f"; {_count(added.corrected, 'value', 'values')} corrected" if added.corrected else ""
    click.echo(f"{new}{known}{corrected}.")


class _Progress:
    """A line on the error stream that counts, where somebody watches."""

    def __init__(self, count: int, word: str) -> None:
        self.count, self.word = count, word
        self.watched = sys.stderr.isatty() and count > 2000

    def __enter__(self) -> Callable[[int], None]:
        return self._tell

    def _tell(self, done: int) -> None:
        if self.watched:
            click.echo(f"\r{self.word}: {done:,} of {self.count:,}", nl=False, err=True)

    def __exit__(self, *_: object) -> None:
        if self.watched:
            click.echo("", err=True)


_KINDS = ("decided", "sold", "died", "shown", "became")


@book.command("note")
@BOOK
@click.argument("kind", type=click.Choice(_KINDS))
@click.argument("table", type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.option("--with-people", is_flag=True, help="Keep the names of buyers, too.")
@_told
def note(book_file: Path, kind: str, table: Path, with_people: bool) -> None:
    """Note what happened to fish, from a CSV file.

    Every TABLE has the column `fish`, and may have `pond`, `day` and `note`. By KIND it also has:
    decided: round, grade, by. sold: price, to (kind of buyer), buyer. died: cause. shown: show, place. became: what, value, by.
    """
    from koirules_book.adding import add_events
    from koirules_book.book import Book

    with Book.open(book_file) as opened:
        new = add_events(opened, kind, table, people=with_people)
    click.echo(f"{_count(new, 'event', 'events')} noted.")


@book.command("correct")
@BOOK
@click.argument("fish")
@click.argument("trait")
@click.argument("value")
@click.option("--because", required=True, help="Why, for those who read it later.")
@click.option("--day", type=click.DateTime(["%Y-%m-%d"]), help="The day of the look; by default the latest.")
@click.option("--pond", help="Which fish, where several have the name.")
@click.option("--by", "who", default="", help="Who corrects it.")
@_told
def correct(
    book_file: Path, fish: str, trait: str, value: str, because: str, day: Any, pond: str | None, who: str
) -> None:
    """Put one value of a look right; what stood there is kept. An empty VALUE takes it out."""
    from koirules_book.book import Book

    with Book.open(book_file) as opened:
        found = opened.one_named(fish, pond)
        looks = [look for look in opened.looks(found.id) if day is None or look.day == day.date()]
        if not looks:
            click.echo(f"{fish} was not looked at on that day.", err=True)
            sys.exit(PROBLEMS)
        opened.correct(looks[-1].id, trait, value, because, who)
    click.echo("Corrected. Enter the record again with its rules, or `koirules book regrade`, to grade it anew.")


@book.command("regrade")
@click.argument("rules")
@BOOK
@_told
def regrade(rules: str, book_file: Path) -> None:
    """Grade every look by RULES, and keep these grades beside the earlier ones."""
    from koirules_book.book import Book
    from koirules_book.regrading import regrade_all

    standard = load_standard(rules)
    with Book.open(book_file) as opened:
        (count,) = opened.db.execute("SELECT count(*) FROM looks").fetchone()
        with _Progress(count, "Grading") as told:
            graded, refused = regrade_all(opened, standard, told)
    click.echo(f"{_count(graded, 'look', 'looks')} graded by {standard.title}, edition {standard.edition}.")
    if refused:
        click.echo(f"{_count(refused, 'look', 'looks')} cannot be read by these rules, and kept their earlier grades.")
        sys.exit(1)


@book.command("list")
@BOOK
@click.option("--search", default="", help="Part of a name, tag, spawning or bloodline.")
@click.option("--most", default=50, show_default=True, help="How many lines at most.")
@_told
def list_fish(book_file: Path, search: str, most: int) -> None:
    """List the fish of a book."""
    from koirules_book.book import Book

    with Book.open(book_file) as opened:
        rows = opened.db.execute(
            "SELECT f.name, f.pond, f.spawning, count(l.id), max(l.day)"
            " FROM fish f LEFT JOIN looks l ON l.fish = f.id"
            " WHERE f.name LIKE ?1 OR f.tag LIKE ?1 OR f.spawning LIKE ?1 OR f.bloodline LIKE ?1"
            " GROUP BY f.id ORDER BY f.name LIMIT ?2",
            (f"%{search}%", most + 1),
        ).fetchall()
    for name, pond, spawning, looks, day in rows[:most]:
        place = f", pond {pond}" if pond else ""
        line = f", spawning {spawning}" if spawning else ""
        click.echo(
            _clean(f"{name}{place}{line}: {_count(looks, 'look', 'looks')}, the latest {day or 'without a day'}")
        )
    if len(rows) > most:
        click.echo(f"There are more. Search, or raise --most {most}.")


@book.command("fish")
@BOOK
@click.argument("name")
@click.option("--pond", help="Which fish, where several have the name.")
@click.option("--rules", multiple=True, help="Grade each look by these rules today, too. Again for several.")
@click.option("--out", type=click.Path(path_type=Path), help="Write the page as HTML.")
@click.option("--json", "as_json", is_flag=True, help="Print everything as JSON.")
@click.option("--replace", is_flag=True, help="Write over an earlier page.")
@_told
def fish(
    book_file: Path, name: str, pond: str | None, rules: tuple[str, ...], out: Path | None, as_json: bool, replace: bool
) -> None:
    """Show a fish: its looks, its grades then and now, what happened, and what was foreseen beside what came."""
    from koirules_book.book import Book
    from koirules_book.histories import fish_history
    from koirules_book.pages import event_words, fish_page, points_words

    standards = [load_standard(one) for one in rules]
    with Book.open(book_file) as opened:
        history = fish_history(opened, opened.one_named(name, pond), standards)
    pictures = _drawings(standards, history)
    if out:
        _write(out, fish_page(history, pictures), replace)
        return
    if as_json:
        click.echo(_as_data(history))
        return
    facts = [
        f"{word} {value}"
        for word, value in (("spawning", history.fish.spawning), ("bloodline", history.fish.bloodline))
        if value
    ]
    click.echo(_clean(", ".join([click.style(history.fish.name, bold=True), *facts])))
    for page in history.looks:
        click.echo(_clean(f"\n{page.look.day or 'No day'}{f', by {page.look.sorter}' if page.look.sorter else ''}"))
        for grade in page.grades:
            click.echo(_clean(f"  {grade.grade}, {points_words((grade.low, grade.high))}: {grade.standard}"))
        seen = "; ".join(f"{title} {value}" for _, title, value in page.seen if len(value) < 40)
        click.echo(_clean(click.wrap_text(seen, 78, "  ", "  ")))
    for event in history.events:
        click.echo(_clean(f"\n{event.day or 'No day'}: {event.kind}, {event_words(event)}"))
    for one in history.foreseen:
        click.echo(_clean(f"  {one.title}: {one.foreseen} foreseen, {one.came} came"))


def _drawings(standards: Sequence[Standard], history: FishHistory) -> dict[int, str]:
    """A drawing of each look whose pattern was mapped, by the first of the standards that has its traits."""
    found = {}
    for page in history.looks:
        for standard in standards:
            known = {name: value for name, value in page.look.record.items() if name in standard.traits}
            drawn = standard.drawing(known, history.fish.name)
            if drawn:
                found[page.look.id] = drawn
                break
    return found


@book.command("album")
@BOOK
@click.option("--out", required=True, type=click.Path(path_type=Path), help="Write the album as HTML.")
@click.option("--rules", help="Draw fish without a photograph by the traits of these rules.")
@click.option("--search", default="", help="Part of a name, tag, spawning or bloodline.")
@click.option("--most", default=200, show_default=True, help="How many fish at most.")
@click.option("--replace", is_flag=True, help="Write over an earlier album.")
@_told
def album(book_file: Path, out: Path, rules: str | None, search: str, most: int, replace: bool) -> None:
    """Show the latest picture of each fish with its name, to find a fish by eye."""
    from koirules_book.book import Book
    from koirules_book.histories import latest_looks
    from koirules_book.pages import album_page

    standard = load_standard(rules) if rules else None
    with Book.open(book_file) as opened:
        found = latest_looks(opened, search, most)
    pictures = {}
    for _, look in found:
        if standard is not None and not look.photo:
            known = {name: value for name, value in look.record.items() if name in standard.traits}
            pictures[look.id] = standard.drawing(known, grown=False)
    _write(out, album_page(found, pictures), replace)


@book.command("year")
@BOOK
@click.argument("year", type=click.IntRange(1900, 2200))
@click.option("--out", type=click.Path(path_type=Path), help="Write the page as HTML.")
@click.option("--json", "as_json", is_flag=True, help="Print everything as JSON.")
@click.option("--replace", is_flag=True, help="Write over an earlier page.")
@_told
def year(book_file: Path, year: int, out: Path | None, as_json: bool, replace: bool) -> None:
    """Show what became of the fish that were first looked at in YEAR."""
    from koirules_book.book import Book
    from koirules_book.histories import year_history
    from koirules_book.pages import amount_words, part_words, year_page

    with Book.open(book_file) as opened:
        history = year_history(opened, year)
    if out:
        _write(out, year_page(history), replace)
        return
    if as_json:
        click.echo(_as_data(history))
        return
    click.echo(f"{history.fish} fish were first looked at in {year}. Sales so far: {amount_words(history.revenue)}.")
    for heading, rows in (
        ("grade", history.by_grade),
        ("spawning", history.by_spawning),
        ("pond", history.by_pond),
        ("bloodline", history.by_bloodline),
    ):
        click.echo(f"\nBy {heading}")
        for row in rows:
            price = f", middle price {amount_words(row.median_price)}" if row.median_price is not None else ""
            click.echo(
                _clean(
                    f"  {row.name}: {row.fish} fish; looked at again {part_words(row.looked_again)}, sold {part_words(row.sold)},"
                )
                + _clean(f" died {part_words(row.died)}, shown {part_words(row.shown)}{price}")
            )
    for caution in history.cautions:
        click.echo(click.wrap_text(f"\n{caution}", 78))


@book.command("foresight")
@click.argument("rules")
@BOOK
@click.option(
    "--outcome", required=True, metavar="WHAT", help="price, sold, died, shown, seen-again, or what a fish `became`."
)
@click.option("--value", default="", help="Of `became`: the value that counts as yes. Without it, values are numbers.")
@click.option("--since", type=int, help="First looks of this year and later only.")
@click.option("--json", "as_json", is_flag=True, help="Print everything as JSON.")
@_told
def foresight(rules: str, book_file: Path, outcome: str, value: str, since: int | None, as_json: bool) -> None:
    """Did RULES foresee it? The first look at each fish, graded by RULES, beside what came of it."""
    from koirules_book.book import Book
    from koirules_book.outcomes import first_results, outcomes_of

    standard = load_standard(rules)
    with Book.open(book_file) as opened:
        results = first_results(opened, standard, since)
        outcomes = outcomes_of(opened, outcome, value, [result.fish for result in results])
    _foresee(standard, results, outcomes, f"{outcome} {value}".strip(), as_json)


def _foresee(standard: Standard, results: Sequence[Result], outcomes: Any, outcome: str, as_json: bool) -> None:
    from koirules_book.foresight import foresight as worked_out
    from koirules_book.telling import foresight_lines

    found = worked_out(standard, results, outcomes, outcome)
    if as_json:
        click.echo(_as_data(found))
        return
    for line in foresight_lines(found):
        click.echo(_clean(line))


@book.command("sorters")
@BOOK
@click.option("--trait", multiple=True, help="These traits only. Again for several.")
@click.option("--json", "as_json", is_flag=True, help="Print everything as JSON.")
@_told
def sorters(book_file: Path, trait: tuple[str, ...], as_json: bool) -> None:
    """Who reads a trait less like the others than before, and which trait needs training."""
    from koirules_book.book import Book
    from koirules_book.sorters import agreements, drifts, need_training
    from koirules_book.telling import sorter_lines

    with Book.open(book_file) as opened:
        found = agreements(opened, trait)
    if as_json:
        click.echo(_as_data({"agreements": found, "drifts": drifts(found)}))
        return
    for line in sorter_lines(found, drifts(found), need_training(found)):
        click.echo(_clean(line))


@book.command("train")
@click.argument("rules")
@BOOK
@click.option("--sorter", required=True, help="Who is being trained.")
@click.option("--fish", "count", default=10, show_default=True, help="How many fish.")
@click.option("--seed", default=0, help="Another number draws other fish.")
@_told
def train(rules: str, book_file: Path, sorter: str, count: int, seed: int) -> None:
    """Show fish with settled grades, take a sorter's answers, and show where they differ."""
    from koirules_book.book import Book
    from koirules_book.sorters import exercise, keep_answers

    standard = load_standard(rules)
    titles = standard.grade_titles
    with Book.open(book_file) as opened:
        tasks = exercise(opened, standard.seal, count, seed)
        if not tasks:
            click.echo(
                "No look in the book has a settled grade by these rules. Use `koirules book regrade` first.", err=True
            )
            sys.exit(PROBLEMS)
        answers = {}
        for at, task in enumerate(tasks, 1):
            seen = "; ".join(
                f"{standard.traits[name].title} {value}"
                for name, value in task.look.record.items()
                if name in standard.traits
            )
            picture = f" (photograph: {task.look.photo})" if task.look.photo else ""
            click.echo(f"\nFish {at} of {len(tasks)}{picture}")
            click.echo(_clean(click.wrap_text(seen, 78, "  ", "  ")))
            answer = click.prompt("Grade", type=click.Choice(standard.grades), show_choices=True)
            answers[task.look.id] = (answer, task.settled)
        right = keep_answers(opened, standard.seal, sorter, answers)
        click.echo(f"\n{right.part} of {right.whole} alike (95 %: {right.low:.0%} to {right.high:.0%}).")
        for task in tasks:
            answer, settled = answers[task.look.id]
            if answer != settled:
                result = standard.grade({k: v for k, v in task.look.record.items() if k in standard.traits}, task.fish)
                click.echo(
                    _clean(f"{task.fish}: you said {titles[answer]}, the standard says {titles[settled]}: {result.why}")
                )


@book.command("export")
@BOOK
@click.argument("folder", type=click.Path(path_type=Path))
@click.option("--with-people", is_flag=True, help="Export names of buyers, sorters and deciders.")
@click.option("--with-notes", is_flag=True, help="Export free notes.")
@_told
def export_book(book_file: Path, folder: Path, with_people: bool, with_notes: bool) -> None:
    """Write every table as a CSV file into a new FOLDER, without names of people and without notes."""
    from koirules_book.book import Book
    from koirules_book.exporting import export

    _new_folder(folder)
    with Book.open(book_file) as opened:
        counts = export(opened, folder, people=with_people, notes=with_notes)
    click.echo(f"Wrote {', '.join(f'{count:,} {table}' for table, count in counts.items() if count)} into {folder}.")


@book.command("forget")
@BOOK
@click.option("--fish", "name", help="Remove this fish with all that the book has of it.")
@click.option("--person", help="Remove the name of this buyer, sorter or decider everywhere.")
@click.option("--pond", help="Which fish, where several have the name.")
@click.confirmation_option(prompt="This cannot be taken back. Remove it for good?")
@_told
def forget(book_file: Path, name: str | None, person: str | None, pond: str | None) -> None:
    """Remove a fish or a person's name for good."""
    from koirules_book.book import Book

    with Book.open(book_file) as opened:
        if name:
            opened.forget_fish(opened.one_named(name, pond).id)
            click.echo(f"Removed {name}.")
        if person:
            click.echo(f"Removed the name from {_count(opened.forget_person(person), 'row', 'rows')}.")


@book.command("test")
@BOOK
@_told
def test_book(book_file: Path) -> None:
    """Look for damage in the file."""
    from koirules_book.book import Book

    with Book.open(book_file) as opened:
        found = opened.damage()
    if found:
        for line in found:
            click.echo(_clean(line), err=True)
        click.echo("The book is damaged. `koirules book rescue` saves what can be read.", err=True)
        sys.exit(1)
    click.echo("The book is sound.")


@book.command("rescue")
@BOOK
@click.argument("folder", type=click.Path(path_type=Path))
@_told
def rescue_book(book_file: Path, folder: Path) -> None:
    """Save what can be read of a damaged book as CSV files in a new FOLDER."""
    from koirules_book.exporting import rescue

    _new_folder(folder)
    counts = rescue(book_file, folder)
    click.echo(f"Saved {', '.join(f'{count:,} {table}' for table, count in counts.items() if count)} into {folder}.")


def _new_folder(folder: Path) -> None:
    if folder.exists():
        click.echo(f"{folder} is there already. Give another name.", err=True)
        sys.exit(PROBLEMS)


def _write(out: Path, text: str, replace: bool) -> None:
    if out.exists() and not replace:
        click.echo(f"{out} is there already. Give another name, or add --replace.", err=True)
        sys.exit(PROBLEMS)
    beside = out.with_name(f".{out.name}.part")
    try:
        beside.write_text(text, encoding="utf-8")
        beside.replace(out)
    except OSError as error:
        click.echo(f"{out} was not written: {error.strerror}.", err=True)
        sys.exit(PROBLEMS)
    click.echo(f"Wrote {out}.")


def _as_data(value: object) -> str:
    from attrs import AttrsInstance, asdict, has

    def plain(one: object) -> object:
        if has(type(one)):
            return {key: plain(part) for key, part in asdict(cast("AttrsInstance", one), recurse=False).items()}
        if isinstance(one, dict):
            return {str(key): plain(part) for key, part in one.items()}
        if isinstance(one, list | tuple):
            return [plain(part) for part in one]
        if isinstance(one, date):
            return one.isoformat()
        return None if isinstance(one, float) and isnan(one) else one

    return json.dumps(plain(value), ensure_ascii=False, indent=1)


@click.command("learn")
@click.argument("rules")
@click.argument("picks", type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.option("--records", type=click.Path(path_type=Path), help="The records, where PICKS has none: names only.")
@click.option("--column", default="verdict", show_default=True, help="The column of PICKS with the verdicts.")
@click.option(
    "--in",
    "counts_as_in",
    default="",
    metavar="GRADES",
    help="Grades that mean `in`, with commas; by default the best.",
)
@click.option(
    "--hold",
    default=0.5,
    show_default=True,
    help="How near the present weights: the standard deviation of each, as a share of it.",
)
@click.option("--no-hold", is_flag=True, help="Do not hold weights near the present ones.")
@click.option("--rounds", default=200, show_default=True, help="Samples of the bootstrap.")
@click.option("--edition", default="", help="The edition of the proposal; by default the present one with -learnt.")
@click.option("--out", type=click.Path(path_type=Path), help="Write the proposed edition.")
@click.option("--replace", is_flag=True, help="Write over an earlier proposal.")
@click.option("--json", "as_json", is_flag=True, help="Print everything as JSON.")
@_told
def learn(
    rules: str,
    picks: Path,
    records: Path | None,
    column: str,
    counts_as_in: str,
    hold: float,
    no_hold: bool,
    rounds: int,
    edition: str,
    out: Path | None,
    replace: bool,
    as_json: bool,
) -> None:
    """Propose weights and grade lines from past PICKS.

    PICKS is a table of records with a column of verdicts (in, out, or grades), or of pairs with the columns `better` and
    `worse`. The proposal is an edition to read and to change: faults stay as they are. Compare it with `koirules compare`.
    """
    from koirules_book.from_picks import Asked, learnt_from
    from koirules_book.learning import How
    from koirules_book.proposal import proposal
    from koirules_book.telling import learnt_lines

    standard = load_standard(rules)
    best = tuple(part.strip() for part in counts_as_in.split(",") if part.strip())
    with _Progress(rounds if sys.stderr.isatty() else 0, "Bootstrap") as told:
        asked = Asked(picks, records, column, best)
        found = learnt_from(standard, asked, How(None if no_hold else hold, rounds, told=told))
    made = proposal(standard, found, edition or f"{standard.edition}-learnt")
    if as_json:
        click.echo(_as_data({"learnt": found, "proposal": made}))
    else:
        for line in learnt_lines(found, made.notes):
            click.echo(_clean(line))
    if out:
        _write(out, made.text, replace)
        click.echo(f"Compare: koirules compare {rules} {out}", err=as_json)
