"""Which standard is meant? A path, the name of a rule set or a text comes in; a checked standard with its bases goes out."""

from koirules.loading.files import find, header_of, load, load_text
from koirules.loading.tidying import Tidied, tidied, tidied_text

__all__ = ["Tidied", "find", "header_of", "load", "load_text", "tidied", "tidied_text"]
