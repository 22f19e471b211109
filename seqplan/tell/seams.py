"""Sentences for seams: laying together, catching things between, stitching, basting."""

from collections.abc import Iterator

from seqplan.base.ids import PieceId
from seqplan.base.measure import Length, both
from seqplan.model.entry import Caught, Entry, Portion, SeamKind, SeamMethod, Sides, Verb
from seqplan.model.garment import Garment
from seqplan.model.operation import Action
from seqplan.model.piece import EdgeRef
from seqplan.surface.ring import EdgeEnd
from seqplan.tell import usual
from seqplan.tell.names import (
    in_garment_order,
    listing,
    name_copies,
    name_edge,
    name_edges,
    name_pieces,
    name_seam,
    name_seam_plainly,
    notion_words,
    quoted,
    readable,
)
from seqplan.tell.notches import notches_that_meet
from seqplan.tell.scene import Scene
from seqplan.tell.sentence import Told
from seqplan.tell.tubes import Tubes
from seqplan.tell.turning import gap_to_draw_through
from seqplan.words.say import say

CHAINING = frozenset({"overlocker", "coverstitch"})
"""Machines that sew forwards only and leave a chain of threads at the ends of a row."""


def sew(s: Scene) -> Told:
    """The stitching that makes a seam, or the first row of a French one."""
    if s.entry.seam is SeamKind.LAPPED and s.entry.to:
        return _lap(s)
    texts = [say(open_first(s))] if s.crosses_zip else []
    texts += [*_turned_first(s), *_caught(s), *_rolled(s), _lay(s), *matching(s), stitch(s)]
    texts += [*_in_one(s), *_ends(s), *_short_of_fold(s)]
    if s.crosses_zip:
        texts.append(say("step-over-zip"))
    texts += [*_round_bags(s), *_drawn_out(s)]
    if gap_to_draw_through(s) is not None:
        texts.append(say("step-push-back-in"))
    if s.turns_corner:
        texts.append(_round_corners(s))
    if s.is_once_for_each_side:
        texts.append(say("step-twice-sides"))
    elif s.count > 1:
        texts.append(say("step-seam-times", count=s.count))
    if s.entry.cuts is not None and s.entry.seam is SeamKind.OVERLOCKED:
        texts.append(say("step-knife", cuts=both(s.entry.cuts)))
    return Told(tuple(texts), say(_check(s)))


def _in_one(s: Scene) -> list[str]:
    """That both copies are one seam, over the seams at which they meet."""
    if not s.entry.is_in_one or not s.crossed or s.is_ring:
        return []
    return [say("step-in-one", seams=_the_seams(s))]


def _round_corners(s: Scene) -> str:
    """That the row goes on round corners, and along which edges in which order."""
    (segments, _, is_ring, _) = s.stretches[0]
    if is_ring:
        return say("step-turned-at-corner")
    # The two halves of an edge that goes over a fold count as one.
    met = zip((None, *segments), segments, strict=False)
    path = [x for before, x in met if before is None or before.place != x.place]
    edges = listing(quoted(readable(s.c.rings.name(segment))) for segment in path)
    return say("step-turned-along", edges=edges)


def _check(s: Scene) -> str:
    """What to look at: the seams that it crosses, else its layers as far as the row runs."""
    if s.crossed:
        return "step-check-crossing"
    is_part = s.entry.gap is not None or s.entry.portion is not None
    if is_part:
        return "step-check-seam-part"
    return "step-check-seam-all" if s.entry.between else "step-check-seam"


def _lap(s: Scene) -> Told:
    """One edge, pressed under, on the right side of the other."""
    other = name_edges(s.garment, s.entry.to)
    values = {"one": s.edges, "other": other}
    if s.allowance is None:
        lay = say("step-lap-unknown", **values)
    else:
        lay = say("step-lap", allowance=both(s.allowance), **values)
    row = say("step-lap-stitch", distance=s.usual(usual.EDGE_STITCH))
    texts = (*_caught(s), lay, *matching(s), row, *_ends(s), *again(s))
    return Told(texts, say("step-check-lap"))


def enclose(s: Scene) -> Told:
    """The second row of a French or flat-felled seam."""
    if s.entry.seam is SeamKind.FLAT_FELLED:
        text = say("step-fell", seam=s.seam, distance=s.usual(usual.EDGE_STITCH))
        return Told((text, *again(s)), say("step-check-fell"))
    if s.allowance is None:
        text = say("step-enclose-unknown", seam=s.seam)
    else:
        rows = usual.french_rows(s.allowance)
        text = say("step-enclose", seam=s.seam, second=both(rows.second))
    return Told((text, *_ends(s), *again(s)), say("step-check-enclosed"))


def baste(s: Scene) -> Told:
    """Basting that holds two edges until a seam does."""
    if s.entry.method is not None:
        return _baste_for_zip(s)
    key = "step-baste-alone" if s.is_alone else "step-baste"
    if _suffix(s) and not s.is_alone:
        key = "step-baste-wrong" if _suffix(s) == "-french" else "step-baste-over"
    values = {"distance": s.usual(usual.BASTE_OUTSIDE)}
    if s.is_alone:
        values |= {"pieces": name_copies(s.garment, s.piece_ids), "edges": s.edges}
    else:
        values |= {"one": s.edges, "other": name_edges(s.garment, s.entry.to)}
    if s.allowance is None:
        return Told((say(f"{key}-unknown", **values),))
    return Told((say(key, allowance=both(s.allowance), **values),))


def again(s: Scene) -> tuple[str, ...]:
    """That it is done on the other side too, or on all others."""
    if s.count < 2:
        return ()
    if s.is_once_for_each_side:
        return (say("step-other-side"),)
    if s.count == 2:
        return (say("step-the-other"),)
    return (say("step-the-others", count=s.count),)


def open_first(s: Scene) -> str:
    """That a zip is opened, or stays open where a step before has opened it."""
    is_open = any(op.id in s.before for op in s.c.acting(Action.OPEN))
    return "step-zip-stays-open" if is_open else "step-open-zip-first"


def _lay(s: Scene) -> str:
    suffix = _suffix(s)
    if s.tubes is not None:
        return _slip_in(s, s.tubes, suffix)
    gap = gap_to_draw_through(s)
    if gap is not None:
        other = name_edges(s.garment, s.entry.to)
        return say("step-lay-drawn-out", gap=name_seam(s.garment, gap), one=s.edges, other=other)
    if s.joins_itself and suffix != "-over" and not s.has_halves:
        return _fold_over(s, suffix)
    if s.is_alone:
        edges = listing(dict.fromkeys(name_edge(ref) for ref in s.refs))
        key = "step-lay-alone" if len(s.piece_ids) == 1 else "step-lay-halves"
        return say(f"{key}{suffix}", pieces=name_copies(s.garment, s.piece_ids), edges=edges)
    other = name_edges(s.garment, s.entry.to)
    return say(f"step-lay{suffix}", one=s.edges, other=other)


def _inner_tube(s: Scene, tubes: Tubes) -> list[PieceId]:
    """The tube that is slipped into the other; of two alike that which the seam names first."""
    inner = [id_ for id_ in s.piece_ids if id_ in tubes.inner]
    one, other = ({ref.piece for ref in refs} for refs in (s.entry.run, s.entry.to))
    if not inner and other and not one & other:
        inner = [id_ for id_ in s.piece_ids if id_ in one]
    return inner


def _turned_first(s: Scene) -> list[str]:
    """That a tube is turned before anything is laid on its right side."""
    if s.tubes is None or _suffix(s):
        return []
    inner = _inner_tube(s, s.tubes)
    laid_on = (_carriers(s, caught, place) for place, caught in enumerate(s.entry.between))
    if not any(ref.piece in inner for refs in laid_on for ref in refs):
        return []
    return [say("step-turn-first", pieces=name_pieces(s.garment, inner))]


def _short_of_fold(s: Scene) -> list[str]:
    """That the ends of two layers stay open where one of them is folded up later, as in a stand."""
    joined = set(s.piece_ids)
    near = set(s.beside(s.op.segments, at_mark=False))
    for entry in s.garment.entries:
        if entry.verb is not Verb.BAND or set(entry.partners) != joined or len(joined) == 1:
            continue
        glues = s.c.shapes[entry.id].glues
        edges = {x for glue in glues for x in (glue.first, glue.second) if x.piece in joined}
        names = dict.fromkeys(EdgeRef(x.piece, s.c.rings.name(x)) for x in sorted(edges & near))
        if names:
            return [say("step-short-of-fold", edges=name_edges(s.garment, tuple(names)))]
    return []


def _slip_in(s: Scene, tubes: Tubes, suffix: str) -> str:
    """One tube into the other."""
    inner = _inner_tube(s, tubes)
    if not inner or suffix == "-over":
        return say(f"step-lay-tubes{suffix}", edges=s.all_edges)
    outer = [id_ for id_ in s.piece_ids if id_ not in inner]
    names = {"inner": name_pieces(s.garment, inner), "outer": name_pieces(s.garment, outer)}
    key = "step-lay-into-turned" if _turned_first(s) else f"step-lay-into{suffix}"
    return say(key, edges=s.all_edges, **names)


def _fold_over(s: Scene, suffix: str) -> str:
    """Each copy folded by itself, so that nobody sews two of them together."""
    pieces = name_pieces(s.garment, s.piece_ids)
    one = listing(dict.fromkeys(name_edge(ref) for ref in s.refs))
    if s.is_alone:
        return say(f"step-lay-itself-alone{suffix}", pieces=pieces, edges=one)
    other = listing(dict.fromkeys(name_edge(ref) for ref in s.entry.to))
    count = s.copies(s.piece_ids)
    return say(f"step-lay-itself{suffix}", count=count, pieces=pieces, one=one, other=other)


def _suffix(s: Scene) -> str:
    """Which sides lie together: right sides where nothing else is said."""
    if s.entry.seam is SeamKind.FRENCH or s.entry.sides is Sides.WRONG_TOGETHER:
        return "-french"
    return "-over" if s.entry.sides is Sides.RIGHT_TO_WRONG else ""


def _rolled(s: Scene) -> list[str]:
    """That the body is rolled up, or wrapped, so that the layers close round it."""
    if s.entry.how is SeamMethod.ROLL:
        return [say("step-roll-first")]
    return [say("step-wrap-first")] if s.entry.how is SeamMethod.WRAP else []


def _drawn_out(s: Scene) -> list[str]:
    if s.entry.how in {SeamMethod.ROLL, SeamMethod.WRAP}:
        return [say("step-roll-out")]
    return []


def _caught(s: Scene) -> list[str]:
    """What is caught between the layers, and where: it is pinned to one of them first."""
    texts = [
        text
        for place, caught in enumerate(s.entry.between)
        for text in _caught_one(s, caught, place)
    ]
    notions = [s.garment.notion[c.notion] for c in s.entry.between if c.notion]
    if s.count == 2 and any("zip" in notion.kind for notion in notions):
        texts.append(say("step-caught-zip-second"))
    return texts


def _caught_one(s: Scene, caught: Caught, place: int) -> list[str]:
    by = _carriers(s, caught, place)
    where = name_edges(s.garment, by)
    if caught.edge is not None:
        name = name_edges(s.garment, (caught.edge,))
        if is_strap(s.garment, caught.edge.piece):
            return [say("step-caught-end", name=name, place=where)]
        made = _made_up(s, caught.edge)
        if len(made) > 1:
            pieces = name_pieces(s.garment, made)
            text = say("step-caught-made", made=pieces, name=name, place=where)
        else:
            text = say("step-caught-edge", name=name, place=where)
        is_middle = all(_is_over_fold(s.garment, ref) for ref in (caught.edge, *by))
        return [text, say("step-caught-middle")] if is_middle else [text]
    if caught.piece is not None:
        name = name_pieces(s.garment, (caught.piece,))
        return [say("step-caught", name=name, place=where)]
    kind = s.garment.notion[caught.notion].kind if caught.notion else ""
    key = "step-caught"
    if "zip" in kind:
        key = "step-caught-zip"
    elif any(word in kind for word in ALONG):
        key = "step-caught-along"
    elif any(word in kind for word in STAYS):
        key = "step-caught-stay"
    return [say(key, name=say("step-the", name=notion_words(kind)), place=where)]


def _carriers(s: Scene, caught: Caught, place: int) -> tuple[EdgeRef, ...]:
    """The edges on which something is laid that a seam will catch.

    That which the author names; of a lapped seam the lower layer; what stays outside; else the
    edge of the same place in the list, or all of that side.
    """
    if caught.at is not None:
        return (caught.at,)
    run, to = s.entry.run, s.entry.to
    if s.entry.seam is SeamKind.LAPPED and to:
        return to
    inner = set(s.inner())
    if all(ref.piece in inner for ref in run) and to:
        return to
    return (run[place],) if len(s.entry.between) == len(run) else run


def _made_up(s: Scene, edge: EdgeRef) -> tuple[PieceId, ...]:
    """The layers that are caught as one with an edge, its own piece first: a collar has two."""
    riders = {rider.first for rider in s.c.shapes[s.entry.id].riders}
    alike = (x.piece for x in sorted(riders) if s.c.rings.name(x) == edge.edge)
    made = dict.fromkeys((edge.piece, *alike))
    others = {c.edge.piece for c in s.entry.between if c.edge} - {edge.piece}
    return in_garment_order(s.garment, (id_ for id_ in made if id_ not in others))


def _is_over_fold(garment: Garment, ref: EdgeRef) -> bool:
    """Whether an edge goes on over the fold of its piece, so that it has its middle there."""
    piece = garment.piece[ref.piece]
    return piece.stretches(ref.edge, ref.hand) < len(piece.segments(ref.edge, ref.hand))


ALONG = ("piping", "lace", "trimming", "braid", "rickrack", "fringe")
"""Kinds of notion that lie along a seam and look out of it, not only with an end in it."""

STAYS = ("elastic", "tape", "stay")
"""Kinds of notion that lie along a seam line and keep the seam from growing."""


def is_strap(garment: Garment, piece: PieceId) -> bool:
    """Whether a piece is a strap or a strip, of which only the end is caught."""
    straps = (e.pieces for e in garment.entries if e.verb is Verb.STRAP)
    return garment.piece[piece].is_strip or any(piece in pieces for pieces in straps)


def _round_bags(s: Scene) -> list[str]:
    """That the seam goes round the bags of pockets that were sewn to its edges."""
    if not s.meets_bags:
        return []
    if s.allowance is None:
        return [say("step-round-bag-unknown")]
    return [say("step-round-bag", allowance=both(s.allowance))]


def matching(s: Scene) -> tuple[str, ...]:
    """That notches meet, and the seams which the run crosses."""
    notches, names = notches_that_meet(s), _crossed_names(s)
    if not names:
        return notches
    if len(names) == 1:
        return (*notches, say("step-match-seam", seams=names[0]))
    return (*notches, say("step-match-seams", seams=_the_seams(s)))


def _crossed_names(s: Scene) -> tuple[str, ...]:
    return tuple(dict.fromkeys(map(name_seam_plainly, _crossed_seams(s))))


def _crossed_seams(s: Scene) -> Iterator[Entry]:
    """The seams that are crossed, each with those of its edges that end there."""
    ends = (EdgeEnd(segment, at) for segment in s.op.segments for at in (False, True))
    near = {s.c.rings.across(end).neighbour.segment for end in ends}
    met = {(x.piece, s.c.rings.name(x)) for x in near}
    for entry in s.crossed:
        if entry.verb is Verb.SEW:
            run, to = (
                tuple(ref for ref in refs if (ref.piece, ref.edge) in met)
                for refs in (entry.run, entry.to)
            )
            is_told = run and (to or not entry.to)
            yield entry._replace(run=run, to=to) if is_told else entry


def _the_seams(s: Scene) -> str:
    """The seams that are crossed, with their layers where there are several."""
    names = _crossed_names(s)
    if len(names) > 1:
        seams = _crossed_seams(s)
        names = tuple(dict.fromkeys(name_seam(s.garment, entry) for entry in seams))
    return listing(say("step-the", name=name) for name in names)


def stitch(s: Scene) -> str:
    """The row itself: how far from the raw edges, whether all the way round, what stays open."""
    if s.entry.gap is not None and s.entry.portion is None:
        return _stitch_gap(s, s.entry.gap)
    if s.entry.portion is not None:
        return _stitch_portion(s, s.entry.portion)
    if s.allowance is None:
        is_french = s.entry.seam is SeamKind.FRENCH
        return say("step-stitch-french-unknown" if is_french else "step-stitch-unknown")
    allowance = both(s.allowance)
    if s.entry.seam is SeamKind.FRENCH:
        rows = usual.french_rows(s.allowance)
        measures = {"first": both(rows.first), "second": both(rows.second)}
        return say("step-stitch-french", allowance=allowance, **measures)
    chain = "-chain" if s.op.setup.station in CHAINING else ""
    if s.is_ring:
        overlap = s.usual(usual.OVERLAP_OF_STITCHING)
        return say(f"step-stitch-ring{chain}", allowance=allowance, overlap=overlap)
    return say(f"step-stitch{chain}", allowance=allowance)


def _stitch_gap(s: Scene, gap: Length) -> str:
    """A row that leaves a gap; how it is used later."""
    key = "step-stitch-gap"
    turns = (e for e in s.garment.entries if e.verb is Verb.TURN and turns_through_gap(e))
    is_turned = any(set(e.pieces) & s.op.pieces for e in turns)
    if is_turned or s.c.doing(s.entry.id, Action.TURN):
        key = "step-stitch-gap-turn"
    if s.allowance is None:
        return say(f"{key}-unknown", gap=both(gap))
    return say(key, gap=both(gap), allowance=both(s.allowance))


def turns_through_gap(entry: Entry) -> bool:
    """Whether pieces are turned through the gap of a seam, and not some other way."""
    return not entry.through or "gap" in entry.through.casefold()


def _stitch_portion(s: Scene, portion: Portion) -> str:
    key = "step-stitch-part" if portion.is_named_part else "step-stitch-stop"
    values = {"length": both(portion.length), "neighbour": quoted(readable(portion.neighbour))}
    if s.allowance is None:
        return say(f"{key}-unknown", **values)
    return say(key, allowance=both(s.allowance), **values)


def _ends(s: Scene) -> list[str]:
    """Where the seam ends at a mark and its edges go on open."""
    texts = []
    for segment in s.beside(s.op.segments, at_mark=True):
        op = s.zip_at(segment)
        if op is not None and op.id in s.before:
            texts.append(say("step-below-zip"))
        elif s.entry.portion is None:
            texts.append(say("step-at-mark", edge=s.edge_title(segment)))
    return texts


def _baste_for_zip(s: Scene) -> Told:
    if s.allowance is None:
        return Told((say("step-zip-baste-plain", edges=s.edges),))
    return Told((say("step-zip-baste", edges=s.edges, allowance=both(s.allowance)),))


TELLERS = {
    Action.SEW: sew,
    Action.ENCLOSE: enclose,
    Action.BASTE: baste,
}
