"""A workroom: one's own machines, and what it takes to get each ready."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import NamedTuple

from seqplan.model.station import DEFAULT_STATIONS, STANDARD_FOOT, Station


class Needs(NamedTuple):
    """What an operation needs: a station and what has to be mounted or set there.

    Empty where it does not matter; whatever is there is then left as it is.

    Parameters
    ----------
    station
        The kind of station, or a machine by its own name.
    foot
        The presser foot.
    colour
        The colour of the thread.
    needle
        The needle, by its kind and size.
    stitch
        The stitch, with its length and width where they matter.
    """

    station: str
    foot: str = ""
    colour: str = ""
    needle: str = ""
    stitch: str = ""


NOTHING = Needs("")

USUAL = "usual"
"""The thread and the needle that a garment is sewn with, whatever they are."""


@dataclass(frozen=True, slots=True)
class Machine:
    """A machine, an iron, a place at the table.

    All minutes are whole numbers, or all whole numbers of some other unit of time.

    Parameters
    ----------
    name
        What the people who work there call it.
    station
        What kind of station it is.
    count
        How many of the same there are. One person works at one of them, so the price of an order
        does not depend on it; a second one that stays set up otherwise is a machine of its own.
    setup_minutes
        To go there and get ready.
    foot_minutes, colour_minutes, needle_minutes, stitch_minutes
        To change the foot, to thread another colour, to change the needle, to set another stitch.
    mounted
        What is on it to begin with; what is empty is there when it is first needed.
    """

    name: str
    station: str
    count: int = 1
    setup_minutes: int = 0
    foot_minutes: int = 0
    colour_minutes: int = 0
    needle_minutes: int = 0
    stitch_minutes: int = 0
    mounted: Needs = NOTHING

    @property
    def sides(self) -> tuple[tuple[str, int], ...]:
        """What can be changed on it, by the names in `Needs`, and the minutes for each."""
        return (
            ("foot", self.foot_minutes),
            ("colour", self.colour_minutes),
            ("needle", self.needle_minutes),
            ("stitch", self.stitch_minutes),
        )


class NoMachineError(ValueError):
    """A station is needed that the workroom does not have; ``station`` names it."""

    def __init__(self, station: str) -> None:
        super().__init__(f"the workroom has no machine for {station!r}")
        self.station = station


@dataclass(frozen=True)
class Workroom:
    """One's own machines.

    Parameters
    ----------
    machines
        Each with a name of its own. Of several for one kind of station the first serves it, unless
        another is asked for by its name.
    ways
        Minutes from one machine to another, by their names, in addition to getting that one ready;
        what is not named costs nothing.

    Raises
    ------
    ValueError
        Two machines have the same name, or a number is negative, or a count is 0; or a way leads
        from or to no machine.
    """

    machines: tuple[Machine, ...]
    ways: Mapping[tuple[str, str], int] = field(default_factory=dict)

    def __post_init__(self) -> None:
        names = {machine.name for machine in self.machines}
        if any(not {*way} <= names or minutes < 0 for way, minutes in self.ways.items()):
            raise ValueError("a way that cannot be")
        if len({machine.name for machine in self.machines}) < len(self.machines):
            raise ValueError("every machine has a name of its own")
        for machine in self.machines:
            minutes = [machine.setup_minutes, *(minutes for _, minutes in machine.sides)]
            if machine.count < 1 or min(minutes) < 0:
                raise ValueError(f"{machine.name!r} has a number that cannot be")

    def filled(self, stations: Iterable[Station]) -> "Workroom":
        """Add a machine at each station that has none yet."""
        usual = Workroom.of_stations(each for each in stations if each.id not in self._serving)
        return Workroom((*self.machines, *usual.machines), self.ways)

    @classmethod
    def of_stations(cls, stations: Iterable[Station] = DEFAULT_STATIONS) -> "Workroom":
        """Put one machine at each station, with its standard foot on and threaded as usual."""
        return cls(
            tuple(
                Machine(
                    name=each.id,
                    station=each.id,
                    setup_minutes=each.minutes,
                    foot_minutes=each.foot_minutes,
                    colour_minutes=each.thread_minutes,
                    needle_minutes=each.needle_minutes,
                    mounted=Needs(each.id, foot=STANDARD_FOOT, colour=USUAL, needle=USUAL),
                )
                for each in stations
            )
        )

    def machine_for(self, station: str) -> Machine:
        """Find the machine that serves a kind of station, or the one of that name.

        Raises
        ------
        NoMachineError
            There is none.
        """
        if station not in self._serving:
            raise NoMachineError(station)
        return self._serving[station]

    @cached_property
    def _serving(self) -> dict[str, Machine]:
        by_station = {machine.station: machine for machine in reversed(self.machines)}
        return by_station | {machine.name: machine for machine in self.machines}
