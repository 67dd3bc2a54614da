"""Rule files of koirules in an editor: a language server over the standard protocol, and highlighting.

What there is to say about a rule file comes from `koirules.editing`; here it is put into the words of the protocol.
"""

__version__ = "0.1.0"
