"""What a remark that was not understood may be a slip of."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator
from itertools import combinations, product

from koirules.notes.lexicon import Lexicon
from koirules.notes.reader import NotesReader
from koirules.notes.remarks import Sort
from koirules.vocabulary.nearness import distance
from koirules.vocabulary.wordings import tokens_of

_WORD = re.compile(r"[^\W\d_]+")
_MOST_SLIPS = 2
"""So many words of one remark may be slips."""

_MOST_MEANT = 3
"""So many known words are tried for each."""

_MOST_WORDS = 12
"""A remark of more words is talk rather than a slip."""


def nearest(reader: NotesReader, text: str, read: Collection[str], most: int = 3) -> tuple[str, ...]:
    """The wordings that are nearest to a remark that was not understood. read: the traits that the rules go by.

    A word that only lacks its trait is said with it, with those first that the rules go by: `kiwa sharp`. Of several words those
    that nobody knows are written as a known one that is near, where the whole is understood then.
    """
    from rapidfuzz import fuzz, process

    lexicon, tokens = reader.lexicon, tokens_of(text)
    traits = lexicon.levels_of(tokens[1:] if tokens[:1] == ("not",) else tokens)
    if traits:
        first = sorted(traits, key=lambda name: name not in read)[:most]
        return tuple(f"{name.replace('_', ' ')} {text}" for name in first)
    if len(tokens) == 1:
        return _of_one_word(lexicon, tokens[0], read)[:most]
    mended = next(_mended(reader, text), None)
    if mended is not None:
        return (mended,)
    scorer = fuzz.token_sort_ratio
    found = process.extract(" ".join(tokens), list(lexicon.phrases), scorer=scorer, limit=most, score_cutoff=70)
    return tuple(wording for wording, _, _ in found)


def _of_one_word(lexicon: Lexicon, word: str, read: Collection[str]) -> tuple[str, ...]:
    """What a single word may be a slip of, the nearest first; one that needs its trait is said with it."""
    found: dict[str, None] = {}
    for one in _near(lexicon, word):
        traits = sorted(lexicon.levels_of([one]), key=lambda name: name not in read)
        is_whole = any(hit.end == 1 for hit in lexicon.hits([one], 0))
        found.update(dict.fromkeys([one] if is_whole else [f"{name.replace('_', ' ')} {one}" for name in traits]))
    return tuple(found)


def _near(lexicon: Lexicon, word: str) -> list[str]:
    """The known words that a word may be a slip of, the nearest first; one letter in a short word, two in a long one."""
    limit = 0 if len(word) < 4 else 1 if len(word) < 8 else 2
    near = [(distance(word, one, limit), one) for one in lexicon.single_words]
    return [one for _, one in sorted((away, one) for away, one in near if away <= limit)]


def _mended(reader: NotesReader, text: str) -> Iterator[str]:
    """A remark with words that nobody knows as known ones, as few as may be, where it is understood then."""
    words = list(_WORD.finditer(text))
    if len(words) > _MOST_WORDS:
        return
    near = {
        found.span(): _near(reader.lexicon, found.group().casefold())[:_MOST_MEANT]
        for found in words
        if not any(token in reader.lexicon.root.after for token in tokens_of(found.group()))
    }
    slips = [[(span, one) for one in known] for span, known in near.items() if known]
    for number in range(1, _MOST_SLIPS + 1):
        for chosen in (meant for some in combinations(slips, number) for meant in product(*some)):
            mended = text
            for (start, end), known in reversed(chosen):
                mended = mended[:start] + known + mended[end:]
            if reader.remarks.read(mended).sort in {Sort.TRAITS, Sort.VERDICT}:
                yield mended
