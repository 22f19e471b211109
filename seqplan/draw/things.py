"""What an operation puts on the face of a piece: buttons, straps, interfacing, marks, cuts.

Where a thing goes is known by name only (an edge, a marked place), so its place on the piece is
schematic; the pattern has the exact one.
"""

from collections.abc import Iterator, Mapping
from enum import Enum
from typing import Final, NamedTuple

from seqplan.base.ids import NotionId, PieceId
from seqplan.model.entry import Entry, Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Cut, Half, Hand, Piece, Place
from seqplan.recipes.construction import Construction
from seqplan.tell.closures import holds_free_ends
from seqplan.tell.lapping import beside, zip_over
from seqplan.tell.names import listing, readable
from seqplan.words.say import say

_MANY: Final = 8
"""So many buttons are drawn at most."""


class ThingKind(Enum):
    """What it is; the value ends the name of the words in the key."""

    INTERFACING = "interfacing"
    MARK = "mark"
    BUTTON = "button"
    HOLE = "hole"
    NOTION = "notion"
    STRAP = "strap"
    POCKET = "pocket"
    TACK = "tack"
    SLIP = "slip"
    """A row of hand stitches along all of an edge."""
    OPENING = "opening"
    """The mouth of a welt pocket: two rows with the line between them."""
    SLIT = "slit"
    """The mouth of a welt pocket, cut open."""
    CUT = "cut"
    """A slit, cut open from its edge."""


class Thing(NamedTuple):
    """A thing on a piece.

    Parameters
    ----------
    kind, piece
        What it is, and what it lies on.
    edge
        The edge along which it lies; on the face where there is none.
    half
        The half or copy that it is on; ``None`` for all.
    number
        How many.
    title
        What the key calls it.
    is_inwards
        Whether a strap lies on its piece, its end level with the edge: for a seam to come, or
        since its other end is in one.
    is_behind
        Whether it is sewn on from the wrong side, so that the cloth hides its end.
    is_central
        Whether it lies over the fold of its piece.
    is_at_start
        Whether it lies where its edge begins, at a mark.
    is_far
        Whether it lies at the other end of its piece: a button opposite its hole.
    is_single
        Whether there is one only, on one of several copies.
    beside
        The edge at whose end of ``edge`` it lies, as a hook lies beside an opening.
    is_inside
        Whether it is sewn to the inside.
    sewn
        The edges of its piece that are sewn in a seam at some time; a hole lies at a free end.
    """

    kind: ThingKind
    piece: PieceId
    edge: str = ""
    half: Half | None = None
    number: int = 1
    title: str = ""
    is_inwards: bool = False
    is_behind: bool = False
    is_central: bool = False
    is_at_start: bool = False
    is_far: bool = False
    is_single: bool = False
    beside: str = ""
    is_inside: bool = False
    sewn: frozenset[str] = frozenset()


def things_of(c: Construction, op: Operation) -> tuple[Thing, ...]:
    """What an operation puts on faces; nothing where it puts nothing there."""
    title = _title(c, op)
    return tuple(thing._replace(title=title or _words(thing)) for thing in _found(c, op))


def _words(thing: Thing) -> str:
    return say(f"map-thing-{thing.kind.value}")


def _title(c: Construction, op: Operation) -> str:
    """What is sewn on, where it has a name of its own."""
    entry = c.entry(op)
    if entry.verb is not Verb.ATTACH:
        return ""
    if entry.pieces:
        name = listing(c.garment.piece[id_].title for id_ in entry.pieces)
    else:
        name = readable(c.garment.notion[entry.notion].kind) if entry.notion else ""
    return say("map-thing-doubled", name=name) if entry.is_doubled else name


def _found(c: Construction, op: Operation) -> tuple[Thing, ...]:
    entry = c.entry(op)
    if op.action is Action.FUSE:
        return tuple(Thing(ThingKind.INTERFACING, id_) for id_ in sorted(op.pieces))
    if op.action is Action.MARK:
        return tuple(thing for id_ in sorted(op.pieces) for thing in _marks(c, id_))
    kind = _kind(c, op)
    if kind is None:
        return ()
    if kind is ThingKind.CUT:
        return tuple(dict.fromkeys(Thing(kind, ref.piece, ref.edge) for ref in entry.run))
    places = [p for p in entry.places if not op.pieces or p.piece in op.pieces]
    found = [
        _thing(c, entry, kind, place, _count(c, op, len(places)))._replace(
            is_central=_is_central(c, entry, place)
        )
        for place in places
    ]
    found += [
        _thing(c, entry, kind, Place(ref.piece, ref.edge, ref.hand), 1)
        for ref in entry.run
        if entry.verb in {Verb.ATTACH, Verb.TACK, Verb.BUTTONHOLE}
    ]
    pieces = c.garment.piece
    is_single = entry.verb is Verb.ATTACH and sum(pieces[p].copies for p in entry.pieces) == 1
    is_behind = entry.from_wrong_side
    return tuple(dict.fromkeys(t._replace(is_single=is_single, is_behind=is_behind) for t in found))


def _marks(c: Construction, id_: PieceId) -> Iterator[Thing]:
    """What is marked on a piece: places on its face, darts and pleats, points between edges."""
    piece = c.garment.piece[id_]
    for spot in piece.spots:
        place = Place(id_, spot.name, spot.hand)
        users = [e for e in c.garment.entries if (id_, spot.name) in {p[:2] for p in e.places}]
        is_central = any(_is_central(c, entry, place) for entry in users)
        yield Thing(ThingKind.MARK, id_, half=_half(c, place), is_central=is_central)
    for folded in (*piece.darts, *piece.pleats):
        yield Thing(ThingKind.MARK, id_, folded.on, number=folded.number)
    for edge in piece.edges:
        if edge.at_mark:
            yield Thing(ThingKind.MARK, id_, edge.name, is_at_start=True)


def _is_central(c: Construction, entry: Entry, place: Place) -> bool:
    """Whether a single piece is laid on one that is cut on the fold: in its middle."""
    ground = c.garment.piece[place.piece]
    count = sum(c.garment.piece[id_].copies for id_ in entry.pieces)
    return ground.cut is Cut.FOLD and count == 1 and _half(c, place) is None


def _kind(c: Construction, op: Operation) -> ThingKind | None:
    entry = c.entry(op)
    if entry.verb is Verb.WELT_POCKET:
        return {
            Action.STITCH_ON: ThingKind.OPENING,
            Action.SLASH: ThingKind.SLIT,
            Action.CLOSE_ENDS: ThingKind.SLIT,
        }.get(op.action)
    if entry.verb is Verb.ATTACH and entry.pieces:
        return ThingKind.STRAP
    if op.action is Action.ATTACH and entry.notion is not None:
        kind = c.garment.notion[entry.notion].kind.casefold()
        return ThingKind.BUTTON if "button" in kind else ThingKind.NOTION
    if op.action is Action.TACK and _notion_kind(c, entry.to_name).endswith("zip"):
        return ThingKind.SLIP
    return _OF_ACTION.get((entry.verb, op.action)) or _OF_ACTION.get((None, op.action))


_OF_ACTION: Final[Mapping[tuple[Verb | None, Action], ThingKind]] = {
    (Verb.ATTACH, Action.STITCH_ON): ThingKind.NOTION,
    (Verb.PATCH_POCKET, Action.STITCH_ON): ThingKind.POCKET,
    (Verb.SLASH, Action.SLASH): ThingKind.CUT,
    (None, Action.BUTTONHOLE): ThingKind.HOLE,
    (None, Action.BIND_HOLE): ThingKind.HOLE,
    (None, Action.OPEN_BEHIND): ThingKind.HOLE,
    (None, Action.TACK): ThingKind.TACK,
}


def _notion_kind(c: Construction, name: str | None) -> str:
    notion = c.garment.notion.get(NotionId(name or ""))
    return notion.kind.casefold() if notion else ""


def _count(c: Construction, op: Operation, places: int) -> int:
    """How many of them lie at one place, as far as anybody says."""
    entry = c.entry(op)
    if entry.verb not in {Verb.ATTACH, Verb.BUTTONHOLE} or len(entry.places) != 1 or places != 1:
        return 1
    number = entry.number or (c.garment.notion[entry.notion].count if entry.notion else 1)
    piece = c.garment.piece[entry.places[0].piece]
    on_each = number if entry.places[0].hand else -(-number // max(1, piece.copies))
    return min(max(1, on_each), _MANY)


def _thing(c: Construction, entry: Entry, kind: ThingKind, place: Place, count: int) -> Thing:
    piece = c.garment.piece[place.piece]
    edge = place.name if place.name in piece.edge_names else ""
    is_seam = bool(edge and c.seams_at(piece.segments(edge)))
    is_inwards = is_seam or (bool(edge) and holds_free_ends(c, entry))
    half = _half(c, place)
    thing = Thing(kind, place.piece, edge or "", half, count, is_inwards=is_inwards)
    sewn = (name for name in piece.edge_names if c.seams_at(piece.segments(name)))
    is_far = _is_opposite(c, thing) != _laps_to_the_left(c, entry)
    is_hook = kind is ThingKind.NOTION and "hook" in _notion_kind(c, entry.notion)
    return thing._replace(
        is_far=is_far,
        sewn=frozenset(sewn),
        beside=_opening_beside(c, piece, edge or "") if is_hook else "",
        is_inside=entry.from_wrong_side or (is_hook and zip_over(c, entry) is None),
    )


def _opening_beside(c: Construction, piece: Piece, edge: str) -> str:
    """The edge of a zip at which another edge of the piece ends."""
    zips = (e for e in c.garment.entries if e.method is not None)
    opened = {segment for e in zips for segment in c.shapes[e.id].run}
    near = beside(c, piece.segments(edge), at_mark=False) if edge else ()
    return next((c.rings.name(segment) for segment in near if segment in opened), "")


def _is_opposite(c: Construction, thing: Thing) -> bool:
    """Whether a button lies on a piece that bears its buttonhole as well."""
    if thing.kind is not ThingKind.BUTTON:
        return False
    holes = (p for e in c.garment.entries if e.verb is Verb.BUTTONHOLE for p in e.places)
    return any(p.piece == thing.piece and _half(c, p) is thing.half for p in holes)


def _laps_to_the_left(c: Construction, entry: Entry) -> bool:
    """Whether the wearer's left lies on top, so that holes and buttons change their ends.

    A band is drawn right side up with the edge at the top by which it is sewn on, so upside down:
    spread out behind the wearer it has her left at its left, and turned round at its right.
    """
    zip_ = zip_over(c, entry)
    return zip_ is not None and zip_.on_top is Hand.LEFT


def _half(c: Construction, place: Place) -> Half | None:
    """The half or copy that a place is on, if it is on one only."""
    piece = c.garment.piece[place.piece]
    hand = place.hand
    if hand is None and place.name is not None:
        hand = next((spot.hand for spot in piece.spots if spot.name == place.name), None)
    return piece.half_worn(hand)
