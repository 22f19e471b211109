"""One entry: from its fields to what the model keeps of it."""

from collections.abc import Callable, Mapping
from typing import Final

from seqplan.base.ids import EntryId, NotionId, OpId
from seqplan.load import fields, joins, resolve
from seqplan.load.fields import Fields
from seqplan.load.keys import keys_with
from seqplan.load.names import clean, report_unknown
from seqplan.load.nodes import Node
from seqplan.load.scope import Scope
from seqplan.load.sink import quoted
from seqplan.model.entry import Entry, Verb, ZipMethod

Reader = Callable[[Entry, Fields, Scope], Entry]


def read_entry(entry_id: EntryId, verb: Verb, found: Fields, scope: Scope) -> Entry:
    """Read what all entries have, then what this verb has."""
    sink = scope.sink
    without = fields.names_of(found.get("without"), lambda node: fields.text(node, sink), sink)
    if "because" in found and "after" not in found:
        sink.warning("because-of-nothing", found["because"])
    entry = Entry(
        id=entry_id,
        verb=verb,
        without=tuple(part for part, _ in without),
        station=scope.known(found.get("station"), scope.stations, "unknown-station"),
        foot=fields.text(found.get("foot"), sink),
        minutes=fields.number(found.get("minutes"), sink, keys_with(verb)["minutes"].bounds),
        unit=resolve.pieces(found.get("unit"), scope),
        after=_after(entry_id, found.get("after"), scope),
        because=fields.text(found.get("because"), sink),
        title=fields.text(found.get("title"), sink),
        note=fields.note(found.get("note"), sink),
        say=fields.text(found.get("say"), sink),
        path=("operations", entry_id),
    )
    return _READERS.get(verb, _on_edges)(entry, found, scope)


def _after(entry_id: EntryId, node: Node | None, scope: Scope) -> tuple[OpId, ...]:
    found = fields.names_of(node, lambda item: _operation(entry_id, item, scope), scope.sink)
    return tuple(OpId(name) for name, _ in found)


def _operation(entry_id: EntryId, node: Node, scope: Scope) -> str | None:
    """An entry, or one operation of it, written ``entry/part``."""
    written = fields.text(node, scope.sink)
    if written is None:
        return None
    name, slash, part = (clean(piece) for piece in written.partition("/"))
    if name not in scope.entries:
        report_unknown("unknown-operation", name, node, scope.entries, scope.sink)
    elif name == entry_id:
        scope.sink.error("after-itself", node, entry=quoted(entry_id))
    elif slash and not part:
        scope.sink.error("part-without-name", node, entry=quoted(name))
    else:
        return f"{name}{slash}{part}"
    return None


def _on_edges(entry: Entry, found: Fields, scope: Scope) -> Entry:
    return entry._replace(run=resolve.run(found.get(entry.verb.value), scope))


def _on_pieces(entry: Entry, found: Fields, scope: Scope) -> Entry:
    return entry._replace(pieces=resolve.pieces(found.get(entry.verb.value), scope))


def _fuse(entry: Entry, found: Fields, scope: Scope) -> Entry:
    fabric = scope.known(found.get("with"), scope.fabrics, "unknown-fabric")
    return _on_pieces(entry, found, scope)._replace(fabric=fabric)


def _insert(entry: Entry, found: Fields, scope: Scope) -> Entry:
    """Set a zip into edges, or thread something through a casing."""
    sink = scope.sink
    notion = scope.known(found.get("insert"), scope.notions, "unknown-notion")
    entry = entry._replace(notion=NotionId(notion) if notion else None)
    overlap = fields.length(found.get("overlap"), sink, scope.units)
    method = fields.choice(found.get("method"), sink, keys_with(entry.verb)["method"])
    where = found.get("in")
    if where is None:
        return entry
    if not joins.is_edges(where):
        if "method" in found:
            sink.error("method-of-casing", found["method"])
        return entry._replace(into=_casing(where, scope), overlap=overlap)
    if "overlap" in found:
        sink.error("overlap-of-zip", found["overlap"])
    if method is None:
        known = scope.notion.get(notion or "")
        kind = known.kind if known is not None else ""
        method = "invisible" if "invisible" in kind.casefold() else "centred"
    return entry._replace(run=resolve.run(where, scope), method=ZipMethod(method))


def _casing(node: Node, scope: Scope) -> EntryId | None:
    """An entry that makes a casing; a piece alone is told apart from an unknown name."""
    name = clean(fields.text(node, scope.sink) or "")
    if name in scope.piece and name not in scope.verbs:
        resolve.edge_ref(node, scope)
        return None
    known = scope.known(node, scope.entries, "unknown-operation") if name else None
    if known is None:
        return None
    if scope.verbs.get(known, Verb.CASING) is not Verb.CASING:
        scope.sink.error("no-casing", node, entry=quoted(known))
        return None
    return EntryId(known)


def _attach(entry: Entry, found: Fields, scope: Scope) -> Entry:
    notion = scope.known(found.get("attach"), scope.notions, "unknown-notion")
    run = resolve.run(found.get("at"), scope)
    return entry._replace(notion=NotionId(notion) if notion else None, run=run)


def _tack(entry: Entry, found: Fields, scope: Scope) -> Entry:
    entry = _on_edges(entry, found, scope)
    written = fields.text(found.get("to"), scope.sink)
    if written is None:
        return entry
    name = clean(written)
    if name == entry.id and name not in scope.notions.names:
        scope.sink.error("to-itself", found["to"], entry=quoted(name))
    elif name not in scope.notions and name not in scope.entries:
        known = {**scope.notions.names, **scope.entries.names}
        fix = scope.sink.suggest(name, known, "")
        scope.sink.error("unknown-fastening", found["to"], name=quoted(name), fix=fix)
    return entry._replace(to_name=name)


def _hem(entry: Entry, found: Fields, scope: Scope) -> Entry:
    sink, keys = scope.sink, keys_with(entry.verb)
    entry = _on_edges(entry, found, scope)
    in_the_round, is_flat = joins.ring_or_flat(entry, found, scope)
    return entry._replace(
        depth=fields.length(found.get("depth"), sink, scope.units),
        turned=fields.choice(found.get("turned"), sink, keys["turned"]),
        by_hand=fields.choice(found.get("by"), sink, keys["by"]) == "hand",
        in_the_round=in_the_round,
        is_flat=is_flat,
    )


def _casing_entry(entry: Entry, found: Fields, scope: Scope) -> Entry:
    sink, keys = scope.sink, keys_with(entry.verb)
    return _on_edges(entry, found, scope)._replace(
        depth=fields.length(found.get("depth"), sink, scope.units),
        gap=fields.length(found.get("gap"), sink, scope.units),
        turned=fields.choice(found.get("turned"), sink, keys["turned"]),
        is_flat=bool(fields.yes_no(found.get("flat"), sink)),
    )


def _do(entry: Entry, found: Fields, scope: Scope) -> Entry:
    sink = scope.sink
    makes = fields.names_of(found.get("makes"), lambda node: fields.name(node, sink), sink)
    uses = fields.names_of(found.get("uses"), lambda node: fields.name(node, sink), sink)
    return entry._replace(
        words=fields.text(found.get("do"), sink),
        pieces=resolve.pieces(found.get("on"), scope),
        run=resolve.run(found.get("at"), scope),
        makes=tuple(name for name, _ in makes),
        uses=tuple(name for name, _ in uses),
    )


_READERS: Final[Mapping[Verb, Reader]] = {
    Verb.FUSE: _fuse,
    Verb.SEW: joins.read_join,
    Verb.BASTE: joins.read_join,
    Verb.INSERT: _insert,
    Verb.ATTACH: _attach,
    Verb.TACK: _tack,
    Verb.HEM: _hem,
    Verb.CASING: _casing_entry,
    Verb.TURN: _on_pieces,
    Verb.FIT: _on_pieces,
    Verb.INSPECT: _on_pieces,
    Verb.DO: _do,
}
