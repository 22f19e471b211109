"""One long edge along a run of several, slits, and parts of edges: where each lies on the cloth."""

import itertools
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from rules.reasoning import construction, garment

from seqplan.model.entry import Ends, Portion
from seqplan.recipes.expand import construct
from seqplan.surface.ring import EdgeEnd

SKIRT = """
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {cut: pair, edges: [waist, side, hem, centre | opening]}
  band: {cut: 1, strip: [attach, end, fold, end]}
operations:
  sides: {sew: front.side, to: back.side}
  centre: {sew: back.centre}
  band: {band: [back.waist, front.waist], with: band}
"""
BODY = """
pieces:
  front: {cut: pair, edges: [neck, shoulder, armhole, side, hem, edge]}
  yoke: {cut: fold, edges: [neck, shoulder, armhole, lower]}
  back: {cut: fold, edges: [top, armhole, side, hem]}
  sleeve: {cut: pair, edges: [cap, under-back, wrist, under-front]}
operations:
  yoke: {sew: yoke.lower, to: back.top}
  shoulders: {sew: yoke.shoulder, to: front.shoulder}
  armholes: {sew: sleeve.cap, to: [front.armhole, yoke.armhole, back.armhole]}
  sides: {sew: [front.side, sleeve.under-front], to: [back.side, sleeve.under-back]}
"""


def along(built, entry, long):
    """What each cut edge of the long piece meets, part by part; each copy or half by itself."""
    met = {}
    for glue in built.shapes[entry].glues:
        one, other = (
            (glue.first, glue.second) if glue.first.piece == long else (glue.second, glue.first)
        )
        met.setdefault((one.copy, one.half), {})[one.place] = other
    return {key: [parts[place] for place in sorted(parts)] for key, parts in sorted(met.items())}


def edge_names(built, segments):
    return [built.edge_name(segment) for segment in segments]


def test_a_waistband_begins_and_ends_at_the_opening():
    built = construction(SKIRT)
    ((_, met),) = along(built, "band", "band").items()
    assert edge_names(built, met) == ["back.waist", "front.waist", "front.waist", "back.waist"]
    assert met[0].copy != met[3].copy
    assert met[1].half != met[2].half


def test_the_parts_of_a_band_meet_a_run_without_a_leap():
    # Neighbours on the run meet over a side seam or at the fold of the front.
    built = construction(SKIRT)
    point = built.finished.point
    ((_, met),) = along(built, "band", "band").items()
    ends = [{point(EdgeEnd(segment, at_end)) for at_end in (False, True)} for segment in met]
    assert all(one & other for one, other in itertools.pairwise(ends))


def test_a_skirt_with_its_band_is_one_body_with_hem_and_opening_free():
    built = construction(SKIRT)
    (part,) = built.finished.parts
    free = sorted(sorted(set(edge_names(built, loop))) for loop in part.loops)
    assert free == [["back.hem", "front.hem"], ["back.opening", "band.end", "band.fold"]]
    assert (part.genus, part.is_two_sided) == (0, True)


def test_both_sleeves_go_in_the_right_way_round():
    # Clockwise, the cap runs from the front of the sleeve to its back.
    built = construction(BODY)
    met = along(built, "armholes", "sleeve")
    assert [edge_names(built, parts) for parts in met.values()] == [
        ["front.armhole", "yoke.armhole", "back.armhole"]
    ] * 2
    # The described half is the wearer's left of a front, and the right of a yoke and a back.
    halves = ["".join(segment.half for segment in parts) for parts in met.values()]
    assert sorted(halves) == ["abb", "baa"]


def test_a_sleeve_set_in_the_round_has_its_seam_at_the_side_and_not_at_the_shoulder():
    built = construction("""
garment: Tunic
pieces:
  front:  {cut: fold, worn: front, edges: [neck, shoulder, armhole, side, hem]}
  back:   {cut: fold, worn: back, edges: [neck, shoulder, armhole, side, hem]}
  sleeve: {cut: pair, edges: [cap, underarm-back, wrist, underarm-front]}
operations:
  shoulders: {sew: front.shoulder, to: back.shoulder}
  sides:     {sew: front.side, to: back.side}
  underarms: {sew: sleeve.underarm-front, to: sleeve.underarm-back}
  sleeves:   {sew: sleeve.cap, to: [front.armhole, back.armhole], method: in the round}
""")
    meeting = set()
    for glue in built.shapes["sleeves"].glues:
        for one, other in glue.ends:
            beside = [built.rings.across(end).neighbour.segment for end in (one, other)]
            meeting.add(frozenset(map(built.edge_name, beside)))
    assert frozenset(["sleeve.underarm-front", "front.side"]) in meeting
    assert frozenset(["sleeve.underarm-back", "back.side"]) in meeting


def test_a_shirt_with_its_sleeves_has_neck_and_hem_in_one_and_two_wrists():
    (part,) = construction(BODY).finished.parts
    assert (len(part.loops), part.genus, part.is_two_sided) == (3, 0, True)


def test_a_rib_closes_to_a_ring_on_the_neck():
    built = construction("""
pieces:
  front: {cut: fold, edges: [neck, shoulder, armhole, side, hem]}
  back: {cut: fold, edges: [neck, shoulder, armhole, side, hem]}
  rib: {cut: 1, strip: [attach, end, fold, end]}
operations:
  shoulders: {sew: front.shoulder, to: back.shoulder}
  close: {sew: rib.end}
  neck: {band: [front.neck, back.neck], with: rib, close: in one seam}
""")
    ((_, met),) = along(built, "neck", "rib").items()
    assert sorted(edge_names(built, met)) == ["back.neck", "back.neck", "front.neck", "front.neck"]
    loops = [set(edge_names(built, loop)) for part in built.finished.parts for loop in part.loops]
    assert {"rib.fold"} in loops
    assert not any("neck" in name for loop in loops for name in loop)


def test_a_cuff_runs_from_one_end_of_the_placket_to_the_other():
    built = construction("""
pieces:
  sleeve:
    cut: pair
    edges: [cap, under-back, wrist-back | wrist-front, under-front]
    slits: {slit: {at: wrist-back | wrist-front}}
  underlap: {cut: pair, strip: [attach, foot, fold, top]}
  tower: {cut: pair, strip: [attach, top, fold, foot]}
  cuff: {cut: pair, strip: [attach, end-back, fold, end-front]}
operations:
  plackets: {tower placket: sleeve.slit, with: [underlap, tower]}
  underarms: {sew: sleeve.under-front, to: sleeve.under-back}
  cuffs: {band: [underlap.foot, sleeve.wrist-back, sleeve.wrist-front, tower.foot], with: cuff}
""")
    found = [edge_names(built, parts) for parts in along(built, "cuffs", "cuff").values()]
    run = ["underlap.foot", "sleeve.wrist-back", "sleeve.wrist-front", "tower.foot"]
    assert len(found) == 2
    assert all(parts in (run, run[::-1]) for parts in found)
    assert found[0] == found[1]


def test_a_stand_cut_on_the_fold_meets_the_neck_from_its_fold_outwards():
    built = construction("""
pieces:
  front: {cut: pair, edges: [neck, shoulder, side, hem, edge]}
  back: {cut: fold, edges: [neck, shoulder, side, hem]}
  stand: {cut: fold, edges: [top, end, neck]}
operations:
  shoulders: {sew: front.shoulder, to: back.shoulder}
  neck: {sew: stand.neck, to: [front.neck, back.neck]}
""")
    found = along(built, "neck", "stand")
    # `neck` is listed from the end to the fold: the front first, then the back.
    assert [edge_names(built, parts) for parts in found.values()] == [
        ["front.neck", "back.neck"]
    ] * 2


def test_where_the_sides_do_not_go_together_nothing_is_sewn_and_it_is_told():
    built, problems = construct(
        garment("""
pieces:
  front: {cut: pair, edges: [waist, side, hem, edge]}
  back: {cut: fold, edges: [waist, side, hem]}
  band: {cut: 1, strip: [attach, end, fold, end]}
operations:
  band: {band: [front.waist, back.waist], with: band}
""")
    )
    assert built.shapes["band"].glues == ()
    assert [(problem.slug, problem.severity.value) for problem in problems] == [
        ("long-edge-differs", "warning")
    ]


@pytest.mark.parametrize("text", [SKIRT, BODY], ids=["skirt", "body"])
@given(st.data())
def test_in_whatever_order_entries_stand_long_edges_lie_where_they_lay(text, data):

    first = garment(text)
    mixed = replace(first, entries=tuple(data.draw(st.permutations(first.entries))))
    one, other = construct(first)[0], construct(mixed)[0]
    assert set(one.finished.glues) == set(other.finished.glues)
    assert one.stretches.keys() == other.stretches.keys()


SLEEVE = """
pieces:
  sleeve: {cut: pair, edges: [cap, under-back, wrist-back | wrist-front, under-front]SLITS}
operations:
  under: {sew: sleeve.under-front, to: sleeve.under-back}
  hem: {hem: [sleeve.wrist-back, sleeve.wrist-front], flat: yes}
"""


def test_a_slit_puts_two_edges_between_those_that_meet_at_its_mark():
    slits = ", slits: {slit: {at: wrist-back | wrist-front}}"
    plain = construction(SLEEVE.replace("SLITS", ""))
    cut = construction(SLEEVE.replace("SLITS", slits))
    names = [e.name for e in cut.rings.pieces["sleeve"].edges]
    assert names == [
        "cap",
        "under-back",
        "wrist-back",
        "slit",
        "slit",
        "wrist-front",
        "under-front",
    ]
    for built, wrists in ((plain, 1), (cut, 3)):
        # A slit turns the one free edge at the wrist into one that runs up and down the slit.
        (one, two) = built.finished.parts
        loops = sorted(len(loop) for loop in one.loops)
        assert loops == [1, 2 if wrists == 1 else 4]
        assert (one.genus, two.genus) == (0, 0)


def test_a_slit_in_the_middle_of_a_fold_has_one_edge_on_each_half():
    built = construction("""
pieces:
  front: {cut: fold, edges: [neck, shoulder, side, hem], slits: {slit: {at: fold | neck}}}
operations:
  cut: {slash: front.slit}
""")
    names = [e.name for e in built.rings.pieces["front"].edges]
    assert names == ["slit", "neck", "shoulder", "side", "hem"]
    assert [s.half for s in built.op["cut"].segments] == ["a", "b"]
    ((part,),) = (built.finished.parts,)
    assert (len(part.loops), part.genus) == (1, 0)


def test_part_of_an_edge_is_split_on_both_sides_of_its_seam():
    built = construction("""
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {cut: fold, edges: [waist, side, hem]}
operations:
  upper: {sew: front.side, to: back.side, part: 10 from waist}
  lower: {sew: front.side, to: back.side, stop: 10 before waist}
  neaten: {finish: front.side}
""")
    assert len(built.op["upper"].segments) == len(built.op["lower"].segments) == 4
    assert len(built.op["neaten"].segments) == 4
    assert not set(built.op["upper"].segments) & set(built.op["lower"].segments)
    assert isinstance(built.entry(built.op["upper"]).portion, Portion)
    # Sewn in two goes it is the tube that one seam makes.
    (part,) = built.finished.parts
    assert (len(part.loops), part.genus) == (2, 0)


HALVES = """
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {cut: fold, edges: [waist, side, hem]}
  upper: {cut: fold, strip: [attach, end, fold]}
  lower: {cut: fold, strip: [attach, end, fold]}
operations:
  sides: {sew: front.side, to: back.side}
  ring: {sew: upper.end, to: lower.end}
  band: {band: [front.waist, back.waist], with: [upper, lower]}
"""


def test_a_band_in_parts_lies_seam_on_seam_the_first_part_at_the_first_edge():
    built = construction(HALVES)
    met = {frozenset((g.first.piece, g.second.piece)) for g in built.shapes["band"].glues}
    assert met == {frozenset(("upper", "front")), frozenset(("lower", "back"))}
    assert all(part.is_two_sided for part in built.finished.parts)
    # Band and body are one tube, from the hem to the folds of the strips.
    assert [part.genus for part in built.finished.parts] == [0]


def test_a_band_of_two_strips_that_are_alike_is_split_at_both_sides():
    text = HALVES.replace("  lower: {cut: fold, strip: [attach, end, fold]}\n", "")
    text = text.replace("upper: {cut: fold, strip: [attach, end, fold]}", BAND_OF_TWO)
    text = text.replace("upper.end, to: lower.end", "upper.end").replace("[upper, lower]", "upper")
    met = along(construction(text), "band", "upper")
    assert sorted(len(parts) for parts in met.values()) == [2, 2]
    for parts in met.values():
        assert len({part.piece for part in parts}) == 1


BAND_OF_TWO = "upper: {cut: 2, strip: [attach, end, fold, end]}"


def test_layers_under_a_band_ride_each_on_its_own():
    text = HALVES.replace("[upper, lower]", "[upper + inside, lower]").replace(
        "operations:", "  inside: {cut: fold, edges: [attach, end, top]}\noperations:"
    )
    built = construction(text)
    riders = {(r.first.piece, r.second.piece) for r in built.shapes["band"].riders}
    assert riders == {("inside", "upper")}


def test_a_band_all_round_is_joined_by_itself():
    text = SKIRT.replace("hem, centre | opening", "hem, centre")
    ends = {built.entry(op).ends for built in [construction(text)] for op in built.of_entry["band"]}
    assert ends == {Ends.JOINED}
    assert construction(SKIRT).shapes["band"].entry.ends is None
