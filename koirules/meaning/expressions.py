"""Every comparison and operator as it is written: one row each.

The grammar's comparisons, the hints, the editor, the tidy writer, the checker and the highlighting read these rows, and list
nothing of their own. What the operators mean stands in operators.py.
"""

from __future__ import annotations

from enum import Enum, IntEnum

from koirules.meaning import operators as ops
from koirules.meaning.operators import Operation
from koirules.values import frozen


class Binding(IntEnum):
    """How tightly an expression binds, the loosest first, as the ladder of the grammar has it."""

    OR = 0
    AND = 1
    NOT = 2
    COMPARISON = 3
    SUM = 4
    PRODUCT = 5
    SIGN = 6
    GROWN = 7
    ATOM = 8
    PRIMARY = 9


class Operand(Enum):
    """What an operand can be."""

    NUMBER = "number"
    SCALE = "scale"
    CHOICE = "choice"
    PLACES = "places"
    TRUTH = "truth"
    TEXT = "text"
    RAW = "map or colour readings"


ALL = frozenset(Operand)
ORDERED = frozenset({Operand.NUMBER, Operand.SCALE})
VALUES = ORDERED | {Operand.CHOICE, Operand.TRUTH, Operand.TEXT}


@frozen
class Order:
    """How a comparison puts two sides in order. turned: the sides change places before the operation."""

    numbers: Operation
    levels: Operation
    turned: bool


@frozen
class Written:
    """How a comparison is written.

    words: of the comparison. joints: what stands before each operand ("" where nothing does); None where the operands stand
    in brackets. negated: whether `not` may stand behind `is`. left: what its left side can be. order: where it compares in
    order. opposite: the comparison with the sides turned round. about: what it says, for the editor. example: a condition.
    """

    words: str
    joints: tuple[str, ...] | None
    negated: bool
    left: frozenset[Operand]
    order: Order | None
    opposite: str
    about: str
    example: str


class Comparison(Enum):
    """The comparisons."""

    AT_LEAST = Written(
        "at least",
        ("",),
        False,
        ORDERED,
        Order(ops.NUMBER_AT_LEAST, ops.STEP_AT_LEAST, False),
        "at most",
        "This much or more.",
        "length at least 12 cm",
    )
    AT_MOST = Written(
        "at most",
        ("",),
        False,
        ORDERED,
        Order(ops.NUMBER_AT_LEAST, ops.STEP_AT_LEAST, True),
        "at least",
        "This much or less.",
        "length at most 12 cm",
    )
    ABOVE = Written(
        "above",
        ("",),
        False,
        ORDERED,
        Order(ops.NUMBER_ABOVE, ops.STEP_ABOVE, False),
        "below",
        "More than this.",
        "length above 12 cm",
    )
    BELOW = Written(
        "below",
        ("",),
        False,
        ORDERED,
        Order(ops.NUMBER_ABOVE, ops.STEP_ABOVE, True),
        "above",
        "Less than this.",
        "length below 12 cm",
    )
    BETWEEN = Written(
        "between",
        ("", "and"),
        False,
        ORDERED,
        None,
        "",
        "From one to the other, both ends in: `between A and B`.",
        "length between 12 cm and 15 cm",
    )
    IS = Written("is", ("",), True, VALUES, None, "", "Equal to; a step, an option, yes or no.", "kiwa is sharp")
    IS_ONE_OF = Written(
        "is one of", None, True, VALUES, None, "", "One of the words in brackets.", "kiwa is one of (fair, sharp)"
    )
    IS_WITHIN = Written(
        "is within",
        ("", "of"),
        True,
        frozenset({Operand.NUMBER}),
        None,
        "",
        "No farther from a number than so much, both ends in: `is within A of B`.",
        "length is within 1 cm of 12 cm",
    )
    IS_RECORDED = Written(
        "is recorded", (), True, ALL, None, "", "Whether it was written down at all.", "length is recorded"
    )
    INCLUDES = Written(
        "includes",
        ("",),
        False,
        frozenset({Operand.PLACES}),
        None,
        "",
        "The place is among those written down.",
        "hi_on_fins includes tail",
    )

    @property
    def rule(self) -> str:
        """The name of its alternative in the grammar."""
        return f"compared_{self.name.lower()}"

    @property
    def alternative(self) -> str:
        """Its alternative in the grammar."""
        first, *others = (f'"{word}"' for word in self.value.words.split())
        parts = [first, *(["[NOT]"] if self.value.negated else []), *others]
        if self.value.joints is None:
            parts.append('"(" sum ("," sum)* ")"')
        else:
            for joint in self.value.joints:
                parts += [f'"{joint}" sum' if joint else "sum"]
        return f"{' '.join(parts)} -> {self.rule}"

    def spelled(self, *, negated: bool) -> str:
        """Its words, with `not` behind the first where it is negated."""
        first, *others = self.value.words.split()
        return " ".join([first, *(["not"] if negated else []), *others])


BY_WORDS = {one.value.words: one for one in Comparison}
"""The comparisons by their words."""

BY_RULE = {one.rule: one for one in Comparison}
"""The comparisons by their alternatives in the grammar."""

FIRST_WORDS = tuple(dict.fromkeys(one.value.words.split()[0] for one in Comparison))
"""The words with which a comparison begins."""

PHRASES = tuple(dict.fromkeys("is" if words.startswith("is ") else words for words in BY_WORDS))
"""The comparisons as a phrase that can follow a value: those that begin with `is` are one."""


@frozen
class Form:
    """How another operator is written. words: what it begins with or stands between. binding: of the whole."""

    words: str
    binding: Binding
    about: str
    example: str


FORMS = {
    form.words: form
    for form in (
        Form("or", Binding.OR, "At least one must hold.", "kiwa is sharp or lustre is strong"),
        Form("and", Binding.AND, "Both must hold.", "kiwa is sharp and lustre is strong"),
        Form("not", Binding.NOT, "Must not hold.", "not kiwa is sharp"),
        Form("+", Binding.SUM, "The sum of both.", "length + 1 cm"),
        Form("-", Binding.SUM, "The difference of both.", "length - 1 cm"),
        Form("*", Binding.PRODUCT, "The product of both.", "2 * length"),
        Form("/", Binding.PRODUCT, "One divided by the other.", "length / 2"),
        Form("grown to", Binding.GROWN, "What it will be when it has grown to a length.", "girth grown to 60 cm"),
        Form(
            "count of",
            Binding.ATOM,
            "How many conditions of a bracket hold, or how many places.",
            "count of (kiwa is sharp, lustre is strong)",
        ),
        Form("lesser of", Binding.ATOM, "The least of the numbers in brackets.", "lesser of (length, 12 cm)"),
        Form("greater of", Binding.ATOM, "The greatest of the numbers in brackets.", "greater of (length, 12 cm)"),
        Form(
            "median of",
            Binding.ATOM,
            "The one in the middle of the numbers in brackets, of an even number the mean of the two in the middle.",
            "median of (length, 12 cm, 14 cm)",
        ),
        Form("earlier", Binding.ATOM, "What it was in the look before this one.", "earlier length"),
        Form("score", Binding.PRIMARY, "The sum of the section points.", "score"),
        Form("section", Binding.PRIMARY, "The points of a section.", "section body"),
        Form("fault", Binding.ATOM, "Whether a fault bites.", "fault bent"),
        Form("grade", Binding.ATOM, "The grade that it gets; only alerts and rounds read it.", "grade"),
    )
}
"""The other operators by their words."""
