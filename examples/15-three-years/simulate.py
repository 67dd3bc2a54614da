"""The invented farm of this folder: three spawnings, 2,000 fish, three autumns, with a truth that is written down here.

`python simulate.py FOLDER [SEED]` writes the files of this folder. The truth, which README.md repeats:

- How good a fish turns out ("quality") hangs on its outline, tail stem, white ground and kiwa: TRUTH says by how much.
- How red it is (cover), and the white before its tail (odome), mean nothing for it.
- A bent spine takes 2 off. Yellowing white takes nothing off beyond what the white ground says.
- A fish that is kept is sold in its third year; the price rises by half with each point of quality, with noise.
- Keeping: score at least 55 by the page, for the others nothing more is known than that they were sold by the lot.
"""

from __future__ import annotations

import csv
import sys
from pathlib import Path

import numpy as np

WORDS = {
    "outline": ("poor", "fair", "good", "excellent"),
    "tail_stem": ("thin", "fair", "strong"),
    "shiroji": ("yellow", "cream", "white", "snow"),
    "kiwa": ("blurred", "fair", "sharp", "razor"),
}
POINTS = {"outline": (0, 4, 8, 10), "tail_stem": (0, 6, 10), "shiroji": (0, 4, 8, 10), "kiwa": (0, 5, 9, 10)}
TRUTH = {"outline": 0.9, "tail_stem": 0.6, "shiroji": 1.1, "kiwa": 0.7, "cover": 0.0, "odome": 0.0}
"""By how much quality rises, halved, where a trait goes from its worst word to its best. 0: the trait means nothing."""

SPAWNINGS = (("12 May", "old line", 800, 0.2), ("20 May", "mill line", 700, 0.0), ("3 June", "bought pair", 500, -0.2))


def fish_of(seed: int) -> dict[str, np.ndarray]:
    """Fish as columns: codes of words, cover and odome in %, whether bent, spawning, quality."""
    rng = np.random.default_rng(seed)
    spawning = np.repeat(np.arange(3), [count for _, _, count, _ in SPAWNINGS])
    lift = np.array([lift for *_, lift in SPAWNINGS])[spawning]
    n = len(spawning)
    columns: dict[str, np.ndarray] = {"spawning": spawning}
    quality = rng.logistic(0, 0.55, n)
    for name, words in WORDS.items():
        at = rng.normal(len(words) / 2 - 0.5 + lift, 0.85, n)
        columns[name] = np.clip(np.round(at), 0, len(words) - 1).astype(int)
        quality = quality + TRUTH[name] * 2 * np.array(POINTS[name])[columns[name]] / 10
    columns["cover"] = np.clip(np.round(rng.normal(48, 16, n)), 5, 95).astype(int)
    columns["odome"] = np.clip(np.round(rng.gamma(2, 4, n)), 0, 40).astype(int)
    columns["bent"] = rng.random(n) < 0.03
    columns["quality"] = quality - 2 * columns["bent"]
    return columns


def rows_of(columns: dict[str, np.ndarray], year: int) -> list[dict[str, object]]:
    """Records of the first look."""
    rows: list[dict[str, object]] = []
    for at in range(len(columns["spawning"])):
        name, line, _, _ = SPAWNINGS[columns["spawning"][at]]
        rows.append(
            {
                "fish": f"{'ABC'[columns['spawning'][at]]}{at + 1:04}",
                "pond": f"pond {columns['spawning'][at] + 1}",
                "spawning": name,
                "bloodline": line,
                "date": f"{year}-10-05",
                "spine": "bent" if columns["bent"][at] else "straight",
                **{trait: words[columns[trait][at]] for trait, words in WORDS.items()},
                "hi_cover (%)": int(columns["cover"][at]),
                "odome (%)": int(columns["odome"][at]),
            }
        )
    return rows


def scores_of(columns: dict[str, np.ndarray]) -> np.ndarray:
    """The score that sluice.koi gives, without its rounding: who is kept hangs on it."""
    share = {name: np.array(POINTS[name])[columns[name]] / 10 for name in WORDS}
    cover = np.interp(columns["cover"], (10, 40, 65, 90), (0, 1, 1, 0))
    odome = np.interp(columns["odome"], (0, 5, 30), (0, 1, 0.2))
    body = 40 * (2 * share["outline"] + share["tail_stem"]) / 3
    skin = 35 * (2 * share["shiroji"] + share["kiwa"]) / 3
    return np.asarray(body + skin + 25 * (cover + odome) / 2)


def kept_and_prices(columns: dict[str, np.ndarray], seed: int) -> tuple[np.ndarray, np.ndarray]:
    """Who was kept, and the price of each fish, as if all had been sold."""
    rng = np.random.default_rng([seed, 1])
    kept = (scores_of(columns) >= 55) & ~columns["bent"]
    prices = np.round(120 * 1.5 ** (columns["quality"] + rng.normal(0, 0.8, len(kept))), -1)
    return kept, prices


def write(folder: Path, seed: int) -> None:
    """Write the files of three years."""
    columns = fish_of(seed)
    rows = rows_of(columns, 2024)
    kept, prices = kept_and_prices(columns, seed)
    rng = np.random.default_rng([seed, 2])
    died = kept & (rng.random(len(rows)) < 0.05)
    _table(folder / "autumn-2024.csv", "The first look at 2,000 invented fish. Made by simulate.py.", rows)
    second = []
    for at in np.flatnonzero(kept & ~died):
        better = int(rng.random() < 0.3)
        second.append({**rows[at], "date": "2025-10-04", "kiwa": WORDS["kiwa"][min(3, columns["kiwa"][at] + better)]})
    _table(folder / "autumn-2025.csv", "The second look at the fish that were kept. Made by simulate.py.", second)
    sold = [
        {
            "fish": rows[at]["fish"],
            "day": "2026-11-02",
            "price": int(prices[at]),
            "to": ("hobby", "dealer")[int(at) % 2],
        }
        for at in np.flatnonzero(kept & ~died)
    ]
    _table(folder / "sales-2026.csv", "What invented buyers paid. Made by simulate.py.", sold)
    dead = [{"fish": rows[at]["fish"], "day": "2025-02-11", "cause": "winter"} for at in np.flatnonzero(died)]
    _table(folder / "deaths.csv", "Fish that died. Made by simulate.py.", dead)
    picker = np.random.default_rng([seed, 3])
    chosen = picker.permutation(len(rows))[:400]
    eye = sum(TRUTH[name] * 2 * np.array(POINTS[name])[columns[name]] / 10 for name in WORDS) + picker.logistic(
        0, 0.35, len(rows)
    )
    line = float(np.quantile(eye, 0.7))
    picks = [
        {**rows[at], "verdict": "in" if eye[at] >= line and not columns["bent"][at] else "out"} for at in sorted(chosen)
    ]
    _table(
        folder / "picks.csv", "What the owner of Three Weirs picked of 400 fish, by eye. Made by simulate.py.", picks
    )


def _table(path: Path, about: str, rows: list[dict[str, object]]) -> None:
    with path.open("w", encoding="utf-8", newline="") as file:
        file.write(f"# {about}\n")
        writer = csv.DictWriter(file, fieldnames=list(rows[0]), lineterminator="\n")
        writer.writeheader()
        writer.writerows(rows)


if __name__ == "__main__":
    write(Path(sys.argv[1]), int(sys.argv[2]) if len(sys.argv) > 2 else 1)
