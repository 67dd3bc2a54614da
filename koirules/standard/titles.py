"""Texts of a rule file that are given in several languages."""

from __future__ import annotations

from collections.abc import Mapping

from koirules.values import frozen


@frozen
class Titled:
    """A text with its further languages."""

    text: str
    others: Mapping[str, str]

    @property
    def every(self) -> tuple[str, ...]:
        """The text in each of its languages."""
        return (self.text, *self.others.values())

    def within(self, language: str | None) -> str:
        """The text in a language, or the first one where it is not given in that language."""
        return self.text if language is None else self.others.get(language, self.text)
