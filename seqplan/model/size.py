"""A garment in one of its sizes: what differs from size to size is settled."""

from dataclasses import replace

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import RuleSlug
from seqplan.model.garment import Amount, Fabric, Garment, Notion
from seqplan.words.say import say


def in_size(garment: Garment, size: str) -> Garment:
    """Give the garment with the measures of one size and nothing of the others.

    A size that it does not come in leaves it as it is; `check_size` finds that.
    """
    if size not in garment.sizes:
        return garment
    return replace(
        garment,
        sizes=(size,),
        fabrics=tuple(_cloth_in_size(fabric, size) for fabric in garment.fabrics),
        notions=tuple(_in_size(notion, size) for notion in garment.notions),
        plans=tuple(plan for plan in garment.plans if plan.size in {None, size}),
    )


def check_size(garment: Garment, size: str) -> tuple[Diagnostic, ...]:
    """Find a size that the garment does not come in."""
    if size in garment.sizes:
        return ()
    known = ", ".join(f"`{each}`" for each in garment.sizes)
    fix = say("fix-known-names", names=known) if known else say("size-nothing")
    return (
        Diagnostic(
            slug=RuleSlug("unknown-size"),
            severity=Severity.ERROR,
            message=say("size-unknown", name=f"`{size}`"),
            path=("sizes",),
            fix=fix,
        ),
    )


def _cloth_in_size(fabric: Fabric, size: str) -> Fabric:
    amounts = (
        Amount(amount.width, dict(amount.by_size).get(size, amount.length))
        for amount in fabric.amounts
    )
    return fabric._replace(amounts=tuple(amounts))


def _in_size(notion: Notion, size: str) -> Notion:
    return replace(notion, length=dict(notion.by_size).get(size, notion.length), by_size=())
