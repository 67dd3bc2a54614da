"""What several commands take: a standard and its records."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

import click
from attrs import evolve

from koirules.commands.output import counted, show_problems, shown, stop, stop_if_refused
from koirules.plugins import Registry, load_registry
from koirules.problems import Cell, Problem, RecordError, StandardError, mixed
from koirules.problems import parts as say
from koirules.problems.quoting import in_words
from koirules.values import frozen
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.spoken import Said, known, said

if TYPE_CHECKING:
    from koirules.api import Standard
    from koirules.classes.table import ClassTable
    from koirules.grading.whole_batch import BatchResult
    from koirules.loading.sound_pages import SoundPage
    from koirules.records.about import About
    from koirules.records.records import Batch
    from koirules.results.decisions import Decision
    from koirules.results.record import Record
    from koirules.results.result import Result
    from koirules.standard.parts import Rules

_MOST_NAMED = 3
_SEAL_SHOWN = 14
"""So much of a seal tells editions apart; the whole is in the files of results, and `koirules seal` prints it."""

_OF_ROWS = (
    "value-",
    "unnamed-fish",
    "doubled-fish",
    "doubled-look",
    "undated-look",
    "not-a-day",
    "row-too-long",
    "cell-too-long",
    "formula-error",
    "formula-without-value",
    "broken-line",
    "not-an-object",
    "doubled-key",
)
"""How the codes begin of problems that are of one row, so that the others can be graded without it."""

_F = TypeVar("_F", bound=Callable[..., Any])


def is_same_file(one: str, other: str) -> bool:
    """Whether two names mean one file."""
    try:
        return Path(one).resolve() == Path(other).resolve()
    except (OSError, RuntimeError, ValueError):  # a loop of links, or a name that no file can have
        return one == other


def replace_option(function: _F) -> _F:
    """`--replace`."""
    return click.option("--replace", is_flag=True, help="Replace a file that is there already.")(function)


def stop_if_there(files: Iterable[str], *, replace: bool) -> None:
    """End the command where a file that it is to write is there already, and may be of worth; before anything is done."""
    there = [file for file in files if not replace and Path(file).exists()]
    if there:
        names = in_words([shown(file) for file in there], "and")
        stop(
            f"{names} {'is' if len(there) == 1 else 'are'} there already. "
            "Name another file, or add --replace. Nothing was written."
        )


def rule_files_in(path: Path) -> tuple[str, ...]:
    """The rule files of a folder, none where it is no folder, or the folder of one rule set."""
    try:
        if not path.is_dir() or (path / "standard.koi").is_file():
            return ()
        return tuple(str(file) for file in sorted([*path.glob("*.koi"), *path.glob("*/standard.koi")]))
    except OSError:
        return ()


def setting_option(function: _F) -> _F:
    """`--set NAME=VALUE`, any number of times."""
    return click.option(
        "--set", "changes", metavar="NAME=VALUE", multiple=True, help="Change a setting of the standard for this run."
    )(function)


def language_option(function: _F) -> _F:
    """`--language CODE`."""
    return click.option(
        "--language",
        metavar="CODE",
        default=None,
        help="Say results and pages in this language, by two letters: de, ja; others as far as they are given. "
        "Problems and this help stay English.",
    )(function)


def label_option(function: _F) -> _F:
    """`--label COLUMN`, any number of times."""
    return click.option(
        "--label",
        "labels",
        metavar="COLUMN",
        multiple=True,
        help="Carry a column of the records along that no trait claims.",
    )(function)


def decisions_option(function: _F) -> _F:
    """`--decisions FILE`."""
    return click.option(
        "--decisions",
        type=click.Path(),
        default=None,
        metavar="FILE",
        help="A table of what a person decided: fish, grade or round, by, reason.",
    )(function)


def registry() -> Registry:
    """The installed plugins; those that had to be left out are named once."""
    plugins = load_registry()
    show_problems(plugins.problems)
    return plugins


def varieties_installed() -> Varieties:
    """The varieties of the installed plugins."""
    return load_registry().varieties


def standard_from(
    rules: str,
    changes: Sequence[str] = (),
    language: str | None = None,
    plugins: Registry | None = None,
    *,
    quiet: bool = False,
) -> Standard:
    """The standard that a command was given; ends the command with its problems where it does not hold.

    plugins: those to use, whose problems have been shown. quiet: whether nothing is said of a language that is not there.
    """
    from koirules.api import load_standard
    from koirules.languages import CatalogueError
    from koirules.records.plugged_formats import is_table

    plugins = registry() if plugins is None else plugins
    if is_table(rules):
        stop(f"{shown(rules)} is a table of records by its name. The rule file comes first, then the records.")
    try:
        standard = load_standard(rules, plugins)
        standard = standard.with_settings(pairs_of(changes))
        if language is not None:
            standard = standard.in_language(language.lower())
            _ = standard.tongue  # a catalogue that cannot be read is told before anything is graded
    except StandardError as error:
        stop_if_refused(error.problems)
        raise
    except CatalogueError as error:
        stop(f"{shown(str(error))}. Nothing was written.")
    show_problems(out_of_date(standard.rules, date.today()))
    if language is not None and not quiet:
        tell_untranslated([(rules, standard)], language)
    return standard


def tell_untranslated(given: Sequence[tuple[str, Standard]], language: str) -> None:
    """Say how much of standards, each behind the name it was given by, is not said in a language."""
    from koirules.explain.texts import Source, texts_of

    whole: list[str] = []
    partly: list[tuple[str, int, int]] = []
    for name, standard in given:
        texts = [one for one in texts_of(standard.rules) if one.source is Source.TITLE]
        lacking = sum(not one.is_given(standard.tongue) for one in texts)
        if lacking == len(texts):
            whole.append(shown(name))
        elif lacking:
            partly.append((shown(name), lacking, len(texts)))
    if whole:
        named = in_words(
            whole if len(whole) <= _MOST_NAMED else [*whole[:_MOST_NAMED], f"{len(whole) - _MOST_NAMED} more"]
        )
        click.echo(
            f'No title in {named} is given in the language "{shown(language)}" (two letters, such as ja).', err=True
        )
    if partly:
        lacking, of = sum(one[1] for one in partly), sum(one[2] for one in partly)
        first = partly[0][0]
        named = first if len(partly) == 1 else f"{len(partly)} rule files"
        code = shown(language.lower())
        listed = f"`koirules untranslated {code} {first}` lists {'them' if len(partly) == 1 else 'those of the first'}."
        click.echo(f"{lacking} of {of} texts in {named} are not given in {code}; {listed}", err=True)


def shown_titles(standard: Standard) -> dict[str, str]:
    """The title of each grade by its name, fit to be printed."""
    return {name: shown(title) for name, title in standard.grade_titles.items()}


def standard_words(standard: Standard) -> str:
    """By which standard: title, edition and the beginning of its seal."""
    return standard.tongue(
        "by {title}, edition {edition} (seal {seal}, the fingerprint of its rules)",
        title=shown(standard.title),
        edition=shown(standard.edition),
        seal=standard.seal[:_SEAL_SHOWN],
    )


def out_of_date(page: Rules | SoundPage, today: date) -> list[Problem]:
    """The warning that a standard is not valid on a day, where it says when it is."""
    if page.valid_from is not None and today < page.valid_from:
        return [say.not_valid_today(Cell(page.file), f"valid only from {page.valid_from}")]
    if page.valid_until is not None and today > page.valid_until:
        return [say.not_valid_today(Cell(page.file), f"valid only until {page.valid_until}")]
    return []


@frozen
class Graded:
    """A batch with what came of it, in the order of the records.

    broken: whether rows were left out, or values taken as not recorded, since they could not be read.
    """

    batch: Batch
    outcome: BatchResult
    broken: bool = False

    @property
    def results(self) -> tuple[Result, ...]:
        """The results of its fish."""
        return self.outcome.results

    def about(self, standard: Standard) -> About:
        """Where its results come from, as files of results say it."""
        return standard.about(self.outcome, Path(self.batch.file).name)


def records_from(standard: Standard, records: str, labels: Sequence[str], *, broken_as_open: bool = False) -> Batch:
    """Read a file of records and derive their traits; what is wrong is among its problems."""
    from koirules.measures.kept_figures import keeping_figures
    from koirules.records.records import read_records

    batch = read_records(
        Path(records), standard.traits, labels, lambda: standard.notes_reader, broken_as_open=broken_as_open
    )
    with keeping_figures():
        measured = standard.measured(batch.records, batch.file)
    others = meant_for_others(standard, measured.records, batch.file, varieties_installed())
    return evolve(batch, records=measured.records, problems=(*batch.problems, *measured.problems, *others))


def meant_for_others(
    standard: Standard, records: Sequence[Record], file: str, varieties: Varieties
) -> tuple[Problem, ...]:
    """A warning for the fish that are recorded as of another variety than a standard is for, and one for the stage."""
    from koirules.records.columns import STAGE, VARIETY

    wanted: dict[str, list[Said | str | None]] = {
        VARIETY: [said(one, varieties) for one in standard.varieties],
        STAGE: [] if standard.rules.stage is None else [folded(standard.rules.stage)],
    }
    found: list[Problem] = []
    for column, own in wanted.items():
        read = [(one, known(one.labels.get(column, ""))) for one in records if column not in standard.traits]
        others = [
            (one, words)
            for one, words in read
            if own and words and (said(words, varieties) if column == VARIETY else folded(words)) not in own
        ]
        if others:
            told = " or ".join(one.name if isinstance(one, Said) else str(one) for one in own)
            first = others[0][0].row
            kinds = list(dict.fromkeys(words for _, words in others))
            found.append(mixed.meant_for_others(file, first, column, len(others), kinds, told))
    return tuple(found)


def graded(
    standard: Standard,
    records: str,
    labels: Sequence[str],
    decisions: str | None = None,
    classes: ClassTable | None = None,
    *,
    leave_out_broken: bool = False,
    broken_as_open: bool = False,
) -> Graded:
    """Read and grade a file of records; ends the command with its problems where it cannot be read.

    decisions: a file of what a person decided. classes: the table by which each fish is put into its class.
    leave_out_broken: rows that are wrong are told and left out. broken_as_open: values that cannot be read are told and taken
    as not recorded.
    """
    from koirules.commands.classing import with_classes
    from koirules.grading.whole_batch import BatchResult, looked_at_again
    from koirules.results.look_again import look_again

    read = records_from(standard, records, labels, broken_as_open=broken_as_open)
    batch = with_classes(read, standard, classes, load_registry().varieties)
    decided, problems = _decisions(standard, decisions, [record.fish for record in batch.records])
    broken = rows_left_out((*batch.problems, *problems), leave_out_broken=leave_out_broken)
    broken = broken or any(record.unreadable for record in batch.records)
    if not batch.records:
        click.echo(f"There is no {standard.subject.one} in {shown(records)}.", err=True)
    many = len(batch.records) > 5_000
    if not many or decided or standard.whole_batch.needed:
        return Graded(batch, graded_together(standard, batch.records, decided), broken)
    with click.progressbar(batch.records, label="Grading", file=sys.stderr) as bar:
        results = tuple(standard.grade_record(record) for record in bar)
    results = looked_at_again(
        results,
        look_again(batch.records, standard.traits, standard.rules.stage, standard.tongue, standard.trait_titles),
    )
    return Graded(batch, BatchResult(results, records=batch.records), broken)


def rows_left_out(problems: Iterable[Problem], *, leave_out_broken: bool) -> bool:
    """Tell the problems of records, and whether rows are left out for them; others end the command."""
    told = [*problems]
    of_rows = [problem for problem in told if leave_out_broken and _is_of_a_row(problem)]
    stop_if_refused([problem for problem in told if problem not in of_rows])
    if of_rows:
        show_problems(of_rows)
        left = len({problem.site.row for problem in of_rows if isinstance(problem.site, Cell)})
        click.echo(f"{counted(left, 'row is', 'rows are')} left out.", err=True)
    return bool(of_rows)


def _is_of_a_row(problem: Problem) -> bool:
    return not problem.warning and problem.code.startswith(_OF_ROWS)


def graded_together(standard: Standard, records: Sequence[Record], decisions: Sequence[Decision]) -> BatchResult:
    """Records of one batch, graded today; ends the command where decisions do not fit what its rounds came to."""
    from koirules.measures.kept_figures import keeping_figures

    try:
        with keeping_figures():
            return standard.grade_records(records, decisions, date.today())
    except RecordError as error:
        stop_if_refused(error.problems)
        raise


def _decisions(
    standard: Standard, file: str | None, fish: Sequence[str]
) -> tuple[tuple[Decision, ...], Sequence[Problem]]:
    from koirules.records.decision_files import read_decisions
    from koirules.rounds.decision_checks import check_decisions

    if file is None:
        return (), ()
    decided, problems = read_decisions(Path(file))
    return decided, [*problems, *check_decisions(standard.rules, decided, fish, file)]


def decisions_by(
    standards: Sequence[Standard], file: str | None, fish: Sequence[Sequence[str]]
) -> list[tuple[Decision, ...]]:
    """What a person decided about the fish of each standard; ends the command with the problems of the file.

    fish: the names of the fish that each standard grades.
    """
    from koirules.records.decision_files import read_decisions
    from koirules.rounds.decision_checks import check_decisions

    if file is None:
        return [() for _ in standards]
    decided, problems = read_decisions(Path(file))
    found = list(problems)
    everybody = {name for group in fish for name in group}
    shared: list[tuple[Decision, ...]] = []
    for place, (standard, group) in enumerate(zip(standards, fish, strict=True)):
        own = set(group)
        # A fish that nobody graded is told once, by the first.
        mine = tuple(one for one in decided if one.fish in own or (place == 0 and one.fish not in everybody))
        found += check_decisions(standard.rules, mine, everybody, file)
        shared.append(mine)
    stop_if_refused(found)
    return shared


def pairs_of(changes: Sequence[str]) -> dict[str, str]:
    """The name and value of each `--set`."""
    found: dict[str, str] = {}
    for change in changes:
        name, sign, value = change.partition("=")
        if not sign:
            raise click.BadParameter(f'"{change}" has no "="; write NAME=VALUE.', param_hint="--set")
        found[name.strip()] = value.strip()
    return found
