"""The folder in which koirules keeps what it has worked out before.

Kept are the tables of the grammar, checked standards, what `koirules check` told of those in which nothing is wrong, figures of
pattern maps, machine code, the list of plugins, and their commands. This saves time and nothing else: what is missing, unreadable
or of another version is made again, and an error on the way to it is no error of the command.
The environment variable `KOIRULES_CACHE` names another folder, or turns all of this off where it says `off`.

The folder is the user's alone. It is made with mode 0700, and one that belongs to somebody else, or that others may write to, is
left alone, as is a folder within it that others may as much as read: what is read from it steers what koirules does. A file is
written beside its name and renamed onto it, so that two processes at once each find a whole file or none.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from contextlib import suppress
from functools import cache
from pathlib import Path

VARIABLE = "KOIRULES_CACHE"
"""The environment variable that moves the folder, or turns it off."""

_OFF = "off"
_MOST_FILES = 200
"""So many files of one kind are kept, the ones last written first."""


def read_kept(kind: str, name: str) -> bytes | None:
    """The bytes kept under a name, None where there are none.

    kind: a folder of its own, for one sort of contents. name: the name of a file, a digest of all that the contents follow from.
    """
    folder = _folder(kind, make=False)
    if folder is None:
        return None
    try:
        return (folder / name).read_bytes()
    except OSError:
        return None


def keep(kind: str, name: str, contents: bytes) -> None:
    """Keep bytes under a name; does nothing where that cannot be done."""
    folder = _folder(kind, make=True)
    if folder is None:
        return
    from tempfile import NamedTemporaryFile

    with suppress(OSError):
        _make_room(folder)
        with NamedTemporaryFile(dir=folder, prefix=".", suffix=".part", delete=False) as file:
            beside = Path(file.name)
            try:
                file.write(contents)
                file.close()
                beside.replace(folder / name)
            except OSError:
                file.close()
                beside.unlink(missing_ok=True)


def _folder(kind: str, make: bool) -> Path | None:
    """The private folder for one kind of contents, None where there is none or it is not ours alone."""
    said = os.environ.get(VARIABLE, "").strip()
    if said.lower() == _OFF:
        return None
    try:
        if said:
            root = Path(said)
        else:
            from platformdirs import user_cache_path

            root = user_cache_path("koirules", appauthor=False)
        folder = root / kind
        if make and not folder.is_dir():
            root.mkdir(parents=True, exist_ok=True, mode=0o700)
            folder.mkdir(exist_ok=True, mode=0o700)
        return folder if _is_ours_alone(root, _WRITE) and _is_ours_alone(folder, _ANYTHING) else None
    except (OSError, RuntimeError, ValueError):  # no home, no room, or a name that no folder can have
        return None


@cache
def code_stamps() -> tuple[str, ...]:
    """The files of koirules with their times and sizes: what is kept follows from them."""
    return tuple(stamps_within(Path(__file__).parent))


def stamps_within(package: Path) -> Iterator[str]:
    """The files of a package that its code is made of, with their times and sizes."""
    folders = [str(package)]
    while folders:
        with os.scandir(folders.pop()) as entries:
            for entry in sorted(entries, key=lambda entry: entry.name):
                if entry.is_dir(follow_symlinks=False):
                    if entry.name != "__pycache__":
                        folders.append(entry.path)
                elif entry.name.endswith(_CODE):
                    yield stamp(entry.path, entry.stat())


def stamp(path: str, told: os.stat_result) -> str:
    """A file with its time and size."""
    return f"{path} {told.st_mtime_ns} {told.st_size}"


_CODE = (".py", ".lark", ".toml", ".koi", ".csv", ".json", ".so", ".pyd")

_WRITE, _ANYTHING = 0o022, 0o077
"""What others must not be allowed: to write to the folder of all caches, and anything at all in that of one sort of contents."""


def _is_ours_alone(folder: Path, forbidden: int) -> bool:
    if sys.platform == "win32":
        return True  # the folder of a user's caches is closed to others there
    told = folder.stat()
    return told.st_uid == os.geteuid() and not told.st_mode & forbidden


def _make_room(folder: Path) -> None:
    kept = sorted(folder.iterdir(), key=lambda path: path.stat().st_mtime)
    for path in kept[: max(0, len(kept) - _MOST_FILES + 1)]:
        path.unlink(missing_ok=True)
