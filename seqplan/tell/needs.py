"""What to buy and have ready."""

from collections.abc import Iterable, Iterator, Sequence

from seqplan.base.measure import Length, both, both_whole_inches
from seqplan.model.entry import Entry, SeamKind, StrapMethod, Verb
from seqplan.model.garment import Fabric, Notion
from seqplan.model.operation import Action, Operation
from seqplan.model.station import STANDARD_FOOT, Station
from seqplan.recipes.construction import Construction
from seqplan.tell.content import SizeTable, Titled
from seqplan.tell.material import tell_amounts, tell_amounts_by_size
from seqplan.tell.names import (
    as_clause,
    capital,
    listing,
    notion_kind,
    readable,
    station_title,
)
from seqplan.tell.setups import foot_name, needle_name, thread_name
from seqplan.words.say import has, say, translated

_INTERFACING = "interfacing"


def tell_needs(c: Construction) -> tuple[Titled, ...]:
    """List fabrics, interfacing, notions, thread, machines with their feet, and tools."""
    found = (
        Titled(say("sheet-need-fabric"), _fabrics(c)),
        Titled(say("sheet-need-interfacing"), _interfacings(c)),
        Titled(say("sheet-need-notions"), tuple(_notions(c))),
        Titled(say("sheet-need-thread"), tuple(_threads(c))),
        Titled(say("sheet-need-machines"), tuple(_machines(c))),
        Titled(say("sheet-need-tools"), tuple(_tools(c))),
    )
    return tuple(need for need in found if need.lines)


def tell_sizes(c: Construction) -> SizeTable | None:
    """What differs from size to size: amounts of cloth and lengths of notions."""
    lengths = (
        (
            say("sheet-size-length", kind=capital(notion_kind(notion.kind))),
            tuple(_sold(notion, length) for _, length in notion.by_size),
        )
        for notion in c.garment.notions
        if notion.by_size
    )
    rows = (*tell_amounts_by_size(c.garment), *lengths)
    return SizeTable(c.garment.sizes, rows) if rows else None


def _sold(notion: Notion, length: Length) -> str:
    """A length; that of a zip in whole inches, as zips are sold."""
    return both_whole_inches(length) if "zip" in notion.kind else both(length)


def stations_used(c: Construction) -> tuple[Station, ...]:
    """The stations where something is done, in the order of the garment's list."""
    used = {op.setup.station for op in c.operations}
    return tuple(station for station in c.garment.stations if station.id in used)


def tell_notion(notion: Notion) -> str:
    """A notion with how many and its measures; zips in whole inches, as they are sold."""
    kind = notion_kind(notion.kind)
    length = None if notion.by_size else notion.length
    values = {"count": str(notion.count), "kind": kind}
    if length is not None:
        values["length"] = _sold(notion, length)
    if notion.width is not None:
        values["width"] = both(notion.width)
    key = "sheet-notion" + ("-wide" if notion.width else "") + ("-long" if length else "")
    return say(key, **values)


def _fabrics(c: Construction) -> tuple[str, ...]:
    cloths = [fabric for fabric in c.garment.fabrics if fabric.kind != _INTERFACING]
    lines = [line for fabric in cloths for line in (_fabric(fabric), *tell_amounts(fabric))]
    lines = lines or [say("sheet-fabric-unnamed")]
    return (*lines, *_unsaid(cloths), say("sheet-fabric-wash"))


def _unsaid(cloths: Sequence[Fabric]) -> Iterator[str]:
    """That nobody says how much of some cloths is needed."""
    unsaid = [readable(fabric.id) for fabric in cloths if not fabric.amounts]
    if len(unsaid) == len(cloths):
        yield say("sheet-fabric-amount")
    elif unsaid:
        yield say("sheet-fabric-amount-some", fabrics=capital(listing(unsaid)))


def _interfacings(c: Construction) -> tuple[str, ...]:
    found = (fabric for fabric in c.garment.fabrics if fabric.kind == _INTERFACING)
    named = tuple(line for fabric in found for line in (_fabric(fabric), *tell_amounts(fabric)))
    is_fused = any(entry.verb is Verb.FUSE for entry in c.garment.entries)
    return named or ((capital(say("sheet-interfacing")),) if is_fused else ())


def _fabric(fabric: Fabric) -> str:
    values = {
        "name": capital(readable(fabric.id)),
        "kind": translated("fabric", readable(fabric.kind)),
    }
    if fabric.weight:
        weight = translated("weight", as_clause(fabric.weight))
        told = say("sheet-fabric-weight", weight=weight, **values)
    else:
        told = say("sheet-fabric", **values)
    if not fabric.note:
        return told
    return say("sheet-fabric-note", fabric=told, note=as_clause(fabric.note))


def _notions(c: Construction) -> Iterator[str]:
    yield from (_notion(notion) for notion in c.garment.notions)
    bound = (entry for entry in c.garment.entries if entry.seam is SeamKind.BOUND)
    if any(not entry.partners and entry.notion is None for entry in bound):
        yield say("sheet-notion-binding")


def _notion(notion: Notion) -> str:
    told = tell_notion(notion)
    if notion.by_size:
        told = say("sheet-notion-by-size", notion=told)
    if not notion.note:
        return told
    return say("sheet-notion-note", notion=told, note=as_clause(notion.note))


def _threads(c: Construction) -> Iterator[str]:
    used = {op.setup.station for op in c.operations}
    yield say("sheet-thread")
    threads = (entry.thread for entry in c.garment.entries if entry.thread)
    for thread in dict.fromkeys(map(thread_name, threads)):
        yield capital(say("sheet-thread-own", thread=thread))
    if used & {"overlocker", "coverstitch"}:
        yield say("sheet-thread-overlocker")
    if c.acting(Action.BASTE, Action.REMOVE_BASTING, Action.HOLD):
        yield say("sheet-thread-baste")
    if "lockstitch" in used:
        yield from _needles(c)
    for needle in dict.fromkeys(op.setup.needle for op in c.operations if op.setup.needle):
        yield capital(say("sheet-needle-own", needle=needle_name(needle)))


def _needles(c: Construction) -> Iterator[str]:
    """Machine needles by the weight of the cloth: 70/10 light, 80/12 medium, 90/14 heavy.

    Sizes as in Sweet Briar Studio, "On pins and needles", and common practice.
    """
    for key in needle_keys(c.garment.fabrics):
        yield say(f"sheet-needle-{key}")


def needle_keys(fabrics: Iterable[Fabric]) -> tuple[str, ...]:
    """Which needles cloth wants: the end of the names of the sentences that tell them."""
    keys: dict[str, None] = {}
    for fabric in fabrics:
        if fabric.kind == _INTERFACING:
            continue
        key = "knit" if fabric.kind == "knit" else (fabric.weight or "any").casefold()
        keys[key if has(f"sheet-needle-{key}") else "any"] = None
    return tuple(keys) or ("any",)


def _machines(c: Construction) -> Iterator[str]:
    for station in stations_used(c):
        feet = dict.fromkeys(
            op.setup.foot for op in c.operations if op.setup.station == station.id and op.setup.foot
        )
        if station.id == "lockstitch" and _catches_something_thick(c):
            feet["zip"] = None
        names = sorted(feet, key=lambda foot: (foot != STANDARD_FOOT, foot))
        told = listing(say("sheet-foot", foot=foot_name(foot)) for foot in names)
        if has(f"sheet-machine-{station.id}"):
            yield say(f"sheet-machine-{station.id}", feet=told)
        elif station.id not in {"hand", "table"}:
            title = capital(station_title(station))
            yield say("sheet-machine-feet", machine=title, feet=told) if told else title


def _catches_something_thick(c: Construction) -> bool:
    """Whether a zip or piping is caught in a seam, which the zip foot sews closest to."""
    caught = (item.notion for entry in c.garment.entries for item in entry.between)
    kinds = [c.garment.notion[id_].kind for id_ in caught if id_ is not None]
    return any(word in kind for kind in kinds for word in ("zip", "piping"))


def _tools(c: Construction) -> Iterator[str]:
    used = {op.setup.station for op in c.operations}
    yield say("sheet-tool-scissors")
    yield say("sheet-tool-pins")
    yield say("sheet-tool-tape")
    yield say("sheet-tool-chalk")
    yield say("sheet-tool-ripper")
    if "iron" in used:
        yield say("sheet-tool-cloth")
    if "hand" in used:
        yield say("sheet-tool-needle")
    if c.acting(Action.THREAD) or any(_is_turned_strap(entry) for entry in c.garment.entries):
        yield say("sheet-tool-safety-pin")
    is_french = any(e.seam is SeamKind.FRENCH for e in c.garment.entries)
    if is_french or c.acting(Action.TURN, Action.CLOSE_ENDS):
        yield say("sheet-tool-point")
    if c.acting(Action.SLASH):
        yield say("sheet-tool-slash")
    if any(op.pieces for op in c.acting(Action.WAIT)):
        yield say("sheet-tool-hanger")
    if any(_is_round_pocket(c, op) for op in c.acting(Action.PRESS_UNDER)):
        yield say("sheet-tool-card")


def _is_turned_strap(entry: Entry) -> bool:
    return entry.verb is Verb.STRAP and entry.strap is StrapMethod.TURNED


def _is_round_pocket(c: Construction, op: Operation) -> bool:
    is_pocket = c.entry(op).verb is Verb.PATCH_POCKET
    return is_pocket and len({segment.index for segment in op.segments}) == 1
