"""Whatever text is typed, and whatever is asked about it, the server answers and lives."""

from __future__ import annotations

import random
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as some
from lsprotocol import types as lsp
from pygls.exceptions import JsonRpcException
from speaking import RULES

BITS = [
    *(
        "fault",
        "grade",
        "points",
        "section",
        "if",
        "is one of (",
        "by",
        ":",
        ",",
        "(",
        ")",
        '"',
        "{",
        "}",
        "#",
        "\n",
        "\r\n",
    ),
    *(
        "\n  ",
        "\t",
        "length",
        "kiwa",
        "fair",
        "3 cm",
        "%",
        "based on",
        "replace",
        "drop",
        "sample",
        "say",
        "\x0b",
        "\x0c",
    ),
    *("\x85", "\u2028", "\u0301", "🐟", "\ufeff", "錦", "“", "−", "=", "gives", "batch", "earlier", "\x00"),
]
OPTIONS = lsp.FormattingOptions(tab_size=2, insert_spaces=True)


REFUSED_IN_WORDS = -32803


def refusal(editor: Any, method: str, uri: str, more: dict[str, Any]) -> int | None:
    try:
        editor.ask(method, uri, **more)
    except JsonRpcException as refused:
        return refused.code
    return None


def spoilt(rng: random.Random) -> str:
    text = RULES
    for _ in range(rng.randint(0, 8)):
        at = rng.randint(0, len(text))
        text = text[:at] + rng.choice((rng.choice(BITS), text[at : at + 20])) + text[at + rng.choice((0, 0, 1, 8)) :]
    return text


@settings(max_examples=25, deadline=None)
@given(seed=some.integers(0, 2**32))
def test_every_question_is_answered_and_the_server_lives(shared, seed):
    rng = random.Random(seed)
    uri = shared.open("any.koi", spoilt(rng))
    for _ in range(2):
        text = spoilt(rng)
        shared.type(uri, text)
        # Places outside of the text, too: an editor may be ahead of us or behind.
        spot = lsp.Position(rng.randint(0, text.count("\n") + 2), rng.choice((0, 3, 17, 40, 400)))
        everywhere = lsp.Range(lsp.Position(0, 0), spot)
        for method, more in (
            ("completion", {"position": spot}),
            ("hover", {"position": spot}),
            ("definition", {"position": spot}),
            ("references", {"position": spot, "context": lsp.ReferenceContext(include_declaration=True)}),
            ("document_symbol", {}),
            ("folding_range", {}),
            ("code_action", {"range": everywhere, "context": lsp.CodeActionContext([])}),
        ):
            shared.ask(method, uri, **more)
        for method, more in (
            ("formatting", {"options": OPTIONS}),
            ("prepare_rename", {"position": spot}),
            ("rename", {"position": spot, "new_name": "another"}),
        ):
            assert refusal(shared, method, uri, more) in {None, REFUSED_IN_WORDS}
    assert not shared.messages
    shared.type(uri, RULES)
    assert shared.problems(uri) == []
