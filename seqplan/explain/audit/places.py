"""Where things lie on the face of a piece: out of the folds."""

from collections.abc import Iterator
from typing import Final

from seqplan.base.ids import PieceId
from seqplan.base.measure import both
from seqplan.explain.audit.audit import Found, told
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.entry import Entry, Verb
from seqplan.model.piece import Beginning
from seqplan.recipes.shape import FOLDING

_LAID_ON: Final = frozenset({Verb.ATTACH, Verb.PATCH_POCKET, Verb.WELT_POCKET})


def lies_in_the_fold(ledger: Ledger) -> Found:
    """What is sewn onto a piece begins beyond the hem or casing that its edge is folded into.

    Speaks up where `begins:` says how far from the edge it begins, and the fold is deeper. Stays
    quiet of buttonholes, which may be the way of a cord into its casing.
    """
    garment = ledger.c.garment
    for entry in garment.entries:
        for piece, begins in _beginnings(ledger, entry):
            for fold in garment.entries:
                edges = {(ref.piece, ref.edge) for ref in fold.run}
                is_there = fold.verb in FOLDING and (piece, begins.edge) in edges
                if is_there and fold.depth is not None and begins.length.mm < fold.depth.mm:
                    yield told(
                        "lies-in-the-fold",
                        entry.path,
                        entry=entry.id,
                        begins=both(begins.length),
                        edge=f"{piece}.{begins.edge}",
                        fold=fold.id,
                        depth=both(fold.depth),
                    )


def _beginnings(ledger: Ledger, entry: Entry) -> Iterator[tuple[PieceId, Beginning]]:
    """How far from which edge it begins, where the piece says so."""
    for place in entry.places if entry.verb in _LAID_ON else ():
        for begins in ledger.c.garment.piece[place.piece].begins:
            if begins.name == place.name:
                yield place.piece, begins
