"""The `koirules` command: one file a subcommand, each imported only when it runs."""

from __future__ import annotations

import io
import sys
from importlib import import_module

import click

_COMMANDS = {
    "grade": "Grade a batch of fish by a rule file.",
    "why": "Show everything about the grade of one fish.",
    "ask": "Ask at the tub, one fish after another, until each is settled.",
    "check": "Check rule files and the samples in them.",
    "tidy": "Lay out rule files in the one way.",
    "seal": "Print the seal of a standard.",
    "handbook": "Write a standard as a page to print and hand to judges.",
    "prove": "Prove what holds for every fish, or show one of which it does not.",
    "compare": "Compare two editions of a standard.",
    "sheet": "Make a blank record sheet for a variety or a standard.",
    "varieties": "List the varieties, skins and rule sets that are installed, and from where.",
    "classes": "Show a table of show classes, or put each fish into its class.",
    "new-variety": "Lay down a plugin for a variety of your own, with tests that pass.",
    "growth": "Fit how fish grow from looks at the same fish on several days.",
    "traits": "List the traits that rules and records can name.",
    "explain": "Say what the code behind a problem means.",
}


class _Commands(click.Group):
    """Knows its subcommands by name and one line, so that help needs none of them."""

    def list_commands(self, ctx: click.Context) -> list[str]:  # noqa: ARG002 - click's signature
        return list(_COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:  # noqa: ARG002
        if cmd_name not in _COMMANDS:
            return None
        command: click.Command = import_module(f"koirules.commands.{cmd_name.replace('-', '_')}").command
        return command

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:  # noqa: ARG002
        with formatter.section("Commands"):
            formatter.write_dl(list(_COMMANDS.items()))


@click.group(
    cls=_Commands,
    context_settings={"help_option_names": ["--help"], "max_content_width": 100},
    epilog="Exit status: 0 all is well; 1 something asked for does not hold; 2 problems in what was given.",
)
@click.version_option(package_name="koirules", prog_name="koirules", message="%(prog)s %(version)s")
def main() -> None:
    """Grade koi by a standard that is written down: readable rule files in, grades with their reasons out."""
    for stream in (sys.stdout, sys.stderr):
        # A terminal or pipe that cannot show a letter shows a mark in its place; it never ends a command.
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")
