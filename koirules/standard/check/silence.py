"""Checks what silence means of each trait, and what is carried forward."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence

from koirules.language import statements as st
from koirules.language.syntax import Expression, Word
from koirules.problems import Place, naming
from koirules.problems import silence as say
from koirules.standard.check.expressions import Typer
from koirules.standard.check.phrasing import read_stated
from koirules.standard.parts import SilentTrait
from koirules.standard.tree import (
    FaultRead,
    GradeRead,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    Supplied,
    Written,
    walk,
)
from koirules.vocabulary.nearness import near
from koirules.vocabulary.readings import Reading
from koirules.vocabulary.traits import Trait


def silent_traits(statements: Iterable[st.Silence], traits: Collection[str]) -> frozenset[str]:
    """The names of the traits of which silence means something, before anything of it is checked."""
    return frozenset(entry.stated.trait.text for one in statements for entry in one.entries) & frozenset(traits)


def check_silence(statements: Sequence[st.Silence], typer: Typer) -> Mapping[str, SilentTrait]:
    """What silence means, by trait, in the order of the file."""
    found: dict[str, SilentTrait] = {}
    places: dict[str, Place] = {}
    for entry in (entry for one in statements for entry in one.entries):
        word = entry.stated.trait
        trait = typer.traits.get(word.text)
        condition = None if entry.unless is None else _unless(entry.unless, typer)
        if word.text in places:
            typer.problems.append(say.silence_twice(word.place, word.text, places[word.text]))
            continue
        places[word.text] = word.place
        if trait is None:
            _unknown(word, typer)
            continue
        reading = _reading(entry, trait, typer)
        if reading is not None and (condition is not None or entry.unless is None):
            found[trait.name] = SilentTrait(trait, reading, condition, entry.place)
    return found


def _unknown(word: Word, typer: Typer) -> None:
    if typer.vocabulary_known and word.text not in typer.unread:
        guess, elsewhere = near(word.text, typer.traits), typer.elsewhere.get(word.text)
        typer.problems.append(naming.unknown_name(word.place, word.text, guess, elsewhere))


def check_carried(statements: Sequence[st.Carry], typer: Typer) -> tuple[str, ...]:
    """The traits that a new sorting of a fish takes over from the one before, in the order of the file."""
    found: dict[str, Place] = {}
    for word in (word for one in statements for word in one.traits):
        if word.text not in typer.traits:
            _unknown(word, typer)
        elif word.text in found:
            typer.problems.append(say.carried_twice(word.place, word.text, found[word.text]))
        else:
            found[word.text] = word.place
    return tuple(found)


def _reading(entry: st.Silent, trait: Trait, typer: Typer) -> Reading | None:
    word = entry.stated.trait
    if trait.never_silent:
        typer.problems.append(say.never_silent(word.place, trait.name))
        return None
    if not trait.by_eye:
        typer.problems.append(say.not_by_eye(word.place, trait.name))
        return None
    return read_stated(entry.stated, trait, typer.problems)


def _unless(expression: Expression, typer: Typer) -> Node | None:
    """The condition of `unless`: it reads what was recorded of this fish, and nothing else."""
    node = typer.condition(expression)
    if node is None:
        return None
    for inner in walk(node):
        what = _not_recorded_of(inner)
        if what:
            typer.problems.append(say.unless_reads(expression.place, what))
            return None
    return node


def _not_recorded_of(node: Node) -> str:
    """What a node reads that is not recorded of this fish in this look; "" where it is."""
    match node:
        case ScoreRead():
            return "the score"
        case SectionRead(name=name):
            return f'the section "{name}"'
        case FaultRead(name=name):
            return f'the fault "{name}"'
        case GradeRead():
            return "the grade"
        case Supplied(source=source) | Recorded(of=Supplied(source=source)) if not isinstance(source, Written):
            return "what is worked out beside the record (`batch`, `earlier`, `grown to`)"
        case _:
            return ""
