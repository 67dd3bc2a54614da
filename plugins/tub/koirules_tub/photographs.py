"""Photographs from phones: made upright and smaller, written anew without place, time and everything else that came along."""

from __future__ import annotations

import io
from pathlib import Path

from PIL import Image, ImageOps

MOST_BYTES = 15 * 1024 * 1024
MOST_PIXELS = 40_000_000
LONGEST = 1600
"""The longer side of what is kept, in pixels."""

_FORMATS = ("JPEG", "PNG", "WEBP")


class PhotographError(ValueError):
    """A picture that is not taken; the message says why, for a person."""


def _check_size(opened: Image.Image) -> None:
    if opened.width * opened.height > MOST_PIXELS:
        raise PhotographError(f"The picture has more than {MOST_PIXELS // 1_000_000} million pixels. Take it smaller.")


def keep(data: bytes, path: Path) -> tuple[int, int]:
    """Write a picture as JPEG; its width and height. Raises PhotographError, and then nothing is written."""
    try:
        opened = Image.open(io.BytesIO(data), formats=_FORMATS)
        _check_size(opened)
        opened.draft("RGB", (LONGEST * 2, LONGEST * 2))
        upright = ImageOps.exif_transpose(opened)
        upright.thumbnail((LONGEST, LONGEST))
        plain = upright.convert("RGB")
    except PhotographError:
        raise
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError):
        raise PhotographError("This is no picture that can be read. Send a JPEG, PNG or WebP.") from None
    bare = Image.new("RGB", plain.size)
    bare.paste(plain)
    passing = path.with_name(f".{path.name}.part")
    bare.save(passing, "JPEG", quality=85, optimize=True)
    passing.replace(path)
    return bare.size
