"""A rule file that is being written: what is wrong with it, and what is meant, fits or could be changed at a place.

In: the texts that somebody has open, saved or not, and a line and column. Out: plain values; nothing here knows of editors
or their protocol, which is a plugin's business. A page is read anew within milliseconds of a change, only what changed; to
check it takes longer, and until then the last look at it answers.
"""

from koirules.editing.completing import Offer, Offers, Sort, offers_at
from koirules.editing.desk import Desk, Look, Page
from koirules.editing.finding import base_at, explained, places_of, told_at
from koirules.editing.lines import ENCODINGS, Lines, units
from koirules.editing.mends import Mend, mends, problems_now, together
from koirules.editing.outline import Entry, Fold, folds, outline
from koirules.editing.renaming import Changed, can_rename, renamed
from koirules.language.keywords import language_words
from koirules.problems import Edit

__all__ = [
    "ENCODINGS",
    "Changed",
    "Desk",
    "Edit",
    "Entry",
    "Fold",
    "Lines",
    "Look",
    "Mend",
    "Offer",
    "Offers",
    "Page",
    "Sort",
    "base_at",
    "can_rename",
    "explained",
    "folds",
    "language_words",
    "mends",
    "offers_at",
    "outline",
    "places_of",
    "problems_now",
    "renamed",
    "together",
    "told_at",
    "units",
]
