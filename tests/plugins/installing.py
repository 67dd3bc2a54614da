"""Plugins that stand where distributions are installed, for as long as a test lasts."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from koirules.plugins import load_registry

Install = Callable[..., Path]


def installer(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Install]:
    """Gives a function that puts a distribution with one plugin where Python looks for them."""
    modules = set(sys.modules)
    monkeypatch.syspath_prepend(tmp_path)

    def make(distribution: str, code: str, name: str = "lace", version: str | None = "1.2") -> Path:
        module = f"{distribution}_plugin".replace("-", "_")
        (tmp_path / f"{module}.py").write_text(code, encoding="utf-8")
        info = tmp_path / f"{distribution.replace('-', '_')}-{version}.dist-info"
        info.mkdir()
        if version is not None:
            metadata = f"Metadata-Version: 2.1\nName: {distribution}\nVersion: {version}\n"
            (info / "METADATA").write_text(metadata, encoding="utf-8")
        (info / "entry_points.txt").write_text(f"[koirules]\n{name} = {module}\n", encoding="utf-8")
        load_registry.cache_clear()
        return tmp_path / f"{module}.py"

    load_registry.cache_clear()
    yield make
    load_registry.cache_clear()
    for module in set(sys.modules) - modules:
        if module.endswith("_plugin"):
            del sys.modules[module]
