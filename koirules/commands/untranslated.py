"""`koirules untranslated`: what has no translation yet."""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Mapping
from pathlib import Path

import click

from koirules.commands.inputs import replace_option, standard_from, stop_if_there
from koirules.commands.output import DOES_NOT_HOLD, counted, show_problems, shown, stop, stop_if_refused


@click.command("untranslated")
@click.argument("language")
@click.argument("rules", required=False)
@click.option("--remarks", is_flag=True, help="List the remarks of the file too, which `handbook --remarks` shows.")
@click.option(
    "--out",
    type=click.Path(),
    metavar="FILE",
    help="Write a catalogue to fill in (.po), such as house.ja.po beside house.koi.",
)
@replace_option
def command(language: str, rules: str | None, remarks: bool, out: str | None, replace: bool) -> None:
    """List what has no translation into LANGUAGE (two letters): the texts of RULES and of its vocabulary, else those of koirules.

    RULES may also be a table of prizes or of classes (.toml); its catalogue is NAME.LANGUAGE.po beside it.

    With --out it writes them as a catalogue, a `.po` file of GNU gettext; what that file has already is kept. Write each
    translation after msgstr. A catalogue called NAME.LANGUAGE.po beside NAME.koi is read with it, and its seal stays as it
    is. Exit status 1: something has no translation.
    """
    from koirules.languages import CatalogueError, read_catalogue, said_by_the_tool, tongue_of, written_catalogue
    from koirules.problems.saving import unknown_output_ending
    from koirules.records.writing import write_beside

    language = language.lower()
    if len(language) != 2 or not language.isascii() or not language.isalpha():
        stop(f"{shown(language)} is no code of a language: two letters, such as ja.")
    path = None if out is None else Path(out)
    if path is not None and path.suffix.lower() != ".po":
        show_problems([unknown_output_ending(str(path), path.suffix, (".po",))])
        stop("Nothing was written.")
    before: Mapping[tuple[str, str], tuple[str, ...]] = {}
    if path is not None and path.is_file():
        stop_if_there([str(path)], replace=replace)
        try:
            before = read_catalogue(path).texts
        except CatalogueError as error:
            stop(f"{shown(str(error))}. Nothing was written.")
    if rules is not None and rules.lower().endswith(".toml"):
        texts, lacking = _of_table(Path(rules), language)
    elif rules is None:
        texts = [("koirules", context, text) for context, text in said_by_the_tool()]
        tongue = tongue_of(language)
        lacking = [one for one in texts if tongue.found(one[2], one[1]) is None]
    else:
        from koirules.explain.texts import Source, texts_of

        standard = standard_from(rules, language=language, quiet=True)
        wanted = [one for one in texts_of(standard.rules) if remarks or one.source is not Source.REMARK]
        open_ones = [one for one in wanted if not one.is_given(standard.tongue)]
        # A word that several traits have is translated once; where it means something else, msgctxt names its trait.
        texts, lacking = (
            [*{one.text: (f"{one.source.value}, {one.where}", "", one.text) for one in reversed(found)}.values()][::-1]
            for found in (wanted, open_ones)
        )
    for where, context, text in lacking:
        click.echo(shown(f"{where}{f' ({context})' if context else ''}: {text}"))
    kinds = Counter(where.partition(",")[0] for where, _, _ in lacking)
    told = ", ".join(f"{many:,} of the {kind}" for kind, many in kinds.items()) if rules is not None else ""
    has = "has" if len(lacking) == 1 else "have"
    click.echo(
        f"{len(lacking):,} of {counted(len(texts), 'text')} {has} no translation into {language}{f': {told}' if told else ''}."
    )
    if path is not None:
        rows = [("", context, text, forms[0]) for (context, text), forms in before.items()]
        rows += [(*one, "") for one in lacking if (one[1], one[2]) not in before]
        problem = write_beside(path, lambda passing: _write(passing, written_catalogue(language, rows)))
        if problem is not None:
            show_problems([problem])
            stop("Nothing was written.")
        click.echo(f"Wrote {shown(str(path))}.")
    if lacking:
        sys.exit(DOES_NOT_HOLD)


def _of_table(table: Path, language: str) -> tuple[list[tuple[str, str, str]], list[tuple[str, str, str]]]:
    """The texts of a table of prizes or of classes, and those of them without a translation."""
    from koirules.classes.reading import read_table
    from koirules.languages import CatalogueError, beside, tongue_of
    from koirules.prizes.reading import is_occasion, read_occasion

    found = read_occasion(table) if is_occasion(table) else read_table(str(table))
    if isinstance(found, tuple):
        stop_if_refused(found)
        raise AssertionError("a table without problems is a table")
    try:
        tongue = tongue_of(language).also(beside([str(table)], language))
    except CatalogueError as error:
        stop(f"{shown(str(error))}. Nothing was written.")
    said = dict.fromkeys(text for text in found.said if any(letter.isalpha() for letter in text))
    texts = [(f"table, {table.name}", "", text) for text in said]
    return texts, [one for one in texts if tongue.found(one[2]) is None]


def _write(passing: Path, text: str) -> None:
    passing.write_text(text, encoding="utf-8", newline="\n")
