from hypothesis import given
from surface.cloth import edge, polygons, rings

from seqplan.surface.ring import EdgeEnd


def neighbours(cloth, text):
    here = edge(cloth, text)
    return [cloth.across(EdgeEnd(here, at_end)) for at_end in (False, True)]


def test_the_edges_of_a_single_piece_follow_one_another_round():
    cloth = rings("sheet: top right foot left")
    before, after = neighbours(cloth, "sheet.top")
    assert before.neighbour == EdgeEnd(edge(cloth, "sheet.left"), True)
    assert after.neighbour == EdgeEnd(edge(cloth, "sheet.right"), False)


def test_a_lone_edge_meets_itself():
    cloth = rings("round: rim")
    before, _ = neighbours(cloth, "round.rim")
    assert before.neighbour == EdgeEnd(edge(cloth, "round.rim"), True)


def test_half_a_ring_meets_its_mirror_image_straight_on_at_the_fold():
    cloth = rings("front fold: waist side hem")
    before, _ = neighbours(cloth, "front.waist")
    _, after = neighbours(cloth, "front.hem#1")
    assert (before.neighbour, before.is_straight) == (
        EdgeEnd(edge(cloth, "front.waist#1"), False),
        True,
    )
    assert (after.neighbour, after.is_straight) == (EdgeEnd(edge(cloth, "front.hem"), True), True)


def test_edges_that_meet_at_a_mark_go_straight_on_and_edges_at_a_corner_do_not():
    cloth = rings("back pair: waist side hem centre|opening")
    at_hem, at_mark = neighbours(cloth, "back.centre")
    assert (at_hem.is_straight, at_mark.is_straight) == (False, True)


def test_both_halves_of_a_fold_are_one_disc_and_two_copies_of_a_pair_are_two():
    cloth = rings("front fold: waist\nback pair: waist")
    assert cloth.disc(edge(cloth, "front.waist")) == cloth.disc(edge(cloth, "front.waist#1"))
    assert cloth.disc(edge(cloth, "back.waist")) != cloth.disc(edge(cloth, "back.waist#1"))


def test_a_piece_without_edges_takes_no_part():
    assert rings("patch:\nsheet: top").segments == (edge(rings("sheet: top"), "sheet.top"),)


@given(polygons())
def test_crossing_a_corner_and_back_leads_home(cloth):
    for segment in cloth.segments:
        for at_end in (False, True):
            end = EdgeEnd(segment, at_end)
            there = cloth.across(end)
            back = cloth.across(there.neighbour)
            assert (back.neighbour, back.is_straight) == (end, there.is_straight)
