"""Numbers for what expressions say: two of one number say the same, in whatever words and order, by the names that they read."""

from __future__ import annotations

from collections.abc import Hashable, Mapping

from koirules.engines.symbolic.value_numbering import SameValues
from koirules.standard.parts import Setting
from koirules.standard.tree import Apply, Constant, Grown, Node, SettingRead, Supplied, TermRead, TraitRead
from koirules.standard.types import PlaceWords, Steps


class SameWords(SameValues):
    """Gives the numbers. What a name stands for may differ between editions; that is a change of another statement."""

    def meaning(self, root: Node) -> int:
        """The number of an expression."""
        return self.number(root, {}, "")

    def _said(self, node: Node, settings: Mapping[str, Setting], mark: str) -> Hashable:
        match node:
            case Constant(type=Steps(words) | PlaceWords(words), range=bits):
                return ("words", tuple(word for i, word in enumerate(words) if bits >> i & 1))
            case TraitRead(trait=trait):
                return ("name", trait.name)
            case SettingRead(name=name) | TermRead(name=name):
                return ("name", name)
            case Supplied(source=Grown(of=of, target=target)):
                return ("grown", self.number(of, settings, mark), self.number(target, settings, mark))
            case Apply(operation=operation):
                return ("apply", operation.name, self._operands(node, mark))
            case _:
                return super()._said(node, settings, mark)
