"""The rehearsal judges the reasons, and the reasons the rehearsal: neither stands by itself."""

import random

import pytest
from garments.shipped import GARMENTS
from tools.random_orders import random_order

from seqplan.base.strength import Strength
from seqplan.pipeline import open_garment
from seqplan.rehearse.trouble import tell_trouble
from seqplan.rehearse.walk import rehearse

MISSES = {
    "made-up-before-caught": (
        "a collar, strap or tab can still be pressed or topstitched, less well, once it is caught"
    ),
    "pocket-in-order": (
        "a mouth can be hemmed after the sides are pressed, bags tidied while the seam is open to"
        " the inside; the corners of a welt are stitched before or after the bag"
    ),
    "band-in-order": "a band can be pressed after its ends are closed, a strip before the slash",
    "fly-in-order": "the topstitching of a fly goes before the shield as well, kept clear of it",
    "gap-closed-after-turning": "a seam with a gap may wait until the rest is turned",
    "crossing-seams-before-hem": "a hem creased flat is opened, and stitched after the seam",
    "centred-zip-after-seam-below": "the opening may be basted before the seam below it is sewn",
    "own-seam-in-order": "the author's own order of pressing and topstitching",
    "finish-before-covered": "both edges may be finished as one after the facing is sewn on",
    "seam-before-its-tidying": "an edge that the author presses by itself may be creased flat",
    "there-before-fastened": (
        "belt loops may be sewn down on the outer half of a band before it is closed; the ends of"
        " their rows lie inside it then, and the band is pressed over lumps"
    ),
    "layers-held-before-sewn": "a facing is topstitched through, or after, what holds it",
}
"""Musts that the cloth does not enforce, and what one would do; the work is worse for it."""


def musts():
    """Every pair that a must orders, with the order in which the first comes just too late."""
    for path in GARMENTS:
        opened = open_garment(path)
        c = opened.construction
        for reason in opened.reasons:
            if reason.strength is Strength.MUST and not reason.is_either_or:
                for arc in reason.alternatives[0]:
                    yield c, reason.rule, arc


def swapped(order, arc):
    """Both orders in which two operations change places with as little else as can be."""
    late = [op for op in order if op != arc.before]
    late.insert(late.index(arc.after) + 1, arc.before)
    early = [op for op in order if op != arc.after]
    early.insert(early.index(arc.before), arc.after)
    return late, early


def test_the_cloth_catches_almost_every_must_that_is_turned_round():
    caught, missed = 0, {}
    for c, rule, arc in musts():
        if all(not rehearse(c, order).is_clean for order in swapped(c.ids, arc)):
            caught += 1
        else:
            missed.setdefault(str(rule), []).append(arc)
    count = caught + sum(map(len, missed.values()))
    print(f"{caught} of {count} musts caught by the rehearsal alone")  # noqa: T201
    assert missed.keys() <= MISSES.keys()
    assert caught >= 0.92 * count


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_random_sound_orders_rehearse_clean(path):
    opened = open_garment(path)
    c = opened.construction
    held = [r for r in opened.binding.held if r.strength is not Strength.PREFER]
    chance = random.Random(path.stem)
    drawn = (random_order(c.ids, held, chance) for _ in range(20))
    for order in filter(None, drawn):
        found = rehearse(c, order)
        assert (found.troubles, found.debts) == ((), ())


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_every_order_that_is_planned_rehearses_clean(path):
    opened = open_garment(path)
    for plan in (opened.planner.booklet(), opened.planner.batch(), opened.planner.repair()):
        found = rehearse(opened.construction, plan.order)
        assert (found.troubles, found.debts) == ((), ())


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_whatever_the_order_what_stands_in_the_way_is_named(path):
    c = open_garment(path).construction
    chance = random.Random(path.stem)
    for _ in range(30):
        found = rehearse(c, chance.sample(c.ids, len(c.ids)))
        for trouble in (*found.troubles, *found.debts):
            done = found.order[: found.reached]
            assert trouble.blame is None or trouble.blame in done
            assert trouble.missing is None or trouble.missing not in done
            assert "None" not in tell_trouble(trouble)
