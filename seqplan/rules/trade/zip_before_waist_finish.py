"""A zip is set before the facing, band, hem or side seam that ends at it.

Why
---
The band or facing ends at the opening and encloses the ends of the tapes; and the foot follows a
zip only where both of its sides lie flat.

Fires
-----
`zip` before `waist`, which faces the edge where the zip ends; a fly, with its topstitching, before
the band; the top of a pouch, in which its zip is caught, before the side seams of outer and lining.

Stays quiet
-----------
The run goes straight on as the zip, or the seam that ends there joins no facing and folds
nothing.

Sources
-------
Finishing the waistline, netplaces; Kinne & Cooley, Clothing and Health, 1916, lesson 12
(placket, then band). A zip that runs to the top of the band is set between its two halves: J.
Lawson, Adding a waistband with a zipper.
"""

from collections.abc import Iterator

from seqplan.base.ids import EntryId, NotionId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind, ZipMethod
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import COVERING, Shape
from seqplan.rules.closures import entries_ending_at
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for zip_ in c.acting(Action.SET_ZIP):
        is_fly = c.entry(zip_).method is ZipMethod.FLY
        done = c.of_entry[zip_.entry][-1] if is_fly else zip_
        for id_ in entries_ending_at(c, zip_.entry):
            entry = c.garment.entry[id_]
            if entry.seam is SeamKind.FACED or entry.verb in COVERING:
                yield arc(RULE, done, c.opening(id_))
    for shape in c.joins:
        if any(_is_zip(c, item.notion) for item in shape.entry.between):
            caught = c.main(shape.entry.id)
            for id_ in _across(c, shape):
                yield arc(RULE, caught, c.main(id_), key="because-zip-while-flat")


def _is_zip(c: Construction, notion: NotionId | None) -> bool:
    return notion is not None and "zip" in c.garment.notion[notion].kind.casefold()


def _across(c: Construction, zip_: Shape) -> Iterator[EntryId]:
    """The seams that join the two sides of a zip past its end."""
    tips = (tip for stretch in c.stretches[zip_.entry.id] for tip in stretch.tips)
    beside = {c.rings.across(tip).neighbour.segment for tip in tips}
    for shape in c.joins:
        ends = ({glue.first, glue.second} for glue in shape.glues)
        if shape.entry.id != zip_.entry.id and any(edges <= beside for edges in ends):
            yield shape.entry.id


RULE = Rule(
    RuleSlug("zip-before-waist-finish"), Strength.SHOULD, _derive, __doc__ or "", numbers=(59,)
)
