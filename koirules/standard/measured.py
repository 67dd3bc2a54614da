"""The measures of a variety, typed: formulas as trees of the same kind as rules, each measure behind those it reads."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import lru_cache

from attrs import evolve

from koirules.problems import Place, Problem, is_refused, measuring
from koirules.standard.derivations import TypedFormula, TypedMeasure, inputs_of
from koirules.standard.parts import Setting
from koirules.standard.titles import Titled
from koirules.standard.tree import Apply, Constant, Recorded, SettingRead, TraitRead, walk
from koirules.standard.types import Numeric, Steps, type_of_kind, type_words
from koirules.vocabulary import measures as declared
from koirules.vocabulary import subject as subjects
from koirules.vocabulary.measure_names import misnamed
from koirules.vocabulary.measures import Computed, Formula, Measure
from koirules.vocabulary.traits import Better, Trait, Variety

_FILE = "formula"


def typed_measures(
    measures: Iterable[Measure], traits: Mapping[str, Trait], constants: Sequence[declared.Constant]
) -> tuple[tuple[TypedMeasure, ...], tuple[Problem, ...]]:
    """The measures of a variety in the order in which they can be worked out, or what is wrong with them.

    A formula that names no trait is left out: what never changes is a constant, and says nothing of a fish.
    """
    settings = constant_settings(constants, {})
    typed: list[TypedMeasure] = []
    listed = list(measures)
    problems = list(misnamed(listed, traits, constants))
    for measure in listed:
        if isinstance(measure, Computed):
            typed.append(measure)
        elif measure.trait in traits:
            made = _typed(measure, traits, settings)
            typed += [made] if isinstance(made, TypedFormula) and made.inputs else []
            problems += [] if isinstance(made, TypedFormula) else made
    return ((), tuple(problems)) if problems else _in_order(typed)


# The same variety comes again with every file that is loaded, and is the same object then.
@lru_cache(maxsize=32)
def _typed_of(variety: Variety) -> tuple[tuple[TypedMeasure, ...], tuple[Problem, ...]]:
    return typed_measures(variety.measures, variety.traits, variety.constants)


def measures_of(variety: Variety) -> tuple[TypedMeasure, ...]:
    """The measures of a variety, none where one of its formulas does not hold."""
    return _typed_of(variety)[0]


def unsound_formulas(variety: Variety) -> tuple[Problem, ...]:
    """What is wrong with the formulas of a variety; the names of its measures have been looked at when it was loaded."""
    return _typed_of(variety)[1]


def formulas_left_out(variety: Variety) -> tuple[Formula, ...]:
    """The formulas of a variety that name no trait and were therefore left out of its measures."""
    if unsound_formulas(variety):
        return ()  # nothing is measured then
    given = {name for measure in measures_of(variety) for name in measure.outputs}
    return tuple(one for one in variety.measures if isinstance(one, Formula) and one.trait not in given)


# As above: bases for several varieties are loaded again with every page that builds on them.
@lru_cache(maxsize=32)
def in_common(varieties: tuple[Variety, ...], name: str) -> Variety:
    """What several varieties have alike: a trait of the same kind that grows in the same way, under the name of all.

    What only differs in words is alike, and told in the words of the first. A measure goes along where all have it, and all
    that it reads and gives.
    """
    first, *others = varieties
    traits: dict[str, Trait] = {}
    for trait in first.traits.values():
        like = [one.traits.get(trait.name) for one in others]
        if all(one is not None and _alike(trait, one) for one in like):
            same_way = all(one is not None and one.better is trait.better for one in like)
            traits[trait.name] = trait if same_way else evolve(trait, better=Better.NEITHER)
    inputs = {measure.outputs: inputs_of(measure) for measure in measures_of(first)}
    measures = tuple(
        measure
        for measure in first.measures
        if all(measure in one.measures for one in others)
        and {*declared.outputs_of(measure), *inputs.get(tuple(declared.outputs_of(measure)), ())} <= traits.keys()
    )
    constants = tuple(one for one in first.constants if all(one in other.constants for other in others))
    title = ", ".join(one.title for one in varieties)
    phrases = {said: means for one in varieties for said, means in one.phrases.items()}
    sayings = tuple(dict.fromkeys(saying for one in varieties for saying in one.sayings))
    subject = subjects.in_common(one.subject for one in varieties)
    return Variety(name, title, traits, "", measures, constants, phrases=phrases, sayings=sayings, subject=subject)


def _alike(one: Trait, other: Trait) -> bool:
    return (one.kind, one.growth, one.allometry) == (other.kind, other.growth, other.allometry)


def needed_for(measures: Sequence[TypedMeasure], traits: Iterable[str]) -> tuple[TypedMeasure, ...]:
    """The measures without which some traits could not be derived, in their order."""
    wanted = set(traits)
    kept: list[TypedMeasure] = []
    for measure in reversed(measures):
        if wanted.intersection(measure.outputs):
            kept.append(measure)
            wanted.update(inputs_of(measure))
    return tuple(reversed(kept))


def constant_settings(constants: Iterable[declared.Constant], settings: Mapping[str, Setting]) -> dict[str, Setting]:
    """The constants as settings: those of a standard where it has one of the name, else as the vocabulary has them."""
    found: dict[str, Setting] = {}
    nowhere = Place(_FILE, 1, 1, 1, 1)
    for one in constants:
        unit, kind = one.kind.unit, one.kind
        value = one.value if unit is None else unit.to_held(one.value)
        plain = Setting(one.name, Titled(one.title, {}), unit, value, kind.held_low, kind.held_high, True, nowhere)
        found[one.name] = settings.get(one.name, plain)
    return found


def _typed(
    formula: Formula, traits: Mapping[str, Trait], settings: Mapping[str, Setting]
) -> TypedFormula | list[Problem]:
    from koirules.language import statements as st
    from koirules.language.parse.reader import read_text
    from koirules.standard.check.expressions import Typer

    trait = traits[formula.trait]
    read = read_text(f"term measured means {formula.expression}\n", _FILE)
    terms = [statement for statement in read.rules.statements if isinstance(statement, st.Term)]
    problems = list(read.problems)
    typer = Typer(traits, settings, (), {}, (), {}, problems=problems)
    kind = type_of_kind(trait.kind)
    expected = kind if isinstance(kind, Steps) else None
    single = len(terms) == 1 and len(read.rules.statements) == 1
    node = typer.node(terms[0].expression, expected) if single else None
    refused = [problem for problem in problems if not problem.warning]
    if node is None or is_refused(refused):
        told = (f"{one.cause} {one.mend}" if one.edit is not None else one.cause for one in refused)
        causes = "; ".join(told) or "it is no single expression."
        return [measuring.formula_does_not_hold(formula.trait, formula.expression, causes)]
    same = node.type == kind
    if isinstance(kind, Numeric) and isinstance(node.type, Numeric):
        same = node.type.dimension == kind.dimension and (node.type.whole or not kind.whole)
    if not all(isinstance(part, Constant | TraitRead | SettingRead | Recorded | Apply) for part in walk(node)):
        cause = "it reads what is only known once the record is graded."
        return [measuring.formula_does_not_hold(formula.trait, formula.expression, cause)]
    if not same:
        cause = f"it gives {type_words(node.type)}, and the trait is {type_words(kind)}."
        return [measuring.formula_does_not_hold(formula.trait, formula.expression, cause)]
    reads = [part.key for part in walk(node) if isinstance(part, TraitRead | Recorded)]
    return TypedFormula(trait, formula.expression, node, tuple(dict.fromkeys(reads)))


def _in_order(measures: Sequence[TypedMeasure]) -> tuple[tuple[TypedMeasure, ...], tuple[Problem, ...]]:
    waiting = list(measures)
    done: list[TypedMeasure] = []
    while waiting:
        open_ = {name for measure in waiting for name in measure.outputs}
        ready = [measure for measure in waiting if not open_.intersection(inputs_of(measure))]
        if not ready:
            return (), (measuring.measures_in_a_circle(tuple(sorted(open_))),)
        done += ready
        waiting = [measure for measure in waiting if measure not in ready]
    return tuple(done), ()
