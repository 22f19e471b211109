"""The recipe book: what each verb, and each kind of seam, expands into.

A recipe lists its operations; it does not order them. That trimming comes after stitching and
understitching before turning is the business of the rules, so that an order that a reader asks
about always has its reason.
"""

from seqplan.model.entry import Entry, SeamKind, Verb, ZipMethod
from seqplan.model.garment import Garment
from seqplan.model.operation import Action
from seqplan.recipes.recipe import MAIN, Ingredient, Recipe

_LOCKSTITCH = "lockstitch"
_OVERLOCKER = "overlocker"
_IRON = "iron"
_HAND = "hand"
_TABLE = "table"

_SEW = Ingredient(MAIN, Action.SEW, _LOCKSTITCH)
_PRESS = Ingredient("press", Action.PRESS, _IRON)
_FINISH = Ingredient("finish", Action.FINISH, _OVERLOCKER)

SEAMS: dict[SeamKind, Recipe] = {
    SeamKind.PLAIN: (_SEW,),
    SeamKind.PRESSED_OPEN: (_FINISH, _SEW, _PRESS),
    SeamKind.FINISHED_TOGETHER: (_SEW, _FINISH, _PRESS),
    SeamKind.FRENCH: (
        _SEW,
        Ingredient("trim", Action.TRIM, _TABLE),
        Ingredient("press-over", Action.PRESS_OVER, _IRON),
        Ingredient("enclose", Action.ENCLOSE, _LOCKSTITCH),
        _PRESS,
    ),
    SeamKind.FACED: (
        _SEW,
        Ingredient("trim", Action.TRIM, _TABLE),
        Ingredient("clip", Action.CLIP, _TABLE),
        _PRESS,
        Ingredient("understitch", Action.UNDERSTITCH, _LOCKSTITCH),
        Ingredient("turn", Action.TURN, _IRON),
    ),
}

ZIPS: dict[ZipMethod, Recipe] = {
    ZipMethod.INVISIBLE: (
        Ingredient("coils", Action.PRESS_COILS, _IRON),
        Ingredient(MAIN, Action.SET_ZIP, _LOCKSTITCH, "invisible zip"),
    ),
    ZipMethod.CENTRED: (
        Ingredient("baste", Action.BASTE, _LOCKSTITCH),
        Ingredient("press", Action.PRESS, _IRON),
        Ingredient(MAIN, Action.SET_ZIP, _LOCKSTITCH, "zip"),
        Ingredient("unbaste", Action.REMOVE_BASTING, _TABLE),
    ),
}

_SIMPLE: dict[Verb, Ingredient] = {
    Verb.FUSE: Ingredient(MAIN, Action.FUSE, _IRON),
    Verb.STAYSTITCH: Ingredient(MAIN, Action.STAYSTITCH, _LOCKSTITCH),
    Verb.BASTE: Ingredient(MAIN, Action.BASTE, _LOCKSTITCH),
    Verb.ATTACH: Ingredient(MAIN, Action.ATTACH, _HAND),
    Verb.FINISH: Ingredient(MAIN, Action.FINISH, _OVERLOCKER),
    Verb.TRIM: Ingredient(MAIN, Action.TRIM, _TABLE),
    Verb.CLIP: Ingredient(MAIN, Action.CLIP, _TABLE),
    Verb.PRESS: Ingredient(MAIN, Action.PRESS, _IRON),
    Verb.UNDERSTITCH: Ingredient(MAIN, Action.UNDERSTITCH, _LOCKSTITCH),
    Verb.TOPSTITCH: Ingredient(MAIN, Action.TOPSTITCH, _LOCKSTITCH),
    Verb.TACK: Ingredient(MAIN, Action.TACK, _HAND),
    Verb.GATHER: Ingredient(MAIN, Action.GATHER, _LOCKSTITCH),
    Verb.REMOVE_BASTING: Ingredient(MAIN, Action.REMOVE_BASTING, _TABLE),
    Verb.TURN: Ingredient(MAIN, Action.TURN, _TABLE),
    Verb.FIT: Ingredient(MAIN, Action.FIT, _TABLE),
    Verb.INSPECT: Ingredient(MAIN, Action.INSPECT, _TABLE),
    Verb.DO: Ingredient(MAIN, Action.DO, _TABLE),
}

_SHAPED: dict[Verb, Action] = {Verb.DART: Action.DART, Verb.PLEAT: Action.PLEAT}


def recipe_for(entry: Entry, garment: Garment) -> Recipe:
    """Look up what an entry expands into, before parts are left out.

    Parameters
    ----------
    entry
        The entry.
    garment
        The garment, for the notion that is inserted.
    """
    if entry.verb is Verb.SEW:
        return SEAMS[entry.seam]
    if entry.verb in _SHAPED:
        return (Ingredient(MAIN, _SHAPED[entry.verb], _LOCKSTITCH), _PRESS)
    if entry.verb is Verb.HEM:
        return _hem(entry)
    if entry.verb is Verb.CASING:
        return (
            Ingredient("turn-up", Action.TURN_UP, _IRON),
            Ingredient(MAIN, Action.CASE, _LOCKSTITCH),
        )
    if entry.verb is Verb.INSERT:
        return _insert(entry, garment)
    return (_SIMPLE[entry.verb],)


def _hem(entry: Entry) -> Recipe:
    """Turn up, stitch, press; an edge turned only once is finished first."""
    recipe = (
        Ingredient("turn-up", Action.TURN_UP, _IRON),
        Ingredient(MAIN, Action.HEM, _HAND if entry.by_hand else _LOCKSTITCH),
        _PRESS,
    )
    return (_FINISH, *recipe) if entry.turned == "once" else recipe


def _insert(entry: Entry, garment: Garment) -> Recipe:
    """Set a zip, or draw elastic or cord through a casing."""
    if entry.into is None:
        return ZIPS[entry.method or ZipMethod.CENTRED]
    thread = Ingredient(MAIN, Action.THREAD, _HAND)
    if entry.notion is None or "elastic" not in garment.notion[entry.notion].kind:
        return (thread,)
    casing = garment.entry[entry.into]
    join = (thread, Ingredient("join", Action.JOIN_ENDS, _LOCKSTITCH))
    if casing.gap is None:
        return join
    return (*join, Ingredient("close", Action.CLOSE_GAP, _LOCKSTITCH))
