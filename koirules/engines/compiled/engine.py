"""A standard on the compiled engine: which machine code a frame takes, when it is made, and what cannot be compiled.

Machine code is made on a thread of its own, in 0.1 to 0.3 s for a standard of some hundred rules, and kept in the cache folder.
So it is made for frames that are worth it, and until it is there the columnar engine grades them.
"""

from __future__ import annotations

import logging
from collections.abc import Mapping, Sequence
from threading import Lock, Thread
from typing import TYPE_CHECKING

from attrs import field

from koirules.engines.columnar.glances import Glance, glances
from koirules.engines.compiled.glancing import glances as glances_by_code
from koirules.engines.compiled.layout import Layout, Target
from koirules.engines.compiled.lowering import CannotLowerError, lowered
from koirules.engines.compiled.objects import Loaded, host, is_installed, keep_object, kept_object, name_of, object_of
from koirules.engines.compiled.running import Code, OtherFrameError, Results, profile_of
from koirules.program.held import Held
from koirules.program.profiles import Profile, RowProgram, digest_of, row_program
from koirules.standard.parts import Rules, Setting
from koirules.values import define

if TYPE_CHECKING:
    import polars as pl

READY_FROM = 100
"""A frame of fewer rows is graded as soon row by row, even where the code is there.

Measured with the neutral standard: a call takes half a millisecond, as long as 60 complete rows or 25 with holes.
"""

WORTH_FROM = 500_000
"""So many rows, in one frame or in several, are worth loading the code, and making it where it was not kept.

Measured with the neutral standard: a million rows take 0.12 s (complete) and 0.2 s (with holes) less of all processors. To load
LLVM and kept code takes some 0.1 s, to make it 0.1 to 0.2 s, once.
"""

_ANY = Target("", "", "")
_LOG = logging.getLogger(__name__)


@define(eq=False)
class Compiled:
    """A standard with the settings of a run. sections, faults: whether they are among the results."""

    rules: Rules
    settings: Mapping[str, Setting]
    sections: bool
    faults: bool
    _programs: dict[Profile, RowProgram] = field(factory=dict)
    _codes: dict[Profile, Code] = field(factory=dict)
    _refused: dict[Profile, str] = field(factory=dict)
    _making: dict[Profile, Thread] = field(factory=dict)
    _rows: int = 0
    _lock: Lock = field(factory=Lock)

    def graded(self, frame: pl.DataFrame, held: Mapping[str, Held], rows: int) -> pl.DataFrame:
        """The columns of results, the code made first where it is not there. Raises CannotLowerError, OtherFrameError."""
        profile = self._profile(frame, held)
        code = self._codes.get(profile) or self._taken_out(profile) or self._make(profile)
        return code.run(frame, held, rows)

    def pays(self, rows: int) -> bool:
        """Whether a frame of so many rows, after all those before, is worth it."""
        self._rows += rows
        return rows >= READY_FROM and (bool(self._codes) or self._rows >= WORTH_FROM) and is_installed()

    def graded_at_once(self, frame: pl.DataFrame, held: Mapping[str, Held], rows: int) -> pl.DataFrame | None:
        """The same where the code is there; None where another engine is to grade the frame.

        Where the code would pay and is not there, it is made meanwhile, for later frames.
        """
        try:
            profile = self._profile(frame, held)
            code = self._codes.get(profile)
            if code is None:
                if profile in self._refused or self._rows < WORTH_FROM:
                    return None
                code = self._taken_out(profile)
            if code is None:
                self._make_meanwhile(profile)
                return None
            return code.run(frame, held, rows)
        except (CannotLowerError, OtherFrameError):
            return None

    def glances(self, columns: Sequence[tuple[pl.Series, bool]]) -> list[Glance]:
        """A glance at each column of numbers; by machine code where that of the standard is there, too."""
        if self._codes and columns and len(columns[0][0]) >= READY_FROM:
            return glances_by_code(columns)
        return glances(columns)

    def wait(self) -> None:
        """Wait for code that is being made."""
        for thread in list(self._making.values()):
            thread.join()

    def _profile(self, frame: pl.DataFrame, held: Mapping[str, Held]) -> Profile:
        return profile_of(self._program(Profile(complete=True)).columns, frame, held)

    def _program(self, profile: Profile) -> RowProgram:
        if profile not in self._programs:
            self._programs[profile] = row_program(self.rules, self.settings, profile)
        return self._programs[profile]

    def _layout(self, profile: Profile) -> Layout:
        return Layout.of(self._program(profile), len(self.rules.grades), sections=self.sections, faults=self.faults)

    def _name(self, profile: Profile) -> str:
        return name_of(f"{digest_of(self._program(profile)).hex()} {self.sections} {self.faults}")

    def _loaded(self, profile: Profile, layout: Layout, contents: bytes) -> Code:
        results = Results(self.rules, self.sections, self.faults)
        return self._codes.setdefault(profile, Code(layout, Loaded(contents), results))

    def _taken_out(self, profile: Profile) -> Code | None:
        """The code that was kept in the cache folder."""
        contents = kept_object(self._name(profile))
        return None if contents is None else self._loaded(profile, self._layout(profile), contents)

    def _make(self, profile: Profile) -> Code:
        layout = self._layout(profile)
        contents = object_of(lowered(layout, host()), host())
        keep_object(self._name(profile), contents)
        return self._loaded(profile, layout, contents)

    def _make_meanwhile(self, profile: Profile) -> None:
        with self._lock:
            if profile in self._making or len(self._making) >= _MOST_MADE:
                return
            # Not a daemon: Python waits for it at its end, since LLVM must not be cut off.
            thread = self._making[profile] = Thread(target=self._try, args=(profile,), name="koirules compiling")
        thread.start()

    def _try(self, profile: Profile) -> None:
        try:
            self._make(profile)
        except CannotLowerError as error:
            self._refused[profile] = str(error)
        except (RuntimeError, OSError) as error:
            # LLVM refuses what we made for it: the answers are the same without, but somebody should know.
            self._refused[profile] = str(error)
            _LOG.warning("The compiled engine is not used for %s: %s", self.rules.file, error)


_MOST_MADE = 8
"""So many profiles of one standard get code: files with ever other holes must not keep a core busy."""


def reasons_against(rules: Rules, settings: Mapping[str, Setting]) -> tuple[str, str]:
    """Why complete frames, and frames with holes, of a standard are not compiled; "" where they are. Needs no extra."""
    return _reason(rules, settings, Profile(complete=True)), _reason(rules, settings, Profile(complete=False))


def _reason(rules: Rules, settings: Mapping[str, Setting], profile: Profile) -> str:
    try:
        program = row_program(rules, settings, profile)
        lowered(Layout.of(program, len(rules.grades), sections=True, faults=True), _ANY)
    except CannotLowerError as error:
        return str(error)
    return ""
