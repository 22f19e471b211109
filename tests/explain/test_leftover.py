"""What the file names and no operation takes up."""

from textwrap import dedent

from seqplan.explain.leftover import check_leftovers
from seqplan.load.document import load_text
from seqplan.recipes.expand import construct


def _slugs(text: str) -> list[tuple[str, str]]:
    loaded = load_text(dedent(text))
    assert loaded.garment is not None, loaded.diagnostics
    c, _ = construct(loaded.garment)
    return [(item.slug, item.message) for item in check_leftovers(c)]


def test_an_edge_that_nothing_settles_is_raw_and_a_selvage_is_fine():
    text = """
        garment: Quay scarf
        pieces: {{scarf: {{cut: 1, edges: [end, side, end, side]{selvage}}}}}
        operations: {{ends: {{hem: scarf.end, depth: 1, flat: yes}}}}
    """
    assert [slug for slug, _ in _slugs(text.format(selvage=""))] == ["raw-edge"]
    assert _slugs(text.format(selvage=", selvage: side")) == []


def test_knit_does_not_ravel():
    assert (
        _slugs(
            """
        garment: Quay snood
        fabrics: {jersey: knit}
        pieces: {tube: {of: jersey, cut: 1, edges: [edge, side, edge, side]}}
        operations: {close: {sew: tube.side}}
            """
        )
        == []
    )


def test_a_part_that_is_left_open_is_told_as_such():
    (finding,) = _slugs(
        """
        garment: Quay cover
        pieces: {a: {cut: 1, edges: [top, right, foot, left]}, b: {like: a}}
        operations:
          round: {sew: [a.top, a.right, a.left], to: b}
          foot:  {sew: a.foot, to: b, part: 5 from right}
        """
    )[:1]
    assert finding[0] == "open-part"


def test_a_channel_sewn_shut_all_round_has_no_way_in():
    text = """
        garment: Quay bag
        pieces: {{tube: {{cut: 1, edges: [top, side, foot, side]}}}}
        notions: {{cord: cord}}
        operations:
          side:    {{sew: tube.side, press: open}}
          foot:    {{finish: tube.foot}}
          channel: {{casing: tube.top, depth: 2{gap}}}
          cord:    {{insert: cord, in: channel}}
    """
    assert [slug for slug, _ in _slugs(text.format(gap=""))] == ["no-way-in"]
    assert _slugs(text.format(gap=", gap: 3")) == []


def test_pieces_notions_and_fabrics_that_nothing_uses_are_told():
    slugs = [
        slug
        for slug, _ in _slugs(
            """
            garment: Quay odds
            fabrics: {a: woven, b: woven}
            pieces: {used: {of: a}, unused: {of: a}}
            notions: {button: button}
            operations: {x: {do: sew, on: used}}
            """
        )
    ]
    assert slugs == ["unused-piece", "unused-notion", "unused-fabric", "free-words"]
