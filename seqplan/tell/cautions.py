"""Cautions where something can hurt: by the stations used, and for who wears it.

They name what is usual and defer to local rules and to the makers' manuals. Sources: safety
guidelines of sewing classes; HSE, sewing machines (overlock knives and guards); for children CPSC,
"Drawstrings in Children's Upper Outerwear", EN 14682 as told by Tukes, 16 CFR 1501 on small parts.
"""

from seqplan.model.garment import Notion, Wearer
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.tell.content import Titled
from seqplan.tell.names import listing, readable
from seqplan.tell.needs import stations_used
from seqplan.words.say import has, say

_SMALL = ("button", "hook", "snap", "bead", "toggle", "stud", "bell", "pompom", "eyelet")
_CORDS = ("cord", "drawstring", "ribbon", "lace", "tie")


def tell_cautions(c: Construction) -> tuple[Titled, ...]:
    """List what to take care of, whoever wears it first."""
    keys = [s.id for s in stations_used(c) if has(f"caution-{s.id}")]
    if c.garment.pieces:
        keys = ["cutting", "pins", *keys]
    if c.acting(Action.SLASH):
        keys.append("slashing")
    if c.acting(Action.BUTTONHOLE):
        keys.append("ripper")
    general = tuple(_caution(key) for key in keys)
    return (*_for_wearer(c), *general)


def _for_wearer(c: Construction) -> list[Titled]:
    wearer = c.garment.wearer
    cords = [notion for notion in c.garment.notions if _is_any(notion, _CORDS)]
    if wearer is None and cords:
        return [_caution("maybe-child")]
    if wearer is not Wearer.CHILD:
        return []
    found = [_caution("child")]
    if cords:
        found.append(_caution("child-cord"))
    small = dict.fromkeys(readable(n.kind) for n in c.garment.notions if _is_any(n, _SMALL))
    if small:
        found.append(_caution("child-small", parts=listing(small)))
    return found


def _is_any(notion: Notion, words: tuple[str, ...]) -> bool:
    kind = f"{notion.kind} {notion.id}".casefold()
    return any(word in kind.replace("-", " ").split() or word + "s" in kind for word in words)


def _caution(key: str, **values: str) -> Titled:
    return Titled(say(f"caution-{key}-title"), (say(f"caution-{key}", **values),))
