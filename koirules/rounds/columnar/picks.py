"""A pick over columns: the same walk down the order as for single records, with what is not walked through done at once."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import TYPE_CHECKING

from koirules.results.course import Fate
from koirules.rounds.open_picks import may_push_out_two
from koirules.rounds.picking import Candidate, Walk

if TYPE_CHECKING:
    import polars as pl


_AT_ONCE = 4_096

FATES = tuple(Fate)
_KEPT, _OVER = FATES.index(Fate.KEPT), FATES.index(Fate.OVER)


def picked_columns(frame: pl.DataFrame, keys: int, amount: int | None, quotas: Sequence[int], ties: str) -> pl.Series:
    """Pick among rows; gives the number of the fate (FATES) of each, 0 where it is no candidate.

    frame: `candidate`, `k0` … the keys (smaller comes first), `q0` … the group in each quota, null where a row counts in
    none.
    """
    import polars as pl

    names = [f"k{i}" for i in range(keys)]
    numbered = frame.with_row_index("row")
    ordered = numbered.filter("candidate").sort(*names, maintain_order=True)
    fates = pl.zeros(frame.height, pl.UInt8, eager=True)
    if not quotas and (amount is None or ties == "first"):
        kept = ordered["row"] if amount is None else ordered["row"].head(amount)
        over = ordered["row"].slice(len(kept))
        return fates.scatter(kept, _KEPT).scatter(over, _OVER)
    return _walked(ordered, names, amount, quotas, ties, fates)


def _walked(
    ordered: pl.DataFrame, names: Sequence[str], amount: int | None, quotas: Sequence[int], ties: str, fates: pl.Series
) -> pl.Series:
    import polars as pl

    walk = Walk(amount, quotas)
    rows = ordered["row"]
    groups = ordered[[f"q{i}" for i in range(len(quotas))]]
    starts = _starts(ordered, names, one_by_one=ties == "first")
    numbers = {fate: number for number, fate in enumerate(FATES)}
    found: list[int] = []
    # Some thousand blocks at a time: most walks end early.
    for first in range(0, len(starts) - 1, _AT_ONCE):
        if walk.amount == 0:
            break
        borders = starts[first : first + _AT_ONCE + 1].to_list()
        begin, size = borders[0], borders[-1] - borders[0]
        inside = groups.slice(begin, size).rows() if quotas else [()] * size
        for low, high in pairwise(borders):
            if walk.amount == 0:
                break
            if high - low == 1:
                found.append(numbers[walk.single(inside[low - begin])])
                continue
            equal = [Candidate(place, (), (), inside[place - begin]) for place in range(low, high)]
            walk.block(equal, low + 1, all_in=ties == "all")
            found.extend(numbers[walk.picked.fates[place]] for place in range(low, high))
    return fates.scatter(rows.head(len(found)), pl.Series(found, dtype=pl.UInt8)).scatter(rows.slice(len(found)), _OVER)


def _starts(ordered: pl.DataFrame, names: Sequence[str], *, one_by_one: bool) -> pl.Series:
    """Where each block of rows with equal keys begins, and behind the last of them where it ends."""
    import polars as pl

    if one_by_one:
        return pl.int_range(ordered.height + 1, eager=True)
    changed = pl.any_horizontal([pl.col(name) != pl.col(name).shift(1) for name in names]).fill_null(value=True)
    starts = ordered.select(changed.arg_true().cast(pl.Int64)).to_series()
    return starts.append(pl.Series([ordered.height], dtype=pl.Int64))


def open_columns(
    frame: pl.DataFrame, keys: int, amount: int | None, quotas: Sequence[int], same: Sequence[bool], ties: str
) -> pl.Series:
    """The rows in whose fate a recording could still change (open_picks.py), all at once.

    frame: `fate` its number, `candidate` (false: only an other, that could be one), `k0` … the keys, by the worst that they
    may come to, and `b0` … by the best, `falls` whether a row may come to stand behind where it stands now, `q0` … its
    group in each quota, `l0` … whether that is not sure, `sure` whether it surely is a candidate. same: of each quota,
    whether its groups are of the same values.
    """
    import polars as pl

    numbered, names, fates = frame.with_row_index("row"), [f"k{i}" for i in range(keys)], frame["fate"]
    best = [f"b{i}" for i in range(len(names))]
    differs = pl.any_horizontal([pl.col(k) != pl.col(b) for k, b in zip(names, best, strict=True)])
    loose = pl.any_horizontal([pl.lit(value=False), *(pl.col(f"l{i}") for i in range(len(quotas)))])
    doubtful = numbered.select(doubtful=~pl.col("candidate") | ~pl.col("sure") | pl.col("falls") | loose)["doubtful"]
    is_open = doubtful | numbered.select(open=differs)["open"]
    nothing = pl.repeat(value=False, n=numbered.height, eager=True, dtype=pl.Boolean)
    if amount == 0 or not is_open.any():
        return nothing
    kept = (fates == _KEPT) & numbered["candidate"]
    by = ["row"] if ties == "first" else []
    # Keys and hopes get numbers in one order, so that one can be looked up among the other.
    worst = numbered.select(*(pl.col(k).alias(f"o{i}") for i, k in enumerate(names)), *by)
    hopes = numbered.select(*(pl.col(b).alias(f"o{i}") for i, b in enumerate(best)), *by)
    rank = pl.concat([worst, hopes]).select(pl.struct(pl.all()).rank("dense")).to_series()
    key, hope = rank.head(numbered.height), rank.slice(numbered.height)
    strictly = ties == "all"
    crowded = nothing
    if amount is not None:
        crowded = _at_or_above(hope, key, hope, strictly=strictly) >= amount
    for i, quota in enumerate(quotas):
        unknown = numbered[f"l{i}"] if same[i] else nothing
        crowded = crowded | _crowded_in(numbered[f"q{i}"], unknown, key, hope, quota, strictly=strictly)
    open_kept = kept & crowded
    sure = key.filter(kept).sort()
    hopeful = (
        (hope < key)
        if amount is None
        else (hope < key) & (sure.search_sorted(hope, "left" if strictly else "right") < amount)
    )
    freeing = hope.filter(doubtful | (hope < key) if may_push_out_two(quotas, ties) else doubtful).min()
    hopeful = hopeful | numbered.select(loose=loose)["loose"]
    hopeful = hopeful if freeing is None else hopeful | (key >= freeing)
    return open_kept | (~kept & numbered["candidate"] & hopeful)


def _at_or_above(hopes: pl.Series, key: pl.Series, hope: pl.Series, *, strictly: bool) -> pl.Series:
    """How many others may come to stand at or above each row (strictly above it)."""
    found = hopes.sort().search_sorted(key, "left" if strictly else "right")
    itself = (hope < key) if strictly else (hope <= key)
    return found - itself.cast(found.dtype)


def _crowded_in(
    groups: pl.Series, unknown: pl.Series, key: pl.Series, hope: pl.Series, quota: int, *, strictly: bool
) -> pl.Series:
    """unknown: the rows that may yet turn out to be in any group."""
    import polars as pl

    frame = pl.DataFrame({"g": groups, "key": key, "hope": hope, "unknown": unknown}).with_row_index("row")
    anywhere = frame.filter("unknown")
    found = pl.repeat(value=False, n=len(groups), eager=True, dtype=pl.Boolean)
    pieces = frame.filter(pl.col("g").is_not_null() & ~pl.col("unknown")).group_by("g")
    for piece, others in [*((piece, anywhere["hope"]) for _, piece in pieces), (anywhere, None)]:
        hopes = hope if others is None else pl.concat([piece["hope"], others])
        if len(hopes) > quota:
            many = _at_or_above(hopes, piece["key"], piece["hope"], strictly=strictly) >= quota
            found = found.scatter(piece["row"].filter(many), values=True)
    return found
