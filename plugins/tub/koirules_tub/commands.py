"""`koirules tub`."""

from __future__ import annotations

import sys
from pathlib import Path

import click

from koirules import StandardError, load_standard

PROBLEMS = 2


@click.command("tub")
@click.argument("rules")
@click.option(
    "--out",
    "out",
    required=True,
    type=click.Path(dir_okay=False, path_type=Path),
    help="The file that keeps what is entered: FILE.tub.",
)
@click.option(
    "--host", default="", help="The address to serve at; by default this machine's address in its own network."
)
@click.option(
    "--port",
    default=8737,
    show_default=True,
    type=click.IntRange(0, 65535),
    help="The port to serve at; 0 for any that is free.",
)
@click.option(
    "--name", "names", multiple=True, help="A name under which phones also reach this machine. Again for several."
)
@click.option("--new-key", is_flag=True, help="Make a new key: phones that had the old one are locked out.")
@click.option(
    "--csv",
    "csv_file",
    type=click.Path(dir_okay=False, path_type=Path),
    help="Write the records so far as CSV, and end.",
)
def tub(
    rules: str, out: Path, host: str, port: int, names: tuple[str, ...], new_key: bool, csv_file: Path | None
) -> None:
    """Serve a page for phones at the tub: notes, buttons, drawings and photographs, graded by RULES as you go.

    Scan the code with a phone in the same network. Everything stays in FILE.tub on this machine.
    """
    from koirules_tub.access import key_of, private_address
    from koirules_tub.serving import serve, written_csv
    from koirules_tub.store import Store, StoreError

    try:
        standard = load_standard(rules)
        store = Store(out)
    except StandardError as error:
        for problem in error.problems:
            click.echo(str(problem), err=True)
        sys.exit(PROBLEMS)
    except (StoreError, OSError) as error:
        click.echo(str(error), err=True)
        sys.exit(PROBLEMS)
    except Exception as error:  # sqlite3 cannot make the file
        click.echo(f"{out} cannot be written: {error}.", err=True)
        sys.exit(PROBLEMS)
    if csv_file is not None:
        sys.exit(written_csv(standard, store, csv_file))
    serve(standard, store, key_of(out, new=new_key), host or private_address(), port, names)
