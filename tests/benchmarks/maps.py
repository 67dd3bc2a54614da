"""Prints how long it takes to read and to measure pattern maps: `python tests/benchmarks/maps.py`.

Maps are invented and all different; every figure of kohaku that a map gives is measured. The least of three runs.
"""

from __future__ import annotations

import random
import sys
import time
from collections.abc import Callable
from math import cos, pi, sin
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from koirules.measures.deriving import Measurer
from koirules.plugins import registry_with
from koirules.standard.measured import constant_settings, measures_of, needed_for
from koirules.vocabulary.map_text import read_map

MAPS = 10_000
CORNERS = 24


def in_words(draw: random.Random) -> str:
    """A map of one to four patches, as a sorter writes it."""
    front, patches = draw.uniform(5, 15), []
    for _ in range(draw.randint(1, 4)):
        rear = front + draw.uniform(6, 22)
        if rear > 98:
            break
        patches.append(f"{front:.1f} to {rear:.1f} left {draw.randint(10, 120)} right {draw.randint(10, 120)}")
        front = rear + draw.uniform(0, 8)
    return "; ".join(patches)


def traced(draw: random.Random) -> str:
    """A map of one to four patches of so many corners each."""
    middle, patches = 12.0, []
    for _ in range(draw.randint(1, 4)):
        size = draw.uniform(4, 9)
        at = [(2 * pi * i / CORNERS, draw.uniform(0.8, 1)) for i in range(CORNERS)]
        ring = [(min(max(middle + size * r * cos(a), 0), 100), 70 * r * sin(a)) for a, r in at]
        corners = [f"{u:.2f} {v:.2f}" for u, v in (*ring, ring[0])]
        patches.append(f"POLYGON (({', '.join(corners)}))")
        middle += 2 * size + draw.uniform(-2, 6)
        if middle > 88:
            break
    return "; ".join(patches)


def least(work: Callable[[], Any]) -> float:
    """The least time of three runs, in seconds."""
    times = []
    for _ in range(3):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return min(times)


def main() -> None:
    """Print a row for each kind of map."""
    kohaku = registry_with().varieties["kohaku"]
    every = measures_of(kohaku)
    (of_maps,) = [measure for measure in every if "hi_cover" in measure.outputs]
    wanted = frozenset(of_maps.outputs)
    measurer = Measurer(
        tuple(one for one in needed_for(every, wanted) if one is of_maps),
        kohaku.traits,
        constant_settings(kohaku.constants, {}),
        wanted,
    )
    print(f"| {MAPS:,} maps, {len(wanted)} figures of each | read | measured |\n| --- | ---: | ---: |")
    for name, make in (("in words", in_words), (f"traced, {CORNERS} corners a patch", traced)):
        draw = random.Random(1)
        texts = [make(draw) for _ in range(MAPS)]
        maps = [read_map(text) for text in texts]

        def read(texts: list[str] = texts) -> None:
            for text in texts:
                read_map(text)

        def measure(maps: list[Any] = maps) -> None:
            derived = measurer.derive({"hi_patches": maps}, len(maps))
            assert not derived.failed
            assert not derived.wrong

        print(f"| {name} | {least(read):.2f} s | {least(measure):.2f} s |")


if __name__ == "__main__":
    main()
