"""The unit in hand: what hangs together after an operation, what is open, which side is out."""

from collections.abc import Iterable, Sequence
from enum import Enum
from typing import Final, NamedTuple

from seqplan.base.ids import PieceId
from seqplan.draw.pattern import Pattern
from seqplan.draw.unit_faces import CannotLieFlatError
from seqplan.draw.unit_place import Placed, Placer, is_inside, within
from seqplan.model.entry import SeamKind, Sides, Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Layer, Segment, Worn
from seqplan.recipes.construction import Construction
from seqplan.recipes.recipe import MAIN
from seqplan.rehearse.work import Work
from seqplan.surface.glued import Disc, Glue, Surface
from seqplan.surface.ring import EdgeEnd
from seqplan.tell.names import readable


class Need(Enum):
    """Why words fail, so that the unit in hand is shown."""

    TURNED = "turned"
    CLOSED = "closed"
    """A seam closes a tube."""
    BAG = "bag"
    """One row goes on round corners and makes a bag of two layers."""
    ROUND = "round"
    """Two tubes are joined, or an edge is folded all the way round."""
    THREADED = "threaded"
    GAP = "gap"
    TRIED = "tried"
    """It is tried on, or looked over."""


_GAP: Final = "gap"
_ASKEW: Final = 0.15
"""How much of a strip may look out from behind."""


class Opening(NamedTuple):
    """A way in: the free edges all round it."""

    segments: tuple[Segment, ...]
    names: tuple[str, ...]


class Unit(NamedTuple):
    """The unit in hand, laid flat.

    Parameters
    ----------
    need
        Why it is shown.
    placed
        Its pieces in their places, right side out.
    openings
        Its free edges, loop by loop; one loop is that of a sheet.
    active
        The cut edges that this step works on.
    sewn
        The cut edges that are sewn to others.
    gaps
        Cut edges of seams with a part left open.
    is_right_out
        Whether the right side is out.
    is_twice
        Whether there are two of them, the second the mirror image of the first.
    is_from_behind
        Whether it lies on its front, so that what this step does can be seen.
    notion
        What is drawn through the edges that this step works on.
    through
        The way out when the work is turned, in the author's words.
    is_slipped_in
        Whether one part of it lies in the other while they are sewn together.
    """

    need: Need
    placed: tuple[Placed, ...]
    openings: tuple[Opening, ...]
    active: frozenset[Segment]
    sewn: frozenset[Segment]
    gaps: frozenset[Segment]
    is_right_out: bool
    is_twice: bool
    is_from_behind: bool = False
    notion: str = ""
    through: str = ""
    is_slipped_in: bool = False

    @property
    def is_through_gap(self) -> bool:
        """Whether the work is turned through the gap that is shown."""
        is_gap = not self.through or _GAP in self.through.casefold()
        return self.need is Need.TURNED and is_gap

    @property
    def is_flat(self) -> bool:
        """Whether nothing of it lies on anything else."""
        return not any(one.is_behind or one.face.is_folded for one in self.placed)


def need_of(work: Work, op: Operation, before: Surface) -> Need | None:
    """Why the unit in hand is shown for an operation that has been done; ``None`` if it is not.

    Parameters
    ----------
    work
        The work after the operation.
    op
        The operation.
    before
        What was sewn before it.
    """
    entry = work.c.entry(op)
    if op.action is Action.TURN:
        return Need.TURNED if entry.verb is Verb.TURN else None
    if op.action in _SIMPLE:
        return _SIMPLE[op.action]
    if op.action in {Action.HEM, Action.CASE}:
        return Need.ROUND if not entry.is_flat and _is_round(work, op) else None
    glues = work.c.shapes[entry.id].glues
    if op.part != MAIN or not glues:
        return None
    return Need.ROUND if entry.in_the_round else _need_of_seam(work, op, before)


def _need_of_seam(work: Work, op: Operation, before: Surface) -> Need | None:
    """What a seam makes of the cloth that is no longer flat: a tube, a bag."""
    glues = work.c.shapes[op.entry].glues
    pieces = frozenset(s.piece for g in glues for s in (g.first, g.second))
    if _holes(work.surface, pieces) > _holes(before, pieces):
        return Need.CLOSED
    return Need.BAG if _turns_corner(work, op) else None


_SIMPLE: Final = {
    Action.THREAD: Need.THREADED,
    Action.CLOSE_GAP: Need.GAP,
    Action.FIT: Need.TRIED,
    Action.INSPECT: Need.TRIED,
}


def _turns_corner(work: Work, op: Operation) -> bool:
    """Whether one row goes on round a corner, so that layers become a bag or a pointed end."""
    run = set(op.segments)
    corners = (work.c.rings.across(EdgeEnd(segment, True)) for segment in run)
    return any(c.neighbour.segment in run and not c.is_straight for c in corners)


def _is_round(work: Work, op: Operation) -> bool:
    """Whether an edge goes all the way round something that has another end."""
    found = work.c.stretches_on(work.surface, op.entry)
    pieces = frozenset(segment.piece for segment in op.segments)
    return any(stretch.is_ring for stretch in found) and _holes(work.surface, pieces) > 0


def _holes(surface: Surface, pieces: frozenset[PieceId]) -> int:
    """How many more ways in there are than there are sheets."""
    return sum(len(part.loops) - 1 for part in surface.parts_with(pieces))


def unit(work: Work, op: Operation, need: Need, placer: Placer) -> Unit | None:
    """Lay the unit in hand flat.

    Parameters
    ----------
    work
        The work after the operation.
    op
        The operation.
    need
        Why it is shown.
    placer
        Lays pieces in the plane.

    Returns
    -------
    Unit or None
        ``None`` where it cannot be laid flat without being misread.
    """
    c = work.c
    segments = _worked_on(work, op)
    pieces = frozenset(s.piece for s in segments) or op.pieces or frozenset(c.garment.piece)
    glues = (*work.surface.glues, *work.surface.riders)
    groups = _groups(c, glues, pieces)
    if not groups:
        return None
    discs = max(groups, key=len)
    twins = sum({d[0] for d in group} == {d[0] for d in discs} for group in groups)
    openings = _openings(work, discs, placer.pattern)
    discs = _shown(work, op, need, discs, frozenset(segments))
    on_it = [glue for glue in glues if _is_on(c, glue, discs)]
    if not on_it:
        return None
    try:
        worked = frozenset(map(c.rings.disc, segments))
        placed = _without_askew(c, placer.place(discs, on_it, worked & discs), worked)
    except CannotLieFlatError:
        return None
    lying = {segment: one for one in placed for segment in one.face.edges}
    active = _once(on_it, [s for s in segments if s in lying], placed)
    gaps = frozenset(_gap_edges(work, op)) & lying.keys()
    looked_at = gaps or active
    is_over = bool(looked_at) and all(lying[s].is_far for s in looked_at)
    found = Unit(
        need=need,
        placed=tuple(one.turned_over() for one in placed) if is_over else placed,
        openings=openings,
        active=active,
        sewn=frozenset(s for g in on_it for s in (g.first, g.second)) & lying.keys(),
        gaps=gaps,
        is_right_out=_is_right_out(work, op, frozenset(d[0] for d in discs)),
        is_twice=twins == 2,
        is_from_behind=is_over,
        notion=_threaded(work, op),
        through=(c.entry(op).through or "") if need is Need.TURNED else "",
        is_slipped_in=need is Need.ROUND and op.action is Action.SEW,
    )
    is_plain = found.is_flat or all(c.garment.piece[one.face.piece].is_strip for one in placed)
    # A sheet, and a band that is closed to a ring, are told in words.
    return None if need in {Need.CLOSED, Need.BAG} and is_plain else found


def _shown(
    work: Work, op: Operation, need: Need, discs: frozenset[Disc], active: frozenset[Segment]
) -> frozenset[Disc]:
    """What is seen: layers that lie inside only where the step works on them or turns them.

    A binding is folded round its edge, as narrow as that is: laid flat, it would look like a piece
    on the face.
    """
    c = work.c
    worked = {c.rings.disc(segment) for segment in active}
    bindings = {id_ for e in c.garment.entries if e.verb is Verb.BIND for id_ in e.partners}
    is_pulled_out = need in {Need.TURNED, Need.GAP}

    def is_seen(disc: Disc) -> bool:
        layer = c.garment.piece[disc[0]].layer
        if disc in worked:
            return True
        if disc[0] in bindings:
            return False
        if layer is Layer.SHELL:
            return True
        return layer is Layer.LINING and is_pulled_out

    found = frozenset(disc for disc in discs if is_seen(disc))
    return found or discs


def _without_askew(
    c: Construction, placed: tuple[Placed, ...], worked: frozenset[Disc]
) -> tuple[Placed, ...]:
    """Leave out strips that look out at the sides from behind, unless the step works on them.

    So lies a band that is longer behind than in front, since pockets take up part of the front.
    """
    near = [one.face.outline for one in placed if not one.is_far]

    def looks_out(one: Placed) -> bool:
        if not one.is_far or not c.garment.piece[one.face.piece].is_strip:
            return False
        spots = within(one.face.outline)
        seen = sum(not any(is_inside(spot, outline) for outline in near) for spot in spots)
        return seen > _ASKEW * len(spots)

    askew = {one.face.disc for one in placed if looks_out(one)} - worked
    return tuple(one for one in placed if one.face.disc not in askew)


def _once(
    glues: Iterable[Glue], segments: Sequence[Segment], placed: Sequence[Placed]
) -> frozenset[Segment]:
    """Of two edges that are sewn together, the one that lies in front, or was laid first."""
    rank = {
        s: (one.lies_behind(s), n, edge.is_behind)
        for n, one in enumerate(placed)
        for s, edge in one.face.edges.items()
    }
    found = set(segments)
    for glue in glues:
        if glue.first in found and glue.second in found:
            found.discard(max(glue.first, glue.second, key=rank.__getitem__))
    return frozenset(found)


def _threaded(work: Work, op: Operation) -> str:
    """The name of what is drawn through a casing."""
    if op.action is not Action.THREAD or not op.notions:
        return ""
    return readable(work.c.garment.notion[op.notions[0]].kind)


def _worked_on(work: Work, op: Operation) -> tuple[Segment, ...]:
    entry = work.c.entry(op)
    other = entry.closes or entry.into
    if other is not None and other in work.c.shapes:
        return work.c.shapes[other].run
    return op.segments


def _groups(
    c: Construction, glues: Iterable[Glue], pieces: frozenset[PieceId]
) -> list[frozenset[Disc]]:
    """The cut copies that hang together with one of some pieces."""
    links: dict[Disc, set[Disc]] = {}
    for glue in glues:
        one, other = c.rings.disc(glue.first), c.rings.disc(glue.second)
        links.setdefault(one, set()).add(other)
        links.setdefault(other, set()).add(one)
    found: list[frozenset[Disc]] = []
    for disc in c.rings.discs:
        if disc[0] not in pieces or any(disc in group for group in found):
            continue
        group, waiting = {disc}, [disc]
        while waiting:
            for other in links.get(waiting.pop(), set()) - group:
                group.add(other)
                waiting.append(other)
        found.append(frozenset(group))
    return found


def _is_on(c: Construction, glue: Glue, discs: frozenset[Disc]) -> bool:
    return c.rings.disc(glue.first) in discs and c.rings.disc(glue.second) in discs


def _openings(work: Work, discs: frozenset[Disc], pattern: Pattern) -> tuple[Opening, ...]:
    pieces = frozenset(piece for piece, _ in discs)
    loops = [
        loop
        for part in work.surface.parts_with(pieces)
        if part.discs <= discs
        for loop in part.loops
    ]
    edges = work.c.rings.pieces
    open_ = (
        loop for loop in loops if not all(edges[s.piece].edges[s.place].is_folded for s in loop)
    )
    return tuple(Opening(loop, _names(work, loop, pattern)) for loop in open_)


def _names(work: Work, loop: Sequence[Segment], pattern: Pattern) -> tuple[str, ...]:
    """The names of the edges round an opening, those of the largest piece only."""
    pieces = {s.piece for s in loop if s.piece in pattern.pieces}
    largest = max(pieces, key=lambda id_: (max(pattern.pieces[id_].size), id_), default=None)
    names = (work.c.rings.name(s) for s in loop if largest is None or s.piece == largest)
    return tuple(dict.fromkeys(names))


def _gap_edges(work: Work, op: Operation) -> Iterable[Segment]:
    """Edges of the seams with a gap, and of the one that is closed now.

    The gap of a casing lies at the back where there is one, as the sentence says.
    """
    entry = work.c.entry(op)
    closed = [entry.closes or entry.into] if op.action is Action.CLOSE_GAP else []
    pieces = work.c.garment.piece
    for id_ in (*work.gaps, *closed):
        if id_ is None:
            continue
        run = work.c.shapes[id_].run
        is_casing = work.c.garment.entry[id_].verb is Verb.CASING
        backs = [s for s in run if is_casing and pieces[s.piece].worn is Worn.BACK]
        yield from backs or run


def _is_right_out(work: Work, op: Operation, pieces: frozenset[PieceId]) -> bool:
    entry = work.c.entry(op)
    if op.action is Action.TURN:
        return False
    is_laid_right = entry.sides is Sides.RIGHT_TOGETHER and entry.seam is not SeamKind.LAPPED
    if entry.verb is Verb.SEW and op.action is Action.SEW:
        return not is_laid_right or entry.seam is SeamKind.FRENCH
    return not any(_is_to_be_turned(work, turn, pieces) for turn in work.c.acting(Action.TURN))


def _is_to_be_turned(work: Work, turn: Operation, pieces: frozenset[PieceId]) -> bool:
    is_whole = work.c.entry(turn).verb is Verb.TURN
    return is_whole and turn.id not in work.done and bool(turn.pieces & pieces)
