"""What a picture of the dependencies shows: lanes, operations, reasons, the longest chain."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum
from itertools import pairwise

from seqplan.base.ids import OpId
from seqplan.graph.precedence import Precedence
from seqplan.graph.reason import Arc, Reason, by_arc
from seqplan.model.operation import Operation
from seqplan.plan.unit import Unit, find_units
from seqplan.recipes.construction import Construction


class Lanes(Enum):
    """What the lanes of a chart stand for."""

    UNIT = "unit"
    STATION = "station"


@dataclass(frozen=True, slots=True)
class Lane:
    """Operations drawn together: those of one unit, or those done at one station.

    ``unit`` is set in lanes by unit, ``station`` in lanes by station.
    """

    operations: tuple[Operation, ...]
    unit: Unit = frozenset()
    station: str = ""


@dataclass(frozen=True, slots=True)
class ChartLink:
    """One operation before another, with the reasons that say so, the strongest first."""

    arc: Arc
    reasons: tuple[Reason, ...]
    on_longest_chain: bool


@dataclass(frozen=True, slots=True)
class Chart:
    """Everything that a picture of the dependencies shows.

    Parameters
    ----------
    lanes
        The operations, lane by lane, each once.
    links
        The transitive reduction of all plain reasons.
    choices
        The either-ors that plain reasons leave open: which alternatives there are.
    longest_chain
        The operations of the longest chain, in order.
    """

    lanes: tuple[Lane, ...]
    links: tuple[ChartLink, ...]
    choices: tuple[Reason, ...]
    longest_chain: tuple[OpId, ...]


def make_chart(c: Construction, reasons: Iterable[Reason], lanes: Lanes) -> Chart:
    """Make the chart of a garment.

    Parameters
    ----------
    c
        The garment.
    reasons
        The reasons that bind. They must admit an order.
    lanes
        Lanes by unit or by station.
    """
    held = tuple(reasons)
    plain = [reason for reason in held if not reason.is_either_or]
    precedence = Precedence.of(
        c.ids, (arc for reason in plain for bundle in reason.alternatives for arc in bundle)
    )
    chain = precedence.longest_chain()
    on_chain = {Arc(a, b) for a, b in pairwise(chain)}
    grounds = by_arc(plain)
    links = tuple(
        ChartLink(arc, grounds[arc], arc in on_chain)
        for arc in sorted(precedence.transitive_reduction())
    )
    open_choices = (
        reason for reason in held if reason.is_either_or and not precedence.grants(reason)
    )
    drawn = _by_unit(c, held) if lanes is Lanes.UNIT else _by_station(c)
    return Chart(drawn, links, tuple(open_choices), chain)


def _by_unit(c: Construction, reasons: Iterable[Reason]) -> tuple[Lane, ...]:
    units = find_units(c, reasons)
    lanes: dict[Unit, list[Operation]] = {}
    for op in c.operations:
        lanes.setdefault(units[op.id], []).append(op)
    return tuple(Lane(tuple(ops), unit=unit) for unit, ops in lanes.items())


def _by_station(c: Construction) -> tuple[Lane, ...]:
    lanes: dict[str, list[Operation]] = {station.id: [] for station in c.garment.stations}
    for op in c.operations:
        lanes[op.setup.station].append(op)
    return tuple(Lane(tuple(ops), station=id_) for id_, ops in lanes.items() if ops)
