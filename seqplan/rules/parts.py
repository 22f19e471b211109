"""What hangs together, looked at by itself.

Questions about tubes and ways out concern what hangs together with a piece. Asked of that part
alone, their cost grows with the parts of a garment and not with the whole of it.
"""

from collections.abc import Iterable

from seqplan.base.ids import PieceId
from seqplan.model.entry import Verb
from seqplan.model.operation import Operation
from seqplan.recipes.construction import Construction
from seqplan.surface.glued import Glue
from seqplan.surface.ring import Rings


def hanging_together(joined: Iterable[frozenset[PieceId]]) -> dict[PieceId, frozenset[PieceId]]:
    """Tell, for every piece that is joined, which pieces hang together with it in the end.

    Parameters
    ----------
    joined
        The pieces that each seam joins.

    Examples
    --------
    >>> hanging_together([frozenset("ab"), frozenset("cd"), frozenset("bc")])["a"] == set("abcd")
    True
    """
    found: dict[PieceId, frozenset[PieceId]] = {}
    for pieces in joined:
        everything = pieces.union(*(found.get(id_, ()) for id_ in pieces))
        found.update(dict.fromkeys(everything, everything))
    return found


def pieces_of(glues: Iterable[Glue]) -> frozenset[PieceId]:
    """The pieces that seams join."""
    return frozenset(s.piece for glue in glues for s in (glue.first, glue.second))


def pleats_both_layers(c: Construction, fold: Operation, seam: Operation) -> bool:
    """Whether pleats are laid in both sides of a seam, which may be sewn and turned by then."""
    if c.entry(fold).verb is not Verb.PLEAT:
        return False
    edges = set(fold.segments)
    sides = [{g.first, g.second} for g in c.shapes[seam.entry].glues]
    touched = [side for side in sides if side & edges]
    return bool(touched) and all(side <= edges for side in touched)


def rings_of(c: Construction, pieces: frozenset[PieceId]) -> Rings:
    """The rings of some pieces of a garment."""
    return Rings(piece for id_, piece in c.rings.pieces.items() if id_ in pieces)
