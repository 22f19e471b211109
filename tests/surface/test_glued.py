"""Shapes that can be counted on paper.

Beside each, the count: points - edges + discs, where a seam counts as one edge; then, for
two-sided cloth, genus = (2 - loops - count) / 2.
"""

from itertools import permutations

import networkx as nx
import pytest
from hypothesis import given
from hypothesis import strategies as st
from surface.cloth import (
    edge,
    glue,
    glued,
    glued_polygons,
    loops,
    points,
    rings,
    seams,
    sewn,
    the_part,
)

from seqplan.base.ids import EntryId
from seqplan.surface.glued import Glue, Surface
from seqplan.surface.ring import EdgeEnd

SHEET = "sheet: top right foot left"
PANELS = "a: top right foot left\nb: top right foot left"
TROUSERS = "front pair: waist side hem inseam crotch\nback pair: waist side hem inseam crotch"
BODICE = "front fold: neck shoulder armhole side hem\nback fold: neck shoulder armhole side hem"
FACED = (
    BODICE
    + """
front-facing fold: neck shoulder armhole side lower
back-facing fold: neck shoulder armhole side lower
"""
)
SHELL_CLOSED = ("front.shoulder + back.shoulder", "front.side + back.side")
FACING_CLOSED = (
    "front-facing.shoulder + back-facing.shoulder",
    "front-facing.side + back-facing.side",
)
NECK = ("front.neck + front-facing.neck", "back.neck + back-facing.neck")
ARMHOLES = ("front.armhole + front-facing.armhole", "back.armhole + back-facing.armhole")


def shape(surface):
    part = the_part(surface)
    return len(part.loops), part.genus, part.is_two_sided


def test_a_single_piece_is_a_disc():
    # 4 corners - 4 edges + 1 disc = 1; one loop; (2 - 1 - 1) / 2 = 0.
    assert shape(glued(SHEET)) == (1, 0, True)
    assert loops(glued(SHEET)) == [["sheet.foot", "sheet.left", "sheet.right", "sheet.top"]]


def test_a_piece_on_the_fold_is_one_disc_with_one_edge_all_round():
    # 6 corners (2 of them on the fold) - 6 edges + 1 = 1.
    assert shape(glued("front fold: waist side hem")) == (1, 0, True)


def test_a_rectangle_joined_at_its_sides_is_a_tube():
    # Corners meet two and two: 2 points - 3 edges (top, foot, seam) + 1 = 0; two loops.
    tube = glued(SHEET, "sheet.right = sheet.left")
    assert shape(tube) == (2, 0, True)
    assert loops(tube) == [["sheet.foot"], ["sheet.top"]]


def test_a_rectangle_joined_with_half_a_twist_has_one_side():
    # Top right meets bottom left: 2 points - 3 edges + 1 = 0; one loop; one crosscap.
    band = glued(SHEET, "sheet.right x sheet.left")
    assert shape(band) == (1, 1, False)
    assert loops(band) == [["sheet.foot", "sheet.top"]]


def test_a_tube_joined_end_to_end_is_a_ring_that_cannot_be_turned():
    # All corners meet: 1 point - 2 edges + 1 = 0; no loop; (2 - 0 - 0) / 2 = 1.
    torus = glued(SHEET, "sheet.right = sheet.left", "sheet.top = sheet.foot")
    assert shape(torus) == (0, 1, True)


def test_a_tube_joined_end_to_end_with_a_flip_has_one_side():
    # 1 point - 2 edges + 1 = 0, as above, but top and foot run the same way: two crosscaps.
    bottle = glued(SHEET, "sheet.right = sheet.left", "sheet.top x sheet.foot")
    assert shape(bottle) == (0, 2, False)


def test_two_panels_joined_on_three_sides_are_a_bag_with_one_mouth():
    # 4 points - 5 edges (3 seams, 2 tops) + 2 = 1; one loop.
    bag = glued(PANELS, "a.right = b.left", "a.left = b.right", "a.foot = b.foot")
    assert shape(bag) == (1, 0, True)
    assert loops(bag) == [["a.top", "b.top"]]


def test_two_panels_joined_all_round_are_closed():
    # 4 points - 4 seams + 2 = 2; no loop: a cushion nobody can turn or stuff.
    cushion = glued(
        PANELS, "a.right = b.left", "a.left = b.right", "a.foot = b.foot", "a.top = b.top"
    )
    assert shape(cushion) == (0, 0, True)


def test_two_round_pieces_joined_but_for_a_gap_have_one_mouth():
    # 2 points - 3 edges (seam, two sides of the gap) + 2 = 1.
    cushion = glued("a: round|gap\nb: round|gap", "a.round = b.round")
    assert shape(cushion) == (1, 0, True)
    assert loops(cushion) == [["a.gap", "b.gap"]]


def test_a_skirt_with_an_open_back_above_a_seam_has_two_loops():
    # Points: hem 3 (2 sides, centre), end of the zip 1, waist 2 at the sides + 2 at the opening
    # and 2 more on the folds of the front = 10; edges: 3 seams, front waist 2, hem 2, back waist 2,
    # hem 2, opening 2 = 13; discs 3: 10 - 13 + 3 = 0, so two loops and no handle.
    skirt = sewn(
        "front fold: waist side hem\nback pair: waist side hem centre|opening",
        "front.side + back.side",
        "back.centre",
    )
    assert shape(skirt) == (2, 0, True)
    assert loops(skirt) == [
        ["back.hem", "back.hem", "front.hem", "front.hem"],
        ["back.opening", "back.opening", "back.waist", "back.waist", "front.waist", "front.waist"],
    ]


@pytest.mark.parametrize(
    "order",
    [
        pytest.param((0, 1, 2, 3), id="legs first"),
        pytest.param((2, 3, 0, 1), id="crotch first"),
    ],
)
def test_trousers_have_a_waist_and_two_hems_however_they_are_sewn(order):
    # Points: crotch 1, waist 4, hems 4 = 9; edges: 2 side seams, 2 inseams, 2 crotch seams,
    # 4 waists, 4 hems = 14; discs 4: 9 - 14 + 4 = -1, three loops: (2 - 3 + 1) / 2 = 0.
    texts = ("front.side + back.side", "front.inseam + back.inseam", "front.crotch", "back.crotch")
    trousers = sewn(TROUSERS, *(texts[place] for place in order))
    assert shape(trousers) == (3, 0, True)
    assert loops(trousers) == [
        ["back.hem", "front.hem"],
        ["back.hem", "front.hem"],
        ["back.waist", "back.waist", "front.waist", "front.waist"],
    ]


def test_trousers_before_the_crotch_are_two_tubes():
    legs = sewn(TROUSERS, "front.side + back.side", "front.inseam + back.inseam")
    assert [(len(leg.loops), leg.genus) for leg in legs.parts] == [(2, 0), (2, 0)]


def test_a_trouser_leg_sewn_upside_down_has_one_side():
    # The inseam of one leg is sewn hem to crotch: the leg alone is a band with half a twist.
    cloth = rings(TROUSERS)
    leg = [
        glue(cloth, "front.side x back.side#1"),
        glue(cloth, "front.inseam = back.inseam#1"),
    ]
    part = next(p for p in Surface(cloth, leg).parts if len(p.discs) == 2)
    assert (len(part.loops), part.genus, part.is_two_sided) == (1, 1, False)


def test_inseams_sewn_to_the_wrong_legs_leave_other_than_three_loops():
    # Left front to right back and the other way round: the four seams of the crotch no longer
    # meet in one point, so both hems run together.
    cloth = rings(TROUSERS)
    crossed = Surface(
        cloth,
        [
            *seams(cloth, "front.side + back.side", "front.crotch", "back.crotch"),
            glue(cloth, "front.inseam = back.inseam"),
            glue(cloth, "front.inseam#1 = back.inseam#1"),
        ],
    )
    assert len(the_part(crossed).loops) != 3


SLEEVED = """
front fold: neck shoulder armhole under-front hem
back fold: neck shoulder armhole under-back hem
sleeve pair: cap-front|cap-back under-back wrist under-front
"""


def test_a_sleeve_set_into_an_armhole_leaves_neck_hem_and_two_wrists():
    # The body alone: a sphere with neck, hem and two armholes cut out. A sleeve is a tube, and
    # a tube sewn on replaces the hole by its other end.
    body = ("front.shoulder + back.shoulder", "front.under-front + back.under-back")
    dress = sewn(
        SLEEVED,
        *body,
        "sleeve.under-front + sleeve.under-back",
        "front.armhole + sleeve.cap-front",
        "back.armhole + sleeve.cap-back",
    )
    assert shape(sewn(BODICE, *SHELL_CLOSED)) == (4, 0, True)
    assert shape(dress) == (4, 0, True)
    assert loops(dress) == [
        ["back.hem", "back.hem", "front.hem", "front.hem"],
        ["back.neck", "back.neck", "front.neck", "front.neck"],
        ["sleeve.wrist"],
        ["sleeve.wrist"],
    ]


def test_a_facing_sewn_into_neck_and_armholes_of_a_closed_bodice_cannot_be_turned():
    # Shell and facing are spheres with four holes, 2 - 4 = -2 each. Sewn together along three
    # whole rings (each counts 0): -4. Free are hem and lower edge: (2 - 2 + 4) / 2 = 2.
    bodice = sewn(FACED, *SHELL_CLOSED, *FACING_CLOSED, *NECK, *ARMHOLES)
    assert shape(bodice) == (2, 2, True)


def test_each_ring_left_open_takes_a_handle_away():
    # One armhole open: still -4, but its two edges are free as well: (2 - 4 + 4) / 2 = 1.
    cloth = rings(FACED)
    glues = seams(cloth, *SHELL_CLOSED, *FACING_CLOSED, *NECK, *ARMHOLES)
    left = {edge(cloth, "front.armhole"), edge(cloth, "back.armhole#1")}
    one_open = Surface(cloth, [g for g in glues if g.first not in left])
    assert shape(one_open) == (4, 1, True)
    assert shape(sewn(FACED, *SHELL_CLOSED, *FACING_CLOSED, *NECK)) == (6, 0, True)


def test_open_sides_are_not_enough_where_neither_front_nor_back_opens():
    # Front and back are two pockets, joined by two shoulder straps that are tubes: walking out
    # by one strap and home by the other goes round a handle.
    closed_centre = sewn(FACED, SHELL_CLOSED[0], FACING_CLOSED[0], *NECK, *ARMHOLES)
    assert shape(closed_centre) == (2, 1, True)


def test_open_sides_are_enough_where_the_back_opens():
    # Two back pockets, each on a strap of its own: nothing goes round.
    opened = "\n".join(
        f"{line} centre".replace("back fold", "back pair").replace("facing fold", "facing pair")
        if line.startswith("back")
        else line
        for line in FACED.splitlines()
    )
    bodice = sewn(opened, SHELL_CLOSED[0], FACING_CLOSED[0], *NECK, *ARMHOLES)
    assert the_part(bodice).genus == 0


def test_shoulders_left_open_are_enough():
    bodice = sewn(FACED, SHELL_CLOSED[1], FACING_CLOSED[1], *NECK, *ARMHOLES)
    assert the_part(bodice).genus == 0


def test_right_side_on_wrong_side_is_no_twist_while_nothing_closes_a_ring():
    # A flipped panel can be turned over; only a ring has to come back to the side it left by.
    flipped = glued(PANELS, "a.right x b.left")
    assert not flipped.glues[0].keeps_sides
    assert shape(flipped) == (1, 0, True)
    twice = glued(PANELS, "a.right x b.left", "a.left x b.right")
    assert shape(twice) == (2, 0, True)
    once = glued(PANELS, "a.right x b.left", "a.left = b.right")
    assert shape(once) == (1, 1, False)


def test_mirrored_halves_go_on_with_the_same_side_up_where_starts_meet():
    cloth = rings("back pair: top centre\nfront fold: top side")
    assert glue(cloth, "back.centre x back.centre#1").keeps_sides
    assert not glue(cloth, "back.centre = back.centre#1").keeps_sides
    assert glue(cloth, "front.side = back.centre").keeps_sides


def test_an_edge_bears_one_seam():
    with pytest.raises(ValueError, match="bears a seam already"):
        glued(PANELS, "a.right = b.left", "a.right = b.right")
    with pytest.raises(ValueError, match="cannot be glued to itself"):
        glued(PANELS, "a.right = a.right")


def test_a_fan_tells_the_seams_it_crosses():
    bag = glued(PANELS, "a.right = b.left", "a.foot = b.foot")
    start = EdgeEnd(edge(bag.rings, "a.top"), True)
    reached, crossed = bag.fan(start, lambda _: False)
    assert reached == EdgeEnd(edge(bag.rings, "b.top"), False)
    assert crossed == ["a.right = b.left"]


def test_a_fan_that_closes_comes_back_to_where_it_began():
    # The apex of a paper cone: one corner whose two edges are sewn together.
    cone = glued("slice: left right arc", "slice.left = slice.right")
    end = EdgeEnd(edge(cone.rings, "slice.left"), True)
    assert cone.fan(end, lambda _: False)[0] == end


# -- laws ------------------------------------------------------------------------------------


def walks(cloth):
    """Each disc as a clockwise walk: edges with the end at which the walk enters them."""
    found = {}
    for piece in cloth.pieces.values():
        halves = {}
        for segment in piece.segments():
            halves.setdefault((segment.copy, segment.half), []).append(segment)
        for (copy, half), listed in halves.items():
            steps = (
                [(s, False) for s in listed] if half == "a" else [(s, True) for s in listed[::-1]]
            )
            found.setdefault((piece.id, copy), []).extend(steps)
    return found


def corners(cloth):
    """The corner that each edge end lies at, as a node of its own."""
    at = {}
    for disc, steps in walks(cloth).items():
        for place, (segment, enters_at_end) in enumerate(steps):
            at[EdgeEnd(segment, enters_at_end)] = (disc, place)
            at[EdgeEnd(segment, not enters_at_end)] = (disc, (place + 1) % len(steps))
    return at


def met_ends(glues):
    for seam in glues:
        yield EdgeEnd(seam.first, False), EdgeEnd(seam.second, not seam.aligned)
        yield EdgeEnd(seam.first, True), EdgeEnd(seam.second, seam.aligned)


def points_of(surface):
    graph = nx.Graph()
    at = corners(surface.rings)
    graph.add_nodes_from(at.values())
    graph.add_edges_from((at[one], at[other]) for one, other in met_ends(surface.glues))
    return list(nx.connected_components(graph)), at


def loops_of(surface):
    """Free edges that hang together: at each corner fan, the two ends that are left over."""
    fans = nx.Graph()
    for steps in walks(surface.rings).values():
        for place, (segment, enters_at_end) in enumerate(steps):
            before, entered = steps[place - 1]
            fans.add_edge(("out", before, not entered), ("in", segment, enters_at_end))
    # An end takes part in its corner only; the seam carries the fan on to the next corner.
    ends = {}
    for _, segment, at_end in fans:
        ends[segment, at_end] = next(n for n in fans if n[1:] == (segment, at_end))
    for one, other in met_ends(surface.glues):
        fans.add_edge(ends[one.segment, one.at_end], ends[other.segment, other.at_end])
    glued_edges = {e for seam in surface.glues for e in (seam.first, seam.second)}
    free = nx.Graph()
    free.add_nodes_from(s for s in surface.rings.segments if s not in glued_edges)
    for fan in nx.connected_components(fans):
        meeting = [segment for _, segment, _ in fan if segment not in glued_edges]
        free.add_edges_from((meeting[0], other) for other in meeting[1:])
    return {frozenset(loop) for loop in nx.connected_components(free)}


def two_sided_of(surface, discs):
    """Whether no walk over the seams leads from the right side to the wrong side."""
    way = {s: at_end for steps in walks(surface.rings).values() for s, at_end in steps}
    sides = nx.Graph()
    sides.add_nodes_from((disc, side) for disc in discs for side in (True, False))
    for seam in surface.glues:
        one, other = surface.rings.disc(seam.first), surface.rings.disc(seam.second)
        starts_meet_in_walking = seam.aligned == (way[seam.first] == way[seam.second])
        for side in (True, False):
            sides.add_edge((one, side), (other, side != starts_meet_in_walking))
    return not any(nx.has_path(sides, (disc, True), (disc, False)) for disc in discs)


def handles(part):
    return 2 * part.genus if part.is_two_sided else part.genus


@given(glued_polygons())
def test_every_edge_end_lies_at_exactly_one_point(surface):
    components, at = points_of(surface)
    number = {corner: place for place, found in enumerate(components) for corner in found}
    ours = {}
    for end in at:
        ours.setdefault(surface.point(end), set()).add(number[at[end]])
    assert all(len(found) == 1 for found in ours.values())
    assert len(ours) == len(components)


@given(glued_polygons())
def test_each_free_edge_lies_in_exactly_one_loop(surface):
    found = [segment for part in surface.parts for loop in part.loops for segment in loop]
    assert len(found) == len(set(found))
    assert set(found) == {s for s in surface.rings.segments if surface.glue_at(s) is None}
    assert {frozenset(loop) for part in surface.parts for loop in part.loops} == loops_of(surface)


@given(glued_polygons())
def test_genus_agrees_with_an_independent_count(surface):
    components, _ = points_of(surface)
    parts = nx.Graph()
    parts.add_nodes_from(surface.rings.disc(s) for s in surface.rings.segments)
    parts.add_edges_from(
        (surface.rings.disc(seam.first), surface.rings.disc(seam.second)) for seam in surface.glues
    )
    assert {part.discs for part in surface.parts} == set(
        map(frozenset, nx.connected_components(parts))
    )
    for part in surface.parts:
        count = sum(1 for point in components if any(disc in part.discs for disc, _ in point))
        count -= sum(1 for s in surface.rings.segments if surface.rings.disc(s) in part.discs)
        count += sum(1 for seam in surface.glues if surface.rings.disc(seam.first) in part.discs)
        count += len(part.discs)
        assert part.is_two_sided == two_sided_of(surface, part.discs)
        assert handles(part) == 2 - len(part.loops) - count
        assert part.genus >= 0
        assert part.is_two_sided or part.genus >= 1


@given(glued_polygons(least_free=2, least=2), st.data(), st.booleans())
def test_a_seam_between_two_parts_merges_them_and_adds_no_handle(surface, data, aligned):
    whole = [part for part in surface.parts if part.loops]
    if len(whole) < 2:
        return
    one, other = data.draw(st.permutations(whole))[:2]
    first = data.draw(st.sampled_from([s for loop in one.loops for s in loop]))
    second = data.draw(st.sampled_from([s for loop in other.loops for s in loop]))
    seam = Glue(first, second, aligned, EntryId("new"))
    merged = Surface(surface.rings, [*surface.glues, seam])
    assert len(merged.parts) == len(surface.parts) - 1
    part = next(p for p in merged.parts if p.discs == one.discs | other.discs)
    assert handles(part) == handles(one) + handles(other)
    assert part.is_two_sided == (one.is_two_sided and other.is_two_sided)


@given(glued_polygons(), st.randoms(use_true_random=False))
def test_neither_the_order_of_seams_nor_of_their_sides_matters(surface, random):
    mixed = [
        Glue(g.second, g.first, g.aligned, g.entry) if random.random() < 0.5 else g
        for g in surface.glues
    ]
    random.shuffle(mixed)
    again = Surface(surface.rings, mixed)
    assert again.parts == surface.parts
    assert points(again) == points(surface)


def test_trousers_come_out_the_same_in_every_order_of_their_seams():
    cloth = rings(TROUSERS)
    glues = seams(cloth, "front.side + back.side", "front.crotch", "back.crotch")
    parts = {Surface(cloth, order).parts for order in permutations(glues)}
    assert len(parts) == 1


@given(glued_polygons(), st.data())
def test_seams_may_be_taken_out_and_sewn_again(surface, data):
    some = data.draw(st.lists(st.sampled_from(surface.glues), unique=True)) if surface.glues else []
    fewer = surface.without_seams(some)
    assert fewer.parts == Surface(surface.rings, set(surface.glues) - set(some)).parts
    again = fewer.with_seams(some)
    assert (again.glues, again.parts) == (surface.glues, surface.parts)
    assert points(again) == points(surface)
