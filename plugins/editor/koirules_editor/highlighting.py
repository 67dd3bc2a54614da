"""What a highlighter has to know of rule files: its words, and a rule for each thing that can stand on a line.

Written once: the Pygments lexer reads these rules, and the TextMate grammar is made of them (`textmate.py`). The expressions
keep to what Oniguruma and Python read alike. Words that farms like to give as names (`keep`, `weight`) are words of the
language only where they must be.
"""

from __future__ import annotations

from koirules.vocabulary.units import OWN_UNITS
from koirules.vocabulary.words import FIGURE_WORDS, OPERATOR_WORDS


def _words(text: str) -> list[str]:
    return text.split()


HEADS = _words(
    "standard setting trait term section points bonus penalty fault lift grade round alert silence carry panel phrase sample "
    "replace drop rename"
)

OPERATORS = sorted(OPERATOR_WORDS - {"if", "otherwise", "yes", "no"})

WORDS = _words(
    "if otherwise except after again all among as based better by comes correction each edition from grades gives highest in "
    "kept leaves less lowers lowest means more nothing on out over passed possibly recorded rescues same say scores seal send "
    "shows stays than the them then those ties unless until valid variety with worse worth any anything else"
)

ONLY = {
    "choice": r"choice(?=[ \t]+of(?!\w))",
    "for": r"for(?=[ \t]+[^\W\d])",
    "first": r"first(?=[ \t]+recorded(?!\w))",
    "keep": r"keep(?=[ \t]+those(?!\w))",
    "known": r"(?<=not\s)known(?!\w)",
    "forward": r"(?<=carry\s)forward(?!\w)",
    "judges": r"(?<=[0-9])[ \t]+judges(?!\w)",
    "votes": r"(?<=by\s)votes(?!\w)",
    "mean": r"(?:(?<=batch\s)|(?<=by\s))mean(?=[ \t]+of(?!\w))",
    "without": r"without(?=[ \t]+the[ \t]+highest(?!\w))",
    "named": r"(?<=places\s)named(?!\w)",
    "two": r"two(?=[ \t]+in[ \t]+the[ \t]+middle(?!\w))",
    "middle": r"(?<=the\s)middle(?=[ \t]+the(?!\w))",
    "lower": r"(?<=the\s)lower(?!\w)",
    "higher": r"(?<=the\s)higher(?!\w)",
    "trait": r"(?<=[\w\"]\s)trait(?=[ \t]+by[ \t]+trait)|(?<=by\s)trait(?!\w)",
    "correction": r"(?<=means\s)correction(?!\w)",
    "label": r"(?<=as\s)label(?!\w)",
    **{name: rf"(?<=batch\s){name}(?!\w)" for name in FIGURE_WORDS if name not in WORDS},
    "look": r"(?<=at\s)look(?=[ \t]+[0-9])",
    "note": r'note(?=[ \t]+")',
    "number": r"number(?=[ \t]+(?:in|from)(?!\w))",
    "open": r"(?<=stays\s)open(?!\w)",
    "pick": r"pick(?=[ \t]+\w+[ \t]+by(?!\w))",
    "places": r"places(?=[ \t]+of(?!\w))",
    "scale": r"(?<=as\s)scale(?!\w)",
    "stage": r"stage(?=[ \t]+[^\W\d])",
    "up": r"up(?=[ \t]+to(?!\w))",
    "weight": r"weight(?=[ \t]+[-+.0-9])",
}
"""Words of the language that are names as often, and where they are words."""

CONSTANTS = ("yes", "no", "none")

UNITS = sorted((symbol for symbol in OWN_UNITS if symbol.isalpha()), key=lambda word: (-len(word), word))

CLASSES = {
    "remark": ("Comment.Single", "comment.line.number-sign"),
    "text": ("String.Double", "string.quoted.double"),
    "filled": ("String.Interpol", "variable.other.filled"),
    "head": ("Keyword.Declaration", "keyword.declaration"),
    "given": ("Name.Function", "entity.name.function"),
    "word": ("Keyword", "keyword.other"),
    "operator": ("Operator.Word", "keyword.operator.word"),
    "constant": ("Keyword.Constant", "constant.language"),
    "number": ("Number", "constant.numeric"),
    "unit": ("Keyword.Type", "keyword.other.unit"),
    "label": ("Literal", "constant.other.label"),
    "name": ("Name", "variable.other"),
    "sign": ("Operator", "keyword.operator"),
    "mark": ("Punctuation", "punctuation.separator"),
}
"""What a stretch of a line can be: the token of Pygments and the scope of TextMate."""

_NAME = r"[^\W\d]\w*"
_UNIT = rf"(?:(?:{'|'.join(UNITS)})(?!\w)|%)"
_NUMBER = r"(?:[0-9]+(?:\.[0-9]+)?|\.[0-9]+)"
_NAMED = [
    head
    for head in HEADS
    if head not in {"standard", "sample", "silence", "carry", "phrase", "replace", "drop", "rename"}
]


def _any(words: list[str]) -> str:
    return rf"(?<!\w)(?:{'|'.join(words)})(?!\w)"


RULES: list[tuple[str, tuple[str | None, ...]]] = [
    ("[#\uff03].*", ("remark",)),
    (
        rf"^(replace|drop|rename)([ \t]+)({'|'.join(HEADS[1:-3])})(?!\w)(?:([ \t]+)({_NAME}))?",
        ("head", None, "head", None, "given"),
    ),
    (rf"^({'|'.join(_NAMED)})([ \t]+)({_NAME})", ("head", None, "given")),
    (rf"^({'|'.join(HEADS)})(?!\w)", ("head",)),
    (r"(?<!\w)(edition|seal)([ \t]+)(\w[\w.\-]*)", ("word", None, "label")),
    (rf"(?<!\w)(section|fault)([ \t]+)({_NAME})", ("operator", None, "name")),
    (rf"(?<!\w)(than|out|after|variety|round)([ \t]+)({_NAME})", ("word", None, "name")),
    (r"(?<![\w.])[0-9]{4}-[0-9]{2}-[0-9]{2}(?!\w)", ("label",)),
    (rf"(?<![\w.])({_NUMBER})([ \t]*)({_UNIT})", ("number", None, "unit")),
    (rf"(?<![\w.]){_NUMBER}", ("number",)),
    (rf"(?<=\sin\s){_UNIT}", ("unit",)),
    (rf"(?<!\w)(?:{'|'.join(ONLY.values())})", ("word",)),
    (r"(?<!\w)no(?=[ \t]+(?:better|worse|more|fault)(?!\w))", ("word",)),
    (_any(list(CONSTANTS)), ("constant",)),
    (_any(OPERATORS), ("operator",)),
    (_any(WORDS), ("word",)),
    (_NAME, ("name",)),
    (r"[-+*/]", ("sign",)),
    (r"[(),:<=]", ("mark",)),
]
"""Each rule with the class of each of its groups, or of all of it; the first that fits at a place holds. Texts stand apart."""

FILLED = r"\{[^{}\"\n]*\}"
"""What is filled in inside of a text."""
