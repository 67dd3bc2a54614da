"""Checked standards, kept in the cache folder between two runs.

One is found again under a name made of the version of koirules and of every plugin, of the stamps of their files, and of the
bytes and the path of the rule file; and it counts only while the files that it is based on are found where they were, with the
bytes that they had. Anything else is read and checked anew.

What is kept is data. A standard is a tree of frozen classes, and `pickle` writes it; but a pickle may name any function to be
called, so this one is read by an unpickler that knows only the data classes of a few rooms of koirules, and a handful of types
of Python's own. Traits, measures and sayings are not in it: they are named, and taken from the plugins that are there. What no
grade needs, the statements as they were written above all, is a pickle of its own, and read when somebody asks for it. A standard
that holds anything else, such as a function, is not kept. The folder is the user's alone (`koirules/cache.py`). JSON would need
a reader for each of some ninety classes, and takes five times as long.
"""

from __future__ import annotations

import io
import json
import pickle
from collections.abc import Iterator, Mapping, Sequence
from contextlib import suppress
from enum import Enum
from functools import partial
from hashlib import sha256
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeAlias

import attrs

from koirules.cache import keep, read_kept
from koirules.later import later
from koirules.loading.opening import bytes_of, installed_base, without_collector
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.traits import Variety

if TYPE_CHECKING:
    from koirules.standard.checked import Checked
    from koirules.standard.parts import Rules

_KIND, _FORM = "standards", "3"

_ROOMS = tuple(f"koirules.{room}." for room in ("language", "meaning", "problems", "standard", "vocabulary"))
_PLAIN = {("decimal", "Decimal"), ("datetime", "date"), ("koirules.read_only", "read_only")}
_ROWS = {("koirules.vocabulary.units", "unit_of"), ("koirules.meaning.aggregates", "_named")}
"""Functions that give a row of one of our tables by its name."""
_KNOWN = _PLAIN | _ROWS
_DAMAGED = (
    pickle.UnpicklingError,
    EOFError,
    AttributeError,
    ImportError,
    IndexError,
    KeyError,
    TypeError,
    ValueError,
)
"""What reading damaged or foreign bytes raises, as the documentation of pickle lists it."""

Base = tuple[str, str, str, str, str]
"""A file that a standard is based on: its name, its edition, the folder that it is given from, its real path, the digest of its
bytes."""


def name_of(key: str, path: Path, data: bytes) -> str:
    """Under what the standard of a file is kept. key: all else that it follows from, "" where it is not to be kept."""
    if not key:
        return ""
    told = sha256(f"{_FORM}\n{key}\n{path}\n{_real(path)}\n".encode("utf-8", "surrogateescape"))
    told.update(data)
    return told.hexdigest()


def kept_standard(name: str, varieties: Varieties, rulesets: Mapping[str, Path]) -> Checked | None:
    """The checked standard that was kept under a name, None where there is none that still holds."""
    data = read_kept(_KIND, name) if name else None
    if data is None:
        return None
    head, _, body = data.partition(b"\n")
    digest = _digest_that_holds(head, rulesets)
    if not digest or digest != sha256(body).hexdigest():
        return None
    try:
        made: Checked = _Reader("", _parts_of(head, body), varieties).load()
    except _DAMAGED:
        return None
    return attrs.evolve(made, kept_as=f"{name}.{digest}")


def digest_of_kept(name: str, rulesets: Mapping[str, Path]) -> str:
    """The digest of the standard that is kept under a name, "" where there is none that still holds."""
    data = read_kept(_KIND, name) if name else None
    return "" if data is None else _digest_that_holds(data.partition(b"\n")[0], rulesets)


def _digest_that_holds(head: bytes, rulesets: Mapping[str, Path]) -> str:
    try:
        told = json.loads(head)
        return str(told["body"]) if all(_holds(base, rulesets) for base in told["bases"]) else ""
    except _DAMAGED:
        return ""


def keep_standard(name: str, checked: Checked, bases: Sequence[Base], varieties: Varieties) -> Checked:
    """Keep a checked standard, where it can be kept; the same, and it knows as what it was kept."""
    if not name or checked.rules is None:
        return checked
    from koirules.standard.canonical import seal_of

    whole, shared = attrs.evolve(checked, known=None, seal=seal_of(checked.rules)), dict(_shared(varieties))
    parted = {(name, about): part for name, part, about in _parts_for_later(checked.rules) if part}
    # What cannot be written is not kept: a function, or a class that this version of Python cannot pickle.
    with suppress(pickle.PicklingError, TypeError, AttributeError):
        parts = [
            _written(whole, {**shared, **{("later", name, about): part for (name, about), part in parted.items()}})
        ]
        parts += [_written(part, shared) for part in parted.values()]
        written = b"".join(parts)
        digest = sha256(written).hexdigest()
        names = ["", *(name for name, _ in parted)]
        head = json.dumps({"body": digest, "bases": bases, "parts": list(zip(names, map(len, parts), strict=True))})
        keep(_KIND, name, head.encode() + b"\n" + written)
        return attrs.evolve(checked, kept_as=f"{name}.{digest}")
    return checked


def base_of(name: str, edition: str, folder: Path | None, real: Path, data: bytes) -> Base:
    """What is kept of a base, so that it can be told whether it is still the same."""
    return name, edition, "" if folder is None else str(folder), str(real), sha256(data).hexdigest()


def _holds(base: Base, rulesets: Mapping[str, Path]) -> bool:
    name, edition, folder, real, digest = base
    found = installed_base(name, edition, Path(folder) if folder else None, rulesets)
    if _real(found or Path(folder, name)) != real:
        return False
    data = bytes_of(Path(real))
    return isinstance(data, bytes) and sha256(data).hexdigest() == digest


def _real(path: Path) -> str:
    try:
        return str(path.resolve())
    except (OSError, RuntimeError, ValueError):
        return ""


_Name: TypeAlias = tuple[str, str, object]
"""How one part of what is kept refers to something outside of it."""


def _shared(varieties: Varieties) -> Iterator[tuple[_Name, object]]:
    """Every trait, measure and saying of the plugins with the name under which a standard refers to it."""
    for kind, named in (("variety", varieties.plain), ("skin", varieties.skins)):
        for name, variety in named.items():
            for trait in variety.traits.values():
                yield (f"{kind} trait", name, trait.name), trait
            for number, measure in enumerate(variety.measures):
                yield (f"{kind} measure", name, str(number)), measure
            for number, saying in enumerate(variety.sayings):
                yield (f"{kind} saying", name, str(number)), saying


def _parts_for_later(rules: Rules) -> Iterator[tuple[str, tuple[object, ...], object]]:
    """The parts of a standard that no grade needs, each with its name and what is known of it before it is read."""
    source = rules.source
    yield "samples", rules.samples, None
    yield "sayings", rules.sayings, None
    yield "statements", source.statements, source.places
    yield "comments", source.comments, None
    yield "chain", source.chain, None


def _parts_of(head: bytes, body: bytes) -> dict[str, bytes]:
    parts: dict[str, bytes] = {}
    start = 0
    for name, length in json.loads(head)["parts"]:
        parts[name] = body[start : start + length]
        start += length
    return parts


def _written(part: object, names: Mapping[_Name, object]) -> bytes:
    written = io.BytesIO()
    _Writer(written, names).dump(part)
    return written.getvalue()


class _Writer(pickle.Pickler):
    def __init__(self, file: io.BytesIO, names: Mapping[_Name, object]) -> None:
        super().__init__(file, protocol=5)
        self._names = {id(one): name for name, one in names.items()}

    def persistent_id(self, one: Any) -> Any:
        if callable(one) and not isinstance(one, type) and not attrs.has(type(one)):
            # The functions that pickle writes for a class or a unit are no part of what is kept, and are known by name.
            if (getattr(one, "__module__", ""), getattr(one, "__name__", "")) in _KNOWN:
                return None
            raise pickle.PicklingError(f"{one!r} is code")
        return self._names.get(id(one))


class _Reader(pickle.Unpickler):
    def __init__(self, part: str, parts: Mapping[str, bytes], varieties: Varieties) -> None:
        super().__init__(io.BytesIO(parts[part]))
        self._parts, self._varieties = parts, varieties

    def persistent_load(self, name: Any) -> Any:
        kind, of, which = name
        if kind == "later":
            return later(partial(_read_later, of, self._parts, self._varieties), which)
        variety: Variety = (self._varieties.skins if kind.startswith("skin") else self._varieties.plain)[of]
        if kind.endswith("trait"):
            return variety.traits[which]
        return (variety.measures if kind.endswith("measure") else variety.sayings)[int(which)]

    def find_class(self, module: str, name: str) -> Any:
        if (module, name) not in _KNOWN and not module.startswith(_ROOMS):
            raise pickle.UnpicklingError(f"{module}.{name} is no part of a standard")
        found = getattr(import_module(module), name)
        if (module, name) in _KNOWN or _is_data(found):
            return found
        raise pickle.UnpicklingError(f"{module}.{name} is no part of a standard")


def _read_later(part: str, parts: Mapping[str, bytes], varieties: Varieties) -> Any:
    with without_collector():
        return _Reader(part, parts, varieties).load()


def _is_data(found: object) -> bool:
    """Whether it is a data class, a named tuple, an enumeration, or a row of the table of operators."""
    if isinstance(found, type):
        return attrs.has(found) or issubclass(found, Enum) or (issubclass(found, tuple) and hasattr(found, "_fields"))
    return attrs.has(type(found))
