"""Machine code of a module: made by LLVM for this processor, kept in the cache folder, loaded into this process."""

from __future__ import annotations

import ctypes
from collections.abc import Callable
from functools import cache, lru_cache
from hashlib import sha256
from importlib import metadata
from importlib.util import find_spec
from itertools import count
from pathlib import Path
from typing import Any

from koirules.cache import keep, read_kept
from koirules.engines.compiled.layout import Target

_NUMBERS = count()


@cache
def is_installed() -> bool:
    """Whether the extra `compiled` is there."""
    return find_spec("llvmlite") is not None


@lru_cache(1)
def host() -> Target:
    """The processor of this machine."""
    import llvmlite.binding as llvm

    features = llvm.get_host_cpu_features().flatten()
    return Target(llvm.get_process_triple(), llvm.get_host_cpu_name(), features)


def version() -> str:
    """The version of llvmlite and LLVM."""
    import llvmlite
    import llvmlite.binding as llvm

    return f"{llvmlite.__version__} {llvm.llvm_version_info}"


@cache
def _is_ready() -> bool:
    import llvmlite.binding as llvm

    llvm.initialize_native_target()
    llvm.initialize_native_asmprinter()
    return True


def object_of(module: str, target: Target) -> bytes:
    """The object file of a module in LLVM IR. LLVM's passes over whole modules are left out: they cost more than they gain."""
    import llvmlite.binding as llvm

    _is_ready()
    parsed = llvm.parse_assembly(module)
    parsed.triple = target.triple
    parsed.verify()
    machine = llvm.Target.from_triple(target.triple).create_target_machine(
        cpu=target.cpu, features=target.features, opt=2, jit=True
    )
    made: bytes = machine.emit_object(parsed)
    return made


class Loaded:
    """The function of an object file. It may be called from several threads at once, and lets go of Python's lock."""

    def __init__(self, contents: bytes) -> None:
        import llvmlite.binding as llvm

        _is_ready()
        linker = llvm.create_lljit_compiler(use_jit_link=False)
        name = f"koirules{next(_NUMBERS)}"
        builder = llvm.JITLibraryBuilder().add_object_img(contents).add_current_process().export_symbol("grade")
        self._library: Any = builder.link(linker, name)
        self._linker: Any = linker
        kind = ctypes.CFUNCTYPE(None, ctypes.c_void_p, ctypes.c_int64, ctypes.c_int64)
        self.run: Callable[[int, int, int], None] = kind(self._library["grade"])


_KIND = "compiled"


def made_or_kept(what: str, module: Callable[[Target], str]) -> bytes:
    """The object of a module for this processor, from the cache folder or made and kept there. what: all that it follows from."""
    name = name_of(what)
    found = kept_object(name)
    if found is None:
        found = object_of(module(host()), host())
        keep_object(name, found)
    return found


def name_of(what: str) -> str:
    """Under what an object is kept: all that it follows from, and this engine, LLVM and the processor.

    what: a digest of the program, which is that of a standard with its settings and traits for one profile of holes; and which of
    its results there are.
    """
    told = f"{what}\n{metadata.version('koirules')}\n{_sources()}\n{version()}\n{host()}"
    return sha256(told.encode()).hexdigest()


@lru_cache(1)
def _sources() -> str:
    """A digest of the files of this engine: those of a checkout change without a new version."""
    told = sha256()
    for file in sorted(Path(__file__).parent.glob("*.py")):
        told.update(file.read_bytes())
    return told.hexdigest()


def kept_object(name: str) -> bytes | None:
    """The object that was kept under a name, None where there is none, or one that was damaged."""
    found = read_kept(_KIND, name)
    if found is None:
        return None
    digest, contents = found[: sha256().digest_size], found[sha256().digest_size :]
    return contents if sha256(name.encode() + contents).digest() == digest else None


def keep_object(name: str, contents: bytes) -> None:
    """Keep an object, with a digest that finds damage. Against malice nothing helps but that the folder is the user's alone."""
    keep(_KIND, name, sha256(name.encode() + contents).digest() + contents)
