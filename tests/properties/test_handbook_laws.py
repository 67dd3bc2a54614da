"""The page of any standard: it is made, it is well-formed, and a table of its curve says what the judge gives at each knot."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import html5lib
from hypothesis import HealthCheck, Phase, given, note, settings
from markdown_it import MarkdownIt

import koirules
from koirules.grading.sample_runs import run_samples
from koirules.report.handbook import Subject, blocks_of
from koirules.report.handbook.as_html import html_of
from koirules.report.handbook.as_markdown import markdown_of
from koirules.report.handbook.blocks import Block, Drawing, Group, Table
from tests.judge import model as m
from tests.judge.strategies import layouts, standards
from tests.judge.text import to_text

moderate = settings(
    max_examples=60,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)


def flat(blocks: tuple[Block, ...]) -> list[Block]:
    found: list[Block] = []
    for block in blocks:
        found.extend(flat(block.blocks) if isinstance(block, Group) else [block])
    return found


@moderate
@given(standards(), layouts())
def test_every_standard_has_a_page(standard: m.Standard, layout: int | None) -> None:
    text = to_text(standard, layout)
    note(text)
    loaded = koirules.read_standard(text)
    blocks = blocks_of(Subject(loaded.grader, run_samples(loaded.grader), loaded.seal, ("Gently.",), remarks=True))
    page = html_of(blocks)
    tree = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False).parse(page)
    ids = [node.get("id") for node in tree.iter() if node.get("id")]
    assert len(ids) == len(set(ids))
    for part in (*loaded.rules.parts, *loaded.rules.sections):
        head = getattr(part, "head", "section")
        assert f"{head}-{part.name}" in ids
    markdown = MarkdownIt("commonmark").enable("table").parse(markdown_of(blocks))
    tables = [block for block in flat(blocks) if isinstance(block, Table)]
    assert sum(token.type == "table_open" for token in markdown) == len(tables) == len(list(tree.iter("table")))
    criteria = [part for section in standard.sections for part in section.criteria if isinstance(part, m.Points)]
    curves = [part.gives for part in criteria if isinstance(part.gives, m.Curve)]
    drawn = [(one, after) for one, after in pairwise(flat(blocks)) if isinstance(one, Drawing)]
    assert len(drawn) == len(curves)
    for curve, (drawing, table) in zip(curves, drawn, strict=True):
        assert isinstance(table, Table)
        gives = [Fraction(row.cells[1][0].text) for row in table.rows]
        assert gives == [Fraction(knot.gives) for knot in drawing.knots]
        assert [knot.gives for knot in drawing.knots] == [knot.gives for knot in curve.knots]
