"""How work is turned: through a gap, through a seam, and what is drawn out of it once more."""

from seqplan.model.entry import Entry, Verb
from seqplan.model.operation import Action
from seqplan.model.piece import Layer
from seqplan.tell.names import as_clause, name_pieces, name_seam, readable
from seqplan.tell.scene import Scene
from seqplan.words.say import say

_ARTICLE = "the "


def turned_through(s: Scene) -> str:
    """The sentence that turns work through what the author names."""
    through = as_clause(s.entry.through or "")
    seam = _seam_called(s, through)
    if seam is not None:
        ids = tuple(dict.fromkeys(ref.piece for ref in (*seam.run, *seam.to)))
        drawn = [id_ for id_ in ids if s.garment.piece[id_].copies > 1]
        still = [id_ for id_ in ids if id_ not in drawn]
        if drawn and still:
            names = {
                "seam": name_seam(s.garment, seam),
                "drawn": name_pieces(s.garment, drawn),
                "still": name_pieces(s.garment, still),
            }
            return say("step-turn-through-seam", pieces=s.pieces, through=through, **names)
    return say("step-turn-through", pieces=s.pieces, through=through)


def _seam_called(s: Scene, name: str) -> Entry | None:
    """The seam, sewn by now, that the author calls so."""
    plain = name.casefold().removeprefix(_ARTICLE)
    for entry in s.garment.entries:
        names = {readable(entry.id).casefold(), (entry.title or "").casefold()}
        is_sewn = entry.verb is Verb.SEW and s.c.main(entry.id).id in s.before
        if is_sewn and plain in names and entry.to:
            return entry
    return None


def gap_to_draw_through(s: Scene) -> Entry | None:
    """The gap through which two ends are drawn out to be sewn to one another all the way round.

    So the last seams of a lining are sewn that was turned before: each end is a ring of outside
    and lining, and they can meet right sides together only outside of the work.
    """
    layers = {s.garment.piece[id_].layer for id_ in s.piece_ids}
    if (
        not s.is_ring
        or s.is_alone
        or s.tubes is not None
        or not {
            Layer.SHELL,
            Layer.LINING,
        }
        <= layers
    ):
        return None
    turned = (op for op in s.c.acting(Action.TURN) if op.id in s.before)
    if not any(s.c.entry(op).verb is Verb.TURN and s.op.pieces <= op.pieces for op in turned):
        return None
    closed = {s.c.entry(op).closes for op in s.c.acting(Action.CLOSE_GAP) if op.id in s.before}
    for entry in s.garment.entries:
        is_sewn = entry.verb is Verb.SEW and s.c.main(entry.id).id in s.before
        if is_sewn and entry.gap is not None and entry.id not in closed:
            return entry
    return None
