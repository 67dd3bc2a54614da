"""What a person may wish of files of results: who a page is for, and what the house says about itself."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from functools import wraps
from pathlib import Path
from typing import Any

import click
from attrs import evolve, field

from koirules.commands.output import stop_if_refused
from koirules.report.audience import Audience, read_mark
from koirules.values import frozen


@frozen
class Wishes:
    """What was asked for. with_records: whether tables have what was recorded beside the results."""

    audience: Audience = field(factory=Audience)
    with_records: bool = False


def house_options(function: Callable[..., Any]) -> Callable[..., Any]:
    """Options for what stands at the top of a page or a sheet: they come as one argument, `house`."""

    @click.option("--title", default="", help="What the page is called, such as the name of the lot.")
    @click.option("--contact", default="", help="A line about the house: how to reach it.")
    @click.option("--no-owners", "hidden", is_flag=True, help="Name no owner, so that the page can be published.")
    @click.option("--mark", type=click.Path(), metavar="FILE", help="The mark of the house (.svg, .png or .jpg).")
    @wraps(function)
    def wrapped(
        *,
        title: str,
        contact: str,
        mark: str | None,
        hidden: bool,
        **rest: Any,
    ) -> Any:
        shown = ""
        if mark is not None:
            read = read_mark(Path(mark))
            if not isinstance(read, str):
                stop_if_refused([read])
            else:
                shown = read
        house = Audience(
            title=title,
            contact=contact,
            mark=shown,
            owners=not hidden,
        )
        return function(house=house, **rest)

    return wrapped


def occasion_options(function: Callable[..., Any]) -> Callable[..., Any]:
    """What the fish were seen at, for pages about records: it is put into `house`, whose options stand below."""

    @click.option(
        "--occasion", default="", metavar="TITLE", help="What the fish were seen at, instead of the file's name."
    )
    @click.option("--date", "day", type=click.DateTime(["%Y-%m-%d"]), metavar="DAY", help="The day of it: 2026-04-18.")
    @house_options
    @wraps(function)
    def wrapped(*, house: Audience, occasion: str, day: datetime | None, **rest: Any) -> Any:
        return function(house=evolve(house, occasion=occasion, day=None if day is None else day.date()), **rest)

    return wrapped


def reader_option(told: str) -> Callable[[Callable[..., Any]], Callable[..., Any]]:
    """`--for READER`, as `reader`. told: what it changes."""
    return click.option("--for", "reader", type=click.Choice(("house", "customer")), default="house", help=told)


def wishes_options(function: Callable[..., Any]) -> Callable[..., Any]:
    """Options for files of results: they come as one argument, `wishes`."""

    @reader_option("Whether a page shows everything, or only fish on offer without notes, rounds and reasons in full.")
    @click.option(
        "--offer",
        "offered",
        multiple=True,
        metavar="GRADE",
        help="A grade whose fish a customer sees; all but the last.",
    )
    @click.option("--with-records", is_flag=True, help="Put what was recorded beside the results, in .csv and .xlsx.")
    @occasion_options
    @wraps(function)
    def wrapped(*, house: Audience, reader: str, offered: tuple[str, ...], with_records: bool, **rest: Any) -> Any:
        audience = evolve(house, is_house=reader == "house", offered=frozenset(offered))
        return function(wishes=Wishes(audience, with_records), **rest)

    return wrapped
