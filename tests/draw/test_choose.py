"""Which pictures a step is shown with."""

from functools import cache
from itertools import pairwise

import pytest
from draw.looking import Seen
from rules.reasoning import construction
from tell.sampler import OTHER_WAYS, SHIPPED, built, planned

from seqplan.draw.choose import choose_pictures
from seqplan.draw.svg import svg
from seqplan.model.operation import Action

ALL = (*SHIPPED, *OTHER_WAYS)
each = pytest.mark.parametrize("name", ALL)


@cache
def shown(name):
    """The steps of the booklet, each with its pictures."""
    steps = [step for group in planned(name).booklet().groups for step in group.steps]
    found = choose_pictures(built(name), [[op.id for op in step.operations] for step in steps])
    return tuple(zip(steps, found, strict=True))


def titles(text, *steps):
    c = construction(text)
    groups = [[op.id for op in c.operations if op.entry in step] for step in steps]
    return [[figure.title for figure in one.figures] for one in choose_pictures(c, groups)]


@each
def test_every_step_has_a_picture_or_a_reason_why_not(name):
    for step, found in shown(name):
        assert bool(found.figures) != bool(found.why_none), step.entry


@each
def test_words_stand_on_the_canvas_and_apart_from_one_another(name):
    for step, found in shown(name):
        for figure in found.figures:
            picture = Seen(svg(figure))
            assert all(picture.canvas.holds(box) for _, box in picture.words()), step.entry
            assert not picture.overlapping(), step.entry


@each
def test_only_what_shows_nothing_goes_without(name):
    silent = {
        Action.PRETREAT,
        Action.WAIT,
        Action.OPEN,
        Action.SEND_OUT,
        Action.FIT,
        Action.INSPECT,
    }
    for step, found in shown(name):
        if not found.figures:
            assert {op.action for op in step.operations} <= silent, step.entry


@each
def test_pictures_of_a_step_are_few_and_differ(name):
    for step, found in shown(name):
        looks = [figure.marks for figure in found.figures]
        assert len(looks) <= 5, step.entry
        assert all(one not in looks[:place] for place, one in enumerate(looks)), step.entry


@each
def test_nothing_is_shown_again_beside_something_new(name):
    for (_, before), (step, found) in pairwise(shown(name)):
        seen = [figure.marks for figure in before.figures]
        again = [figure.marks in seen for figure in found.figures]
        assert not any(again) or all(again), step.entry


SKIRT = """
garment: Quay skirt
allowance: 1.5
pieces:
  front: {cut: fold, worn: front, edges: [waist, side, hem], spots: [place]}
  back:  {cut: fold, worn: back, edges: [waist, side, hem]}
  patch: {cut: 1, edges: [mouth, side, foot, side]}
notions: {elastic: {kind: elastic}}
operations:
  wash:   {pretreat: all}
  cut:    {cut: all}
  patch:  {patch pocket: patch, at: front.place, open: mouth}
  sides:  {sew: front.side, to: back.side, as: finished together}
  waist:  {casing: [front.waist, back.waist], depth: 3, gap: 4}
  pull:   {insert: elastic, in: waist}
  hem:    {hem: [front.hem, back.hem], depth: 2}
"""


def test_each_step_shows_what_it_needs():
    steps = [["wash"], ["cut"], ["patch"], ["sides"], ["waist"], ["pull"], ["hem"]]
    found = [[t.rpartition(": ")[2] for t in one] for one in titles(SKIRT, *steps)]
    assert found == [
        [],
        ["all pieces laid flat"],
        ["on the piece", "cut across"],
        ["how the layers lie", "the unit in hand", "cut across"],
        ["cut across", "the unit in hand"],
        ["cut across", "the unit in hand", "the unit in hand"],
        ["the unit in hand", "cut across"],
    ]


def test_a_seam_that_closes_no_tube_is_not_shown_in_hand():
    one_side = SKIRT.replace("sew: front.side", "sew: front.side@left").replace(
        "to: back.side", "to: back.side@left"
    )
    (found,) = titles(one_side, ["sides"])
    assert not any(title.endswith("the unit in hand") for title in found)


def test_both_strips_of_a_placket_are_shown():
    text = """
garment: Cuff
pieces:
  sleeve:
    cut: pair
    edges: [cap, side, wrist-back | wrist-front, under]
    slits: {slit: {at: wrist-back | wrist-front}}
  under:  {cut: pair, strip: [attach, foot, fold, top]}
  tower:  {cut: pair, strip: [attach, top, fold, foot]}
operations:
  placket: {tower placket: sleeve.slit, with: [under, tower]}
"""
    c = construction(text)
    (found,) = choose_pictures(c, [c.ids])
    told = " ".join(figure.words for figure in found.figures)
    assert "under, wrong side up" in told
    assert "tower, wrong side up" in told
