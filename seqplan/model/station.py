"""Stations: where an operation is done, and what it costs to get ready there."""

from typing import NamedTuple

from seqplan.base.path import DocPath

STANDARD_FOOT = "standard"


class Station(NamedTuple):
    """A machine, the iron, the hand or the table.

    Parameters
    ----------
    id
        Its name in files.
    title
        Its name as people read it.
    mark
        One or two letters that stand for it on sheets printed without colour.
    minutes
        To go there and get ready, in minutes.
    foot_minutes
        To change the presser foot there, in minutes; 0 where there is none.
    thread_minutes, needle_minutes
        To thread another colour, and to change the needle; 0 where there is none.
    path
        Where the document says so, if it does.
    """

    id: str
    title: str
    mark: str
    minutes: int
    foot_minutes: int = 0
    thread_minutes: int = 0
    needle_minutes: int = 0
    path: DocPath = ()


IRON = "iron"
HAND = "hand"
TABLE = "table"

# The minutes are our own estimates of home practice, meant to be overridden under `stations:`.
DEFAULT_STATIONS: tuple[Station, ...] = (
    Station(
        id="lockstitch",
        title="sewing machine",
        mark="M",
        minutes=2,
        foot_minutes=1,
        thread_minutes=1,
        needle_minutes=1,
    ),
    Station(
        id="overlocker",
        title="overlocker",
        mark="O",
        minutes=2,
        thread_minutes=4,
        needle_minutes=2,
    ),
    Station(
        id="coverstitch",
        title="coverstitch machine",
        mark="C",
        minutes=3,
        thread_minutes=4,
        needle_minutes=2,
    ),
    Station(id="iron", title="iron", mark="I", minutes=3),
    Station(id="hand", title="hand sewing", mark="H", minutes=1),
    Station(id="table", title="table", mark="T", minutes=1),
)
