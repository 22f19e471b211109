from hypothesis import given
from hypothesis import strategies as st
from surface.cloth import edge, edges, glued_polygons, names, sewn

from seqplan.surface.stretch import find_stretches

SKIRT = "front fold: waist side hem\nback pair: waist side hem centre|opening"
TROUSERS = "front pair: waist side hem inseam crotch\nback pair: waist side hem inseam crotch"


def stretches(surface, *texts, may_follow=lambda one, other: True):
    run = [segment for text in texts for segment in edges(surface.rings, text)]
    return find_stretches(surface, run, may_follow)


def test_a_waist_runs_from_the_opening_over_both_sides_to_the_opening():
    # opening | back - side seam - front (fold) front - side seam - back | opening
    skirt = sewn(SKIRT, "front.side + back.side", "back.centre")
    (waist,) = stretches(skirt, "back.waist", "front.waist")
    assert names(skirt, waist.segments) == [
        "back.waist",
        "front.waist",
        "front.waist",
        "back.waist",
    ]
    assert not waist.is_ring
    assert waist.junctions == ("front.side + back.side",)
    assert [link.junctions for link in waist.links] == [
        ("front.side + back.side",),
        (),
        ("front.side + back.side",),
    ]
    assert {names(skirt, [skirt.rings.across(tip).neighbour.segment])[0] for tip in waist.tips} == {
        "back.opening"
    }


def test_a_hem_closes_into_a_ring_over_the_side_seams_and_the_centre():
    skirt = sewn(SKIRT, "front.side + back.side", "back.centre")
    (hem,) = stretches(skirt, "back.hem", "front.hem")
    assert hem.is_ring
    assert set(hem.junctions) == {"front.side + back.side", "back.centre"}
    assert len(hem.links) == len(hem.segments) == 4
    assert hem.tips == ()


def test_the_same_hem_is_a_chain_while_the_centre_is_open():
    skirt = sewn(SKIRT, "front.side + back.side")
    (hem,) = stretches(skirt, "back.hem", "front.hem")
    assert not hem.is_ring
    assert hem.junctions == ("front.side + back.side",)


def test_before_any_seam_every_piece_has_a_stretch_of_its_own():
    found = stretches(sewn(SKIRT), "back.hem", "front.hem")
    # Two backs, and the front, whose halves go on over the fold without a seam.
    assert [len(stretch.segments) for stretch in found] == [1, 1, 2]
    assert [stretch.junctions for stretch in found] == [(), (), ()]


def test_the_hems_of_trousers_are_two_rings():
    trousers = sewn(
        TROUSERS,
        "front.side + back.side",
        "front.inseam + back.inseam",
        "front.crotch",
        "back.crotch",
    )
    hems = stretches(trousers, "front.hem", "back.hem")
    assert [(hem.is_ring, len(hem.segments)) for hem in hems] == [(True, 2), (True, 2)]
    assert all(
        set(hem.junctions) == {"front.side + back.side", "front.inseam + back.inseam"}
        for hem in hems
    )


def test_a_crotch_is_one_stretch_over_both_inseams():
    legs = sewn(TROUSERS, "front.side + back.side", "front.inseam + back.inseam")
    found = stretches(legs, "front.crotch", "back.crotch")
    # As long as the crotch itself is not sewn, each leg has its own half of it.
    assert [sorted(names(legs, s.segments)) for s in found] == [["back.crotch", "front.crotch"]] * 2
    assert [s.junctions for s in found] == [("front.inseam + back.inseam",)] * 2


def test_an_edge_all_round_one_piece_is_a_ring_without_seams():
    (rim,) = stretches(sewn("round: rim|rest"), "round.rim", "round.rest")
    assert (rim.is_ring, rim.junctions, len(rim.segments)) == (True, (), 2)


def test_a_piece_with_one_edge_only_closes_upon_itself():
    (rim,) = stretches(sewn("round: rim"), "round.rim")
    assert (rim.is_ring, len(rim.links)) == (True, 1)


def test_a_cuff_closed_by_its_own_ends_is_a_ring_over_one_seam():
    cuff = sewn("cuff: top end foot end", "cuff.end")
    (top,) = stretches(cuff, "cuff.top")
    assert (top.is_ring, top.junctions) == (True, ("cuff.end",))


def test_the_two_sides_of_a_slit_are_two_stretches():
    # The seam below goes straight on as both edges of the slit: the walk from one to the other
    # turns round the end of the seam, and no needle does.
    bag = sewn("a: top slot|side foot\nb: top foot side|slot", "a.side + b.side")
    found = stretches(bag, "a.slot", "b.slot")
    assert [(len(s.segments), s.is_ring, s.junctions) for s in found] == [(1, False, ())] * 2


def test_edges_that_meet_at_a_corner_at_the_end_of_a_seam_do_go_on_into_one_another():
    # The same seam, but it ends in a corner on both sides: a vent's hem turns that corner.
    bag = sewn("a: top slot side foot\nb: top foot side slot", "a.side + b.side")
    (slot,) = stretches(bag, "a.slot", "b.slot")
    assert slot.junctions == ("a.side + b.side",)


def test_two_edges_of_one_piece_go_round_the_corner():
    (run,) = stretches(sewn("sheet: top right foot left"), "sheet.top", "sheet.right")
    assert names(sewn("sheet: top right foot left"), run.segments) == [
        "sheet.top",
        "sheet.right",
    ]
    assert run.links[0].junctions == ()


def test_edges_that_are_no_neighbours_are_separate_stretches():
    found = stretches(sewn("sheet: top right foot left"), "sheet.top", "sheet.foot")
    assert len(found) == 2


def test_both_halves_of_a_fold_are_one_stretch():
    (waist,) = stretches(sewn("front fold: waist side hem"), "front.waist")
    assert len(waist.segments) == 2
    assert not waist.is_ring


def test_what_may_not_follow_stays_apart():
    skirt = sewn(SKIRT, "front.side + back.side", "back.centre")
    found = stretches(
        skirt, "back.hem", "front.hem", may_follow=lambda one, other: one.piece == other.piece
    )
    assert len(found) == 2
    assert edge(skirt.rings, "front.hem") in {s for f in found for s in f.segments}


def test_a_run_over_edges_that_are_sewn_already_comes_to_an_end():
    # A trimming names one edge of each seam; round the crotch point the walk crosses a seam onto
    # an edge of the run, which walked from there goes the other way.
    trousers = sewn(
        TROUSERS,
        "front.side + back.side",
        "front.inseam + back.inseam",
        "front.crotch",
        "back.crotch",
    )
    found = stretches(trousers, "front.side", "front.inseam", "front.crotch", "back.crotch")
    assert sorted(s for stretch in found for s in stretch.segments) == sorted(
        s
        for text in ("front.side", "front.inseam", "front.crotch", "back.crotch")
        for s in edges(trousers.rings, text)
    )


@given(glued_polygons(), st.data())
def test_stretches_share_out_the_edges_of_any_run(surface, data):
    run = data.draw(st.permutations(surface.rings.segments))
    run = run[: data.draw(st.integers(0, len(run)))]
    found = find_stretches(surface, run, lambda one, other: True)
    assert sorted(s for stretch in found for s in stretch.segments) == sorted(run)
    for stretch in found:
        assert len(stretch.links) == len(stretch.segments) - (not stretch.is_ring)
        assert len(stretch.tips) == (0 if stretch.is_ring else 2)
