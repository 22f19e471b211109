"""Buttonholes come before buttons.

Why
---
The place of each button is marked through the finished buttonhole.

Fires
-----
`holes` before `buttons`.

Stays quiet
-----------
What is attached is no button. Buttons on a piece that has buttonholes of its own, as a cuff, do not
wait for those on other pieces.

Sources
-------
Apparel: Design, Textiles & Construction, Goodheart-Willcox, 2012, p. 465; Making buttonholes,
secrets of self-sufficiency.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.garment import Notion
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for button in c.acting(Action.ATTACH):
        notion = c.garment.notion.get(button.notions[0]) if button.notions else None
        if notion is not None and _is_button(notion):
            holes = c.acting(Action.BUTTONHOLE, Action.OPEN_BEHIND)
            facing_it = [hole for hole in holes if hole.pieces & button.pieces]
            for hole in facing_it or holes:
                yield arc(RULE, hole, button)


def _is_button(notion: Notion) -> bool:
    kind = notion.kind.casefold()
    return "button" in kind and "buttonhole" not in kind


RULE = Rule(
    RuleSlug("buttonholes-before-buttons"), Strength.SHOULD, _derive, __doc__ or "", numbers=(48,)
)
