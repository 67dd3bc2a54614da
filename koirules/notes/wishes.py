"""What sorters wish were more: `head could be wider`, `I'd like a wider head` say that the head falls short of wide."""

from __future__ import annotations

from koirules.vocabulary.phrases import spread
from koirules.vocabulary.wordings import tokens_of

_GRADED = tokens_of(
    "broad wide strong full thick deep sharp crisp clean white bright long big large round smooth straight clear stout heavy "
    "high rich dense pure shiny glossy even firm neat fine tidy warm strong solid tight flat meaty tall"
)
_DOUBLED = frozenset({"big", "flat"})

COMPARATIVES = {
    word: f"{word}r"
    if word.endswith("e")
    else f"{word[:-1]}ier"
    if word.endswith("y")
    else f"{word}{word[-1] if word in _DOUBLED else ''}er"
    for word in _GRADED
} | {"good": "better"}
"""What a trait would be that is more of something: `wider`."""

FALLING_SHORT = (
    "((could|should|might|ought to|must) be|(needs|has|wants|ought) to be|(could|might) do with being|"
    "would be better|(needs|wants) to get) "
    "(|a bit|a little|a touch|a shade|a fraction|a tad|slightly|somewhat|quite a bit|much|rather|lot)"
)
"""What stands before a comparative and says that a trait falls short of it."""

_WISHES = tuple(
    spread(
        """
            (i |)(do |)(just |only |)wish( that|), if only, i (would|should) (have |)(like|liked|love|loved|prefer|preferred),
            would (like|love|prefer), i (want|prefer), i (would |)(hope|hoped) for, (could|can) (do with|use), hoped for
        """
    )
)
_BETWEEN = frozenset(tokens_of("were was be been to is are have has had see just only a an the"))
_MUCH = frozenset(tokens_of("bit little touch shade fraction tad slightly somewhat much rather lot more"))
_COMPARED = frozenset(COMPARATIVES.values())


def wished(tokens: tuple[str, ...]) -> tuple[str, ...] | None:
    """A wish for more of something as a trait that could be more; None where there is none: `I wish the head were wider`."""
    begun = max((words for words in _WISHES if tokens[: len(words)] == words), key=len, default=())
    rest = tokens[len(begun) :]
    at = next((at for at, token in enumerate(rest) if token in _COMPARED), None)
    if not begun or at is None:
        return None
    before = tuple(token for token in rest[:at] if token not in _BETWEEN and token not in _MUCH)
    behind = rest[at + 1 :]
    noun = before or behind
    if not noun or (before and behind):
        return None
    return (*noun, "could", "be", rest[at])
