"""What is caught in a seam or held along an edge: connected, gone over, and no part of the surface.

The shapes are worked out on paper; beside each stands the way that a needle takes.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from surface.cloth import edges, glued_polygons, loops, names, points, rings, seams

from seqplan.base.ids import EntryId
from seqplan.surface.glued import Glue, Surface
from seqplan.surface.pairing import lay_on
from seqplan.surface.ring import EdgeEnd
from seqplan.surface.stretch import find_stretches

SHIRT = """
front pair: neck shoulder armhole hem edge
yoke fold: neck shoulder armhole lower
inner fold: neck shoulder armhole lower
back fold: top armhole hem
"""
YOKED = ("yoke.lower + inner.lower", "yoke.shoulder + inner.shoulder")
CAUGHT = ("back.top on yoke.lower", "front.shoulder on yoke.shoulder")


def riders(cloth, *texts, sewn=()):
    """Lay ``back.top on yoke.lower``, every copy."""
    found = []
    for text in texts:
        rider, _, carrier = text.partition(" on ")
        pairs = lay_on(cloth, edges(cloth, rider), edges(cloth, carrier), sewn)
        found += [Glue(p.first, p.second, p.aligned, EntryId(text)) for p in pairs]
    return found


def built(pieces, sewn, ridden):
    cloth = rings(pieces)
    glues = seams(cloth, *sewn)
    return Surface(cloth, glues, riders(cloth, *ridden, sewn=glues))


def stretches(surface, *run):
    segments = [s for name in run for s in edges(surface.rings, name)]
    return find_stretches(surface, segments, lambda _one, _other: True)


def test_an_armhole_goes_over_front_yoke_and_back_though_both_are_caught_between_yokes():
    # Up the front armhole to the shoulder seam, over the yoke, down from the lower seam.
    shirt = built(SHIRT, YOKED, CAUGHT)
    found = stretches(shirt, "front.armhole", "yoke.armhole", "back.armhole")
    assert (
        sorted(sorted(names(shirt, s.segments)) for s in found)
        == [["back.armhole", "front.armhole", "yoke.armhole"]] * 2
    )
    for stretch in found:
        assert names(shirt, stretch.segments)[1] == "yoke.armhole"
        assert not stretch.is_ring
        assert {entry for link in stretch.links for entry in link.junctions} == set(CAUGHT)


def test_a_neck_goes_over_both_fronts_and_the_yoke():
    shirt = built(SHIRT, YOKED, CAUGHT)
    (neck,) = stretches(shirt, "front.neck", "yoke.neck")
    assert names(shirt, neck.segments) == ["front.neck", "yoke.neck", "yoke.neck", "front.neck"]


def test_without_what_is_caught_the_run_is_torn():
    shirt = built(SHIRT, YOKED, ())
    assert len(stretches(shirt, "front.armhole", "yoke.armhole", "back.armhole")) == 6


def test_a_seam_counts_as_not_sewn_for_its_own_run_together_with_what_it_catches():
    shirt = built(SHIRT, YOKED, CAUGHT)
    members = frozenset(edges(shirt.rings, "front.armhole") + edges(shirt.rings, "yoke.armhole"))
    start = EdgeEnd(edges(shirt.rings, "front.armhole")[0], False)
    assert shirt.next_of(start, members)[0].segment.piece == "yoke"
    assert shirt.next_of(start, members, EntryId(CAUGHT[1])) == (start, ())


def test_the_end_of_a_collar_goes_on_into_the_end_of_the_stand():
    # Down the collar end to its neck edge, which lies in the top seam of the stand, and on.
    shirt = built(
        "stand fold: top end neck\ninner fold: top end neck\ncollar fold: outer end neck",
        ("stand.top + inner.top",),
        ("collar.neck on stand.top",),
    )
    found = stretches(shirt, "collar.end", "stand.end")
    assert [names(shirt, s.segments) for s in found] == [["collar.end", "stand.end"]] * 2


def test_a_waist_goes_on_over_the_part_of_a_pocket_that_stands_for_the_hip():
    # The front is cut away at the mouth; the back of the bag is held to waist and side instead.
    trousers = built(
        """
front pair: waist mouth side hem centre
back pair: waist side hem centre
bag pair: waist mouth round
hip pair: waist side round
""",
        ("front.side + back.side", "front.mouth + bag.mouth", "bag.round + hip.round"),
        ("bag.waist on front.waist", "hip.waist on front.waist", "hip.side on front.side"),
    )
    found = stretches(trousers, "front.waist", "back.waist")
    assert [sorted(names(trousers, s.segments)) for s in found] == [
        ["back.waist", "front.waist"]
    ] * 2
    assert all("front.side + back.side" in s.junctions for s in found)


def test_straps_leave_the_ring_of_a_bag_as_it_is():
    pieces = """
outer 2: top right foot left
lining 2: top right foot left
strap 2: end long tip edge
"""
    cloth = rings(pieces)
    outer = edges(cloth, "outer.top")
    sides = [
        Glue(edges(cloth, f"outer.{one}")[0], edges(cloth, f"outer.{two}")[1], False, EntryId("s"))
        for one, two in (("right", "left"), ("left", "right"))
    ]
    held = [
        Glue(edges(cloth, f"strap.{end}")[copy], outer[copy], False, EntryId("top"))
        for copy in (0, 1)
        for end in ("end", "tip")
    ]
    for caught in ((), held):
        bag = Surface(cloth, sides, caught)
        (rim,) = find_stretches(bag, outer, lambda _one, _other: True)
        assert (rim.is_ring, rim.junctions) == (True, ("s",))


@given(glued_polygons(least=2), st.data())
def test_riders_change_neither_parts_nor_loops_nor_points(surface, data):
    segments = surface.rings.segments
    count = data.draw(st.integers(0, 4))
    held = []
    for number in range(count):
        one, other = (data.draw(st.sampled_from(segments)) for _ in range(2))
        if one != other:
            held.append(Glue(one, other, data.draw(st.booleans()), EntryId(f"r{number}")))
    ridden = Surface(surface.rings, surface.glues, held)
    assert ridden.parts == surface.parts
    assert points(ridden) == points(surface)
    assert loops(ridden) == loops(surface)


@given(glued_polygons(least=2), st.data())
def test_the_order_of_seams_and_riders_changes_no_walk(surface, data):
    segments = surface.rings.segments
    held = [
        Glue(one, other, True, EntryId("held"))
        for one, other in zip(segments[::2], segments[1::2], strict=False)
    ]
    first = Surface(surface.rings, surface.glues, held)
    mixed = Surface(
        surface.rings,
        data.draw(st.permutations(surface.glues)),
        data.draw(st.permutations(held)),
    )
    run = data.draw(st.lists(st.sampled_from(segments), unique=True, min_size=1, max_size=4))
    members = frozenset(run)
    for segment in run:
        end = EdgeEnd(segment, True)
        assert first.next_of(end, members) == mixed.next_of(end, members)


def test_of_held_layers_the_fold_lies_on_the_fold_whichever_side_is_up():
    # Yoke and inner yoke wrong sides together or one on the other: neck on neck, fold on fold.
    for text in (
        "inner fold: neck shoulder armhole lower",
        "inner fold: lower armhole shoulder neck",
    ):
        cloth = rings(f"yoke fold: neck shoulder armhole lower\n{text}")
        pairs = lay_on(cloth, edges(cloth, "inner.neck"), edges(cloth, "yoke.neck"))
        for pair in pairs:
            at_fold = cloth.across(EdgeEnd(pair.first, False)).neighbour.segment
            first_end = at_fold.piece == "inner" and cloth.name(at_fold) == "neck"
            other = EdgeEnd(pair.second, (not first_end) if pair.aligned else first_end)
            assert cloth.name(cloth.across(other).neighbour.segment) == "neck"


def test_a_bag_that_is_cut_as_a_pair_lies_side_to_side_with_its_front():
    cloth = rings("front pair: waist side hem centre\nhip pair: waist side round")
    glues = seams(cloth, "front.side + hip.side")
    assert len({glue.aligned for glue in glues}) == 1
    for pair in lay_on(cloth, edges(cloth, "hip.waist"), edges(cloth, "front.waist"), glues):
        # The waist of both runs towards the side at its end.
        assert pair.aligned
        assert cloth.name(cloth.across(EdgeEnd(pair.first, True)).neighbour.segment) == "side"
        assert cloth.name(cloth.across(EdgeEnd(pair.second, True)).neighbour.segment) == "side"


def test_of_several_copies_each_is_held_where_it_hangs():
    cloth = rings("front pair: waist mouth side hem centre\nbag pair: waist mouth round")
    crossed = [
        Glue(a, b, True, EntryId("mouths"))
        for a, b in zip(edges(cloth, "front.mouth"), edges(cloth, "bag.mouth")[::-1], strict=True)
    ]
    pairs = lay_on(cloth, edges(cloth, "bag.waist"), edges(cloth, "front.waist"), crossed)
    assert {(p.first.copy, p.second.copy) for p in pairs} == {(0, 1), (1, 0)}


@pytest.mark.parametrize("count", [1, 2])
def test_a_rider_may_lie_on_an_edge_that_bears_others(count):
    cloth = rings("outer: top right foot left\nstrap 2: end long tip edge")
    held = [
        Glue(s, edges(cloth, "outer.top")[0], False, EntryId("on"))
        for s in edges(cloth, "strap.end")
    ]
    surface = Surface(cloth, (), held[:count])
    top = edges(cloth, "outer.top")[0]
    # However many ride on it, the edge is as free as before: it bears no seam, and its loop stays.
    assert surface.glue_at(top) is None
    assert surface.parts == Surface(cloth).parts
