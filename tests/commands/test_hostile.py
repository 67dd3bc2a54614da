"""No command ends in a traceback, in another status than 0, 1 or 2, or never, whatever it is given.

A twentieth of the trials of `python -m tests.benchmarks.hostile_commands`.
"""

import sys

import pytest

from tests.commands.hostile import tried

if sys.platform == "win32":
    pytest.skip("names of files that no Windows takes", allow_module_level=True)

PARTS, EACH = 10, 23


@pytest.mark.parametrize("part", range(PARTS))
def test_whatever_a_command_is_given_it_ends_in_order(tmp_path, part):
    assert [
        (number, one.words, one.wrong) for number, one in tried(range(part * EACH, (part + 1) * EACH), tmp_path)
    ] == []
