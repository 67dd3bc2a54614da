"""Old Japanese units of length and weight, in which elder breeders and dealers in Japan still speak of fish.

In: nothing. Out: the units `sun`, `shaku`, `momme` and `kan`.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from koirules.hooks import Dimension, Unit, hookimpl

KOIRULES_API = 2

_LAW = "Weights and Measures Act of Japan, 1891: a shaku is 10/33 m, a kan is 15/4 kg (from memory)"


@hookimpl
def koirules_units() -> Sequence[Unit]:
    """A sun is a tenth of a shaku, a momme a thousandth of a kan."""
    return (
        Unit("shaku", Dimension.LENGTH, Decimal(1000), written=("尺",), per=33, source=_LAW),
        Unit("sun", Dimension.LENGTH, Decimal(100), written=("寸",), per=33, source=_LAW),
        Unit("momme", Dimension.MASS, Decimal("3.75"), written=("monme", "匁"), source=_LAW),
        Unit("kan", Dimension.MASS, Decimal(3750), written=("kanme", "貫"), source=_LAW),
    )
