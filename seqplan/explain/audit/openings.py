"""Gaps, channels and turning: what is left open is closed, what is inside out is turned."""

from collections.abc import Iterable, Iterator, Mapping

from seqplan.base.diagnostic import Severity
from seqplan.base.ids import EntryId, NotionId
from seqplan.base.measure import both
from seqplan.explain.audit.audit import Found, quoted, told
from seqplan.explain.audit.ledger import Ledger, Units, discs_of
from seqplan.model.entry import Entry, SeamKind, SeamMethod, Sides, Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Layer, Segment
from seqplan.recipes.shape import Shape
from seqplan.surface.glued import Glue

_EASE_MM = 3
"""What a channel has to be deeper than what is drawn through it."""

_TURNED = frozenset({SeamKind.ENCLOSED, SeamKind.FACED})


def no_way_in(ledger: Ledger) -> Found:
    """A channel that goes all round has a gap, for what is drawn through it.

    Stays quiet where a buttonhole in the channel, or a gap in a seam that runs into it, is the way,
    and of a casing that is sewn flat: its ends are open as long as the seam is.
    """
    c = ledger.c
    for entry in c.garment.entries:
        if entry.verb is not Verb.INSERT or entry.into is None:
            continue
        casing = c.garment.entry[entry.into]
        is_ring = all(stretch.is_ring for stretch in c.stretches.get(casing.id, ()))
        if is_ring and casing.gap is None and not casing.is_flat and not _has_hole(ledger, casing):
            kind = c.garment.notion[entry.notion].kind if entry.notion else ""
            yield told(
                "no-way-in",
                casing.path,
                severity=Severity.ERROR,
                fix="" if "elastic" in kind.casefold() else "check-no-way-in-for-cord-fix",
                name=casing.id,
                thread=entry.id,
            )


def _has_hole(ledger: Ledger, casing: Entry) -> bool:
    c = ledger.c
    if c.on_pieces(c.main(casing.id).pieces, Action.BUTTONHOLE):
        return True
    seams = (seam for stretch in c.stretches.get(casing.id, ()) for seam in stretch.junctions)
    return any(c.garment.entry[seam].gap is not None for seam in seams)


def elastic_ends_loose(ledger: Ledger) -> Found:
    """The ends of elastic in a channel that does not go round are held by something.

    Stays quiet where the edges at both ends of the channel are sewn, bound or hemmed afterwards,
    where a row or a tack follows across the channel, and where free words speak of the ends.
    """
    c = ledger.c
    if ledger.tells("anchor", "ends", "secure", "fasten"):
        return
    for thread in c.acting(Action.THREAD):
        entry = c.entry(thread)
        is_elastic = any("elastic" in c.garment.notion[n].kind.casefold() for n in thread.notions)
        if not is_elastic or entry.into is None:
            continue
        ends = [
            c.rings.across(tip).neighbour.segment
            for stretch in c.stretches.get(entry.into, ())
            for tip in stretch.tips
        ]
        across = {op for s in thread.segments for op in c.on_segment[s]}
        is_held = any(_holds_after(ledger, op, entry, _ACROSS) for op in across)
        loose = [
            segment
            for segment in ends
            if not any(
                _holds_after(ledger, op, entry, _AT_ENDS) for op in c.on_segment.get(segment, ())
            )
        ]
        if loose and not is_held:
            yield told("elastic-ends-loose", entry.path, entry=entry.id, casing=entry.into)


_ACROSS = (Action.TACK, Action.TOPSTITCH, Action.DO)
"""What holds elastic across a channel."""

_AT_ENDS = (*_ACROSS, Action.SEW, Action.SET_ON, Action.CLOSE_BAND, Action.HEM, Action.FINISH)
"""What holds elastic at the end of a channel."""


def _holds_after(ledger: Ledger, op: Operation, thread: Entry, actions: tuple[Action, ...]) -> bool:
    return op.action in actions and ledger.place[op.entry] > ledger.place[thread.id]


def nothing_drawn_through(ledger: Ledger) -> Found:
    """Something is drawn through a channel that has a gap for it.

    Stays quiet where free words are about its edge, or speak of elastic, cord or the like.
    """
    threaded = {entry.into for entry in ledger.c.garment.entries}
    for entry in ledger.c.garment.entries:
        is_casing = entry.verb is Verb.CASING and entry.gap is not None
        if not is_casing or entry.id in threaded or _is_closed(ledger, entry):
            continue
        if not ledger.tells("elastic", "cord", "ribbon", "thread", "draw"):
            yield told("nothing-drawn-through", entry.path, name=entry.id)


def channel_too_narrow(ledger: Ledger) -> Found:
    """A channel is at least 3 mm (an eighth of an inch) deeper than elastic or tape is wide.

    Stays quiet where either measure is not given. Source: Apparel standards, elastic and 1/8 in;
    Singer, How to insert elastic in a casing (elastic and 1/4 in).
    """
    for entry in ledger.c.garment.entries:
        if entry.verb is not Verb.INSERT or entry.into is None or entry.notion is None:
            continue
        depth = ledger.c.garment.entry[entry.into].depth
        width = ledger.c.garment.notion[entry.notion].width
        if depth is not None and width is not None and depth.mm < width.mm + _EASE_MM:
            yield told(
                "channel-too-narrow",
                ledger.c.garment.entry[entry.into].path,
                name=entry.into,
                depth=both(depth),
                thread=entry.notion,
                width=both(width),
            )


def pocket_without_mouth(ledger: Ledger) -> Found:
    """A patch pocket has a mouth.

    Stays quiet of patches, labels and badges, which are stitched on all round and called so, and of
    pieces without edges.
    """
    for entry in ledger.c.garment.entries:
        if entry.verb is not Verb.PATCH_POCKET or entry.mouth:
            continue
        pieces = [ledger.c.garment.piece[piece] for piece in entry.pieces]
        names = [edge for piece in pieces for edge in piece.edge_names]
        if names and not any(word in entry.id for word in ("patch", "badge", "label")):
            edge = "mouth" if "mouth" in names else names[0]
            yield told("pocket-without-mouth", entry.path, name=entry.id, edge=edge)


def gap_not_closed(ledger: Ledger) -> Found:
    """The gap that a seam leaves is closed in the end.

    Stays quiet where a row of stitching over the same edge closes it, and where a cord comes out
    of it.
    """
    for entry in ledger.c.garment.entries:
        if entry.verb is not Verb.SEW or entry.gap is None or _is_closed(ledger, entry):
            continue
        if not ledger.tells("close", "closing", "gap") and not _is_way_of_a_cord(ledger, entry.id):
            yield told("gap-not-closed", entry.path, name=entry.id)


def _is_closed(ledger: Ledger, entry: Entry) -> bool:
    """Whether an operation of its own closes a gap, or stitches along the edge that has it."""
    if any(other.closes == entry.id for other in ledger.c.garment.entries):
        return True
    closing = (Action.TOPSTITCH, Action.TACK, Action.HEM, Action.CASE, Action.SET_ON, Action.DO)
    return any(
        op.action in closing and op.entry != entry.id
        for segment in ledger.c.shapes[entry.id].run
        for op in ledger.c.on_segment.get(segment, ())
    )


def _is_way_of_a_cord(ledger: Ledger, seam: EntryId) -> bool:
    threaded = (entry.into for entry in ledger.c.garment.entries if entry.into is not None)
    return any(
        seam in stretch.junctions
        for casing in threaded
        for stretch in ledger.c.stretches.get(casing, ())
    )


def never_turned(ledger: Ledger) -> Found:
    """What is sewn right sides together all round is turned right side out.

    All seams of one unit are told together. Stays quiet where free words speak of turning.
    """
    if ledger.tells("turn", "right side out"):
        return
    by_unit: dict[int, list[Entry]] = {}
    for shape in ledger.c.joins:
        if _wants_turning(ledger, shape) and not ledger.turns(shape.skins):
            unit = ledger.bodies.of(discs_of(ledger.c, shape)[0])
            by_unit.setdefault(unit, []).append(shape.entry)
    for entries in by_unit.values():
        pieces = (p for entry in entries for p in ledger.c.shapes[entry.id].skins)
        names = ", ".join(sorted(set(pieces)))
        yield told(
            "never-turned",
            entries[0].path,
            entries=quoted(entry.id for entry in entries),
            pieces=names,
        )


def _wants_turning(ledger: Ledger, shape: Shape) -> bool:
    entry = shape.entry
    if entry.verb is not Verb.SEW or entry.sides is not Sides.RIGHT_TOGETHER:
        return False
    if entry.seam in _TURNED:
        return True
    is_closed_later = any(other.closes == entry.id for other in ledger.c.garment.entries)
    is_all_round = any(map(ledger.units.is_closed, discs_of(ledger.c, shape)))
    return entry.gap is not None and (is_closed_later or is_all_round)


def sewn_shut(ledger: Ledger) -> Found:
    """What is sewn right sides together all round leaves a gap to turn it through.

    Stays quiet where a seam is sewn from the right side or by hand, or in a way of its own.
    """
    units: dict[int, list[Shape]] = {}
    for shape in ledger.c.joins:
        for disc in discs_of(ledger.c, shape):
            if ledger.units.is_closed(disc):
                units.setdefault(ledger.units.of(disc), []).append(shape)
    for found in units.values():
        shapes = {shape.entry.id: shape for shape in found}.values()
        if all(_shuts(ledger, shape) for shape in shapes):
            last = max((s.entry for s in shapes), key=lambda e: ledger.place[e.id])
            pieces = ", ".join(sorted({piece for shape in shapes for piece in shape.skins}))
            yield told(
                "sewn-shut",
                last.path,
                severity=Severity.ERROR,
                entry=last.id,
                pieces=pieces,
                seam=_least_visible(ledger, shapes),
            )


def _least_visible(ledger: Ledger, shapes: Iterable[Shape]) -> EntryId:
    """The seam in which a gap shows least: in the lining before the outside, the last sewn."""

    def rank(shape: Shape) -> tuple[int, int]:
        layers = [ledger.c.garment.piece[piece].layer for piece in shape.skins]
        return sum(layer is Layer.SHELL for layer in layers), -ledger.place[shape.entry.id]

    return min(shapes, key=rank).entry.id


def _shuts(ledger: Ledger, shape: Shape) -> bool:
    entry = shape.entry
    layers = {ledger.c.garment.piece[piece].layer for piece in shape.skins}
    return (
        entry.verb is Verb.SEW
        and entry.sides is Sides.RIGHT_TOGETHER
        and entry.gap is None
        and entry.seam not in {SeamKind.LAPPED, SeamKind.FLAT_FELLED}
        and entry.how not in {SeamMethod.ROLL, SeamMethod.WRAP}
        and ledger.c.main(entry.id).setup.station != "hand"
        and Layer.INTERLINING not in layers
    )


def nothing_to_turn(ledger: Ledger) -> Found:
    """What is turned right side out has a seam by then.

    Stays quiet of seams that are turned by their kind: there, the rules say what comes first.
    """
    for entry in ledger.c.garment.entries:
        if entry.verb is not Verb.TURN:
            continue
        turn = ledger.c.main(entry.id)
        seams = [op for op in ledger.c.on_pieces(turn.pieces, *_JOINING) if op.entry != entry.id]
        if not seams:
            yield told(
                "nothing-to-turn", entry.path, entry=entry.id, fix="check-nothing-to-turn-fix"
            )
        elif all(_is_later(ledger, op, entry) for op in seams):
            first = min(seams, key=lambda op: ledger.place[op.entry]).entry
            fix = "check-turn-lower-fix"
            yield told("nothing-to-turn", entry.path, entry=entry.id, fix=fix, seam=first)


_JOINING = (
    Action.SEW,
    Action.SET_ON,
    Action.STITCH_ON,
    Action.MAKE_STRAP,
    Action.HEM,
    Action.CASE,
    Action.CLOSE_ENDS,
    Action.DO,
)


def _is_later(ledger: Ledger, op: Operation, entry: Entry) -> bool:
    is_ordered = ledger.c.entry(op).seam in _TURNED
    return ledger.place[op.entry] > ledger.place[entry.id] and not is_ordered


def zip_not_opened(ledger: Ledger) -> Found:
    """A zip that is the only way out is opened before the work is turned.

    Stays quiet where the outside is open elsewhere, or has a gap, and where free words speak of
    opening it.
    """
    if ledger.tells("open", "unzip"):
        return
    c = ledger.c
    opened = {notion for op in c.acting(Action.OPEN) for notion in op.notions}
    turns = [op for op in c.acting(Action.TURN) if c.entry(op).verb is Verb.TURN]
    zips = [op for op in c.operations if not op.part and _zips(ledger, op)]
    if not zips or not turns:
        return
    units = Units(c, _outside(ledger, {op.entry for op in zips}))
    edges = _edges_of_zips(ledger, units, zips)
    gaps = {
        units.of(disc)
        for shape in c.joins
        if shape.entry.gap is not None
        for disc in discs_of(c, shape)
    }
    for op in zips:
        notion = _zips(ledger, op)[0]
        turn = next((turn for turn in turns if turn.pieces & op.pieces), None)
        outside = [s for s in op.segments if c.garment.piece[s.piece].layer is Layer.SHELL]
        if turn is None or not outside or notion in opened:
            continue
        disc = c.rings.disc(outside[0])
        if units.of(disc) in gaps:
            continue
        beside = edges[units.of(disc)]
        if set(units.free(disc)) <= beside.keys() and not set(beside.values()) & opened:
            yield told(
                "zip-not-opened",
                op.path,
                severity=Severity.ERROR,
                zip=notion,
                turn=turn.entry,
            )


def _zips(ledger: Ledger, op: Operation) -> tuple[NotionId, ...]:
    """The zips that an operation sews in."""
    if op.action not in {Action.SET_ZIP, Action.SEW}:
        return ()
    kinds = ledger.c.garment.notion
    return tuple(n for n in op.notions if "zip" in kinds[n].kind.casefold())


def _outside(ledger: Ledger, zips: Iterable[EntryId]) -> Iterator[Glue]:
    """The seams of the outside, without those in which a zip lies."""
    piece = ledger.c.garment.piece
    for shape in ledger.c.joins:
        if shape.entry.id not in zips:
            for glue in shape.glues:
                layers = {piece[segment.piece].layer for segment in (glue.first, glue.second)}
                if layers == {Layer.SHELL}:
                    yield glue


def _edges_of_zips(
    ledger: Ledger, units: Units, zips: Iterable[Operation]
) -> Mapping[int, dict[Segment, NotionId]]:
    """The edges in which zips lie, by the unit that they belong to."""
    found: dict[int, dict[Segment, NotionId]] = {}
    for op in zips:
        for segment in op.segments:
            unit = units.of(ledger.c.rings.disc(segment))
            found.setdefault(unit, {})[segment] = _zips(ledger, op)[0]
    return found
