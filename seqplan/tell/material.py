"""Cloth by the metre, and the designer's pictures: the mark and the lay plans."""

from collections.abc import Iterator

from seqplan.base.measure import cloth_amount, cloth_width
from seqplan.model.garment import Fabric, Garment, LayPlan
from seqplan.tell.content import SheetPicture
from seqplan.tell.names import capital, readable
from seqplan.words.say import say


def tell_amounts(fabric: Fabric) -> Iterator[str]:
    """How much of a fabric is needed, a line for each width of the cloth."""
    for place, amount in enumerate(fabric.amounts):
        words = "sheet-amount-by-size" if amount.by_size else "sheet-amount"
        name = readable(fabric.id)
        yield say(
            f"{words}-or" if place else words,
            name=name if place else capital(name),
            width=cloth_width(amount.width),
            amount=cloth_amount(amount.length),
        )


def tell_amounts_by_size(garment: Garment) -> Iterator[tuple[str, tuple[str, ...]]]:
    """What differs from size to size: a row for each width of each fabric."""
    for fabric in garment.fabrics:
        for amount in fabric.amounts:
            if amount.by_size:
                width = cloth_width(amount.width)
                name = say("sheet-size-amount", name=capital(readable(fabric.id)), width=width)
                yield name, tuple(cloth_amount(length) for _, length in amount.by_size)


def tell_mark(garment: Garment) -> SheetPicture | None:
    """The designer's own mark."""
    if garment.mark is None:
        return None
    words = "sheet-mark-alt-by" if garment.author else "sheet-mark-alt"
    alt = say(words, author=garment.author)
    return SheetPicture(garment.mark.data, garment.mark.media, alt)


def tell_plans(garment: Garment) -> tuple[SheetPicture, ...]:
    """The lay plans, each with what it is a plan of."""
    return tuple(_plan(plan) for plan in garment.plans)


def _plan(plan: LayPlan) -> SheetPicture:
    words = "sheet-plan"
    words += "-width" if plan.width else ""
    words += "-size" if plan.size else ""
    caption = say(
        words,
        name=capital(readable(plan.fabric)),
        width=cloth_width(plan.width) if plan.width else "",
        size=plan.size,
    )
    return SheetPicture(plan.picture.data, plan.picture.media, plan.alt or caption, caption)
