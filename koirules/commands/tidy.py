"""`koirules tidy`: rule files in the one layout."""

from __future__ import annotations

import sys
from pathlib import Path

import click

from koirules.commands.inputs import registry, standard_from
from koirules.commands.output import DOES_NOT_HOLD, HOLDS, PROBLEMS, counted, printed, show_problems, shown
from koirules.loading.tidying import tidied
from koirules.records.writing import write_beside
from koirules.standard.inherit.effective_text import told_lines


@click.command("tidy")
@click.argument("files", nargs=-1, required=True, metavar="FILE...", type=click.Path())
@click.option("--check", "only_check", is_flag=True, help="Write nothing; end with status 1 where a file is not tidy.")
@click.option(
    "--whole",
    is_flag=True,
    help="Write nothing; print the standard with all changes made to its base, and where each line is from.",
)
def command(files: tuple[str, ...], only_check: bool, whole: bool) -> None:
    """Lay out each rule FILE in the one way: lines, blanks, brackets, numbers and the order of the header.

    A folder stands for all rule files in it. Remarks stay where they are, and nothing changes what a file means. A file
    with problems is left as it is; only signs such as >= become words.
    """
    if whole:
        _print_whole(files)
        return
    status = HOLDS
    counts = {"tidy": 0, "changed": 0}
    plugins = registry()
    for path in _rule_files(files):
        found = tidied(path, plugins.varieties, plugins.rulesets)
        if found.text is None:
            show_problems(found.problems)
            click.echo(f"{shown(str(path))}: {counted(len(found.problems), 'problem')}; left as it is.")
            status = PROBLEMS
            continue
        if found.text.encode() == found.before:
            counts["tidy"] += 1
            continue
        counts["changed"] += 1
        if only_check:
            click.echo(f"{shown(str(path))} is not tidy.")
            status = max(status, DOES_NOT_HOLD)
            continue
        status = max(status, _write(path, found.text, found.mended))
    _tell(counts, only_check=only_check)
    sys.exit(status)


def _print_whole(files: tuple[str, ...]) -> None:
    for name in files:
        standard = standard_from(name)
        printed("".join(f"{line}\n" for line in told_lines(standard.rules)))


def _rule_files(given: tuple[str, ...]) -> list[Path]:
    """The files, those of a folder in the order of their names; a file is taken once."""
    found: dict[Path, None] = {}
    for name in given:
        path = Path(name)
        inside = _inside(path) if path.is_dir() else [path]
        if not inside:
            click.echo(f"There is no rule file in {shown(name)}.", err=True)
        found |= dict.fromkeys(inside)
    return list(found)


def _inside(folder: Path) -> list[Path]:
    """The rule files in a folder, without those in hidden ones."""
    paths = (path for path in folder.rglob("*.koi") if path.is_file())
    return sorted(path for path in paths if not any(part[0] == "." for part in path.relative_to(folder).parts))


def _write(path: Path, text: str, mended: int) -> int:
    def produce(passing: Path) -> None:
        passing.write_text(text, encoding="utf-8", newline="\n")

    problem = write_beside(path, produce)
    if problem is not None:
        show_problems([problem])
        return PROBLEMS
    signs = f" ({counted(mended, 'sign')} mended)" if mended else ""
    click.echo(f"Tidied {shown(str(path))}{signs}.")
    return HOLDS


def _tell(counts: dict[str, int], *, only_check: bool) -> None:
    if counts["tidy"] and not counts["changed"]:
        click.echo(f"{counted(counts['tidy'], 'file')}: tidy already.")
    elif only_check and counts["changed"]:
        click.echo(f"{counted(counts['changed'], 'file')} would be laid out anew; {counts['tidy']:,} tidy already.")
