"""What to cut, what to mark, and which allowances there are."""

from collections.abc import Iterator

from seqplan.base.ids import PieceId
from seqplan.base.measure import both
from seqplan.model.entry import Entry, Verb, ZipMethod
from seqplan.model.garment import Garment
from seqplan.model.operation import Action
from seqplan.model.piece import Cut, EdgeRef, Layer, Piece
from seqplan.recipes.construction import Construction
from seqplan.tell import usual
from seqplan.tell.closures import stop_below
from seqplan.tell.content import CutRow
from seqplan.tell.cut_size import rectangle
from seqplan.tell.folds import whole_fold
from seqplan.tell.handling import marks_on
from seqplan.tell.names import (
    as_sentence,
    capital,
    listing,
    name_edges,
    name_pieces,
    quoted,
    readable,
)
from seqplan.tell.scene import Scene
from seqplan.tell.seams import is_strap
from seqplan.words.say import say, translated

_HOLDING = (
    Action.SEW,
    Action.BASTE,
    Action.TURN_UP,
    Action.SET_ZIP,
    Action.TACK,
    Action.SET_ON,
    Action.STITCH_ON,
    Action.MAKE_STRAP,
    Action.PRESS_UNDER,
    Action.CLOSE_ENDS,
    Action.CLOSE_BAND,
    Action.BOX,
)
_SHAPED = frozenset({Verb.STRAP, Verb.WELT_POCKET, Verb.IN_SEAM_POCKET})
"""Verbs that make something of whole pieces, whatever their edges are called."""
_TELLING = frozenset({Verb.SEW, Verb.HEM, Verb.CASING, Verb.PATCH_POCKET})
"""Verbs that may say an allowance of their own."""
_SLITTING = frozenset({Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET})


def tell_cutting(c: Construction) -> tuple[CutRow, ...]:
    """List every piece, and after it the interfacing that is fused to it."""
    return tuple(row for piece in c.garment.pieces for row in _rows(c, piece))


def tell_cutting_notes(c: Construction) -> tuple[str, ...]:
    """What the words of the cutting list mean."""
    if not c.garment.pieces:
        return (say("sheet-no-pieces"),)
    cuts = {piece.cut for piece in c.garment.pieces}
    notes = [say("sheet-cut-first")]
    if Cut.FOLD in cuts:
        notes.append(say("sheet-fold-means"))
    if any(_is_in_pairs(c.garment, piece) for piece in c.garment.pieces):
        notes.append(say("sheet-pair-means"))
    if any(piece.is_strip for piece in c.garment.pieces):
        notes.append(say("sheet-strip-means"))
    return tuple(notes)


def _places_on_edges(garment: Garment) -> Iterator[str]:
    """Where on edges pockets, straps and ties go, each place once."""
    places: dict[str, dict[PieceId, None]] = {}
    for entry in garment.entries:
        if entry.verb is Verb.IN_SEAM_POCKET:
            yield say("sheet-marked-mouth", edges=name_edges(garment, entry.run))
        if entry.verb is Verb.ATTACH and entry.run:
            edges = name_edges(garment, entry.run)
            places.setdefault(edges, {}).update(dict.fromkeys(entry.pieces))
        for item in entry.between:
            if item.at is not None and item.edge is not None and is_strap(garment, item.edge.piece):
                places.setdefault(name_edges(garment, (item.at,)), {})[item.edge.piece] = None
    for edges, pieces in places.items():
        if pieces:
            yield say("sheet-marked-place", edges=edges, pieces=name_pieces(garment, pieces))


def _rows_to_mark(garment: Garment) -> Iterator[str]:
    """Rows that the pattern shows on the face of pieces: those of buttonholes and of a fly."""
    for entry in garment.entries:
        if entry.verb is Verb.BUTTONHOLE:
            ids = dict.fromkeys(place.piece for place in entry.places if place.name is None)
            if ids:
                yield say("sheet-marked-holes", pieces=name_pieces(garment, ids))
        if entry.method is ZipMethod.FLY:
            ids = dict.fromkeys(ref.piece for ref in entry.run)
            yield say("sheet-marked-fly", pieces=name_pieces(garment, ids))


def tell_marks(c: Construction) -> tuple[str, ...]:
    """List the points to mark: where two edges meet on a straight run."""
    found = []
    for piece in c.garment.pieces:
        pairs: dict[frozenset[str], tuple[str, str]] = {}
        for index, edge in enumerate(piece.edges):
            if edge.at_mark:
                before = piece.edges[index - 1].name
                pairs.setdefault(frozenset((before, edge.name)), (before, edge.name))
        name = name_pieces(c.garment, (piece.id,))
        marks = marks_on(piece)
        if marks:
            found.append(say("sheet-marked-on", pieces=name, marks=listing(marks)))
        found += [
            say(
                "sheet-marked",
                pieces=name,
                one=quoted(readable(one)),
                other=quoted(readable(other)),
            )
            for one, other in pairs.values()
        ]
    if not c.garment.pieces:
        return ()
    found += _places_on_edges(c.garment)
    found += _rows_to_mark(c.garment)
    found += [_zip_mark(Scene(c, op, frozenset())) for op in c.acting(Action.SET_ZIP)]
    has_fold = any(piece.cut is Cut.FOLD for piece in c.garment.pieces)
    notches = say("sheet-marked-notches-fold" if has_fold else "sheet-marked-notches")
    return (*found, notches, say("sheet-marked-names"))


def tell_allowances(c: Construction) -> tuple[str, ...]:
    """Say the garment's allowance, and every edge that has another one."""
    garment = c.garment
    lines = [
        say("sheet-allowance", allowance=both(garment.allowance))
        if garment.allowance is not None
        else say("sheet-allowance-none")
    ]
    for entry in garment.entries:
        mouth = (EdgeRef(piece, name) for piece in entry.pieces for name in entry.mouth)
        edges = dict.fromkeys((*entry.run, *entry.to, *mouth))
        if entry.verb in _SLITTING:
            seam = usual.told(garment, usual.PLACKET_SEAM)
            name = capital(name_edges(garment, entry.run))
            lines.append(say("sheet-allowance-slit", edges=name, seam=seam))
        if edges and entry.verb in _TELLING:
            name = capital(name_edges(garment, tuple(edges)))
            lines += _own_allowance(entry, name)
    free = _free_edges(c)
    if free:
        lines.append(say("sheet-allowance-free", edges=capital(name_edges(garment, free))))
    return tuple(lines)


def _rows(c: Construction, piece: Piece) -> Iterator[CutRow]:
    fused = [e for e in c.garment.entries if e.verb is Verb.FUSE and piece.id in e.pieces]
    title = capital(piece.title)
    layer = translated("layer", piece.layer.value)
    is_plain = piece.layer is Layer.SHELL or layer.casefold() in piece.title.casefold()
    yield CutRow(
        piece=title if is_plain else say("sheet-layer", name=title, layer=layer),
        cut=_how(c.garment, piece),
        fabric=readable(piece.fabric) if piece.fabric else say("sheet-fabric-none"),
        edges=listing(dict.fromkeys(readable(e.name) for e in piece.edges if not e.is_folded)),
        notes=tuple(_notes(c, piece)),
    )
    for entry in fused:
        yield CutRow(
            piece=title,
            cut=_how(c.garment, piece),
            fabric=readable(entry.fabric) if entry.fabric else say("sheet-interfacing"),
            notes=(_fused(c, piece, entry),),
            is_interfacing=True,
        )


def _notes(c: Construction, piece: Piece) -> Iterator[str]:
    """The size of a rectangle; that it is a strip, or wants the slant; the designer's own note."""
    size = rectangle(c, piece)
    if size is not None:
        width, height = map(both, size)
        yield say("sheet-cut-rectangle", width=width, height=height)
    if piece.is_strip:
        yield say("sheet-cut-strip")
    if any(piece.id in e.partners for e in c.garment.entries if e.verb is Verb.BIND):
        yield say("sheet-cut-slant")
    if piece.note:
        yield as_sentence(piece.note)


def _fused(c: Construction, piece: Piece, entry: Entry) -> str:
    key = "sheet-cut-fused-half" if piece.id in entry.half else "sheet-cut-fused"
    return say(key, pieces=name_pieces(c.garment, (piece.id,)))


def _zip_mark(s: Scene) -> str:
    """Where an opening ends, for whoever has no pattern that shows it."""
    values = {
        "opening": s.edge_title(s.op.segments[0]),
        "notion": s.notion_name,
        "below": stop_below(s),
    }
    if s.entry.method is ZipMethod.CENTRED:
        return say("sheet-marked-centred", **values)
    return say("sheet-marked-invisible", short=s.usual(usual.INVISIBLE_ZIP_LONGER), **values)


def _is_in_pairs(garment: Garment, piece: Piece) -> bool:
    """Whether copies are mirror images: of a pair, and the two halves of every pocket bag."""
    bags = (e.pieces for e in garment.entries if e.verb is Verb.IN_SEAM_POCKET)
    is_bag = piece.cut is Cut.ALIKE and any(piece.id in pieces for pieces in bags)
    return piece.cut is Cut.PAIR or (is_bag and piece.copies % 2 == 0)


def _how(garment: Garment, piece: Piece) -> str:
    count = piece.copies
    if piece.cut is Cut.FOLD:
        return say("sheet-cut-fold") if count == 1 else say("sheet-cut-folds", count=count)
    if _is_in_pairs(garment, piece):
        return say("sheet-cut-pair") if count == 2 else say("sheet-cut-pairs", count=count)
    if piece.like:
        return say("sheet-cut-mirrored", count=count)
    return say("sheet-cut-one") if count == 1 else say("sheet-cut-some", count=count)


def _own_allowance(entry: Entry, edges: str) -> list[str]:
    if entry.verb is Verb.SEW:
        if entry.allowance is None:
            return []
        return [say("sheet-allowance-seam", edges=edges, allowance=both(entry.allowance))]
    if entry.depth is None:
        return []
    depth = both(entry.depth)
    if entry.turned == "once":
        return [say("sheet-allowance-fold-once", edges=edges, depth=depth)]
    whole = both(whole_fold(entry.depth, entry.turned))
    first = both(usual.first_turn(entry.depth))
    return [say("sheet-allowance-fold", edges=edges, whole=whole, first=first, depth=depth)]


def _free_edges(c: Construction) -> tuple[EdgeRef, ...]:
    """Edges that nothing is sewn to and that are not folded."""
    held = {
        (segment.piece, c.rings.name(segment))
        for op in c.acting(*_HOLDING)
        for segment in op.segments
    }
    loose = {id_ for e in c.garment.entries if e.verb in _SHAPED for id_ in e.pieces}
    touched = {(s.piece, c.rings.name(s)) for op in c.operations for s in op.segments}
    return tuple(
        EdgeRef(piece.id, name)
        for piece in c.garment.pieces
        for name in piece.edge_names
        if piece.id not in loose and not piece.is_strip
        if (piece.id, name) in touched - held
    )
