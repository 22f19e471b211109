"""What the file names and no operation takes up, and what a channel lacks."""

from collections import Counter
from collections.abc import Iterator

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import RuleSlug
from seqplan.base.path import DocPath
from seqplan.model.entry import Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Segment
from seqplan.recipes.construction import Construction
from seqplan.words.say import say

_SETTLING = frozenset(
    {
        Action.SEW,
        Action.FINISH,
        Action.HEM,
        Action.CASE,
        Action.TURN_UP,
        Action.SET_ZIP,
        Action.TACK,
        Action.SET_ON,
        Action.STITCH_ON,
        Action.CLOSE_ENDS,
        Action.CLOSE_BAND,
        Action.MAKE_STRAP,
        Action.DO,
    }
)
"""Actions after which an edge is no longer simply raw."""


_HANDLING = frozenset(
    {
        Action.PRETREAT,
        Action.CUT,
        Action.MARK,
        Action.TURN,
        Action.OPEN,
        Action.FIT,
        Action.INSPECT,
        Action.WAIT,
        Action.SEND_OUT,
    }
)
"""What is done to anything that is there: it makes no use of a piece or a notion."""


def check_leftovers(c: Construction) -> tuple[Diagnostic, ...]:
    """Find pieces, notions, fabrics and edges left over, and channels with no way in."""
    return (
        *_unused(c),
        *(() if "finish" in c.garment.not_shown else _raw_edges(c)),
        *_shut_channels(c),
        *_free_words(c),
    )


def _unused(c: Construction) -> Iterator[Diagnostic]:
    using = [op for op in c.operations if op.action not in _HANDLING]
    pieces = {piece for op in using for piece in op.pieces}
    notions = {notion for op in using for notion in op.notions}
    fabrics = {piece.fabric for piece in c.garment.pieces}
    fabrics |= {entry.fabric for entry in c.garment.entries}
    words = " ".join(entry.words or "" for entry in c.garment.entries)
    for piece in c.garment.pieces:
        if piece.id not in pieces:
            yield _leftover("unused-piece", piece.path, name=piece.id)
    for notion in c.garment.notions:
        if notion.id not in notions and notion.id not in words:
            yield _leftover("unused-notion", notion.path, name=notion.id)
    for fabric in c.garment.fabrics:
        if fabric.id not in fabrics:
            yield _leftover("unused-fabric", fabric.path, name=fabric.id)


def _raw_edges(c: Construction) -> Iterator[Diagnostic]:
    """Name every edge that no operation settles, once for all its copies."""
    used = {piece for op in c.operations if op.action not in _HANDLING for piece in op.pieces}
    raw: dict[tuple[str, str], set[Segment]] = {}
    copies: Counter[tuple[str, str]] = Counter()
    for segment in c.rings.segments:
        piece = c.garment.piece[segment.piece]
        name = c.rings.name(segment)
        copies[piece.id, name] += 1
        fabric = c.garment.fabric.get(piece.fabric or "")
        is_fine = (
            name in piece.selvage
            or (fabric is not None and not fabric.frays)
            or c.rings.pieces[piece.id].edges[segment.place].is_folded
        )
        ops = c.on_segment.get(segment, ())
        is_settled = any(_settles(c, op) for op in ops)
        if piece.id in used and not is_fine and not is_settled:
            raw.setdefault((piece.id, name), set()).add(segment)
    for (piece_id, name), segments in raw.items():
        slug = "raw-edge" if len(segments) == copies[piece_id, name] else "open-part"
        path = (*c.garment.piece[segments.pop().piece].path, "edges")
        yield _leftover(slug, path, name=f"{piece_id}.{name}")


def _settles(c: Construction, op: Operation) -> bool:
    """Whether an edge is no longer raw after this; a strap that is stitched on leaves it raw."""
    return op.action in _SETTLING and c.entry(op).verb is not Verb.ATTACH


def _shut_channels(c: Construction) -> Iterator[Diagnostic]:
    """Find casings sewn right round with nothing left open to thread through."""
    for entry in c.garment.entries:
        if entry.verb is not Verb.INSERT or entry.into is None:
            continue
        casing = c.garment.entry[entry.into]
        is_ring = all(stretch.is_ring for stretch in c.stretches.get(casing.id, ()))
        if is_ring and casing.gap is None:
            found = _leftover("no-way-in", casing.path, name=casing.id, thread=entry.id)
            yield found._replace(severity=Severity.ERROR)


def _free_words(c: Construction) -> Iterator[Diagnostic]:
    """Say once how much of the garment is told in free words."""
    free = [e for e in c.garment.entries if e.verb is Verb.DO and not e.run]
    if free:
        yield Diagnostic(
            slug=RuleSlug("free-words"),
            severity=Severity.HINT,
            message=say(
                "check-free-word" if len(free) == 1 else "check-free-words", count=len(free)
            ),
            path=free[0].path,
            notes=(Note(say("check-free-words-why")),),
        )


def _leftover(slug: str, path: DocPath, **names: object) -> Diagnostic:
    return Diagnostic(
        slug=RuleSlug(slug),
        severity=Severity.WARNING,
        message=say(f"check-{slug}", **names),
        path=path,
        fix=say(f"check-{slug}-fix", **names),
    )
