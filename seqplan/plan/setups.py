"""What has to be mounted and set for an operation, and what changing it takes."""

from collections.abc import Sequence

from seqplan.model.operation import Action, Operation
from seqplan.model.station import STANDARD_FOOT
from seqplan.model.workroom import USUAL, Needs
from seqplan.recipes.construction import Construction
from seqplan.recipes.recipe import MAIN

_STITCHES = {
    Action.BASTE: "long",
    Action.GATHER: "long",
    Action.BUTTONHOLE: "buttonhole",
    Action.TOPSTITCH: "topstitch",
}
"""Stitches that are set for an operation; everything else is sewn straight, of usual length."""


def needs_of(c: Construction, op: Operation) -> Needs:
    """What has to be mounted and set for an operation."""
    station = c.garment.station[op.setup.station]
    own = c.entry(op).setting if op.part == MAIN else None
    usual = _STITCHES.get(op.action, "straight") if op.setup.foot else ""
    return Needs(
        station.id,
        op.setup.foot,
        colour=op.setup.thread or (USUAL if station.thread_minutes else ""),
        needle=op.setup.needle or (USUAL if station.needle_minutes else ""),
        stitch=own or usual,
    )


def change_minutes(c: Construction, ops: Sequence[Operation]) -> int:
    """Add up what the changes of set-up take, in minutes.

    Going to another station costs that station's minutes. A foot, a thread, a needle stay on their
    machine until another is wanted there; every machine starts with its standard foot and what the
    garment is sewn with. The first set-up costs only what is changed on it.
    """
    mounted: dict[str, tuple[str, str, str]] = {}
    here = ops[0].setup.station if ops else ""
    minutes = 0
    for op in ops:
        station = c.garment.station[op.setup.station]
        if station.id != here:
            minutes += station.minutes
            here = station.id
        before = mounted.get(station.id, (STANDARD_FOOT, "", ""))
        after = (op.setup.foot or before[0], op.setup.thread, op.setup.needle)
        prices = (station.foot_minutes, station.thread_minutes, station.needle_minutes)
        minutes += sum(
            price for one, other, price in zip(before, after, prices, strict=True) if one != other
        )
        mounted[station.id] = after
    return minutes
