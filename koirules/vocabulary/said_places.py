"""What was said of a trait of places: which are in, which may be, and how many there are."""

from __future__ import annotations

from attrs import frozen

from koirules.vocabulary.kinds import Places, words_of
from koirules.vocabulary.readings import PlaceSet, words_in


@frozen
class SaidPlaces:
    """Sets of places: each holds all of `sure`, lies within `possible`, and has from `least` to `most` members.

    sure, possible: bits of the places, as in PlaceSet.
    """

    sure: int
    possible: int
    least: int
    most: int

    @classmethod
    def any_of(cls, kind: Places) -> SaidPlaces:
        """Any set at all."""
        size = len(words_of(kind))
        return cls(0, (1 << size) - 1, 0, size)

    @classmethod
    def exactly(cls, bits: int) -> SaidPlaces:
        """One set."""
        return cls(bits, bits, bits.bit_count(), bits.bit_count())

    def meet(self, other: SaidPlaces) -> SaidPlaces | None:
        """The sets that both allow; None where there are none."""
        return SaidPlaces(
            self.sure | other.sure,
            self.possible & other.possible,
            max(self.least, other.least),
            min(self.most, other.most),
        ).narrowed()

    def narrowed(self) -> SaidPlaces | None:
        """The same sets with the tightest bounds; None where there is no such set."""
        sure, possible = self.sure, self.possible
        if sure & ~possible:
            return None
        least, most = max(self.least, sure.bit_count()), min(self.most, possible.bit_count())
        if least > most:
            return None
        if most == sure.bit_count():
            possible = sure
        elif least == possible.bit_count():
            sure = possible
        return SaidPlaces(sure, possible, max(least, sure.bit_count()), min(most, possible.bit_count()))

    @property
    def is_counted(self) -> bool:
        """Whether the number of places says more than the places themselves."""
        return self.least > self.sure.bit_count() or self.most < self.possible.bit_count()

    @property
    def reading(self) -> PlaceSet:
        """The places that are in and those that may be."""
        return PlaceSet(self.sure, self.possible)

    def told(self, kind: Places) -> str:
        """The sets in words: `tail, perhaps dorsal`, `1 of (left_eye, right_eye)`, `none`."""
        sure, open_ones = words_in(kind, self.sure), words_in(kind, self.possible & ~self.sure)
        if not open_ones:
            return " ".join(sure) or "none"
        if self.is_counted:
            least, most = self.least - len(sure), self.most - len(sure)
            number = str(least) if least == most else f"{least} to {most}"
            told = f"{number} of ({', '.join(open_ones)})"
        else:
            told = f"perhaps {' '.join(open_ones)}"
        return f"{' '.join(sure)}, {told}" if sure else told
