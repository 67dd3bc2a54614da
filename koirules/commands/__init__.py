"""The `koirules` command: one file a subcommand, each imported only when it runs."""

from __future__ import annotations

import atexit
import errno
import gc
import io
import os
import sys
from contextlib import suppress
from functools import cache, cached_property
from importlib import import_module
from typing import Any, NoReturn

import click

from koirules.commands.plugged import PluggedCommands

COMMANDS = {
    "grade": "Grade a batch of fish by a rule file.",
    "why": "Show everything about the grade of one fish.",
    "print": "Write a certificate, labels, or lists of ponds, to print.",
    "ask": "Ask at the tub, one fish after another, until each is settled.",
    "note": "Take notes of fish in your own words, or make records of them.",
    "check": "Check rule files and the samples in them.",
    "new": "Write a standard to begin with, from a template.",
    "tidy": "Lay out rule files in the one way.",
    "seal": "Print the seal of a standard.",
    "handbook": "Write a standard as a page to print and hand to judges.",
    "untranslated": "List what has no translation into a language, and write a catalogue to fill in.",
    "flaws": "Show what each single flaw makes of an ideal fish.",
    "prove": "Prove what holds for every fish, or show one of which it does not.",
    "agree": "Set a sorter's own verdicts beside the rules, another sorter or another look.",
    "compare": "Compare two editions of a standard.",
    "sheet": "Make a blank record sheet for a variety or a standard.",
    "plugins": "List the varieties, skins, rule sets and plugins that are installed, and from where.",
    "classes": "Show a table of show classes, or put each fish into its class.",
    "prizes": "Award the prizes of a show as its committee wrote them down.",
    "new-variety": "Lay down a plugin for a variety of your own, with tests that pass.",
    "growth": "Fit how fish grow from looks at the same fish on several days.",
    "traits": "List the traits that rules and records can name.",
    "explain": "Say what the code of a problem means.",
}

_NEW_OBJECTS = 300_000
"""So many make Python look for unused ones, and not 700."""


@cache
def _look_seldom_for_unused_objects() -> None:
    """Most objects of a command stay until it ends, and every look goes through them, the one at the end too."""
    gc.set_threshold(_NEW_OBJECTS, *gc.get_threshold()[1:])
    atexit.register(gc.freeze)  # what is frozen is not looked at


class _Commands(click.Group):
    """Knows its subcommands by name and one line, so that help needs none of them."""

    @cached_property
    def _plugged(self) -> PluggedCommands:
        return PluggedCommands(COMMANDS)

    def list_commands(self, ctx: click.Context) -> list[str]:  # noqa: ARG002 - click's signature
        return [*COMMANDS, *self._plugged.by_name]

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:  # noqa: ARG002
        if cmd_name in COMMANDS:
            command: click.Command = import_module(f"koirules.commands.{cmd_name.replace('-', '_')}").command
            return command
        plugged = self._plugged.find(cmd_name)
        return None if plugged is None else plugged.fetch()

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:  # noqa: ARG002
        with formatter.section("Commands"):
            formatter.write_dl(list(COMMANDS.items()))
        plugged = self._plugged
        if plugged.by_name:
            with formatter.section("Commands of plugins"):
                formatter.write_dl([(one.name, one.help) for one in plugged.by_name.values()])
        if plugged.left_out:
            formatter.write_paragraph()
            formatter.write_text("Something of a plugin was left out; `koirules plugins` says what and why.")

    def make_context(self, info_name: str | None, args: list[str], *rest: Any, **more: Any) -> click.Context:
        _look_seldom_for_unused_objects()
        try:
            return super().make_context(info_name, args, *rest, **more)
        except OSError as error:  # the help could not be printed
            _end_refused(error)

    def parse_args(self, ctx: click.Context, args: list[str]) -> list[str]:
        if any("\0" in word for word in args):
            raise click.UsageError("A name holds the character NUL, which no file can have in its name.", ctx)
        # What follows a command is the plugin's own where the command is.
        end = args.index("--") if "--" in args else len(args)
        first = next((word for word in args[:end] if not word.startswith("-")), "")
        if "--debug" in args[:end] and first in COMMANDS:
            args = ["--debug", *(word for word in args[:end] if word != "--debug"), *args[end:]]
        return super().parse_args(ctx, args)

    def invoke(self, ctx: click.Context) -> Any:
        try:
            try:
                return super().invoke(ctx)
            finally:
                sys.stdout.flush()  # what is refused only now is told too
        except (click.ClickException, click.exceptions.Exit, click.Abort):
            raise  # click tells these
        except OSError as error:
            _end_refused(error)
        except Exception as error:
            from koirules.problems import KoirulesError
            from koirules.problems.failing import is_traceback_wanted

            if isinstance(error, KoirulesError):
                from koirules.commands.output import stop_if_refused

                stop_if_refused(error.problems)
            name = ctx.invoked_subcommand or ""
            if name in COMMANDS or name not in self._plugged.by_name or is_traceback_wanted():
                raise
            self._plugged.by_name[name].end_failed(error)


def _end_refused(error: OSError) -> NoReturn:
    """End with status 2 where the system refused to read or write, and nobody nearer knew what to say."""
    from koirules.problems.failing import is_traceback_wanted

    if error.errno == errno.EPIPE or is_traceback_wanted():
        raise error  # click ends quietly where nobody reads on
    with suppress(OSError, ValueError):
        # What waits to be printed would be refused once more when Python ends.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    why = (error.strerror or str(error)).lower()
    what = f'"{error.filename}"' if error.filename else "what the command prints"
    click.echo(f"The system refused {what}: {why}. Files that were told as written are whole; no other was.", err=True)
    sys.exit(2)


def _debug(ctx: click.Context, _: click.Parameter, wanted: bool) -> None:
    if wanted:
        from koirules.problems.failing import TRACEBACK

        before = os.environ.get(TRACEBACK)
        os.environ[TRACEBACK] = "1"  # the processes that a command starts are told by it too
        if before is None:
            ctx.call_on_close(lambda: os.environ.pop(TRACEBACK, None))


@click.group(
    cls=_Commands,
    context_settings={"help_option_names": ["--help"], "max_content_width": 100},
    epilog="Exit status: 0 all is well; 1 something asked for does not hold; 2 problems in what was given.",
)
@click.option(
    "--debug",
    is_flag=True,
    expose_value=False,
    is_eager=True,
    callback=_debug,
    help="Show the traceback of each error of a plugin, for its author.",
)
@click.version_option(package_name="koirules", prog_name="koirules", message="%(prog)s %(version)s")
def main() -> None:
    """Grade koi by a standard that is written down: readable rule files in, grades with their reasons out."""
    for stream in (sys.stdout, sys.stderr):
        # A terminal or pipe that cannot show a letter shows a mark in its place; it never ends a command.
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")
