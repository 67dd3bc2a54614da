"""For authors of plugins and rule files: is my plugin sound, do my samples hold?

In: a plugin, or a rule file. Out: a registry of one's own, samples as tests, what is wrong with a plugin in words, and
invented records of any vocabulary. A plugin's own tests need one line:

    def test_it_is_sound():
        koirules.testing.check_plugin(my_variety)

`koirules.testing.strategies` draws records with hypothesis, which it alone needs.
"""

from koirules.grading.sample_runs import SampleRun
from koirules.plugins import Registry, registry_with
from koirules.testing.conformance import check_plugin, findings
from koirules.testing.made_records import made_records
from koirules.testing.rule_samples import ruleset_faults, sample_runs, sample_title, told

__all__ = [
    "Registry",
    "SampleRun",
    "check_plugin",
    "findings",
    "made_records",
    "registry_with",
    "ruleset_faults",
    "sample_runs",
    "sample_title",
    "told",
]
