"""Photographs beside the records, made small enough for a page, without what a camera writes into them.

A picture file may tell where and when it was taken, and by whose camera: only its pixels and its colour profile go on.
"""

from __future__ import annotations

import warnings
from base64 import b64encode
from collections.abc import Callable, Mapping, Sequence
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING

from koirules.problems import Problem
from koirules.problems import picturing as say
from koirules.results.record import Record
from koirules.values import frozen
from koirules.vocabulary.nearness import near

if TYPE_CHECKING:
    from PIL.Image import Image

PHOTO = "photo"
"""The label that names the photograph of a fish."""

MOST_FILE_BYTES = 40_000_000
MOST_BYTES = 40_000_000
"""How large the file of one photograph may be, and all photographs of a page together."""

_SIDES = ((100, 800), (400, 560))
_SMALL_SIDE = 320
"""The longer side in pixels of up to so many photographs, and of those of a larger batch."""

_FORMATS = ("JPEG", "PNG", "WEBP")
_MOST_PROFILE_BYTES = 5_000


@frozen
class Photograph:
    """A photograph as a page carries it: a JPEG with its size in pixels."""

    jpeg: bytes
    width: int
    height: int

    @property
    def source(self) -> str:
        """The photograph as an address that holds it."""
        return f"data:image/jpeg;base64,{b64encode(self.jpeg).decode()}"


def named_photographs(records: Sequence[Record]) -> int:
    """How many records name a photograph."""
    return sum(bool(record.labels.get(PHOTO)) for record in records)


def read_photographs(
    file: Path, records: Sequence[Record], seen: Callable[[], None] = lambda: None
) -> tuple[Mapping[str, Photograph], tuple[Problem, ...]]:
    """The photographs that records name, by fish, and a warning for each that cannot be shown.

    file: that of the records; a photograph is named from its folder and lies in it. seen: called after each of them, for
    those who wait. Needs the extra `pictures`.
    """
    named = [record for record in records if record.labels.get(PHOTO)]
    if not named:
        return {}, ()
    if not has_pillow():
        return {}, (say.photographs_need_extra(str(file)),)
    side = next((side for most, side in _SIDES if len(named) <= most), _SMALL_SIDE)
    found: dict[str, Photograph] = {}
    problems: list[Problem] = []
    room, left_out = MOST_BYTES, 0
    for record in named:
        read = _read(file, record, side)
        seen()
        if isinstance(read, Problem):
            problems.append(read)
        elif len(read.jpeg) > room:
            left_out += 1
        else:
            room -= len(read.jpeg)
            found[record.fish] = read
    if left_out:
        problems.append(say.photographs_left_out(str(file), left_out, MOST_BYTES))
    return found, tuple(problems)


def has_pillow() -> bool:
    """Whether the library for pictures is installed."""
    from importlib.util import find_spec

    return find_spec("PIL") is not None


def _read(file: Path, record: Record, side: int) -> Photograph | Problem:
    name = record.labels[PHOTO]
    folder = file.parent
    try:
        # Sheets that are written on Windows part folders with a backslash.
        path = (folder / name.replace("\\", "/")).resolve()
        if not path.is_relative_to(folder.resolve()):
            return say.photograph_outside(str(file), record.row, name)
        if not path.is_file():
            return say.photograph_not_there(str(file), record.row, name, _near(path, name))
        if path.stat().st_size > MOST_FILE_BYTES:
            why = f"the file is larger than {MOST_FILE_BYTES // 1_000_000} MB"
            return say.photograph_unreadable(str(file), record.row, name, why)
        return _smaller(path, side)
    except _TooManyPixelsError:
        return say.photograph_unreadable(str(file), record.row, name, "it has too many pixels")
    except (OSError, ValueError, SyntaxError, RuntimeError):
        # What the library raises of a broken file is of all these kinds.
        why = f"it is no {', '.join(_FORMATS[:-1])} or {_FORMATS[-1]} picture, or a broken one"
        return say.photograph_unreadable(str(file), record.row, name, why)


def _near(path: Path, name: str) -> str | None:
    try:
        return near(Path(name).name, sorted(other.name for other in path.parent.iterdir() if other.is_file()))
    except OSError:
        return None


_MOST_PIXELS = 40_000_000
"""Decoded, a picture of so many takes 160 MB; a JPEG is decoded smaller at once."""


class _TooManyPixelsError(Exception):
    """A picture that would fill the memory."""


def _smaller(path: Path, side: int) -> Photograph:
    from PIL import Image, ImageOps

    with warnings.catch_warnings():
        warnings.simplefilter("error", Image.DecompressionBombWarning)
        try:
            opened = Image.open(path, formats=_FORMATS)
        except (Image.DecompressionBombError, Image.DecompressionBombWarning) as error:
            raise _TooManyPixelsError from error
    with opened:
        profile = opened.info.get("icc_profile") if opened.mode == "RGB" else None
        opened.draft("RGB", (side, side))
        # Told by the size in the header, before anything is decoded: a small file may hold very many pixels.
        if opened.width * opened.height > _MOST_PIXELS:
            raise _TooManyPixelsError
        opened.thumbnail((side, side))
        plain = _on_white(ImageOps.exif_transpose(opened))
    written = BytesIO()
    kept = profile if isinstance(profile, bytes) and len(profile) <= _MOST_PROFILE_BYTES else None
    plain.save(written, "JPEG", quality=80, optimize=True, icc_profile=kept)
    return Photograph(written.getvalue(), *plain.size)


def _on_white(picture: Image) -> Image:
    """The pixels alone, in a picture that carries nothing else."""
    from PIL import Image

    clear = picture.convert("RGBA")
    plain = Image.new("RGB", clear.size, "white")
    plain.paste(clear, mask=clear.getchannel("A"))
    return plain
