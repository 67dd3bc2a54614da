"""Problems of plugins: why one was left out. All are warnings, since the command goes on without the plugin."""

from __future__ import annotations

from collections.abc import Sequence

from attrs import evolve

from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import quoted


def plugin_raises(plugin: str, when: str, error: str) -> Problem:
    """The code of a plugin raised an error."""
    return _left_out("plugin-raises", plugin, f"It failed {when} ({error}).", "Update the plugin or uninstall it.")


def plugin_hangs(plugin: str, when: str, seconds: float) -> Problem:
    """A plugin does not answer."""
    return _left_out(
        "plugin-hangs",
        plugin,
        f"It did not answer within {seconds:g} seconds {when}.",
        "Try again; if it happens each time, update the plugin or uninstall it.",
    )


def plugin_name_taken(plugin: str, what: str, other: str) -> Problem:
    """One thing that a plugin gives has a name that somebody gave before; the rest of the plugin is used."""
    return Problem(
        "plugin-name-taken",
        Cell(f"plugin {plugin}"),
        f"{_capital(what)} was left out. That name is already there, from {other}.",
        "Uninstall one of the two, or ask the author of the plugin for another name.",
        warning=True,
    )


def plugin_addition_nowhere(plugin: str, to: str, near: str | None) -> Problem:
    """A plugin adds to a vocabulary that is not there; the rest of the plugin is used."""
    mend = f'Did you mean "{near}"?' if near else "Install the plugin that gives it."
    return Problem(
        "plugin-addition-nowhere",
        Cell(f"plugin {plugin}"),
        f"Its addition to the vocabulary {quoted(to)} was left out. That vocabulary is not there.",
        mend,
        warning=True,
    )


def plugin_addition(plugin: str, to: str, why: str) -> Problem:
    """What a plugin adds does not fit; the rest of the plugin is used."""
    return Problem(
        "plugin-addition",
        Cell(f"plugin {plugin}"),
        f"Its addition to the vocabulary {quoted(to)} was left out. {why}",
        "Uninstall the plugin, or ask its author for another name.",
        warning=True,
    )


def plugin_bad_ending(plugin: str, ending: str) -> Problem:
    """The ending of a format is none that a file name could have."""
    return _left_out(
        "plugin-bad-ending",
        plugin,
        f"{quoted(ending)} cannot be the ending of a file.",
        "An ending is a full stop with lower-case letters or digits after it, such as `.ods`.",
    )


def reader_failed(file: str, plugin: str, error: str) -> Problem:
    """The reader of a plugin ended with an error that it should have told in words."""
    return Problem(
        "plugin-reader-failed",
        Cell(file),
        f"The file cannot be read: the plugin {plugin} failed ({error}).",
        "Open it in a spreadsheet program and save it as .xlsx or .csv; tell the author of the plugin.",
    )


def writer_failed(file: str, plugin: str, error: str) -> Problem:
    """The writer of a plugin ended with an error that it should have told in words."""
    return Problem(
        "plugin-writer-failed",
        Cell(file),
        f"The file cannot be written: the plugin {plugin} failed ({error}).",
        "Write a .csv or .xlsx file; tell the author of the plugin.",
    )


def drawing_failed(plugin: str, drawing: str, titles: str, error: str) -> Problem:
    """The drawing of a plugin ended with an error, or gave no answer; the page goes without."""
    return Problem(
        "plugin-drawing-failed",
        Cell(f"plugin {plugin}"),
        f"The drawing {quoted(drawing)} failed for {titles} ({error}).",
        "Use what was written without the picture; update the plugin, or tell its author.",
        warning=True,
    )


def bad_drawing(plugin: str, drawing: str, titles: str, why: str) -> Problem:
    """The drawing of a plugin gave something that cannot stand on a page; the page goes without."""
    return Problem(
        "bad-drawing",
        Cell(f"plugin {plugin}"),
        f"The drawing {quoted(drawing)} cannot be shown for {titles}: it {why}.",
        "Use what was written without the picture; update the plugin, or tell its author what a sketch may have "
        "(`koirules.report.sketch_markup`).",
        warning=True,
    )


def no_drawing(plugin: str, vocabulary: str, drawing: str, near: str | None) -> Problem:
    """The subject of a vocabulary names a drawing that nobody brings; the rest of the plugin is used."""
    mend = f'Did you mean "{near}"?' if near else "Install the plugin that brings it, or update the one that names it."
    return Problem(
        "no-drawing",
        Cell(f"plugin {plugin}"),
        f"The vocabulary {quoted(vocabulary)} names the drawing {quoted(drawing)}, which nobody brings. Its pages draw nothing.",
        mend,
        warning=True,
    )


def plugin_bad_unit(plugin: str, unit: str, why: str) -> Problem:
    """A unit cannot be written, or nobody could work with it."""
    return _left_out(
        "plugin-bad-unit",
        plugin,
        f"The unit {quoted(unit)} cannot be used: {why}.",
        "See `Unit` in koirules.vocabulary.units for what each part of it says.",
    )


def plugin_bad_command(plugin: str, command: str) -> Problem:
    """The name of a command cannot be typed as one."""
    return _left_out(
        "plugin-bad-command",
        plugin,
        f"{quoted(command)} cannot be the name of a command.",
        "A command has a name of lower-case letters, digits and single `-`, and begins with a letter.",
    )


def plugin_command_help(plugin: str, command: str) -> Problem:
    """A command does not say in one line what it does."""
    return _left_out(
        "plugin-command-help",
        plugin,
        f"The command {quoted(command)} does not say in one line what it does.",
        "Give its `help` one line of text.",
    )


def plugin_command_target(plugin: str, command: str, target: str) -> Problem:
    """The place of a command is not written as a module and an attribute."""
    return _left_out(
        "plugin-command-target",
        plugin,
        f"The command {quoted(command)} is said to be at {quoted(target)}.",
        "Write its `target` as `module:attribute`, such as `koirules_pond.commands:command`.",
    )


def command_unusable(plugin: str, command: str, error: str) -> Problem:
    """The command of a plugin cannot be fetched; the user asked for it, so this is no warning."""
    return Problem(
        "plugin-command",
        Cell(f"plugin {plugin}"),
        f"The command {quoted(command)} cannot be run ({error}).",
        "Update the plugin or uninstall it.",
    )


def command_failed(plugin: str, command: str, error: str, variable: str) -> Problem:
    """The command of a plugin ended with an error that it should have told in words."""
    return Problem(
        "plugin-command-failed",
        Cell(f"plugin {plugin}"),
        f"The command {quoted(command)} failed ({error}).",
        f"Update the plugin, or tell its author; with `koirules --debug`, or {variable}=1, the whole error is shown.",
    )


def plugin_without_api(plugin: str, api: int) -> Problem:
    """A plugin does not say which version of the hooks it was written for."""
    return _left_out(
        "plugin-without-api",
        plugin,
        "It does not say for which version of the hooks it was written.",
        f"Write `KOIRULES_API = {api}` in the module that its entry point names.",
    )


def plugin_bad_subject(plugin: str, what: str, why: str) -> Problem:
    """What a vocabulary says of its subject cannot be used."""
    return _left_out(
        "plugin-bad-subject",
        plugin,
        f"{_capital(what)} cannot be used: {why}.",
        "See `Subject` in koirules.vocabulary.subject for what each part of it says.",
    )


def plugin_since(plugin: str, what: str, since: int) -> Problem:
    """A plugin gives what the version of the hooks that it was written for has not."""
    return _left_out(
        "plugin-since",
        plugin,
        f"It gives {what}, which there is since version {since} of the hooks, and says that it was written for an older one.",
        f"Write `KOIRULES_API = {since}` in the module that its entry point names.",
    )


def plugin_too_new(plugin: str, written_for: int, api: int) -> Problem:
    """A plugin was written for a later version of the hooks."""
    return _left_out(
        "plugin-too-new",
        plugin,
        f"It was written for version {written_for} of the hooks, and this koirules knows version {api}.",
        "Update koirules, or install an older version of the plugin.",
    )


def plugin_too_old(plugin: str, written_for: int, oldest: int) -> Problem:
    """A plugin was written for a version of the hooks that is no longer understood."""
    return _left_out(
        "plugin-too-old",
        plugin,
        f"It was written for version {written_for} of the hooks, and this koirules knows none before {oldest}.",
        "Update the plugin.",
    )


def plugin_unknown_hook(plugin: str, hook: str, near: str | None) -> Problem:
    """A function of a plugin answers a hook that does not exist."""
    mend = f'Did you mean "{near}"?' if near else "Rename the function, or update koirules to a version with this hook."
    return _left_out("plugin-unknown-hook", plugin, f"koirules has no hook {quoted(hook)}.", mend)


def plugin_without_hooks(plugin: str) -> Problem:
    """Nothing of a plugin answers a hook."""
    return _left_out(
        "plugin-without-hooks",
        plugin,
        "It answers no hook, so it gives nothing.",
        "Mark its functions with `hookimpl` from `koirules.hooks`.",
    )


def plugin_wrong_type(plugin: str, what: str, expected: str, got: str) -> Problem:
    """A plugin gave something of another type than it should."""
    return _left_out("plugin-wrong-type", plugin, f"{_capital(what)} is {got}.", f"It must be {expected}.")


def plugin_levels_not_named(plugin: str, what: str) -> Problem:
    """A plugin gave the levels or what stands alone of a Spoken without their names, in the place of words."""
    return _left_out(
        "plugin-wrong-type",
        plugin,
        f"{_capital(what)} has a mapping in the place of words.",
        "Name the mappings: `levels={…}`, `alone={…}`.",
    )


def plugin_clash(plugin: str, what: str, other: str) -> Problem:
    """A plugin gives a name that somebody gave before."""
    return _left_out(
        "plugin-clash",
        plugin,
        f"{_capital(what)} is already there, from {other}.",
        "Uninstall the plugin, or ask its author for another name.",
    )


def plugin_unknown_include(plugin: str, vocabulary: str, include: str, near: str | None) -> Problem:
    """A vocabulary includes one that is not there."""
    mend = (
        f'Did you mean "{near}"?'
        if near
        else "Install the plugin that gives it; if it is there, see why it was left out."
    )
    return _left_out(
        "plugin-unknown-include",
        plugin,
        f"The vocabulary {quoted(vocabulary)} includes {quoted(include)}, which is not there.",
        mend,
    )


def plugin_include_circle(plugin: str, vocabulary: str) -> Problem:
    """A vocabulary includes itself by way of others."""
    return _left_out(
        "plugin-include-circle",
        plugin,
        f"The vocabulary {quoted(vocabulary)} includes itself, by way of what it includes.",
        "Take one of the links of the circle out.",
    )


def plugin_skin_or_variety(plugin: str, what: str) -> Problem:
    """A vocabulary says that it is both a variety and a skin."""
    return _left_out(
        "plugin-skin-or-variety",
        plugin,
        f"{_capital(what)} says that it is a variety and a skin.",
        "A skin lies over a variety: give `is_skin=True` alone.",
    )


def plugin_bad_name(plugin: str, what: str, name: str) -> Problem:
    """A name that no rule file could write."""
    return _left_out(
        "plugin-bad-name",
        plugin,
        f"The name {quoted(name)} of {what} cannot be written in a rule file.",
        "A name is of letters, digits and _, begins with a letter and keeps to one script.",
    )


def plugin_reserved_word(plugin: str, what: str, word: str) -> Problem:
    """A name that is a word of the rule language."""
    return _left_out(
        "plugin-reserved-word",
        plugin,
        f"The name {quoted(word)} of {what} is a word of the rule language.",
        "Choose another name.",
    )


def plugin_bad_range(plugin: str, what: str, why: str) -> Problem:
    """A range that no value could lie in, or that the rule language cannot hold."""
    return _left_out(
        "plugin-bad-range",
        plugin,
        f"The range of {what} {why}.",
        "A range goes from a lower to a higher number within 1,000,000 of 0, with at most six decimals.",
    )


def plugin_bad_steps(plugin: str, what: str, why: str) -> Problem:
    """Steps, options or places that cannot be told apart, or too few of them."""
    return _left_out(
        "plugin-bad-steps",
        plugin,
        f"The list of words of {what} {why}.",
        "A scale or choice has two words or more, places one or more, each of them once.",
    )


def plugin_step_like_trait(plugin: str, what: str, word: str) -> Problem:
    """A step that a rule file could not tell from a trait."""
    return _left_out(
        "plugin-step-like-trait",
        plugin,
        f"{quoted(word)} is a word of {what} and also the name of a trait of the same variety.",
        "Rename one of the two.",
    )


def plugin_no_such_file(plugin: str, ruleset: str, path: str) -> Problem:
    """The file of a rule set is not where the plugin says."""
    return _left_out(
        "plugin-no-such-file",
        plugin,
        f"The rule set {quoted(ruleset)} should be in {quoted(path)}, but there is no such file.",
        "Install the plugin again, or tell its author.",
    )


def plugin_ruleset_like_path(plugin: str, ruleset: str) -> Problem:
    """The name of a rule set looks like the path of a file."""
    return _left_out(
        "plugin-ruleset-like-path",
        plugin,
        f"The name {quoted(ruleset)} of a rule set cannot be told from the path of a file.",
        "A rule set has a plain name, without slashes and without .koi.",
    )


def plugin_measure(plugin: str, vocabulary: str, problem: Problem) -> Problem:
    """A measure of a vocabulary does not hold."""
    return _left_out(problem.code, plugin, f"In the vocabulary {quoted(vocabulary)}: {problem.cause}", problem.mend)


def plugins_unlisted(error: str) -> Problem:
    """The list of installed plugins could not be read."""
    return Problem(
        "plugins-unlisted",
        Cell("plugins"),
        f"The installed plugins could not be listed ({error}), so none of them is used.",
        "Mend or remove the distribution that was installed last.",
        warning=True,
    )


def missing_with_it(problem: Problem, left_out: Sequence[Problem]) -> Problem:
    """A rule set that is not there, where plugins were left out that may have had it."""
    told = "; ".join(f"{one.site}: {one.cause}" for one in left_out)
    return evolve(problem, mend=f"{problem.mend} A plugin that was left out may have it ({told}).")


def _left_out(code: str, plugin: str, cause: str, mend: str) -> Problem:
    return Problem(code, Cell(f"plugin {plugin}"), f"The plugin was left out. {cause}", mend, warning=True)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
