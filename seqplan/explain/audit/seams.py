"""Seams that lack a press, or join what was hardly meant to be joined."""

from collections.abc import Mapping

from seqplan.base.ids import EntryId, PieceId
from seqplan.explain.audit.audit import Found, quoted, told
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.entry import Entry, SeamMethod, Verb
from seqplan.model.operation import Action
from seqplan.model.piece import Cut, Layer, Segment
from seqplan.recipes.shape import Shape
from seqplan.surface.glued import Glue
from seqplan.surface.ring import EdgeEnd

_FLATTENING = (
    Action.PRESS,
    Action.PRESS_OVER,
    Action.TOPSTITCH,
    Action.UNDERSTITCH,
    Action.ENCLOSE,
    Action.TURN,
    Action.DO,
)
"""What lays the allowances of a seam flat."""


def not_pressed(ledger: Ledger) -> Found:
    """A seam is pressed before another crosses it, because the allowances are caught as they lie.

    Stays quiet where ``without: press`` or ``not shown: press`` says that it is left out, and where
    the seam is topstitched, turned, rolled, or pressed by an operation of its own, be it along with
    what goes straight on from it, as the opening above a centre back seam.
    """
    if "press" in ledger.c.garment.not_shown:
        return
    over: dict[EntryId, EntryId] = {}
    for crossing in ledger.c.meetings.crossings:
        if crossing.runs_across and ledger.place[crossing.over] > ledger.place[crossing.under]:
            over.setdefault(crossing.under, crossing.over)
    for id_, crossed_by in over.items():
        shape = ledger.c.shapes[id_]
        if _wants_press(ledger, shape) and not _is_flattened(ledger, shape):
            yield told("not-pressed", shape.entry.path, entry=id_, over=crossed_by)


def _wants_press(ledger: Ledger, shape: Shape) -> bool:
    entry = shape.entry
    return (
        entry.verb is Verb.SEW
        and bool(shape.glues)
        and "press" not in entry.without
        and entry.how not in {SeamMethod.ROLL, SeamMethod.WRAP}
        and ledger.c.main(entry.id).setup.station != "hand"
    )


def _is_flattened(ledger: Ledger, shape: Shape) -> bool:
    rings = ledger.c.rings
    corners = (
        rings.across(EdgeEnd(segment, at_end)) for segment in shape.run for at_end in (False, True)
    )
    beyond = (corner.neighbour.segment for corner in corners if corner.is_straight)
    return any(ledger.has(segment, *_FLATTENING) for segment in (*shape.run, *beyond))


def no_seam_below_zip(ledger: Ledger) -> Found:
    """The edge that goes straight on from an opening with a zip is sewn, hemmed or zipped too.

    A finish alone leaves the garment open below the zip.
    """
    c = ledger.c
    for op in c.acting(Action.SET_ZIP):
        corners = (
            c.rings.across(EdgeEnd(segment, at_end))
            for segment in op.segments
            for at_end in (False, True)
        )
        for segment in (corner.neighbour.segment for corner in corners if corner.is_straight):
            ops = ledger.settling(segment)
            is_own = c.rings.name(segment) in {c.rings.name(s) for s in op.segments}
            if ops and not is_own and all(other.action is Action.FINISH for other in ops):
                name = c.edge_name(segment)
                yield told("no-seam-below-zip", op.path, entry=op.entry, name=name)
                break


def one_layer_boxed(ledger: Ledger) -> Found:
    """The corners of a lining are boxed if those of the outside are, and the other way round.

    Looks at layers with the same edges that hang together.
    """
    c = ledger.c
    boxed: dict[PieceId, set[str]] = {}
    entries: dict[PieceId, Entry] = {}
    for op in c.acting(Action.BOX):
        for segment in op.segments:
            boxed.setdefault(segment.piece, set()).add(c.rings.name(segment))
            entries.setdefault(segment.piece, c.entry(op))
    for id_, names in boxed.items():
        bodies = _bodies_of(ledger, id_)
        for other in c.garment.pieces:
            is_twin = other.layer is not c.garment.piece[id_].layer and other.id not in boxed
            if is_twin and names <= set(other.edge_names) and bodies & _bodies_of(ledger, other.id):
                refs = ", ".join(f"{other.id}.{n}" for n in other.edge_names if n in names)
                entry = entries[id_]
                yield told(
                    "one-layer-boxed",
                    entry.path,
                    entry=entry.id,
                    piece=id_,
                    other=other.id,
                    edges=refs,
                )


def _bodies_of(ledger: Ledger, piece: PieceId) -> set[int]:
    copies = range(ledger.c.garment.piece[piece].copies)
    has_edges = bool(ledger.c.garment.piece[piece].edges)
    return {ledger.bodies.of((piece, copy)) for copy in copies} if has_edges else set()


def copies_not_mirrored(ledger: Ledger) -> Found:
    """Two edges that are sewn together meet the same way round at both ends.

    Speaks up where the edges next to them bear the same names on both sides, and the first meets
    the last: the waist of one piece would lie at the hem of the other.
    """
    for shape in ledger.c.joins:
        entry = shape.entry
        if entry.verb is not Verb.SEW:
            continue
        glue = next((glue for glue in shape.glues if _is_upside_down(ledger, glue)), None)
        if glue is None:
            continue
        one, other = (ledger.c.edge_name(s) for s in (glue.first, glue.second))
        start, end = _neighbours(ledger, glue.first)
        pieces = {s.piece: ledger.c.garment.piece[s.piece] for s in (glue.first, glue.second)}
        alike = [piece.id for piece in pieces.values() if piece.cut is Cut.ALIKE]
        # A strip may lie either way round.
        if alike and not any(piece.is_strip for piece in pieces.values()):
            is_itself = len(pieces) == 1
            is_many = all(pieces[id_].copies > 1 for id_ in alike)
            which = "itself" if is_itself else "pair" if is_many else "like"
            yield told(
                "copies-not-mirrored",
                entry.path,
                fix=f"check-not-mirrored-{which}-fix",
                entry=entry.id,
                one=one,
                other=other,
                start=start,
                end=end,
                pieces=quoted(alike),
                like=glue.first.piece,
                piece=alike[-1],
            )


def _is_upside_down(ledger: Ledger, glue: Glue) -> bool:
    """Whether edges of the same two names lie beside both, and each meets the other one."""
    start, end = _neighbours(ledger, glue.first)
    ours, theirs = _neighbours(ledger, glue.second)
    met = (ours, theirs) if glue.aligned else (theirs, ours)
    return start != end and (end, start) == met


def _neighbours(ledger: Ledger, segment: Segment) -> tuple[str, str]:
    """The names of the edges before and after this one."""
    rings = ledger.c.rings
    before, after = (rings.across(EdgeEnd(segment, at_end)).neighbour for at_end in (False, True))
    return rings.name(before.segment), rings.name(after.segment)


def left_sewn_to_right(ledger: Ledger) -> Found:
    """Two pieces that belong side by side are sewn to each other, with ``to:``.

    Speaks up where a list without ``to:`` names edges of several pieces of one layer, no seam makes
    one run of them, and the two pieces are joined nowhere else, or one of them would be closed to a
    tube by itself, because its left and right are joined elsewhere too. Stays quiet of the two
    crotches, where the inseam makes one run of them, and of centre seams.
    """
    tubes = _closed_on_themselves(ledger)
    for shape in ledger.c.joins:
        entry = shape.entry
        pieces = list(dict.fromkeys(ref.piece for ref in entry.run))
        if entry.verb is not Verb.SEW or entry.to or len(pieces) < 2 or not shape.glues:
            continue
        if len({ledger.c.garment.piece[piece].layer for piece in pieces}) > 1:
            continue
        if _is_one_run(ledger, shape):
            continue
        is_tube = any(_is_tube(ledger, entry, piece, tubes) for piece in pieces)
        if is_tube or not _are_joined(ledger, entry, pieces):
            one, *others = map(str, entry.run)
            to = others[0] if len(others) == 1 else f"[{', '.join(others)}]"
            yield told(
                "left-sewn-to-right",
                entry.path,
                entry=entry.id,
                piece=pieces[0],
                other=pieces[1],
                one=one,
                to=to,
            )


def _is_one_run(ledger: Ledger, shape: Shape) -> bool:
    """Whether other seams make one run of edges of several pieces."""
    stretches = ledger.c.stretches.get(shape.entry.id, ())
    return any(len({segment.piece for segment in s.segments}) > 1 for s in stretches)


def _closed_on_themselves(ledger: Ledger) -> Mapping[PieceId, set[tuple[EntryId, int]]]:
    """Where the left of each piece is joined to its right: the entry, and the place of the edge."""
    found: dict[PieceId, set[tuple[EntryId, int]]] = {}
    for shape in ledger.c.joins:
        for glue in shape.glues:
            if glue.first.piece == glue.second.piece and glue.first.place == glue.second.place:
                place = (shape.entry.id, glue.first.place)
                found.setdefault(glue.first.piece, set()).add(place)
    return found


def _is_tube(
    ledger: Ledger,
    entry: Entry,
    piece: PieceId,
    tubes: Mapping[PieceId, set[tuple[EntryId, int]]],
) -> bool:
    """Whether left and right of a piece are joined elsewhere too, apart from this edge."""
    found = ledger.c.garment.piece[piece]
    if found.cut is Cut.FOLD:
        return found.layer is Layer.SHELL
    count = len(found.edges)
    ours = {place for id_, place in tubes.get(piece, ()) if id_ == entry.id}
    others = {place for id_, place in tubes.get(piece, ()) if id_ != entry.id}
    return any((one - other) % count not in {0, 1, count - 1} for one in ours for other in others)


def _are_joined(ledger: Ledger, entry: Entry, pieces: list[PieceId]) -> bool:
    """Whether another seam joins two of the pieces."""
    return any(
        len(shape.skins.intersection(pieces)) > 1
        for shape in ledger.c.joins
        if shape.entry.id != entry.id
    )
