"""Problems of `grown to`: what cannot be asked, lengths that are none, coefficients that no fish grows by."""

from __future__ import annotations

from koirules.problems.problem import Edit, Place, Problem


def no_model(place: Place, name: str) -> Problem:
    """A trait of which nobody can say how it follows the length."""
    return Problem(
        "no-model-of-growth",
        place,
        f'Nothing says what "{name}" becomes with growth.',
        "Ask for it as it is now, or for a figure that follows the length, such as girth_ratio: `koirules traits` marks them.",
    )


def not_of_this_fish(place: Place, what: str) -> Problem:
    """Points, figures of a batch or of another look, in what shall grow."""
    return Problem(
        "cannot-grow",
        place,
        f"`grown to` asks what a trait becomes, but {what} is no trait of the same record.",
        "Put the bracket around the traits only.",
    )


def grown_twice(place: Place) -> Problem:
    """`grown to` inside of `grown to`."""
    return Problem(
        "grown-twice",
        place,
        "This is grown already, and `grown to` stands around it again.",
        "Ask once, for the length in the end.",
    )


def not_a_length(place: Place, is_a: str, edit: Edit | None) -> Problem:
    """What a fish shall grow to is no length."""
    return Problem(
        "growth-not-a-length",
        place,
        f"After `grown to` stands a length, but this is {is_a}.",
        f'Write "{edit.text}".' if edit else "Write a length with its unit, such as `65 cm`, or the name of a setting.",
        edit=edit,
    )


def length_of_the_fish(place: Place, what: str) -> Problem:
    """What a fish shall grow to depends on the fish."""
    return Problem(
        "growth-length-of-the-fish",
        place,
        f"What is grown to is one length for all, but {what} differs from record to record.",
        "Write a length, a setting, or a sum of these.",
    )


def length_not_above_0(place: Place, low: str) -> Problem:
    """What a fish shall grow to may be no length at all."""
    return Problem(
        "growth-length-not-above-0",
        place,
        f"Nothing can grow to {low}, which this may be.",
        "Write a length above 0 cm, and give its settings a range above 0 cm.",
    )


def no_length_trait(place: Place, name: str) -> Problem:
    """A standard without the trait that growth goes by."""
    return Problem(
        "growth-without-length",
        place,
        f"`grown to` starts from the length today, and this standard has no trait `{name}` that is a length above 0.",
        "Name a `variety` in the header that has it.",
    )


def not_a_coefficient(place: Place, name: str, low: str, high: str, meaning: str) -> Problem:
    """A setting with the name of a coefficient of growth that cannot be one."""
    return Problem(
        "not-a-growth-coefficient",
        place,
        f'The setting "{name}" is {meaning}: a plain number from {low} to {high}, and so is each end of its range.',
        f"Write one such as `setting {name} = {high} from {low} to {high}`, or give your setting another name.",
    )
