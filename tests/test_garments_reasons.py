"""What a sample maker would say about the shipped garments, before asking the program.

For each garment, pairs that no sound order turns round, each with the reason why, and pairs that
sound orders show both ways.
"""

from functools import cache
from pathlib import Path

import pytest
from rules.reasoning import can_precede, reasons_of_file

GARMENTS = Path(__file__).parent.parent / "garments"

ORDERED = {
    "breakwater-skirt": """
        stay-waist < side-seams            the curved waist grows as soon as it is handled
        side-seams/finish < side-seams/press   together first, then pressed to the back
        side-seams/press < hem/turn-up     a pressed seam folds flat in the hem
        neaten-back < zip                  the tapes lie on the neatened edges
        zip/coils < zip                    rolled coils keep the needle away
        zip < centre-back                  an invisible zip wants both sides open
        zip < waist                        the facing ends at the zip
        centre-back/press < hem/turn-up    likewise at the centre back
        side-seams < waist                 the waist is one edge only then
        interface < facing                 fused flat
        facing/press < waist               the waist seam crosses the facing's joins
        facing-edge < waist                the facing is ready before it is put on
        waist/press < waist/understitch    allowances lie towards the facing
        waist/understitch < facing-ends    no foot gets in once the ends are down
        waist/turn < closure               the hook goes on a finished edge
        hem/turn-up < hem                  folded, then stitched
    """,
    "night-watch-pyjamas": """
        inseams < crotch                   the crotch seam runs over the inseams
        inseams/press < crotch             and the iron no longer gets in there
        inseams/finish < crotch            nor does the overlocker
        crotch < waist/turn-up             the casing runs over the crotch seam
        crotch/press < waist/turn-up       which lies flat by then
        side-seams/press < waist/turn-up   likewise
        side-seams/press < hems/turn-up    and in the hem
        inseams/press < hems/turn-up       likewise
        waist < elastic                    there is no channel before
        elastic < elastic/join             drawn through, then joined
        elastic/join < elastic/close       the gap is the only way in
        crotch/finish < crotch/press       together first, then pressed aside
    """,
    "night-watch-pyjamas-crotch-first": """
        front-crotch < inseam              one inseam runs over both crotch seams
        back-crotch < inseam               likewise
        front-crotch/finish < inseam       its ends are caught by then
        back-crotch/press < inseam         and no longer to be pressed
        front-crotch/press < waist/turn-up flat under the fold
        side-seams/press < waist/turn-up   likewise
        side-seams/press < hems/turn-up    and in the hem
        inseam/press < hems/turn-up        likewise
        inseam/finish < inseam/press       together first, then pressed aside
        waist < elastic                    there is no channel before
        elastic/join < elastic/close       the gap is the only way in
    """,
    "rope-walk-bag": """
        seam < seam/trim                   there is nothing to trim before
        seam/trim < seam/enclose           whiskers would stick out of the second row
        seam/press-over < seam/enclose     the first row has to lie on the fold
        seam/enclose < seam/press          pressed for good at the end
        slots/turn-up < slots              folded, then stitched
        slots < slots/press                stitched, then pressed
        slots < channel/turn-up            the slot's edge ends inside the channel's mouth
        slots/press < channel/turn-up      and lies flat there
        channel/turn-up < channel          folded, then stitched
        channel < cord                     there is no channel before
    """,
}

FREE = {
    "breakwater-skirt": """
        interface - side-seams             facing and skirt are two units
        facing - zip
        facing-edge - hem
        hem - waist                        a hem need not be the last thing
        hem - facing-ends
        hem - closure
        zip - side-seams                   dress orders in print go both ways
        neaten-back - side-seams
        waist - centre-back                the waist ends at the zip, well above that seam
        stay-waist - interface
        zip/coils - stay-waist
        centre-back - facing/press
    """,
    "night-watch-pyjamas": """
        side-seams - inseams               either way makes a leg
        side-seams - crotch                they never meet
        side-seams/press - inseams/press   one trip to the iron
        side-seams/press - crotch
        side-seams/finish - inseams
        hems - crotch                      each leg may be hemmed by itself
        hems - waist                       both are in print
        hems - elastic
        hems/press - elastic/close
        crotch/press - hems/turn-up
    """,
    "night-watch-pyjamas-crotch-first": """
        front-crotch - back-crotch
        front-crotch - side-seams
        back-crotch/press - side-seams
        front-crotch/finish - back-crotch/finish
        side-seams - inseam
        side-seams/press - inseam
        inseam - waist                     the waist closes without the inseam
        inseam - elastic/close
        hems - waist
        hems/press - elastic/join
    """,
    "rope-walk-bag": """
        seam - channel                     a casing before the side seams is in print
        seam/enclose - channel/turn-up
        seam/press - channel
        seam/press-over - channel/turn-up
        seam/trim - channel
        seam - slots
        seam/enclose - slots/turn-up
        seam/press - slots
        seam/trim - slots/press
        seam/press - slots/turn-up
    """,
}


def lines(table, mark):
    for name, text in table.items():
        for line in text.strip().splitlines():
            one, rest = line.strip().split(f" {mark} ")
            yield pytest.param(name, one, rest.split()[0], id=f"{name}: {line.strip()}")


@cache
def shipped(name):
    return reasons_of_file(GARMENTS / f"{name}.yaml")


@pytest.mark.parametrize(("name", "before", "after"), list(lines(ORDERED, "<")))
def test_no_sound_order_turns_this_pair_round(name, before, after):
    _, reasons = shipped(name)
    assert can_precede(reasons, before, after)
    assert not can_precede(reasons, after, before)


@pytest.mark.parametrize(("name", "one", "other"), list(lines(FREE, "-")))
def test_sound_orders_show_this_pair_both_ways(name, one, other):
    construction, reasons = shipped(name)
    assert {one, other} <= set(construction.ids)
    assert can_precede(reasons, one, other)
    assert can_precede(reasons, other, one)


@pytest.mark.parametrize("table", [ORDERED, FREE])
def test_ten_pairs_stand_for_every_shipped_garment(table):
    assert set(table) == {path.stem for path in GARMENTS.glob("*.yaml")}
    assert all(len(text.strip().splitlines()) >= 10 for text in table.values())
