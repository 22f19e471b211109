"""What runs over several edges, and what has to be done before a run is folded or closed."""

from collections.abc import Iterator

from seqplan.base.ids import OpId
from seqplan.model.entry import SeamMethod, Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.shape import COVERING
from seqplan.rehearse.trouble import Trouble
from seqplan.rehearse.work import Work
from seqplan.surface.ring import EdgeEnd


def continuous(work: Work, op: Operation) -> Iterator[Trouble]:
    """What runs over several edges needs the seams between them."""
    entry, shape = work.c.entry(op), work.c.shapes[op.entry]
    is_run = bool(shape.glues) or entry.verb in COVERING or entry.verb is Verb.INSERT
    if op != work.c.opening(op.entry) or not shape.run or not is_run:
        return
    whole = work.c.stretches[entry.id]
    now = work.c.stretches_on(work.surface, entry.id)
    if entry.is_flat or entry.how is SeamMethod.FLAT:
        rings = [stretch for stretch in now if stretch.is_ring]
        sewn = [work.joined[e] for s in rings for e in s.junctions if e in work.joined]
        if sewn:
            yield Trouble(op.id, "no-longer-flat", blame=sewn[-1])
        if entry.is_flat:
            return
    wants_rings = entry.in_the_round or entry.verb in COVERING
    closed, closed_now = (sum(s.is_ring for s in found) for found in (whole, now))
    if len(now) > len(whole) or (wants_rings and closed_now < closed):
        junctions = dict.fromkeys(e for stretch in whole for e in stretch.junctions)
        joining = [work.c.main(id_).id for id_ in junctions]
        missing = [id_ for id_ in joining if id_ not in work.done]
        if missing:
            # A run that closes into a ring is one run as soon as all but one of them are sewn.
            yield Trouble(op.id, "not-continuous", missing=missing[0], instead=tuple(missing[1:]))
    for id_ in dict.fromkeys(e for stretch in now for e in stretch.junctions):
        closing = work.c.closing(id_).id
        if id_ in work.joined and closing not in work.done:
            yield Trouble(op.id, "not-closed-over", missing=closing)


def single(work: Work, op: Operation) -> Iterator[Trouble]:
    """The ends of a strip, or of the strips of one band, are joined while they lie single."""
    pieces = op.pieces if op.action is Action.SEW else frozenset()
    if pieces and all(work.c.garment.piece[piece].is_strip for piece in pieces):
        for fold in work.c.acting(Action.FOLD_BAND):
            if fold.id in work.done and pieces <= fold.pieces:
                yield Trouble(op.id, "folded-already", blame=fold.id)
                return


def before_the_band_closes(work: Work, op: Operation) -> Iterator[Trouble]:
    """The ends of a zip lie inside the band above it."""
    for segment in op.segments if op.action is Action.SET_ZIP else ():
        for at_end in (False, True):
            other = work.c.rings.across(EdgeEnd(segment, at_end)).neighbour.segment
            close = work.mark(other, {Action.CLOSE_BAND})
            band = work.mark(other, {Action.SET_ON})
            ends = work.c.doing(work.c.op[band].entry, Action.CLOSE_ENDS) if band else ()
            done = [e.id for e in ends if e.id in work.done and e.part != "join"]
            close = done[0] if done else close
            if close is not None and not _runs_over(work, op, close):
                yield Trouble(op.id, "band-closed-already", blame=close)
                return


def _runs_over(work: Work, op: Operation, close: OpId) -> bool:
    """Whether a zip goes on up the end of the band, so that it lies beside it and not in it."""
    band = set(work.c.entry(work.c.op[close]).partners)
    return any(segment.piece in band for segment in op.segments)


def ends_before_wrapping(work: Work, op: Operation) -> Iterator[Trouble]:
    """The ends of a band are closed while it still stands up."""
    if op.action is Action.CLOSE_ENDS and op.part != "join":
        for other in work.c.of_entry[op.entry]:
            if other.action is Action.WRAP and other.id in work.done:
                yield Trouble(op.id, "wrapped-already", blame=other.id)


def beside_a_channel(work: Work, op: Operation) -> Iterator[Trouble]:
    """An edge in which a channel ends is hemmed before, or the hem closes the channel."""
    is_hemmed = op.action in {Action.TURN_UP, Action.HEM}
    if not is_hemmed or work.c.entry(op).verb is Verb.CASING:
        return
    for segment in op.segments:
        for at_end in (False, True):
            other = work.c.rings.across(EdgeEnd(segment, at_end)).neighbour.segment
            fold = work.mark(other, {Action.TURN_UP})
            if fold is not None and _is_open_channel(work, work.c.op[fold]):
                yield Trouble(op.id, "closes-channel", blame=fold)
                return


def _is_open_channel(work: Work, fold: Operation) -> bool:
    """Whether a fold is a channel in which something is still to be drawn, or a cord to run."""
    if work.c.entry(fold).verb is not Verb.CASING:
        return False
    threads = [t for t in work.c.acting(Action.THREAD) if work.c.entry(t).into == fold.entry]
    kinds = (work.c.garment.notion[n].kind.casefold() for t in threads for n in t.notions)
    stays = all("elastic" in kind or "wire" in kind for kind in kinds)
    return not (threads and stays and all(thread.id in work.done for thread in threads))
