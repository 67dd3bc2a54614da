"""Problems of measures: what does not hold in a formula of a vocabulary, and what is doubtful about a fish."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.extras import to_install
from koirules.problems.problem import Cell, Place, Problem
from koirules.problems.quoting import in_words, quoted


def measure_of_no_trait(measure: str, trait: str) -> Problem:
    """A measure reads or gives a trait that its variety lacks."""
    return Problem(
        "measure-of-no-trait",
        Cell("measures"),
        f"The measure {quoted(measure)} names {quoted(trait)}, which is no trait of the variety.",
        "Include the vocabulary that has the trait, or take it out of the measure.",
    )


def measured_twice(trait: str) -> Problem:
    """Two measures give the same trait."""
    return Problem(
        "measured-twice",
        Cell("measures"),
        f"Two measures give the trait {quoted(trait)}.",
        "Keep one of the two: nobody could tell which counts.",
    )


def constant_like_trait(name: str) -> Problem:
    """A constant has the name of a trait."""
    return Problem(
        "constant-like-trait",
        Cell("measures"),
        f"{quoted(name)} is the name of a constant and of a trait of the same variety, or of two constants.",
        "Rename one of the two.",
    )


def measures_in_a_circle(traits: Sequence[str]) -> Problem:
    """Measures that read what they give, directly or by way of others."""
    return Problem(
        "measures-in-a-circle",
        Cell("measures"),
        f"The measures of {in_words(traits, 'and')} wait for each other.",
        "Let one of them read what was recorded.",
    )


def formula_does_not_hold(trait: str, expression: str, why: str) -> Problem:
    """A formula of a vocabulary is no expression that gives its trait."""
    return Problem(
        "formula-does-not-hold",
        Cell("measures"),
        f"The formula {quoted(expression)} does not give {quoted(trait)}: {why}",
        "Write an expression of the rule language over traits of the variety, with the unit of the trait.",
    )


def formula_of_no_trait(site: Cell, trait: str, expression: str) -> Problem:
    """A formula of a vocabulary comes out the same for every fish."""
    return Problem(
        "formula-of-no-trait",
        site,
        f"The measure of {quoted(trait)} was left out: its formula {quoted(expression)} names no trait.",
        "Name a trait in the formula, or give the number as a constant.",
        warning=True,
    )


def derived_differs(site: Cell, trait: str, written: str, derived: str, inputs: Sequence[str]) -> Problem:
    """A derived trait was written too, and not as what it was derived from has it."""
    return Problem(
        "derived-differs",
        site,
        f"{trait} is written as {written}, but from {in_words(inputs, 'and')} it comes out as {derived}.",
        "What is written counts; correct one of them, or leave the cell blank.",
        warning=True,
    )


def derived_outside(site: Cell, trait: str, derived: str, within: str, inputs: Sequence[str]) -> Problem:
    """A derived trait lies where no fish can be."""
    return Problem(
        "derived-outside",
        site,
        f"From {in_words(inputs, 'and')}, {trait} comes out as {derived}, outside the range from {within}.",
        f"It is taken as not recorded; look at {in_words(inputs, 'and')} again.",
        warning=True,
    )


_EXTRAS = {"coloraide": "colour"}
"""The extra that brings a library; the others come with koirules itself."""

_INSTALLED_AS = {
    "PIL": "pillow",
    "cv2": "opencv-python",
    "skimage": "scikit-image",
    "sklearn": "scikit-learn",
    "yaml": "pyyaml",
}
"""What libraries are installed as that are imported by another name."""


def measuring_needs(site: Cell, measure: str, library: str) -> Problem:
    """A measure needs a library that is not installed. library: the name that it is imported by, of a part of it too."""
    top = library.partition(".")[0]
    install = to_install(_EXTRAS[top]) if top in _EXTRAS else f"python -m pip install {_INSTALLED_AS.get(top, top)}"
    return Problem(
        "measuring-needs-library",
        site,
        f"{measure[:1].upper()}{measure[1:]} is measured with the library {library}, which is not installed.",
        f"Install it where koirules is: {install}.",
    )


def measure_failed(site: Cell, measure: str, error: str, plugin: str) -> Problem:
    """The code of a measure raised an error. plugin: whose it is, "" where it is koirules' own."""
    return Problem(
        "measure-failed",
        site,
        f"The measure of {measure}{f' of the plugin {plugin}' if plugin else ''} failed ({error}).",
        "Update the plugin that it comes from, or leave out what it reads; `koirules --debug` shows the traceback.",
    )


def constant_of_another_kind(place: Place, name: str, within: str) -> Problem:
    """A setting has the name of a constant of the variety, but not its unit or range."""
    return Problem(
        "constant-of-another-kind",
        place,
        f"{quoted(name)} is a constant of the variety that its measures go by, and lies within {within}.",
        "Give it a value and a range within that, or choose another name.",
    )
