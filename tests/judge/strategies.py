"""Hypothesis strategies for whole standards and records, and records as koirules takes them.

A record here is a plain dict from trait to: a float, an int or decimal text in the trait's own unit; ("span", low,
high) with decimal texts; a step or a frozenset of steps; True, False or "unsure"; a frozenset of places; a label's
text; ("some", places that are in, others, least, most of these). A trait that is not there was not recorded.
"""

from __future__ import annotations

from decimal import Decimal

from hypothesis import strategies as st

from tests.judge import model as m
from tests.judge.drawn_batches import Batch, drawn_batch
from tests.judge.drawn_records import drawn_completion, drawn_record
from tests.judge.drawn_statements import drawn_standard
from tests.judge.look import Record
from tests.judge.written import plain


def standards() -> st.SearchStrategy[m.Standard]:
    """Well-typed standards that a checker finds no problem in."""
    return drawn_standard()


def standards_that_grow() -> st.SearchStrategy[m.Standard]:
    """The same for an invented variety whose traits follow the length, asking what they will be."""
    return drawn_standard(growing=True)


def standards_that_compare() -> st.SearchStrategy[m.Standard]:
    """The same with figures of the batch, looks before, alerts and rounds."""
    return drawn_standard(comparing=True)


def standards_that_compare_in_silence() -> st.SearchStrategy[m.Standard]:
    """The same, saying what silence means of some traits."""
    return drawn_standard(comparing=True, silent=True)


def standards_that_select() -> st.SearchStrategy[m.Standard]:
    """The same with rounds, but without figures of the batch and looks before."""
    return drawn_standard(selecting=True)


def standards_with_silence() -> st.SearchStrategy[m.Standard]:
    """The same, saying what silence means of some traits."""
    return drawn_standard(silent=True)


def records(standard: m.Standard) -> st.SearchStrategy[dict[str, object]]:
    """What sorters write down: with holes, spans, thresholds hit exactly, ties of rounding."""
    return drawn_record(standard)


def batches(standard: m.Standard, most: int = 9) -> st.SearchStrategy[Batch]:
    """Fish that share values, with looks before, ties, holes, and a person's decisions."""
    return drawn_batch(standard, most)


def completions(standard: m.Standard, record: Record) -> st.SearchStrategy[dict[str, object]]:
    """A record without holes or doubts that lies inside the given one."""
    return drawn_completion(standard, record)


def layouts() -> st.SearchStrategy[int | None]:
    """Seeds for `to_text`."""
    return st.none() | st.integers(0, 1000)


def to_mapping(standard: m.Standard, record: Record) -> dict[str, object]:
    """The record as it is handed to `Standard.grade`: numbers as floats or text, the rest as text."""
    kinds = {each.name: each.kind for each in standard.traits}
    return {name: as_written(kinds[name], said) for name, said in record.items()}


def as_written(kind: m.Kind, said: object) -> object:
    match kind:
        case m.NumberKind() | m.CountKind():
            unit = f" {kind.unit}" if isinstance(kind, m.NumberKind) and kind.unit else ""
            if isinstance(said, tuple):
                return f"{said[1]}{unit} to {said[2]}{unit}"
            if unit == " %" and isinstance(said, float) and 0 < said <= 1:
                return f"{plain(Decimal(repr(said)))} %"  # a bare 0.45 would be refused
            return f"{said}{unit}" if isinstance(said, str) else said
        case m.ScaleKind(steps) | m.ChoiceKind(steps):
            assert isinstance(said, str | frozenset)
            return said if isinstance(said, str) else " or ".join(step for step in steps if step in said)
        case m.YesNoKind():
            return "yes or no" if said == "unsure" else said
        case m.PlacesKind(places):
            if isinstance(said, tuple):
                _some, inside, among, least, most = said
                number = f"{least} to {most}" if least < most else f"{least}"
                some = f"{number} of ({', '.join(place for place in places if place in among)})"
                return " ".join([place for place in places if place in inside]) + (", " if inside else "") + some
            assert isinstance(said, frozenset)
            return " ".join(place for place in places if place in said) or "none"
        case m.LabelKind():
            return said
    raise AssertionError(kind)
