"""Reasons between whole entries: an author moves an entry of her file, not a part of it."""

from collections.abc import Iterable

from seqplan.base.ids import OpId
from seqplan.graph.reason import Arc, Reason
from seqplan.recipes.construction import Construction


def between_entries(c: Construction, reasons: Iterable[Reason]) -> tuple[Reason, ...] | None:
    """Restate reasons for entries that are kept whole, each in the order of its recipe.

    Parameters
    ----------
    c
        The garment.
    reasons
        Reasons between operations.

    Returns
    -------
    tuple of Reason or None
        Reasons between entries, under the entries' names; ``None`` where a reason wants an entry
        torn apart or taken in another order than its recipe's.
    """
    position = {id_: place for place, id_ in enumerate(c.ids)}
    restated = []
    for reason in reasons:
        bundles = []
        for bundle in reason.alternatives:
            arcs = {(c.op[a.before].entry, c.op[a.after].entry) for a in bundle}
            inner = (a for a in bundle if c.op[a.before].entry == c.op[a.after].entry)
            if all(position[a.before] < position[a.after] for a in inner):
                outer = sorted(Arc(OpId(a), OpId(b)) for a, b in arcs if a != b)
                bundles.append(tuple(outer))
        if not bundles:
            return None
        if all(bundles):
            restated.append(
                Reason(
                    alternatives=tuple(bundles),
                    kind=reason.kind,
                    strength=reason.strength,
                    rule=reason.rule,
                    because=reason.because,
                    source=reason.source,
                )
            )
    return tuple(restated)
