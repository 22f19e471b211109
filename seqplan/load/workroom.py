"""A workroom file: one's own machines, and the minutes that it takes to get each ready.

    workroom: Harbour hall
    machines:
      old machine: {station: lockstitch, setup: 2, foot: 1, needle: 2}
      overlocker:  {station: overlocker, setup: 4}
    ways:
      old machine: {overlocker: 1}

What the file does not name keeps the usual minutes of its station, and is no way off.
"""

from collections.abc import Collection
from pathlib import Path
from typing import Final, NamedTuple, TypeAlias

from seqplan.base.diagnostic import Diagnostic
from seqplan.base.errors import UnreadableFileError
from seqplan.load import fields
from seqplan.load.document import read_bytes
from seqplan.load.keys import Key, Section, Takes
from seqplan.load.nodes import MappingNode, Pair
from seqplan.load.sink import Sink, found_instead, quoted
from seqplan.load.text import read_text
from seqplan.load.tree import read_tree
from seqplan.load.where import Where, place
from seqplan.model.station import DEFAULT_STATIONS
from seqplan.model.workroom import NOTHING, Machine, Needs, Workroom
from seqplan.words.say import say

Ways: TypeAlias = dict[tuple[str, str], int]

_MOST_MINUTES = 10_000
_MOST_MACHINES: Final = 999
_MINUTES: Final = {
    "setup": "Minutes to go there and get ready.",
    "foot": "Minutes to change the presser foot.",
    "needle": "Minutes to change the needle.",
    "stitch": "Minutes to set another stitch.",
    "colour": "Minutes to thread another colour.",
}


def _key(name: str, takes: Takes, help_: str, *, is_required: bool = False) -> Key:
    bounds = (0, _MOST_MINUTES) if takes is Takes.NUMBER else (0, 0)
    return Key(Section.STATION, name, takes, help_, bounds=bounds, is_required=is_required)


_TOP: Final = {
    "workroom": _key("workroom", Takes.TEXT, "Its name.", is_required=True),
    "machines": _key("machines", Takes.TABLE, "The machines.", is_required=True),
    "ways": _key("ways", Takes.TABLE, "Minutes from one machine to another."),
}
_MACHINE: Final = {
    "station": _key("station", Takes.TEXT, "What kind of station it is.", is_required=True),
    **{name: _key(name, Takes.NUMBER, text) for name, text in _MINUTES.items()},
    "mounted": _key("mounted", Takes.TEXT, "The presser foot that is on it."),
    "count": _key("count", Takes.NUMBER, "How many of the same there are.")._replace(
        bounds=(1, _MOST_MACHINES)
    ),
}


class LoadedWorkroom(NamedTuple):
    """What came of reading a workroom file.

    Parameters
    ----------
    workroom
        The machines, or ``None`` where the file has an error.
    diagnostics
        Everything found, each with its place.
    text, name
        The text that was read, and what it is called.
    """

    workroom: Workroom | None
    diagnostics: tuple[Diagnostic, ...]
    text: str
    name: str


def load_workroom(path: str | Path) -> LoadedWorkroom:
    """Read a workroom file.

    Raises
    ------
    UnreadableFileError
        When it cannot be read at all.
    """
    sink = Sink()
    text, is_readable = read_text(read_bytes(path), sink)
    root = read_tree(text, sink) if is_readable else None
    machines, ways = _read(root, sink) if isinstance(root, MappingNode) else ((), {})
    if root is not None and not isinstance(root, MappingNode):
        sink.error("wrong-type", root, words="expected-workroom", found=found_instead(root))
    if root is None and not sink.has_errors:
        raise UnreadableFileError(str(path), say("why-empty"))
    workroom = None if sink.has_errors else Workroom(machines, ways)
    return LoadedWorkroom(workroom, place(sink.found, Where(root)), text, str(path))


def _read(root: MappingNode, sink: Sink) -> tuple[tuple[Machine, ...], Ways]:
    found = fields.read_fields(root, _TOP, sink)
    fields.check_required(found, _TOP, root, sink)
    return _machines(root, sink), _ways(root, sink)


def _machines(root: MappingNode, sink: Sink) -> tuple[Machine, ...]:
    table = fields.table(root.get("machines"), sink)
    read = [_machine(pair, sink) for pair in (table.pairs if table else ())]
    named = [machine for machine in read if machine is not None]
    return tuple(named)


def _ways(root: MappingNode, sink: Sink) -> Ways:
    """Read the ways: both ways alike, unless the way back has minutes of its own."""
    machines = root.get("machines")
    listed = machines.value if machines else None
    known = [pair.key for pair in listed.pairs] if isinstance(listed, MappingNode) else []
    found: Ways = {}
    table = fields.table(root.get("ways"), sink)
    for pair in table.pairs if table else ():
        _known_machine(pair, known, sink)
        others = fields.mapping(pair.value, sink, words="expected-way")
        for other in others.pairs if others else ():
            minutes = fields.number(other.value, sink, (0, _MOST_MINUTES))
            if _known_machine(other, known, sink) and minutes is not None:
                found[pair.key, other.key] = minutes
    return {(b, a): minutes for (a, b), minutes in found.items()} | found


def _known_machine(pair: Pair, known: Collection[str], sink: Sink) -> bool:
    if pair.key not in known:
        fix = sink.suggest(pair.key, known, "")
        sink.error("unknown-machine", pair, name=quoted(pair.key), fix=fix)
        return False
    return True


def _machine(pair: Pair, sink: Sink) -> Machine | None:
    table = fields.mapping(pair.value, sink, words="expected-machine")
    if table is None:
        return None
    found = fields.read_fields(table, _MACHINE, sink)
    fields.check_required(found, _MACHINE, pair, sink)
    station = fields.text(found.get("station"), sink)
    known = {each.id: each for each in DEFAULT_STATIONS}
    minutes = {
        name: fields.number(found.get(name), sink, _MACHINE[name].bounds) for name in _MINUTES
    }
    if station is None or station not in known:
        if station is not None:
            fix = sink.suggest(station, known, "")
            sink.error("unknown-station", found["station"], name=quoted(station), fix=fix)
        return None
    kind = known[station]
    usual = {
        "setup": kind.minutes,
        "foot": kind.foot_minutes,
        "colour": kind.thread_minutes,
        "needle": kind.needle_minutes,
    }
    foot = fields.text(found.get("mounted"), sink)
    count = fields.number(found.get("count"), sink, _MACHINE["count"].bounds)
    return Machine(
        name=pair.key,
        station=station,
        count=count or 1,
        **{
            f"{name}_minutes": usual.get(name, 0) if value is None else value
            for name, value in minutes.items()
        },
        mounted=Needs(station, foot=foot) if foot else NOTHING,
    )
