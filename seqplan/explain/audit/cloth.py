"""Whether there is enough cloth, as far as the file tells."""

from fractions import Fraction
from math import ceil

from seqplan.base.diagnostic import Severity
from seqplan.base.measure import Length, both, cloth_width
from seqplan.explain.audit.audit import Found, told
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.garment import Fabric
from seqplan.shape.outline import lay


def amount_not_said(ledger: Ledger) -> Found:
    """Of every fabric it is said how much is needed, where it is said of one.

    Stays quiet where no fabric has `amounts:`.
    """
    fabrics = ledger.c.garment.fabrics
    if any(fabric.amounts for fabric in fabrics):
        for fabric in fabrics:
            if not fabric.amounts:
                yield told("amount-not-said", fabric.path, severity=Severity.HINT, name=fabric.id)


def too_little_cloth(ledger: Ledger) -> Found:
    """The pieces of a fabric have no larger area than the cloth that is to be bought.

    The area is that inside the stitching lines, from the `shape:` of the pieces, so that more than
    that is needed in any case: allowances, and what falls off between the pieces.

    Stays quiet of pieces without a shape, and of cloth that is fused or cut on as one goes.
    """
    for fabric in ledger.c.garment.fabrics:
        # Shapes are those of the base size, whichever was asked for.
        amounts = ledger.amounts(fabric)
        area = _area(ledger, fabric) if amounts else 0.0
        for amount in amounts:
            least = area / float(amount.width.mm)
            if least > float(amount.length.mm):
                yield told(
                    "too-little-cloth",
                    fabric.path,
                    name=fabric.id,
                    width=cloth_width(amount.width),
                    amount=both(amount.length),
                    least=both(Length(Fraction(ceil(least)), amount.length.written_in)),
                )


def _area(ledger: Ledger, fabric: Fabric) -> float:
    """Square millimetres of all pieces that are cut from a fabric, as far as they have a shape."""
    pieces = (piece for piece in ledger.c.garment.pieces if piece.fabric == fabric.id)
    laid = ((piece.copies, lay(piece)) for piece in pieces)
    return sum(copies * found.area for copies, found in laid if found is not None)
