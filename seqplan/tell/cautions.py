"""Cautions where something can hurt: by what the operations use, and for who wears it.

They name what is usual and defer to local rules and to the makers' manuals. Sources: safety
guidelines of sewing classes; HSE, sewing machines (overlock guards); National Safety Council and
quilters' guides on rotary cutters; for children the sources that `explain.cautions` names. Of the
knife of an overlocker, of hot adhesive and of magnets: common practice.
"""

from collections.abc import Iterator, Sequence

from seqplan.explain.cautions import find_cords, is_small_part, is_zip
from seqplan.model.garment import Wearer
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.tell.content import Titled
from seqplan.tell.names import listing, notion_kind
from seqplan.tell.needs import stations_used
from seqplan.words.say import has, say

_OF_ACTIONS = {
    "fusing": (Action.FUSE,),
    "washing": (Action.PRETREAT,),
    "slashing": (Action.SLASH,),
    "ripper": (Action.BUTTONHOLE, Action.REMOVE_BASTING),
}
_SET_WITH_TOOL = ("eyelet", "grommet", "rivet", "stud")


def tell_cautions(c: Construction) -> tuple[Titled, ...]:
    """List what to take care of, whoever wears it first."""
    return (*_for_wearer(c), *(_caution(key) for key in _general(c)))


def tell_cautions_at(c: Construction, ops: Sequence[Operation]) -> tuple[Titled, ...]:
    """List what to take care of at a station, for what is done there."""
    used = {op.setup.station for op in ops}
    stations = (station.id for station in c.garment.stations if station.id in used)
    done = {op.action for op in ops}
    keys = [id_ for id_ in stations if has(f"caution-{id_}")]
    keys += [key for key, actions in _OF_ACTIONS.items() if done & set(actions)]
    return tuple(_caution(key) for key in keys)


def tell_cautions_everywhere(c: Construction) -> tuple[Titled, ...]:
    """List what to take care of wherever one works: what no single station tells."""
    at_stations = tell_cautions_at(c, c.operations)
    return tuple(caution for caution in tell_cautions(c) if caution not in at_stations)


def _general(c: Construction) -> Iterator[str]:
    """What the tools and machines of this garment want, cutting first."""
    if c.garment.pieces:
        yield "cutting"
        yield "pins"
    for station in stations_used(c):
        if has(f"caution-{station.id}"):
            yield station.id
    yield from (key for key, actions in _OF_ACTIONS.items() if c.acting(*actions))
    if any(word in notion.kind for notion in c.garment.notions for word in _SET_WITH_TOOL):
        yield "setting"


def _for_wearer(c: Construction) -> Iterator[Titled]:
    """Cords and small parts for a child; cords, too, where nobody says who will use it."""
    wearer, cords = c.garment.wearer, find_cords(c.garment)
    if wearer is None and cords:
        yield _caution("maybe-child")
    if wearer is not Wearer.CHILD:
        return
    yield _caution("child")
    if cords:
        yield _caution("child-cord")
    notions = c.garment.notions
    small = [notion_kind(notion.kind) for notion in notions if is_small_part(notion)]
    if any(is_zip(notion) for notion in notions):
        small.append(say("caution-zip-pull"))
    if small:
        yield _caution("child-small", parts=listing(dict.fromkeys(small)))


def _caution(key: str, **values: str) -> Titled:
    return Titled(say(f"caution-{key}-title"), (say(f"caution-{key}", **values),))
