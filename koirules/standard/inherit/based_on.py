"""The standards that one is based on, as they are named."""

from __future__ import annotations

from koirules.language import statements as st
from koirules.standard.parts import Rules


def chain_of(own: st.Header, base: Rules) -> tuple[st.Base, ...]:
    """The base that a header names, then what that is based on itself."""
    based_on = own.based_on
    if based_on is None:
        return base.source.chain
    title = next(each.title for each in base.source.statements if isinstance(each, st.Header))
    seal = "" if based_on.seal is None else based_on.seal.text
    return (st.Base(based_on.file.text, title, base.edition, seal), *base.source.chain)
