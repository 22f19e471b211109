"""Fabrics, notions and stations."""

from typing import NamedTuple

from seqplan.base.ids import NotionId
from seqplan.base.measure import Length
from seqplan.load import fields
from seqplan.load.amounts import lengths_by_size, read_amounts
from seqplan.load.choices import Choices, Sizes, when
from seqplan.load.keys import Section, keys_of
from seqplan.load.names import ALL, read_names
from seqplan.load.nodes import MappingNode, Node, Pair, Placed, Scalar
from seqplan.load.sink import Sink, quoted
from seqplan.model.garment import Fabric, Notion
from seqplan.model.station import DEFAULT_STATIONS, Station

_MINUTES_OF_NEW_STATION = 1


class Offer(NamedTuple):
    """What a thing may depend on: sizes and choices; and the unit of bare lengths."""

    units: str
    sizes: Sizes
    choices: Choices


def read_fabrics(table: MappingNode | None, sink: Sink, offer: Offer) -> tuple[Fabric, ...]:
    """Read ``fabrics:``; a plain text is the kind."""
    pairs = read_names(table, sink) if table is not None else []
    for pair in pairs:
        if pair.key == ALL:
            sink.error("reserved-name", pair, name=quoted(ALL))
    read = (_fabric(pair, sink, offer) for pair in pairs)
    return tuple(fabric for fabric in read if fabric is not None)


def read_notions(table: MappingNode | None, sink: Sink, offer: Offer) -> tuple[Notion, ...]:
    """Read ``notions:``; a plain text is the kind."""
    pairs = read_names(table, sink) if table is not None else []
    read = (_notion(pair, sink, offer) for pair in pairs)
    return tuple(notion for notion in read if notion is not None)


def read_stations(table: MappingNode | None, sink: Sink) -> tuple[Station, ...]:
    """Read ``stations:``: the usual ones with the file's changes, then further ones."""
    stations = {station.id: station for station in DEFAULT_STATIONS}
    for pair in read_names(table, sink) if table is not None else []:
        station = _station(pair, stations.get(pair.key), sink)
        if station is not None:
            stations[pair.key] = station
    _warn_of_same_marks(stations, table, sink)
    return tuple(stations.values())


def _kind_or_fields(pair: Pair, section: Section, sink: Sink) -> fields.Fields | None:
    """What stands under a name, a plain text standing for its kind."""
    value: Node = pair.value
    if isinstance(value, Scalar) and not value.is_empty:
        return {"kind": value}
    table = fields.mapping(value, sink, words="expected-kind")
    if table is None:
        return None
    return fields.read_fields(table, keys_of(section), sink)


def _fabric(pair: Pair, sink: Sink, offer: Offer) -> Fabric | None:
    found = _kind_or_fields(pair, Section.FABRIC, sink)
    if found is None:
        return None
    return Fabric(
        id=pair.key,
        kind=fields.text(found.get("kind"), sink) or "woven",
        weight=fields.text(found.get("weight"), sink),
        is_ironed=fields.yes_no(found.get("iron"), sink) is not False,
        amounts=read_amounts(found.get("amounts"), offer.units, offer.sizes, sink),
        note=fields.note(found.get("note"), sink),
        path=pair.path,
    )


def _notion(pair: Pair, sink: Sink, offer: Offer) -> Notion | None:
    keys = keys_of(Section.NOTION)
    found = _kind_or_fields(pair, Section.NOTION, sink)
    if found is None:
        return None
    fields.check_required(found, keys, pair, sink)
    by_size = lengths_by_size(
        found.get("length"), lambda node: fields.length(node, sink, offer.units), offer.sizes, sink
    )
    return Notion(
        id=NotionId(pair.key),
        kind=fields.text(found.get("kind"), sink) or "",
        length=by_size[0][1] if by_size else _one_length(found.get("length"), offer, sink),
        width=fields.length(found.get("width"), sink, offer.units),
        by_size=by_size,
        when=when(found.get("when"), offer.choices, sink),
        count=fields.number(found.get("count"), sink, keys["count"].bounds) or 1,
        is_ironed=fields.yes_no(found.get("iron"), sink) is not False,
        note=fields.note(found.get("note"), sink),
        path=pair.path,
    )


def _one_length(node: Node | None, offer: Offer, sink: Sink) -> Length | None:
    is_by_size = isinstance(node, MappingNode) and not fields.is_pair(node)
    return None if is_by_size else fields.length(node, sink, offer.units)


def _station(pair: Pair, usual: Station | None, sink: Sink) -> Station | None:
    keys = keys_of(Section.STATION)
    table = fields.mapping(pair.value, sink, words="expected-station")
    if table is None:
        return None
    found = fields.read_fields(table, keys, sink)
    if usual is None and "title" not in found:
        sink.error("station-without-title", pair, name=quoted(pair.key))
    title = fields.text(found.get("title"), sink) or (usual.title if usual else pair.key)
    base = usual or Station(
        id=pair.key, title=title, mark=title[0].upper(), minutes=_MINUTES_OF_NEW_STATION
    )

    def minutes(key: str, usual: int) -> int:
        read = fields.number(found.get(key), sink, keys[key].bounds)
        return usual if read is None else read

    return base._replace(
        title=title,
        mark=_mark(found.get("mark"), sink) or base.mark,
        minutes=minutes("minutes", base.minutes),
        foot_minutes=minutes("foot minutes", base.foot_minutes),
        thread_minutes=minutes("thread minutes", base.thread_minutes),
        needle_minutes=minutes("needle minutes", base.needle_minutes),
        path=pair.path,
    )


def _mark(node: Node | None, sink: Sink) -> str | None:
    mark = fields.text(node, sink)
    if node is None or mark is None:
        return None
    if len(mark) > 2 or not mark.isalnum():
        sink.error("unreadable-mark", node, found=quoted(mark))
        return None
    return mark


def _warn_of_same_marks(
    stations: dict[str, Station], table: MappingNode | None, sink: Sink
) -> None:
    """Warn of two stations that one could not tell apart on a sheet without colour."""
    first: dict[str, Station] = {}
    for station in stations.values():
        other = first.setdefault(station.mark, station)
        changed = station if station.path else other
        if other is station or not changed.path or table is None:
            continue
        at: Placed = table.get(changed.id) or table
        names = {"one": quoted(other.id), "two": quoted(station.id), "mark": quoted(station.mark)}
        sink.warning("same-mark", at, **names)
