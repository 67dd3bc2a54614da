"""What was found, in words, for a terminal of 80 columns."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import isnan
from textwrap import wrap

from koirules_book.foresight import LEVEL, Foresight, OfGrade
from koirules_book.learning import Learnt
from koirules_book.sorters import Agreement, Drift
from koirules_book.statistics import Estimate, Share


def foresight_lines(found: Foresight) -> Iterator[str]:
    """What became of the fish, by what the standard had said of them."""
    yield f"{found.known} of {found.fish} fish have the outcome “{found.outcome}”."
    yield ""
    for grade in found.grades:
        yield _of_grade(grade, found.outcome)
    yield ""
    if found.area is not None and not isnan(found.area.value):
        yield from wrap(
            f"Of two fish, one with “{found.outcome}” and one without, the one with has the higher score in "
            f"{found.area.value:.0%} of cases{_between(found.area)}; 50% is chance (area under the curve).",
            78,
        )
    if found.correlation is not None and not isnan(found.correlation.value):
        value = found.correlation
        yield from wrap(
            f"Score and outcome go together by {value.value:.2f} (rank correlation; 95 %: {value.low:.2f} to {value.high:.2f}; "
            "0 is chance, 1 the same order).",
            78,
        )
    telling = [part for part in found.parts if part.tells]
    yield ""
    if telling:
        yield "Beyond all the rest, these told something of the outcome:"
        for part in sorted(telling, key=lambda part: part.p):
            way = "more of it went with more" if part.better else "more of it went with less"
            if part.kind == "fault":
                way = "fish with it had more" if part.better else "fish with it had less"
            yield f"  {part.title}: {way} (p {_p(part.p)}, {part.fish} fish unlike most)"
    elif found.parts:
        yield f"No criterion or fault told anything beyond all the rest (p below {LEVEL})."
    silent = [part.title for part in found.parts if not part.tells]
    if telling and silent:
        yield from wrap(f"Not shown to tell anything: {', '.join(silent)}.", 78)
    for caution in found.cautions:
        yield ""
        yield from wrap(caution, 78)


def _of_grade(grade: OfGrade, outcome: str) -> str:
    if grade.happened is not None:
        if not grade.known:
            return f"  {grade.title}: none of {grade.fish} has this outcome"
        return (
            f"  {grade.title}: of {grade.known} fish, {grade.happened.part} were “{outcome}” ({_share(grade.happened)})"
        )
    if grade.median is None:
        return f"  {grade.title}: none of {grade.fish} has this outcome"
    half = f"half of them {grade.low:,.0f} to {grade.high:,.0f}"
    return f"  {grade.title}: {grade.known} of {grade.fish}; middle {grade.median:,.0f}, {half}"


def _share(part: Share) -> str:
    return f"{part.value:.0%}; 95 %: {part.low:.0%} to {part.high:.0%}"


def _between(value: Estimate) -> str:
    return "" if isnan(value.low) else f" (95 %: {value.low:.0%} to {value.high:.0%})"


def _p(value: float) -> str:
    return "below 0.001" if value < 0.001 else f"{value:.3f}"


def learnt_lines(found: Learnt, notes: Sequence[str]) -> Iterator[str]:
    """What the picks say of the weights, and how sure that is."""
    what = "pairs" if found.pairs else "picks"
    left = f" {found.left_out} that faults or lifts decided say nothing of weights." if found.left_out else ""
    yield f"Learnt from {found.used} {what}.{left}"
    yield ""
    width = max(len(weight.title) for weight in found.weights)
    yield f"  {'points of the score at most':<{width}}  before  learnt   95 %"
    for weight in found.weights:
        sure = "stays: it never varied" if weight.held else f"{weight.low:.1f} to {weight.high:.1f}"
        yield f"  {weight.title:<{width}}  {weight.before:6.1f}  {weight.learnt:6.1f}   {sure}"
    for name, line, low, high in found.lines:
        yield f"  {f'line of {name}':<{width}}          {line:6.1f}   {low:.1f} to {high:.1f}"
    yield ""
    before = "" if isnan(found.agreed_before) else f"; the present edition gives {found.agreed_before:.0%}"
    yield from wrap(
        f"The learnt weights give {found.agreed_after:.0%} of {what} as they were made (cross-validated){before}.", 78
    )
    if found.prior is not None:
        yield from wrap(
            f"Each weight is held near the present one: {found.prior:.0%} of itself is one standard deviation (--hold).",
            78,
        )
    if found.contradictions:
        yield ""
        yield "Picked against a fault (faults are never changed here):"
        for one in found.contradictions[:10]:
            yield f"  {one.fish}: {', '.join(one.faults)}; picked {one.picked}, allowed {one.allowed}"
        if len(found.contradictions) > 10:
            yield f"  … and {len(found.contradictions) - 10} more; --json has all"
    for note in notes:
        yield ""
        yield from wrap(note, 78)


def sorter_lines(
    found: Sequence[Agreement], drifted: Sequence[Drift], training: Sequence[tuple[str, Share]]
) -> Iterator[str]:
    """Who differs from the others, and where training helps."""
    if not found:
        yield "No fish was looked at by two sorters on one day, so nothing can be said of how alike they read."
        return
    yield "Traits in which sorters differ most (share of alike pairs):"
    for trait, alike in training[:10]:
        yield f"  {trait}: {_share(alike)}, {alike.whole} pairs"
    if not training:
        yield "  fewer than ten pairs of any trait"
    yield ""
    if not drifted:
        yield "Nobody agrees less with the others than in the year before."
    for one in drifted:
        before, after = (f"{_share(year.same)} in {year.year}" for year in (one.before, one.after))
        yield f"{one.sorter} reads {one.trait} less like the others: {before}, {after}"
