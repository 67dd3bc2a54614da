"""In which words does somebody of another language read it?

In: catalogues, `.po` files of GNU gettext. Out: a `Tongue`, which gives a text in its language, or as it is in English.

What the tool says is in `LANGUAGE.po` beside this file; what a vocabulary says is in `LANGUAGE.po` in the package of its
plugin; what a rule file says is in the file itself (`"title" ja "…"`) or in `NAME.LANGUAGE.po` beside it.
"""

from koirules.languages.catalogue import Catalogue, CatalogueError, read_catalogue, written_catalogue
from koirules.languages.tongue import ENGLISH, Tongue, beside, languages_known, said_by_the_tool, to_say, tongue_of

__all__ = [
    "ENGLISH",
    "Catalogue",
    "CatalogueError",
    "Tongue",
    "beside",
    "languages_known",
    "read_catalogue",
    "said_by_the_tool",
    "to_say",
    "tongue_of",
    "written_catalogue",
]
