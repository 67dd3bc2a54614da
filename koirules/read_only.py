"""Mappings that cannot be changed, and can be copied and pickled."""

from __future__ import annotations

import copyreg
from collections.abc import Mapping
from types import MappingProxyType
from typing import TypeVar

_K = TypeVar("_K")
_V = TypeVar("_V")


def read_only(mapping: Mapping[_K, _V]) -> Mapping[_K, _V]:
    """A mapping with the same items that cannot be changed."""
    return MappingProxyType(dict(mapping))


def _pickled(mapping: MappingProxyType[_K, _V]) -> tuple[object, tuple[dict[_K, _V]]]:
    return read_only, (dict(mapping),)


# The type of Python's own says of itself only that it cannot be pickled.
copyreg.pickle(MappingProxyType, _pickled)  # type: ignore[arg-type]
