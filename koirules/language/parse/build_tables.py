"""Makes the tables of the grammar when the wheel is built (a build hook of hatchling).

Nothing of koirules is imported but the module beside this one, by its path: the build knows Lark and hatchling alone.
"""

from __future__ import annotations

from importlib.util import module_from_spec, spec_from_file_location
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from hatchling.builders.hooks.plugin.interface import BuildHookInterface

_ROOM = "koirules/language/parse"


class GrammarTables(BuildHookInterface):  # type: ignore[type-arg]
    """Puts `grammar.tables` into the wheel; the checkout stays as it is."""

    def initialize(self, version: str, build_data: dict[str, Any]) -> None:
        """Make the tables and name them as a file of the wheel. An editable wheel has none: its grammar may change."""
        if self.target_name != "wheel" or version == "editable":
            return
        self._folder = TemporaryDirectory()
        made = Path(self._folder.name, "grammar.tables")
        made.write_bytes(_tables(Path(self.root, _ROOM, "tables.py")))
        build_data["force_include"][str(made)] = f"{_ROOM}/grammar.tables"

    def finalize(self, version: str, build_data: dict[str, Any], artifact_path: str) -> None:  # noqa: ARG002
        """Remove what was made beside the wheel."""
        if hasattr(self, "_folder"):
            self._folder.cleanup()


def _tables(path: Path) -> bytes:
    spec = spec_from_file_location("koirules_grammar_tables", path)
    if spec is None or spec.loader is None:
        raise ImportError(f"{path} is not there")
    module = module_from_spec(spec)
    spec.loader.exec_module(module)
    made: bytes = module.packed_tables()
    return made
