from rules.reasoning import construction

from seqplan.model.operation import Action
from seqplan.model.piece import Segment

SKIRT = """
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {cut: pair, edges: [waist, side, hem, centre | opening]}
notions: {zip: {kind: zip}}
operations:
  sides: {sew: front.side, to: back.side, as: French}
  centre: {sew: back.centre}
  zip: {insert: zip, in: back.opening}
  hem: {hem: [back.hem, front.hem]}
  label: {do: write a label}
"""


def ids(operations):
    return [op.id for op in operations]


def test_an_entry_lays_hold_of_its_edges_with_the_first_operation_that_goes_from_end_to_end():
    built = construction(SKIRT)
    assert [built.opening(e).id for e in ("sides", "zip", "hem", "label")] == [
        "sides",
        "zip/baste",
        "hem/turn-up",
        "label",
    ]


def test_a_seam_holds_for_good_with_its_last_stitching():
    built = construction(SKIRT)
    assert [built.closing(e).id for e in ("sides", "centre", "hem")] == [
        "sides/enclose",
        "centre",
        "hem",
    ]


def test_the_main_operation_bears_the_name_of_its_entry():
    built = construction(SKIRT)
    assert [built.main(entry).id for entry in built.garment.entry] == list(built.garment.entry)


def test_operations_are_found_by_what_they_do_and_where():
    built = construction(SKIRT)
    assert ids(built.acting(Action.SEW, Action.HEM)) == ["sides", "centre", "hem"]
    assert ids(built.doing("sides", Action.PRESS)) == ["sides/press"]
    assert ids(built.on_pieces(frozenset({"front"}), Action.SEW)) == ["sides"]
    assert ids(built.meeting(built.op["zip"], Action.BASTE, Action.SEW)) == ["zip/baste"]


def test_an_edge_knows_the_entry_that_sews_it():
    built = construction(SKIRT)
    side, hem = Segment("back", 0, "a", 1), Segment("back", 0, "a", 2)
    assert (built.seam_at(side), built.seam_at(hem)) == ("sides", None)
    assert built.seams_at([side, hem, Segment("back", 1, "b", 3)]) == ("sides", "centre")
    assert built.edge_name(hem) == "back.hem"


def test_a_single_name_of_a_pair_is_two_stretches_and_in_one_is_one():
    text = """
pieces:
  front: {cut: pair, edges: [waist, side, hem, inseam, crotch]}
  back: {cut: pair, edges: [waist, side, hem, inseam, crotch]}
operations:
  front-crotch: {sew: front.crotch}
  back-crotch: {sew: back.crotch}
  inseam: {sew: front.inseam, to: back.inseam MORE}
"""
    apart = construction(text.replace(" MORE", "")).stretches["inseam"]
    in_one = construction(text.replace(" MORE", ", in one: yes")).stretches["inseam"]
    # Both sides of the seam count: two copies of two edges, and joined in one, two long runs.
    assert [len(s.segments) for s in apart] == [1, 1, 1, 1]
    assert [len(s.segments) for s in in_one] == [2, 2]


def test_the_two_sides_of_a_seam_never_follow_one_another():
    text = """
pieces:
  front: {cut: fold, edges: [neck, shoulder, armhole, side-front, hem]}
  back: {cut: fold, edges: [neck, shoulder, armhole, side-back, hem]}
  sleeve: {cut: pair, edges: [cap-front | cap-back, side-back, wrist, side-front]}
operations:
  sides: {sew: front.side-front, to: back.side-back}
  underarms: {sew: sleeve.side-front, to: sleeve.side-back}
  armholes: {sew: [front.armhole, back.armhole], to: [sleeve.cap-front, sleeve.cap-back]}
"""
    assert [s.junctions for s in construction(text).stretches["underarms"]] == [()] * 4
