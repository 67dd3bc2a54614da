"""The rows of a frame that was read, with what stands beside them, and the rows that a round looks at."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, Any, assert_never

from koirules.program.held import CodeColumn, Held, NoColumn, NumberColumn, Profile
from koirules.standard.tree import (
    FaultRead,
    GradeRead,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    Supplied,
    TraitRead,
    walk,
)
from koirules.values import define

if TYPE_CHECKING:
    import polars as pl


@define
class Rows:
    """A frame that was read: its columns, how each trait (or value beside the record) is held, and how many rows it has."""

    columns: pl.DataFrame
    held: dict[str, Held]
    height: int

    def with_numbers(self, key: str, low: pl.Series, high: pl.Series | None = None) -> None:
        """Add a value beside the record: doubles, null where it is not recorded."""
        name = f"beside {key}"
        self._put([low.alias(name)] if high is None else [low.alias(name), high.alias(f"{name} high")])
        self.held[key] = NumberColumn(name, low.null_count() > 0, "" if high is None else f"{name} high")

    def with_codes(self, key: str, codes: pl.Series, readings: Sequence[Any]) -> None:
        """Add a value beside the record: codes of readings, null where it is not recorded."""
        name = f"beside {key}"
        self._put([codes.alias(name)])
        self.held[key] = CodeColumn(name, tuple(readings), codes.null_count() > 0)

    def _put(self, added: list[pl.Series]) -> None:
        """Add columns, or put them in the place of those of the same name: a figure of more rows, seen by fewer."""
        import polars as pl

        self.columns = self.columns.with_columns(added) if self.columns.width else pl.DataFrame(added)

    def chosen(self, rows: pl.Series, nodes: Iterable[Node] | None = None) -> Rows:
        """The rows of these numbers; with nodes no more of their columns than what these expressions read."""
        import polars as pl

        if not self.columns.width:
            # A frame without columns has no rows either, whatever is chosen of it.
            return Rows(pl.DataFrame(), dict(self.held), len(rows))
        if nodes is None:
            return Rows(self.columns[rows], dict(self.held), len(rows))

        read = _read_by(nodes)
        held = {key: how for key, how in self.held.items() if key in read}
        columns = [name for how in held.values() for name in columns_of(how)]
        columns += [name for name in self.columns.columns if name.rpartition(" ")[0] in read]
        if not columns:
            return Rows(pl.DataFrame(), held, len(rows))
        return Rows(self.columns[list(dict.fromkeys(columns))][rows], held, len(rows))

    @property
    def profile(self) -> Profile:
        """How everything is held: what expressions are made for."""
        return tuple(sorted(self.held.items(), key=lambda pair: pair[0]))


def _read_by(nodes: Iterable[Node]) -> set[str]:
    """The keys of what expressions read: traits, values beside the record, outcomes."""
    found: set[str] = set()
    for root in nodes:
        for node in walk(root, into_sources=True):
            match node:
                case TraitRead() | Supplied() | Recorded():
                    found.add(node.key)
                case ScoreRead():
                    found.add("score")
                case SectionRead(name=name):
                    found.add(f"section {name}")
                case FaultRead(name=name):
                    found.add(f"fault {name}")
                case GradeRead():
                    found.add("grade")
                case _:
                    pass
    return found


def columns_of(held: Held) -> tuple[str, ...]:
    """The names of the columns that hold a trait."""
    match held:
        case NumberColumn(name=name, high=high):
            return (name, high) if high else (name,)
        case CodeColumn(name=name):
            return (name,)
        case NoColumn():
            return ()
        case _:
            assert_never(held)


def hold_grade(rows: Rows, bits: pl.Series) -> None:
    """Hold the grades still possible, given as bits with the worst first, as what `grade` reads."""
    import polars as pl

    different = bits.unique().sort()
    codes = different.search_sorted(bits).cast(pl.UInt32)
    rows.with_codes("grade", codes, different.to_list())
