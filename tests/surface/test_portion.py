from fractions import Fraction

import pytest
from surface.cloth import piece

from seqplan.base.measure import Length
from seqplan.model.entry import Portion
from seqplan.surface.portion import SplitPiece, is_clear

SIDE = piece("back pair: waist side hem centre")


def part(mm, neighbour):
    return Portion(Length(Fraction(mm)), neighbour, True)


def stop(mm, neighbour):
    return Portion(Length(Fraction(mm)), neighbour, False)


def written(split):
    """The edges of the split piece, with ``|`` where they meet at a mark."""
    return " ".join(("|" if e.at_mark else "") + e.name for e in split.piece.edges)


def test_a_part_from_one_end_splits_the_edge_at_a_mark():
    split = SplitPiece(SIDE, {"side": [part(100, "waist")]})
    assert written(split) == "waist side |side hem centre"
    assert split.indices("side", part(100, "waist")) == {1}
    assert split.indices("side") == {1, 2}
    assert split.indices("hem") == {3}


def test_a_part_from_the_far_end_is_the_last_of_the_split():
    split = SplitPiece(SIDE, {"side": [part(100, "hem")]})
    assert split.indices("side", part(100, "hem")) == {2}


def test_stopping_before_an_end_means_all_but_that_part():
    split = SplitPiece(SIDE, {"side": [stop(100, "waist")]})
    assert split.indices("side", stop(100, "waist")) == {2}
    assert split.indices("side", part(100, "waist")) == {1}


def test_parts_from_both_ends_leave_three():
    both = [part(100, "waist"), stop(50, "hem")]
    split = SplitPiece(SIDE, {"side": both})
    assert written(split) == "waist side |side |side hem centre"
    assert split.indices("side", both[0]) == {1}
    assert split.indices("side", both[1]) == {1, 2}


def test_two_marks_from_one_end_are_in_the_order_of_their_lengths():
    both = [part(200, "waist"), part(100, "waist")]
    split = SplitPiece(SIDE, {"side": both})
    assert split.indices("side", both[1]) == {1}
    assert split.indices("side", both[0]) == {1, 2}
    far = [part(200, "hem"), part(100, "hem")]
    split = SplitPiece(SIDE, {"side": far})
    assert split.indices("side", far[1]) == {3}
    assert split.indices("side", far[0]) == {2, 3}


def test_one_mark_named_by_two_entries_splits_once():
    split = SplitPiece(SIDE, {"side": [part(100, "waist"), stop(100, "waist")]})
    assert written(split) == "waist side |side hem centre"


def test_on_a_fold_an_edge_is_measured_from_its_one_neighbour():
    front = piece("front fold: neck shoulder hem")
    split = SplitPiece(front, {"neck": [part(30, "shoulder")]})
    assert written(split) == "neck |neck shoulder hem"
    assert split.indices("neck", part(30, "shoulder")) == {1}


def test_edges_of_one_name_are_each_measured_from_the_same_neighbour():
    panel = piece("panel 2: top side foot side")
    split = SplitPiece(panel, {"side": [part(60, "top")]})
    assert written(split) == "top side |side foot side |side"
    assert split.indices("side", part(60, "top")) == {1, 5}


def test_marks_that_were_there_stay():
    back = piece("back pair: waist side hem centre|opening")
    split = SplitPiece(back, {"opening": [part(10, "waist")]})
    assert written(split) == "waist side hem centre |opening |opening"


@pytest.mark.parametrize(
    ("text", "name", "neighbour", "clear"),
    [
        ("back pair: waist side hem centre", "side", "waist", True),
        ("back pair: waist side hem centre", "side", "centre", False),
        ("panel: top side foot side", "foot", "side", False),
        ("panel: top side foot side", "side", "top", True),
        ("front fold: neck shoulder hem", "neck", "shoulder", True),
        ("front fold: neck shoulder hem", "neck", "hem", False),
        ("front fold: neck shoulder hem", "hem", "neck", False),
        ("sheet: neck shoulder hem", "neck", "hem", True),
    ],
)
def test_a_part_is_clear_where_the_edge_meets_the_neighbour_at_one_end(
    text, name, neighbour, clear
):
    assert is_clear(piece(text), name, part(10, neighbour)) is clear
