"""Sentences for what is folded: hems and casings, and what is drawn through a casing."""

from seqplan.base.measure import Length, both
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.model.piece import EdgeRef, Worn
from seqplan.shape.curve import is_straight
from seqplan.shape.outline import Laid, lay
from seqplan.tell import usual
from seqplan.tell.names import as_clause, in_garment_order, name_pieces
from seqplan.tell.scene import Scene
from seqplan.tell.seams import again
from seqplan.tell.sentence import Told
from seqplan.words.say import say

_HAND = "hand"
_COVERSTITCH = "coverstitch"


def turn_up(s: Scene) -> Told:
    """Folding and pressing a hem or casing."""
    ring = "-ring" if s.is_ring else ""
    check = say(f"step-check-turn-up{ring}")
    if s.entry.depth is None:
        return Told((say("step-turn-up-unknown", edges=s.edges), *again(s)), check)
    values = {"edges": s.edges, "depth": both(s.entry.depth)}
    after = (*_eased(s, s.entry.depth), *again(s))
    if s.entry.turned == "once":
        return Told((say(f"step-turn-up-once{ring}", **values), *after), check)
    first = both(usual.first_turn(s.entry.depth))
    return Told((say(f"step-turn-up-twice{ring}", first=first, **values), *after), check)


def _eased(s: Scene, depth: Length) -> tuple[str, ...]:
    """What to do where a deep hem that runs all round is not as long as what it lies on."""
    is_deep = s.entry.verb is Verb.HEM and s.is_ring and depth.mm >= usual.DEEP_HEM
    if not is_deep or all(_is_straight(s, ref) for ref in s.refs):
        return ()
    return (say("step-turn-up-ease"),)


def _is_straight(s: Scene, ref: EdgeRef) -> bool:
    """Whether an edge is known to be one straight line, square to those beside it."""
    laid = lay(s.garment.piece[ref.piece])
    if laid is None:
        return False
    edges = s.garment.piece[ref.piece].edges
    places = [place for place, edge in enumerate(edges) if edge.name == ref.edge]
    return all(_is_square(laid, place) for place in places)


def _is_square(laid: Laid, place: int) -> bool:
    paths = laid.edges
    line = paths[place]
    if not all(map(is_straight, line)):
        return False
    along = line[-1][-1] - line[0][0]
    last = len(paths) - 1
    before = None if laid.is_fold and place == 0 else paths[place - 1]
    after = None if laid.is_fold and place == last else paths[(place + 1) % len(paths)]
    beside = [path[-1][-1] - path[-1][-2] for path in (before,) if path]
    beside += [path[0][1] - path[0][0] for path in (after,) if path]
    reach = [abs((way * along.conjugate()).real) / abs(way * along) for way in beside]
    return all(share < _SQUARE for share in reach)


_SQUARE = 0.05
"""The cosine of an angle that is as good as a right one: 87 degrees."""


def hem(s: Scene) -> Told:
    """Sewing a hem by hand or machine."""
    ring = "-ring" if s.is_ring else ""
    check = say("step-check-hem")
    if s.op.setup.station == _HAND:
        values = {"edges": s.edges, "apart": s.usual(usual.SLIP_STITCH_APART)}
        if s.entry.turned == "once":
            text = say(f"step-hem-hand-once{ring}", back=s.usual(usual.BLIND_BACK), **values)
            return Told((text, *again(s)), check)
        return Told((say(f"step-hem-hand{ring}", **values), *again(s)), check)
    if s.op.setup.station == _COVERSTITCH:
        return Told((_cover(s, ring), *again(s)), check)
    text = say(f"step-hem-machine{ring}", edges=s.edges, **_row(s))
    return Told((text, *again(s)), check)


def _cover(s: Scene, ring: str) -> str:
    """A hem that is sewn from the right side, so that the loops cover its raw edge."""
    if s.entry.depth is None:
        return say(f"step-hem-cover{ring}-unknown", edges=s.edges, **_overlap(s))
    inside = usual.usual(s.garment, usual.EDGE_STITCH).mm
    row = Length(max(s.entry.depth.mm - inside, s.entry.depth.mm / 2), s.entry.depth.written_in)
    return say(f"step-hem-cover{ring}", edges=s.edges, row=both(row), **_overlap(s))


def case(s: Scene) -> Told:
    """Stitching a casing."""
    check = say("step-check-case")
    if s.entry.gap is None:
        key = "step-case-ring" if s.is_ring else "step-case"
        return Told((say(key, edges=s.edges, **_row(s)), *again(s)), check)
    values = {"edges": s.edges, "gap": both(s.entry.gap), "distance": _row(s)["distance"]}
    backs = [id_ for id_ in s.piece_ids if s.garment.piece[id_].worn is Worn.BACK]
    if not backs:
        return Told((say("step-case-gap", **values), *again(s)), check)
    place = name_pieces(s.garment, in_garment_order(s.garment, backs))
    return Told((say("step-case-gap-at", place=place, **values), *again(s)), check)


def thread(s: Scene) -> Told:
    """Drawing elastic or cord through a casing."""
    notion = s.notion
    values = {"notion": s.notion_name, "edges": s.edges}
    texts = _cutting_to_length(s)
    if "elastic" in s.notion_kind:
        texts.append(say("step-thread-elastic", **values))
        return Told((*texts, *again(s)), say("step-check-elastic"))
    is_round = s.count == 2 and not s.is_ring
    texts.append(say("step-thread-cord-round" if is_round else "step-thread-cord", **values))
    count = notion.count if notion else 1
    if is_round and count == 2:
        texts.append(say("step-thread-second-cord"))
    elif count > 1:
        texts.append(say("step-thread-more-cords", count=count))
    return Told(tuple(texts), say("step-check-cord"))


def join_ends(s: Scene) -> Told:
    """Joining the ends of elastic."""
    overlap = s.entry.overlap or usual.usual(s.garment, usual.ELASTIC_OVERLAP)
    text = say("step-join-ends", notion=s.notion_name, overlap=both(overlap))
    return Told((text, *again(s)), say("step-check-ends"))


def close_gap(s: Scene) -> Told:
    """Closing the gap through which elastic was drawn."""
    casing = s.garment.entry[s.entry.into] if s.entry.into else s.entry
    check = say("step-check-gap")
    gap = both(casing.gap) if casing.gap else ""
    return Told((say("step-close-gap", gap=gap), *again(s)), check)


def whole_fold(depth: Length, turned: str | None) -> Length:
    """How much cloth a hem or casing takes up below its fold line."""
    if turned == "once":
        return depth
    return Length(depth.mm + usual.first_turn(depth).mm, depth.written_in)


def _row(s: Scene) -> dict[str, str]:
    return {"distance": s.usual(usual.EDGE_STITCH), **_overlap(s)}


def _overlap(s: Scene) -> dict[str, str]:
    return {"overlap": s.usual(usual.OVERLAP_OF_STITCHING)} if s.is_ring else {}


def _cutting_to_length(s: Scene) -> list[str]:
    notion = s.notion
    if notion is None or notion.length is None:
        return []
    if notion.by_size:
        return [say("step-thread-length-size", notion=s.notion_name)]
    values = {"notion": s.notion_name, "length": both(notion.length)}
    if notion.count > 1:
        return [say("step-thread-lengths", count=notion.count, **values)]
    if notion.note:
        return [say("step-thread-length-note", note=as_clause(notion.note), **values)]
    return [say("step-thread-length", **values)]


TELLERS = {
    Action.TURN_UP: turn_up,
    Action.HEM: hem,
    Action.CASE: case,
    Action.THREAD: thread,
    Action.JOIN_ENDS: join_ends,
    Action.CLOSE_GAP: close_gap,
}
