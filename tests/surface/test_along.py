"""One long edge along a run of several."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from surface.cloth import edges, glued_polygons, names, rings, seams

from seqplan.surface.along import broken_at, parts_wanted, readings_along, walk_of
from seqplan.surface.glued import Glue, Surface
from seqplan.surface.ring import EdgeEnd
from seqplan.surface.stretch import find_stretches

SKIRT = "front fold: waist side hem\nback pair: waist side hem centre"


def anything(_one, _other):
    return True


def stretches(surface, *run):
    segments = [s for name in run for s in edges(surface.rings, name)]
    return find_stretches(surface, segments, anything)


def sewn(text, *texts):
    cloth = rings(text)
    return Surface(cloth, seams(cloth, *texts))


def test_a_walk_says_which_way_each_edge_is_gone():
    # Every waist is listed from centre or fold to side: outwards with the list, inwards against.
    skirt = sewn(SKIRT, "front.side + back.side")
    (waist,) = stretches(skirt, "back.waist", "front.waist")
    walk = walk_of(waist)
    assert names(skirt, [w.segment for w in walk]) == [
        "back.waist",
        "front.waist",
        "front.waist",
        "back.waist",
    ]
    assert [w.is_forward for w in walk] == [True, False, True, False]


@given(glued_polygons(), st.data())
def test_a_walk_goes_from_end_to_start_of_the_next(surface, data):
    run = data.draw(st.lists(st.sampled_from(surface.rings.segments), unique=True, min_size=1))
    for stretch in find_stretches(surface, run, anything):
        walk = walk_of(stretch)
        for here, there, link in zip(walk, walk[1:], stretch.links, strict=False):
            left = EdgeEnd(here.segment, here.is_forward)
            entered = EdgeEnd(there.segment, not there.is_forward)
            assert set(link.ends) == {left, entered}


def test_a_ring_is_broken_where_the_rank_is_least():
    skirt = sewn(SKIRT, "front.side + back.side", "back.centre")
    (waist,) = stretches(skirt, "back.waist", "front.waist")
    assert waist.is_ring
    open_ = broken_at(waist, lambda link: 0 if "back.centre" in link.junctions else 1)
    assert not open_.is_ring
    assert names(skirt, open_.segments) == [
        "back.waist",
        "front.waist",
        "front.waist",
        "back.waist",
    ]
    assert open_.junctions == ("front.side + back.side",)
    assert {skirt.rings.name(skirt.rings.across(tip).neighbour.segment) for tip in open_.tips} == {
        "centre"
    }


def test_what_is_no_ring_stays_as_it_is():
    skirt = sewn(SKIRT, "front.side + back.side")
    (waist,) = stretches(skirt, "back.waist", "front.waist")
    assert broken_at(waist, lambda _link: 0) is waist


def test_one_edge_round_a_circle_is_broken_at_its_own_ends():
    circle = sewn("round: rim")
    (rim,) = stretches(circle, "round.rim")
    broken = broken_at(rim, lambda _link: 0)
    assert (broken.is_ring, broken.links, len(broken.segments)) == (False, (), 1)
    assert set(broken.tips) == {
        EdgeEnd(broken.segments[0], False),
        EdgeEnd(broken.segments[0], True),
    }


@pytest.mark.parametrize(
    ("pieces", "long", "wanted"),
    [
        ("band: attach end fold end", "band.attach", 4),
        ("band fold: attach end fold", "band.attach", 2),
        ("band pair: attach end fold end", "band.attach", None),
    ],
    ids=["one band", "a band on the fold", "two bands for one waist"],
)
def test_a_long_edge_is_split_into_as_many_parts_as_its_run_has(pieces, long, wanted):
    skirt = sewn(f"{SKIRT}\n{pieces}", "front.side + back.side")
    assert (
        parts_wanted(stretches(skirt, long), stretches(skirt, "back.waist", "front.waist"))
        == wanted
    )


def test_a_run_that_is_not_joined_yet_wants_no_parts():
    skirt = sewn(f"{SKIRT}\nband: attach end fold end")
    runs = stretches(skirt, "back.waist", "front.waist")
    assert len(runs) == 3
    assert parts_wanted(stretches(skirt, "band.attach"), runs) is None


def test_unlike_runs_want_no_parts():
    pieces = "front pair: waist side hem\nback: waist side hem\nband pair: attach end fold end"
    cloth = rings(pieces)
    first, second = edges(cloth, "front.side")
    surface = Surface(cloth, [Glue(first, edges(cloth, "back.side")[0], True, "side")])
    runs = stretches(surface, "front.waist", "back.waist")
    assert second not in {s for run in runs for s in run.segments}
    assert parts_wanted(stretches(surface, "band.attach"), runs) is None


def test_right_sides_together_there_is_one_way_and_for_a_folded_strip_the_other_too():
    cloth = rings("skirt: waist side hem side\nband: attach end fold end")
    surface = Surface(cloth)
    long, runs = stretches(surface, "band.attach"), stretches(surface, "skirt.waist")
    (only,) = readings_along(long, runs, may_turn=False)
    assert [pair.aligned for pair in only] == [False]
    both = readings_along(long, runs, may_turn=True)
    assert [[pair.aligned for pair in pairing] for pairing in both] == [[False], [True]]


def test_parts_meet_the_run_one_after_the_other():
    skirt = sewn(
        f"{SKIRT}\nband: attach|attach|attach|attach end fold end", "front.side + back.side"
    )
    long = stretches(skirt, "band.attach")
    for pairing in readings_along(
        long, stretches(skirt, "back.waist", "front.waist"), may_turn=True
    ):
        parts = sorted(pairing, key=lambda pair: pair.first.place)
        assert names(skirt, [p.second for p in parts]) == [
            "back.waist",
            "front.waist",
            "front.waist",
            "back.waist",
        ]
        assert len({p.second for p in parts}) == 4
