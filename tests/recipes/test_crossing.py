"""Which seams a run needs closed, and where entries cross, for the ways in which garments go."""

import pytest
from rules.reasoning import construction

TROUSERS = """
pieces:
  front: {cut: pair, edges: [waist, side, hem, inseam, crotch]}
  back: {cut: pair, edges: [waist, side, hem, inseam, crotch]}
operations:
  sides: {sew: front.side, to: back.side}
  waist: {casing: [front.waist, back.waist]}
  hems: {hem: [front.hem, back.hem]}
"""
LEGS_FIRST = (
    TROUSERS
    + """
  inseams: {sew: front.inseam, to: back.inseam}
  crotch: {sew: [front.crotch, back.crotch]}
"""
)
CROTCH_FIRST = (
    TROUSERS
    + """
  front-crotch: {sew: front.crotch}
  back-crotch: {sew: back.crotch}
  inseam: {sew: front.inseam, to: back.inseam, in one: yes}
"""
)
RING = """
pieces:
  left: {edges: [top, right, foot, left]}
  middle: {edges: [top, right, foot, left]}
  right: {edges: [top, right, foot, left]}
  band: {edges: [top, end, foot, start]}
  band-2: {edges: [top, end, foot, start]}
  band-3: {edges: [top, end, foot, start]}
operations:
  one: {sew: left.right, to: middle.left}
  two: {sew: middle.right, to: right.left}
  three: {sew: right.right, to: left.left}
  round:
    sew: [left.top, middle.top, right.top]
    to: [band.top, band-2.top, band-3.top]
    MORE
"""
SHIRT = """
pieces:
  front: {cut: fold, edges: [neck, shoulder, armhole, side-front, hem]}
  back: {cut: fold, edges: [neck, shoulder, armhole, side-back, hem]}
  sleeve: {cut: pair, edges: [cap-front | cap-back, side-back, wrist, side-front]}
operations:
  shoulders: {sew: front.shoulder, to: back.shoulder}
"""
FLAT_SLEEVE = (
    SHIRT
    + """
  armholes: {sew: [front.armhole, back.armhole], to: [sleeve.cap-front, sleeve.cap-back]}
  sides: {sew: [front.side-front, sleeve.side-front], to: [back.side-back, sleeve.side-back]}
"""
)
ROUND_SLEEVE = (
    SHIRT
    + """
  sides: {sew: front.side-front, to: back.side-back}
  underarms: {sew: sleeve.side-front, to: sleeve.side-back}
  armholes:
    sew: [front.armhole, back.armhole]
    to: [sleeve.cap-front, sleeve.cap-back]
    method: in the round
"""
)


def demand(text, entry):
    """What a run needs, as (always, [links of a ring, one of which may be open], [flat links])."""
    found = construction(text).meetings.demands[entry]

    def rings(many):
        return [sorted(" ".join(sorted(link)) for link in links) for links in many]

    return sorted(found.always), rings(found.all_but_one), rings(found.one_open)


def crossings(text):
    """Crossings as ``over across under`` or ``one meets other``."""
    return {
        f"{c.over} {'across' if c.runs_across else 'meets'} {c.under}"
        for c in construction(text).meetings.crossings
    }


@pytest.mark.parametrize(
    ("more", "wanted"),
    [
        ("", ([], [["one", "three", "two"]], [])),
        ("open: two", (["one", "three"], [], [])),
        ("method: in the round", (["one", "three", "two"], [], [])),
    ],
    ids=["any one open", "one named as open", "in the round"],
)
def test_a_ring_that_is_joined_needs_all_seams_but_one(more, wanted):
    assert demand(RING.replace("MORE", more), "round") == wanted


def test_a_ring_over_one_seam_needs_none():
    text = """
pieces:
  cuff: {edges: [top, end, foot, start]}
  band: {edges: [top, end, foot, start]}
operations:
  close: {sew: cuff.end, to: cuff.start}
  band: {sew: band.end, to: band.start}
  round: {sew: cuff.top, to: band.top}
"""
    assert demand(text, "round") == ([], [], [])
    round_text = text.replace("to: band.top", "to: band.top, method: in the round")
    assert demand(round_text, "round") == (["band", "close"], [], [])


def test_two_side_seams_in_one_entry_are_two_seams_of_the_ring():
    text = """
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {cut: fold, edges: [waist, side, hem]}
  skirt: {cut: fold, edges: [waist, side, hem]}
  skirt-back: {cut: fold, edges: [waist, side, hem]}
operations:
  sides: {sew: front.side, to: back.side}
  skirt-sides: {sew: skirt.side, to: skirt-back.side}
  waist: {sew: [front.waist, back.waist], to: [skirt.waist, skirt-back.waist]}
"""
    assert demand(text, "waist") == (["sides", "skirt-sides"], [], [])


def test_a_chain_needs_every_seam_that_it_runs_over():
    text = """
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {cut: pair, edges: [waist, side, hem, opening]}
  facing: {cut: fold, edges: [waist, end, lower]}
  back-facing: {cut: pair, edges: [waist, end, lower, tip]}
operations:
  sides: {sew: front.side, to: back.side}
  ends: {sew: facing.end, to: back-facing.end}
  waist: {sew: [front.waist, back.waist], to: [facing.waist, back-facing.waist]}
"""
    assert demand(text, "waist") == (["ends", "sides"], [], [])
    assert crossings(text) == {"waist across ends", "waist across sides"}


def test_a_hem_goes_all_round_unless_it_is_flat():
    round_ = [["inseams", "sides"]]
    assert demand(LEGS_FIRST, "hems") == (["inseams", "sides"], [], [])
    flat = LEGS_FIRST.replace("hem: [front.hem, back.hem]", "hem: [front.hem, back.hem], flat: yes")
    assert demand(flat, "hems") == ([], [], round_ * 2)


def test_a_flat_hem_that_is_no_ring_needs_nothing():
    text = """
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {cut: pair, edges: [waist, side, hem, centre]}
operations:
  sides: {sew: front.side, to: back.side}
  hem: {hem: [front.hem, back.hem], flat: yes}
"""
    assert demand(text, "hem") == ([], [], [])
    assert demand(text.replace(", flat: yes", ""), "hem") == (["sides"], [], [])


def test_legs_first_the_crotch_runs_over_the_inseams():
    assert demand(LEGS_FIRST, "crotch") == (["inseams"], [], [])
    assert demand(LEGS_FIRST, "inseams") == ([], [], [])
    assert demand(LEGS_FIRST, "waist") == (["crotch", "sides"], [], [])
    assert crossings(LEGS_FIRST) == {
        "crotch across inseams",
        "hems across inseams",
        "hems across sides",
        "waist across crotch",
        "waist across sides",
    }


def test_crotch_first_the_inseam_runs_over_both_crotch_seams():
    assert demand(CROTCH_FIRST, "inseam") == (["back-crotch", "front-crotch"], [], [])
    assert demand(CROTCH_FIRST, "front-crotch") == ([], [], [])
    assert demand(CROTCH_FIRST, "waist") == (["back-crotch", "front-crotch", "sides"], [], [])
    assert "inseam across front-crotch" in crossings(CROTCH_FIRST)


def test_where_nobody_says_which_runs_over_which_the_seams_of_a_crotch_only_meet():
    text = CROTCH_FIRST.replace(", in one: yes", "")
    assert demand(text, "inseam") == ([], [], [])
    assert {c for c in crossings(text) if "inseam" in c and "hems" not in c} == {
        "back-crotch meets inseam",
        "front-crotch meets inseam",
    }


def test_a_flat_sleeve_goes_in_while_shoulder_or_side_is_open_and_the_side_seam_runs_over_it():
    armhole = ["shoulders", "sides"]
    assert demand(FLAT_SLEEVE, "armholes") == ([], [armhole, armhole], [])
    assert demand(FLAT_SLEEVE, "sides") == (["armholes"], [], [])
    assert crossings(FLAT_SLEEVE) == {
        "armholes across shoulders",
        "armholes across sides",
        "sides across armholes",
    }


def test_a_sleeve_in_the_round_needs_its_armhole_and_itself_closed():
    assert demand(ROUND_SLEEVE, "armholes") == (["shoulders", "sides", "underarms"], [], [])
    assert demand(ROUND_SLEEVE, "underarms") == ([], [], [])
    assert demand(ROUND_SLEEVE, "sides") == ([], [], [])
    assert crossings(ROUND_SLEEVE) == {
        "armholes across shoulders",
        "armholes across sides",
        "armholes across underarms",
    }


def sleeve_by_other_names(text, cap):
    """Name the underarm as sewists do, so that no corner of sleeve and body has one name."""
    for piece in ("front", "back"):
        text = text.replace(f"{piece}.side-{piece}", f"{piece}.side")
        text = text.replace(f"armhole, side-{piece}", "armhole, side")
    return text.replace("cap-front | cap-back, side-back, wrist, side-front", cap)


@pytest.mark.parametrize(
    "cap",
    [
        pytest.param(
            "cap-front | cap-back, side-back, wrist, side-front",
            id="left sleeve described",
        ),
        pytest.param(
            "cap-back | cap-front, side-front, wrist, side-back",
            id="right sleeve described",
        ),
    ],
)
def test_a_sleeve_goes_into_its_armhole_the_right_way_up_whatever_its_edges_are_called(cap):
    text = sleeve_by_other_names(FLAT_SLEEVE, cap)
    (shirt,) = construction(text).finished.parts
    assert (len(shirt.loops), shirt.genus) == (4, 0)
    assert demand(text, "sides") == (["armholes"], [], [])


@pytest.mark.parametrize("text", [FLAT_SLEEVE, ROUND_SLEEVE], ids=["flat", "in the round"])
def test_a_body_with_two_sleeves_has_four_openings(text):
    (shirt,) = construction(text).finished.parts
    assert (len(shirt.loops), shirt.genus, shirt.is_two_sided) == (4, 0, True)


@pytest.mark.parametrize("text", [LEGS_FIRST, CROTCH_FIRST], ids=["legs first", "crotch first"])
def test_trousers_have_three_openings(text):
    (trousers,) = construction(text).finished.parts
    assert (len(trousers.loops), trousers.genus) == (3, 0)


def test_a_seam_that_begins_at_the_mark_where_another_ends_does_not_cross_it():
    text = """
pieces:
  bag: {cut: 2, edges: [top, slot | side, foot, side | slot]}
operations:
  seam: {sew: [bag.side, bag.foot], to: bag}
  slots: {hem: bag.slot}
  channel: {casing: bag.top}
"""
    assert crossings(text) == {"channel meets slots"}


def test_the_entries_of_one_entry_do_not_cross_themselves():
    text = """
pieces:
  panel: {cut: 2, edges: [top, side, foot, side]}
operations:
  seam: {sew: [panel.side, panel.foot], to: panel}
"""
    assert crossings(text) == set()
    assert demand(text, "seam") == ([], [], [])
