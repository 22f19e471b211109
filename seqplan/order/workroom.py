"""What changes of set-up cost in a workroom."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from seqplan.base.ids import OpId
from seqplan.model.workroom import Machine, Needs, Workroom
from seqplan.order.changes import Changes, Track, shortest


def changes_in(workroom: Workroom, needs: Mapping[OpId, Needs]) -> Changes:
    """Price orders for one person in a workroom.

    Going to another machine costs its set-up minutes and the way there, or a way past others where
    that is shorter; the first machine is free. What is mounted on a
    machine stays there while one works elsewhere, so a foot, a colour, a needle or a stitch costs
    its minutes only when another was on that machine before.

    Parameters
    ----------
    workroom
        The machines.
    needs
        What every operation needs.

    Returns
    -------
    Changes
        In minutes, or whatever unit the machines are described in.

    Raises
    ------
    NoMachineError
        A station is needed that the workroom does not have.
    """
    at = {operation: workroom.machine_for(each.station) for operation, each in needs.items()}
    minutes = {machine.name: machine.setup_minutes for machine in workroom.machines}
    going = Track.entering({operation: each.name for operation, each in at.items()}, minutes)
    tracks = [_with_ways(going, list(minutes), workroom.ways) if workroom.ways else going]
    for machine in dict.fromkeys(at.values()):
        here = {operation: needs[operation] for operation, each in at.items() if each == machine}
        tracks += _mounting(machine, here)
    return Changes(tuple(tracks))


def _with_ways(going: Track, names: Sequence[str], ways: Mapping[tuple[str, str], int]) -> Track:
    """Add what the ways take. One may walk past another machine, so the shortest way counts.

    The minutes of getting a machine ready are paid where one stops, not where one walks past.
    """
    way = shortest(tuple(tuple(ways.get((a, b), 0) for b in names) for a in names))
    place = [names.index(str(state)) for state in going.states]
    costs = tuple(
        tuple(price + way[a][b] for b, price in zip(place, row, strict=True))
        for a, row in zip(place, going.costs, strict=True)
    )
    return replace(going, costs=costs)


def _mounting(machine: Machine, needs: Mapping[OpId, Needs]) -> list[Track]:
    """Price what is changed on one machine; what never has to be changed is left out."""
    tracks = []
    for side, minutes in machine.sides:
        wanted = {
            operation: getattr(each, side)
            for operation, each in needs.items()
            if getattr(each, side)
        }
        track = Track.even(wanted, minutes, getattr(machine.mounted, side) or None)
        if minutes and len(track.states) > 1:
            tracks.append(track)
    return tracks
