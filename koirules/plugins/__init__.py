"""Finds the plugins that are installed, and freezes what they give into a registry.

In: the entry points of the group `koirules`. Out: a registry of varieties and rule sets, and a problem for each plugin
that was left out. A plugin that fails in any way is left out as a whole; the others, and the command, go on. Who comes
first keeps a name: what ships in the box, then the plugins in the order of their distributions and of their own names.
"""

from koirules.plugins.registry import Registry, load_registry, registry_with

__all__ = ["Registry", "load_registry", "registry_with"]
