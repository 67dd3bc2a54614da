"""Files written whole or not at all: beside the target under a passing name, then renamed."""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

from koirules.problems import Problem
from koirules.problems.saving import no_such_folder, unwritable


def write_beside(path: Path, produce: Callable[[Path], None]) -> Problem | None:
    """Write a file by way of another one in its folder, so that nothing half-written ever stands under its name.

    produce: writes the whole content to the path that it is given. A problem says why nothing could be written; what
    stood there before then still stands there. A file that is there keeps its permissions.
    """
    folder_problem = check_folder(path)
    if folder_problem is not None:
        return folder_problem
    try:
        # A link is followed, so that the file it points to is replaced and not the link.
        target = Path(os.path.realpath(path))
        passing = _new_file_beside(target)
    except (OSError, ValueError) as error:
        return unwritable(str(path), str(path.parent), _why(error))
    try:
        produce(passing)
        if target.exists():
            shutil.copymode(target, passing)
        passing.replace(target)
    except OSError as error:
        return unwritable(str(path), str(path.parent), _why(error))
    finally:
        with suppress(OSError):
            passing.unlink(missing_ok=True)
    return None


def check_folder(path: Path) -> Problem | None:
    """Say what is wrong with the place where a file is to be written, as far as that shows before it is written."""
    file, folder = str(path), str(path.parent)
    try:
        if path.is_dir():
            return unwritable(file, folder, f"{path.name} is a folder itself")
        if not path.parent.is_dir():
            return no_such_folder(file, folder)
    except (OSError, ValueError) as error:
        return unwritable(file, folder, _why(error))
    return None


def _new_file_beside(target: Path) -> Path:
    """A new and empty file in the folder of the target; its permissions are those that any new file gets."""
    for attempt in range(1000):
        passing = target.with_name(f".{target.stem[:100]}.{os.getpid()}-{attempt}{target.suffix}")
        with suppress(FileExistsError):
            os.close(os.open(passing, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o666))
            return passing
    raise FileExistsError("too many unfinished files are there")


def _why(error: Exception) -> str:
    if isinstance(error, PermissionError):
        return "it is not allowed"
    text = (error.strerror if isinstance(error, OSError) else None) or str(error)
    return text[:1].lower() + text[1:]
