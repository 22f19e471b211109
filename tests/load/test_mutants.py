"""Twenty thousand spoilt garments: each is read as far as it can be, and nothing falls over.

A mutant is made again by its number, which a failure shows: `print(mutant(1234).text)`.
"""

import gc
import time
from collections.abc import Iterator
from textwrap import dedent

import pytest
from load.mutate import GARMENTS, Mutant, mutant, named

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.explain.chart import Lanes, make_chart
from seqplan.load.document import load_text
from seqplan.load.text import lines_of
from seqplan.pipeline import Opened, make_handouts, write_handout
from seqplan.recipes.expand import construct
from seqplan.render.dot import chart_to_dot
from seqplan.render.handout.paper import Paper
from seqplan.render.listing import list_between, list_place, list_steps

FOLDER = GARMENTS[0].parent
"""Where the pictures are that garments name."""

# Garments that were found so, cut down to what it takes.
STRANGE: dict[str, str] = {
    "both halves of a run sewn to the same edges": """
        pieces:
          outer: {cut: 2, edges: [side, side]}
          lining: {cut: 2, edges: [side, side]}
        operations:
          seams: {sew: [outer.side, lining.side], to: outer}
        """,
    "outside and lining sewn to the same lining": """
        pieces:
          front: {cut: pair, edges: [side]}
          back: {cut: fold, edges: [side]}
          front-lining: {like: front}
          back-lining: {like: back}
        operations:
          sides: {sew: [front.side, front-lining.side], to: back-lining}
        """,
    "a band on an edge that is sewn twice": """
        pieces:
          back: {cut: fold, edges: [armhole]}
          sleeve: {cut: pair, edges: [cap]}
          neckband: {strip: [fold]}
        operations:
          rib: {sew: sleeve.cap}
          neck: {band: sleeve.cap, with: neckband}
          sleeves: {sew: sleeve.cap, to: back.armhole}
        """,
    "a stand sewn up and sewn on": """
        pieces:
          back: {cut: fold, edges: [armhole, side, hem]}
          yoke: {edges: [neck]}
          sleeve: {edges: [underarm-back, underarm-front]}
          stand: {cut: fold, edges: [top | end]}
          stand-inner: {edges: [a]}
        operations:
          sides: {sew: [stand.top, sleeve.underarm-front], to: [back.side, sleeve.underarm-back]}
          stand: {sew: stand.top}
          neck: {band: yoke.neck, with: stand + stand-inner}
        """,
}

MUTANTS = 20_000
CHUNK = 500
DRAWN = range(1, 4_000, 20)
"""Mutants of the meaning; about a quarter of them read as a garment."""
LONGEST_S = 2.0


@pytest.fixture(autouse=True)
def _no_collecting() -> Iterator[None]:
    """Leave circular garbage lying about for the length of a chunk, which saves a fifth."""
    gc.disable()
    yield
    gc.enable()
    gc.collect()


def _opened(spoilt: Mutant) -> Opened:
    loaded = load_text(spoilt.text, spoilt.of, FOLDER)
    if loaded.garment is None:
        return Opened(loaded, None)
    return Opened(loaded, *construct(loaded.garment))


def _is_placed(item: Diagnostic, lines: list[str]) -> bool:
    if item.span is None or not 1 <= item.span.line <= len(lines):
        return False
    return 1 <= item.span.column <= len(lines[item.span.line - 1]) + 1


@pytest.mark.parametrize("first", range(0, MUTANTS, CHUNK))
def test_a_spoilt_garment_is_told_what_is_wrong_and_where(first: int) -> None:
    for number in range(first, first + CHUNK):
        with named(number):
            started = time.process_time()
            opened = _opened(mutant(number))
            lines = lines_of(opened.loaded.text)
            for item in opened.findings:
                assert item.message.strip()
                assert _is_placed(item, lines), item
            assert opened.has_errors or opened.has_order
            assert time.process_time() - started < LONGEST_S


@pytest.mark.parametrize("first", DRAWN[::40])
def test_what_reads_as_a_garment_can_be_listed_drawn_and_handed_out(first: int) -> None:
    for number in DRAWN[DRAWN.index(first) :][:40]:
        with named(number):
            opened = _opened(mutant(number))
            blocking = (*opened.loaded.diagnostics, *opened.laid_out)
            if opened.can_be_sewn and all(d.severity is not Severity.ERROR for d in blocking):
                _draw(opened, list(Lanes)[number // 20 % len(Lanes)])


def _draw(opened: Opened, lanes: Lanes) -> None:
    c = opened.garment
    for plan in (opened.planner.booklet(), opened.planner.repair()):
        assert list_steps(c, plan)
    chart = make_chart(c, opened.binding.held, lanes)
    assert chart_to_dot(chart, c, title=c.garment.name, lanes=lanes)
    for document in make_handouts(opened, "booklet").values():
        assert b"</html>" in write_handout(document, ".html", Paper.A4)
    if c.garment.entries:
        first, last = c.garment.entries[0].id, c.garment.entries[-1].id
        assert list_place(opened.explainer.place(first))
        assert list_between(opened.explainer.between(first, last))


@pytest.mark.parametrize("name", STRANGE)
def test_an_edge_in_two_seams_is_a_finding(name: str) -> None:
    opened = _opened(Mutant(0, name, "garment: x\n" + dedent(STRANGE[name])))
    assert opened.has_errors


def test_many_copies_that_are_alike_are_paired_soon() -> None:
    pieces = "".join(f"  {name}: {{cut: 12, edges: [a, b, c]}}\n" for name in "pq")
    text = f"garment: x\npieces:\n{pieces}operations:\n  x: {{sew: p.a, to: q.a}}\n"
    # Of twelve copies there are 479,001,600 ways, which would not end.
    assert not _opened(Mutant(0, "", text)).has_errors


def test_a_mutant_is_the_same_every_time() -> None:
    assert [mutant(number) for number in range(40)] == [mutant(number) for number in range(40)]


def test_every_garment_has_mutants_that_read_and_mutants_that_do_not() -> None:
    read = {
        (m.of, load_text(m.text, m.of, FOLDER).garment is not None) for m in map(mutant, range(600))
    }
    assert read == {(path.name, is_read) for path in GARMENTS for is_read in (True, False)}
