"""Whether the measures of a variety name what is there: all that can be said of them without reading a formula."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

from koirules.problems import Problem, measuring
from koirules.vocabulary.measures import Constant, Formula, Measure, outputs_of
from koirules.vocabulary.traits import Trait


def misnamed(
    measures: Iterable[Measure], traits: Mapping[str, Trait], constants: Sequence[Constant]
) -> Iterator[Problem]:
    """The problems of names: constants like traits, traits that are not there, traits that are measured twice."""
    names = [constant.name for constant in constants]
    for name in dict.fromkeys(names):
        if name in traits or names.count(name) > 1:
            yield measuring.constant_like_trait(name)
    given: set[str] = set()
    for measure in measures:
        read = () if isinstance(measure, Formula) else (*measure.inputs, *measure.helped_by)
        for name in (*outputs_of(measure), *read):
            if name not in traits:
                yield measuring.measure_of_no_trait(title_of(measure), name)
        for name in outputs_of(measure):
            if name in given:
                yield measuring.measured_twice(name)
        given.update(outputs_of(measure))


def title_of(measure: Measure) -> str:
    """What a problem calls a measure."""
    return measure.trait if isinstance(measure, Formula) else measure.name
