import pytest
from surface.cloth import edges, piece, rings

from seqplan.base.ids import PieceId
from seqplan.surface.glued import Glue, Surface
from seqplan.surface.pairing import UnpairableError, pair_two_sides, pair_with_itself
from seqplan.surface.ring import EdgeEnd, Rings

FRONT = "front fold: waist side hem"
BACK = "back pair: waist side hem centre|opening"


def two_sides(cloth, one, other):
    return pair_two_sides(cloth, edges(cloth, one), edges(cloth, other))


def halves(pairs):
    return {(p.first.half + p.second.half, p.aligned) for p in pairs}


def meeting(cloth, pair):
    """The names that meet at both ends of a seam, first side first."""
    return [
        tuple(
            cloth.name(cloth.across(end).neighbour.segment)
            for end in (
                EdgeEnd(pair.first, at_end),
                EdgeEnd(pair.second, at_end == pair.aligned),
            )
        )
        for at_end in (False, True)
    ]


def test_a_front_side_is_sewn_to_a_back_side_waist_to_waist_and_left_to_left():
    # Seen from its right side, a front with its fold at the left is the wearer's left half, a
    # back the wearer's right; so left to left is described to mirrored.
    cloth = rings(f"{FRONT}\n{BACK}")
    pairs = two_sides(cloth, "front.side", "back.side")
    assert halves(pairs) == {("ab", True), ("ba", True)}
    assert all(meeting(cloth, pair) == [("waist", "waist"), ("hem", "hem")] for pair in pairs)


def test_princess_panels_listed_the_other_way_round_meet_waist_to_waist():
    # The middle panel has its seam at the right, the side panel at the left: clockwise, one runs
    # down and the other up, so like halves meet and the listed starts do not.
    cloth = rings("middle fold: waist seam hem\npanel pair: waist side hem seam")
    pairs = two_sides(cloth, "middle.seam", "panel.seam")
    assert halves(pairs) == {("aa", False), ("bb", False)}
    assert all(meeting(cloth, pair) == [("waist", "waist"), ("hem", "hem")] for pair in pairs)


def test_a_sleeve_is_closed_front_to_back_on_the_same_copy():
    cloth = rings("sleeve pair: cap under-back wrist under-front")
    pairs = two_sides(cloth, "sleeve.under-front", "sleeve.under-back")
    assert {(p.first.copy, p.second.copy) for p in pairs} == {(0, 0), (1, 1)}
    assert halves(pairs) == {("aa", False), ("bb", False)}
    assert all(
        sorted(meeting(cloth, pair)) == [("cap", "cap"), ("wrist", "wrist")] for pair in pairs
    )


def test_a_panel_is_sewn_to_its_like_edge_by_edge_from_top_to_top():
    # Laid right sides together, the left edge of one lies on the right edge of the other.
    cloth = rings("panel 2: top side foot side")
    ours = edges(cloth, "panel.side")
    first, second = ours[:2], ours[2:]
    pairs = pair_two_sides(cloth, first, second)
    assert {(p.first.place, p.second.place) for p in pairs} == {(1, 3), (3, 1)}
    assert all(sorted(meeting(cloth, pair)) == [("foot", "foot"), ("top", "top")] for pair in pairs)


def test_a_piece_like_another_is_its_mirror_image_and_meets_it_edge_on_edge():
    yoke = piece("yoke: neck shoulder lower armhole")
    under = piece("under: neck shoulder lower armhole", like=PieceId("yoke"))
    cloth = Rings([yoke, under])
    (pair,) = two_sides(cloth, "yoke.neck", "under.neck")
    assert (pair.first.half, pair.second.half, pair.aligned) == ("a", "b", True)


def test_a_facing_is_sewn_to_the_shell_shoulder_to_shoulder():
    cloth = rings("front fold: neck shoulder hem\nfacing fold: neck shoulder lower")
    pairs = two_sides(cloth, "front.neck", "facing.neck")
    assert halves(pairs) == {("ab", True), ("ba", True)}
    ends = [end for pair in pairs for end in meeting(cloth, pair)]
    assert ends.count(("shoulder", "shoulder")) == 2


def test_corners_that_agree_weigh_more_than_left_to_left():
    cloth = rings("one fold: waist seam hem\nother fold: hem seam waist")
    pairs = two_sides(cloth, "one.seam", "other.seam")
    assert halves(pairs) == {("aa", False), ("bb", False)}


def test_the_copies_of_a_pair_are_joined_left_to_right():
    cloth = rings(BACK)
    (pair,) = pair_with_itself(cloth, edges(cloth, "back.centre"))
    assert (pair.first.half, pair.second.half, pair.aligned) == ("a", "b", True)


def test_two_copies_alike_are_joined_end_to_start():
    cloth = rings("panel 2: top side foot slit")
    (pair,) = pair_with_itself(cloth, edges(cloth, "panel.side"))
    assert (pair.first.copy, pair.second.copy, pair.aligned) == (0, 1, False)


def test_two_edges_of_one_name_on_one_piece_close_a_tube():
    cloth = rings("cuff: top end foot end")
    (pair,) = pair_with_itself(cloth, edges(cloth, "cuff.end"))
    assert (pair.first.place, pair.second.place, pair.aligned) == (1, 3, False)


@pytest.mark.parametrize("count", [2, 3, 4])
def test_strips_that_are_alike_close_to_a_ring_end_to_start(count):
    cloth = rings(f"band {count}: attach end fold end")
    pairs = pair_with_itself(cloth, edges(cloth, "band.end"))
    glues = [Glue(p.first, p.second, p.aligned, "ring") for p in pairs]
    (part,) = Surface(cloth, glues).parts
    assert sorted(len(loop) for loop in part.loops) == [count, count]
    assert {len({cloth.name(s) for s in loop}) for loop in part.loops} == {1}


@pytest.mark.parametrize(
    ("pieces", "name", "key"),
    [
        ("back: centre side", "back.centre", "nothing-to-join"),
        ("panel 3: top side", "panel.side", "odd-copies"),
        ("panel 4: top side", "panel.side", "which-copies"),
    ],
)
def test_what_can_be_read_in_more_than_one_way_or_in_none_is_refused(pieces, name, key):
    cloth = rings(pieces)
    with pytest.raises(UnpairableError, match=key):
        pair_with_itself(cloth, edges(cloth, name))


def test_sides_with_unlike_numbers_of_copies_are_refused():
    cloth = rings("front fold: waist side hem\nback: waist side hem")
    with pytest.raises(UnpairableError, match="copies-differ") as caught:
        two_sides(cloth, "front.side", "back.side")
    assert caught.value.key == "copies-differ"


def test_every_edge_is_paired_once():
    cloth = rings("front fold: waist side hem\nback pair: waist side hem")
    pairs = two_sides(cloth, "front.side", "back.side")
    paired = [segment for pair in pairs for segment in (pair.first, pair.second)]
    assert sorted(paired) == sorted(edges(cloth, "front.side") + edges(cloth, "back.side"))
