"""Checks how a panel of judges is put together."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.language import statements as st
from koirules.language.syntax import Quantity
from koirules.problems import judging as say
from koirules.standard.check.declarations import titled
from koirules.standard.check.expressions import Typer
from koirules.standard.parts import Panel

MOST_JUDGES = 1_000


def check_panel(statements: Sequence[st.Panel], typer: Typer) -> Panel | None:
    """The panel of a standard; a second one, and numbers of judges that cannot be, are problems."""
    for again in statements[1:]:
        typer.problems.append(say.panel_twice(again.name.place, statements[0].name.text, statements[0].place))
    if not statements:
        return None
    written = statements[0]
    judges = _number(written.judges, 2, typer)
    named_by = _number(written.named_by, 1, typer)
    name = written.name.text
    middle = None if written.middle is None else written.middle.text
    alone = Panel(name, titled(written.title, name), written.way, None, named_by, middle, written.place)
    if written.judges is not None and judges is not None and judges < alone.needed:
        typer.problems.append(say.too_few_judges(written.judges.place, judges, alone.needed, named_by))
    return Panel(name, alone.title, written.way, judges, named_by, middle, written.place)


def _number(written: Quantity | None, least: int, typer: Typer) -> int | None:
    if written is None:
        return None
    value = written.value
    if value != value.to_integral_value() or not least <= value <= MOST_JUDGES:
        typer.problems.append(say.no_number_of_judges(written.place, value, least, MOST_JUDGES))
        return None
    return int(value)
