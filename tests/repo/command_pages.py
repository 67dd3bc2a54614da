"""The reference of commands, made from what each says of itself: `python -m tests.repo.command_pages` writes it."""

import re

import click

from koirules.commands import COMMANDS, main
from tests.repo.pages import REFERENCE

_HEAD = """# Commands

Made from what each command says under `--help`: `python -m tests.repo.command_pages`.

`RULES` is a rule file or the name of a rule set (`koirules plugins` lists them). `RECORDS` is a sheet of records: `.csv`,
`.xlsx` or `.jsonl`, one row a fish ([what a cell can hold](words-and-cells.md)).

Exit status: 0 all is well; 1 something asked for does not hold; 2 problems in what was given. A file is written whole or not
at all.
"""


def reference(group, names):
    """The page, a part for each command."""
    parts = [_HEAD, "| command | what it does |\n| --- | --- |"]
    parts[1] += "".join(f"\n| [`koirules {name}`](#koirules-{name}) | {told} |" for name, told in names.items())
    return "\n".join(parts) + "\n\n" + "\n".join(_part(group, name) for name in names)


def _part(group, name):
    context = click.Context(group, info_name="koirules")
    command = group.get_command(context, name)
    inner = click.Context(command, info_name=name, parent=context)
    usage = " ".join(command.collect_usage_pieces(inner))
    options = [one for one in command.get_params(inner) if isinstance(one, click.Option)]
    rows = [row for one in options if (row := one.get_help_record(inner)) and row[0] != "--help"]
    said = re.sub(r"\s*\n\s*(?!\n)", " ", (command.help or "").replace("\n\n", "\0")).replace("\0", "\n\n")
    text = f"## koirules {name}\n\n`koirules {name} {usage}`\n\n{_lines(said)}\n"
    if rows:
        text += "\n| option | |\n| --- | --- |\n" + "\n".join(f"| `{_cell(a)}` | {_cell(b)} |" for a, b in rows) + "\n"
    return text


def _lines(said):
    return "\n\n".join(part.strip() for part in said.split("\n\n"))


def _cell(words):
    return " ".join(words.split()).replace("|", "\\|")


if __name__ == "__main__":
    (REFERENCE / "commands.md").write_text(reference(main, COMMANDS), encoding="utf-8")
