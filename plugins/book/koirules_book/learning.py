"""Weights and grade lines that agree best with past picks, held near the present standard.

The score is linear in what each criterion gives at most: score = sum of gives x share + bonuses - penalties. So with the sum
of what all criteria give held, picks determine the gives, the noise of the picker, and the lines between verdicts.
A fish that a fault or lift decided says nothing about weights and is left out; where the pick contradicts the fault, the fish
is listed.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from attrs import field, frozen

from koirules_book import problems as say
from koirules_book.ordered import Fit, Prior, fit_pairs, fit_verdicts, pairs_are_separable, verdicts_are_separable
from koirules_book.parts_of_score import Parts
from koirules_book.problems import BookError

Array = np.ndarray

FEWEST_EACH = 8
"""How many picks a weight needs at least."""

FOLDS = 5


@frozen
class Weight:
    """What a criterion gives of the score at most, in points: before, learnt, and its 95 % bootstrap interval.

    held: it never varied, or nothing was learnt of it, and it stays as it was.
    """

    name: str
    title: str
    before: float
    learnt: float
    low: float
    high: float
    held: bool = False


@frozen
class Contradiction:
    """A fish that a fault put below the pick: `picked` is what the person chose, `allowed` the best that the fault leaves."""

    fish: str
    faults: tuple[str, ...]
    picked: str
    allowed: str


@frozen
class Learnt:
    """What the picks say.

    weights: in the order of the file. lines: the score from which each verdict but the worst was given, best first; with the
    interval. noise: the scale of the picker's noise, in points of the score. agreed_before, agreed_after: the cross-validated
    share of picks that the standard, and that the learnt weights, give as they were made. used: how many picks were used.
    """

    weights: tuple[Weight, ...]
    lines: tuple[tuple[str, float, float, float], ...]
    noise: float
    agreed_before: float
    agreed_after: float
    used: int
    left_out: int
    contradictions: tuple[Contradiction, ...] = ()
    prior: float | None = None
    pairs: bool = field(default=False)


@frozen
class How:
    """How picks are learnt from.

    prior: the standard deviation of a weight as a share of itself; None for none. rounds: samples of the bootstrap. seed: the
    same one draws the same samples. told: gets the number of samples done.
    """

    prior: float | None = 0.5
    rounds: int = 200
    seed: int = 0
    told: Callable[[int], None] = lambda _: None


@frozen
class Picks:
    """Verdicts on fish.

    verdict: of each fish, 0 the worst to len(verdicts) - 1 the best. verdicts: their names, worst first. allowed, floor: the
    best verdict that the faults of each fish leave, and the worst that its lifts leave. given: the verdict that the standard
    gives each fish now, -1 where it gives none; None where its lines have no such verdicts.
    """

    fish: Sequence[str]
    verdict: Array = field(eq=False)
    verdicts: Sequence[str]
    allowed: Array = field(eq=False)
    floor: Array = field(eq=False)
    given: Array | None = field(default=None, eq=False)


def learn_verdicts(parts: Parts, gives: Array, picks: Picks, how: How) -> Learnt:
    """Learn from verdicts. gives: what each criterion gives now. Raises BookError where the picks cannot tell."""
    fish, verdict, verdicts = picks.fish, picks.verdict, picks.verdicts
    allowed, floor, given, prior = picks.allowed, picks.floor, picks.given, how.prior
    top = len(verdicts) - 1
    against = [
        Contradiction(fish[i], _biting(parts, i), verdicts[verdict[i]], verdicts[allowed[i]])
        for i in np.flatnonzero(verdict > allowed).tolist()
    ]
    free = (allowed == top) & (floor == 0)
    used = np.flatnonzero(free)
    present = sorted(set(verdict[used].tolist()))
    if len(present) < 2:
        raise BookError(say.cannot_tell(*_ONE_VERDICT))
    recoded = np.searchsorted(present, verdict[used])
    total = float(gives.sum())
    design = parts.shares[used] + (parts.extras[used] / total)[:, None]
    moves = _varied(parts.shares[used], gives)
    _enough(len(used), int(moves.sum()))
    fixed = design[:, ~moves] @ gives[~moves]
    model = _Model(design[:, moves], fixed, gives[moves], total, prior)
    if prior is None and verdicts_are_separable(model.design, recoded):
        raise BookError(say.cannot_tell(*_SEPARABLE))
    levels = len(present)
    whole = model.verdicts(recoded, levels)
    rng = np.random.default_rng(how.seed)
    drawn_weights, drawn_lines = [], []
    for done in range(how.rounds):
        at = rng.integers(0, len(used), len(used))
        if len(set(recoded[at].tolist())) < levels:
            continue
        one = model.at(at).verdicts(recoded[at], levels, whole.fit)
        drawn_weights.append(one.weights)
        drawn_lines.append(one.lines)
        how.told(done + 1)
    after = _cross_validated(model, recoded, levels, rng)
    before = float("nan") if given is None else float(np.mean(given[used] == verdict[used]))
    names = [verdicts[i] for i in present]
    lines = tuple(
        (names[i + 1], float(whole.lines[i]), *_interval([row[i] for row in drawn_lines]))
        for i in reversed(range(levels - 1))
    )
    return Learnt(
        _weights(parts, gives, moves, whole.weights, drawn_weights),
        lines,
        whole.noise,
        before,
        after,
        len(used),
        len(fish) - len(used),
        tuple(against),
        prior,
    )


def learn_pairs(parts: Parts, gives: Array, fish: Sequence[str], pairs: Sequence[tuple[int, int]], how: How) -> Learnt:
    """Learn from pairs of places: the first was put before the second. Pairs with a fault on either side are left out."""
    prior = how.prior
    bites = list(parts.bites.any(axis=1))
    free = [pair for pair in pairs if not bites[pair[0]] and not bites[pair[1]]]
    used = np.array(free, dtype=np.int64).reshape(-1, 2)
    against = [
        Contradiction(fish[a], _biting(parts, a), f"before {fish[b]}", f"behind {fish[b]}")
        for a, b in pairs
        if bites[a] and not bites[b]
    ]
    total = float(gives.sum())
    design = parts.shares + (parts.extras / total)[:, None]
    differences = design[used[:, 0]] - design[used[:, 1]]
    moves = _varied(parts.shares[used[:, 0]] - parts.shares[used[:, 1]], gives, about=0.0)
    _enough(len(used), int(moves.sum()))
    model = _Model(differences[:, moves], differences[:, ~moves] @ gives[~moves], gives[moves], total, prior)
    if prior is None and pairs_are_separable(model.design):
        raise BookError(say.cannot_tell(*_SEPARABLE))
    whole = model.pairs()
    rng = np.random.default_rng(how.seed)
    drawn = []
    for done in range(how.rounds):
        drawn.append(model.at(rng.integers(0, len(used), len(used))).pairs().weights)
        how.told(done + 1)
    order = rng.permutation(len(used))
    right = 0.0
    for part in np.array_split(order, FOLDS):
        rest = np.setdiff1d(order, part)
        weights = model.at(rest).pairs().weights
        right += float(np.sum(model.design[part] @ weights + model.fixed[part] > 0))
    now = parts.scores[used[:, 0]] - parts.scores[used[:, 1]]
    return Learnt(
        _weights(parts, gives, moves, whole.weights, drawn),
        (),
        whole.noise,
        float(np.mean(now > 0)),
        right / len(used),
        len(used),
        len(pairs) - len(used),
        tuple(against),
        prior,
        pairs=True,
    )


@frozen
class _Learnt:
    weights: Array = field(eq=False)
    lines: Array = field(eq=False)
    noise: float
    fit: Fit


@frozen
class _Model:
    """The picks as the likelihood takes them. fixed: what the criteria give whose weights are held, in points.

    The scale of the noise is free and the sum of the weights is held: the coefficients are weights over noise, so that the
    held part is a column of its own whose coefficient is 1 over the noise. It is put into every column in proportion to the
    sum, which keeps the likelihood concave.
    """

    design: Array = field(eq=False)
    fixed: Array = field(eq=False)
    gives: Array = field(eq=False)
    total: float
    prior: float | None

    def at(self, rows: Array) -> _Model:
        return _Model(self.design[rows], self.fixed[rows], self.gives, self.total, self.prior)

    @property
    def columns(self) -> Array:
        return self.design + (self.fixed / self.gives.sum())[:, None]

    def _held(self, fit: Callable[[Array], Fit]) -> Prior | None:
        if self.prior is None:
            return None
        # Where the present weights are right, one number alone is to be found: the noise. It sets the size of the prior.
        one = fit((self.columns @ self.gives)[:, None] / self.gives.sum())
        near = self.gives / self.gives.sum() * max(float(one.beta[0]), 1e-3)
        return Prior(near, np.maximum(near * self.prior, 1e-6))

    def _read(self, fit: Fit) -> _Learnt:
        scale = float(fit.beta.sum())
        if scale <= 1e-9:
            raise BookError(say.cannot_tell(*_NOTHING))
        noise = float(self.gives.sum()) / scale
        return _Learnt(fit.beta * noise, fit.cuts * noise, noise, fit)

    def verdicts(self, verdict: Array, levels: int, start: Fit | None = None) -> _Learnt:
        held = self._held(lambda column: fit_verdicts(column, verdict, levels))
        return self._read(fit_verdicts(self.columns, verdict, levels, held, start))

    def pairs(self) -> _Learnt:
        return self._read(fit_pairs(self.columns, self._held(fit_pairs)))


def _cross_validated(model: _Model, verdict: Array, levels: int, rng: np.random.Generator) -> float:
    order = rng.permutation(len(verdict))
    right = 0
    for part in np.array_split(order, FOLDS):
        rest = np.setdiff1d(order, part)
        if len(set(verdict[rest].tolist())) < levels:
            return float("nan")
        found = model.at(rest).verdicts(verdict[rest], levels)
        score = model.columns[part] @ found.weights
        right += int(np.sum(np.searchsorted(found.lines, score, side="right") == verdict[part]))
    return right / len(verdict)


def _weights(parts: Parts, gives: Array, moves: Array, learnt: Array, drawn: Sequence[Array]) -> tuple[Weight, ...]:
    found: list[Weight] = []
    at = iter(range(len(learnt)))
    for i, (name, title) in enumerate(zip(parts.criteria, parts.titles, strict=True)):
        if not moves[i]:
            found.append(
                Weight(name, title, float(gives[i]), float(gives[i]), float(gives[i]), float(gives[i]), held=True)
            )
            continue
        place = next(at)
        low, high = _interval([row[place] for row in drawn])
        found.append(Weight(name, title, float(gives[i]), float(learnt[place]), low, high))
    return tuple(found)


def _interval(drawn: Sequence[float]) -> tuple[float, float]:
    if not drawn:
        return float("nan"), float("nan")
    low, high = np.quantile(np.array(drawn), [0.025, 0.975])
    return float(low), float(high)


def _varied(shares: Array, gives: Array, about: float | None = None) -> Array:
    """Which criteria can be learnt: those that count today and gave different fish different points."""
    spread = np.ptp(shares, axis=0) if about is None else np.abs(shares - about).max(axis=0)
    return np.asarray((spread > 1e-9) & (gives > 0))


def _enough(picks: int, weights: int) -> None:
    if weights < 2:
        raise BookError(say.cannot_tell(*_NEVER_VARIED))
    if picks < FEWEST_EACH * weights:
        raise BookError(
            say.cannot_tell(
                f"{picks} picks that no fault or lift decided are too few for {weights} weights.",
                f"Give {FEWEST_EACH * weights} or more: {FEWEST_EACH} for each criterion that varied.",
            )
        )


def _biting(parts: Parts, fish: int) -> tuple[str, ...]:
    return tuple(title for title, bit in zip(parts.fault_titles, parts.bites[fish], strict=True) if bit)


_ONE_VERDICT = (
    "All fish that no fault or lift decided got the same verdict, so nothing sets one weight apart from another.",
    "Add the fish that were passed over, or those that were kept.",
)
_SEPARABLE = (
    "Some weights sort all these picks without a mistake, so any size of weight would do.",
    "Leave the prior on, or add picks that were close.",
)
_NEVER_VARIED = (
    "Fewer than two criteria gave different fish different points.",
    "Add fish that differ in what the standard looks at.",
)
_NOTHING = (
    "No weights explain these picks better than chance.",
    "Check that the records and the verdicts are of the same fish.",
)
