"""The recipe book: what each verb, and each kind of seam, expands into.

A recipe lists its operations; it does not order them. That trimming comes after stitching and
understitching before turning is the business of the rules, so that an order that a reader asks
about always has its reason.
"""

from collections.abc import Callable

from seqplan.model.entry import (
    Closing,
    Ends,
    Entry,
    SeamKind,
    StrapMethod,
    Verb,
    ZipMethod,
)
from seqplan.model.garment import Garment
from seqplan.model.operation import Action
from seqplan.model.station import IRON, TABLE
from seqplan.recipes.bands import ends_of
from seqplan.recipes.recipe import MAIN, Ingredient, Reach, Recipe

_LOCKSTITCH = "lockstitch"
_OVERLOCKER = "overlocker"
_IRON = IRON
_HAND = "hand"
_TABLE = TABLE

_SEW = Ingredient(MAIN, Action.SEW, _LOCKSTITCH)
_PRESS = Ingredient("press", Action.PRESS, _IRON)
_FINISH = Ingredient("finish", Action.FINISH, _OVERLOCKER)

SEAMS: dict[SeamKind, Recipe] = {
    SeamKind.PLAIN: (_SEW,),
    SeamKind.PRESSED_OPEN: (_FINISH, _SEW, _PRESS),
    SeamKind.FINISHED_TOGETHER: (_SEW, _FINISH, _PRESS),
    SeamKind.OVERLOCKED: (_SEW._replace(station=_OVERLOCKER), _PRESS),
    SeamKind.FRENCH: (
        _SEW,
        Ingredient("trim", Action.TRIM, _TABLE),
        Ingredient("press-over", Action.PRESS_OVER, _IRON),
        Ingredient("enclose", Action.ENCLOSE, _LOCKSTITCH),
        _PRESS,
    ),
    SeamKind.FLAT_FELLED: (
        _SEW,
        _PRESS,
        Ingredient("trim", Action.TRIM, _TABLE),
        Ingredient("turn-under", Action.PRESS_OVER, _IRON),
        Ingredient("fell", Action.ENCLOSE, _LOCKSTITCH),
    ),
    SeamKind.LAPPED: (_FINISH, Ingredient("press-under", Action.PRESS_UNDER, _IRON), _SEW, _PRESS),
    SeamKind.BOUND: (_SEW, Ingredient("bind", Action.FINISH, _LOCKSTITCH), _PRESS),
    SeamKind.ENCLOSED: (
        _SEW,
        Ingredient("trim", Action.TRIM, _TABLE),
        Ingredient("clip", Action.CLIP, _TABLE),
        _PRESS,
        Ingredient("turn", Action.TURN, _IRON),
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

_BASTED_ZIP: Recipe = (
    Ingredient("baste", Action.BASTE, _LOCKSTITCH),
    Ingredient("press", Action.PRESS, _IRON),
    Ingredient(MAIN, Action.SET_ZIP, _LOCKSTITCH, "zip"),
    Ingredient("unbaste", Action.REMOVE_BASTING, _TABLE),
)

ZIPS: dict[ZipMethod, Recipe] = {
    ZipMethod.INVISIBLE: (
        Ingredient("coils", Action.PRESS_COILS, _IRON),
        Ingredient(MAIN, Action.SET_ZIP, _LOCKSTITCH, "invisible zip"),
    ),
    ZipMethod.CENTRED: _BASTED_ZIP,
    ZipMethod.LAPPED: _BASTED_ZIP,
    ZipMethod.FLY: (
        Ingredient("facing", Action.SET_ON, _LOCKSTITCH),
        Ingredient("press", Action.PRESS, _IRON),
        Ingredient(MAIN, Action.SET_ZIP, _LOCKSTITCH, "zip"),
        Ingredient("shield", Action.STITCH_ON, _LOCKSTITCH, "zip"),
        Ingredient("topstitch", Action.TOPSTITCH, _LOCKSTITCH),
    ),
}

_TOPSTITCH = Ingredient("topstitch", Action.TOPSTITCH, _LOCKSTITCH)

_PATCH: Recipe = (
    Ingredient("mouth-turn-up", Action.TURN_UP, _IRON, reach=Reach.MOUTH),
    Ingredient("mouth", Action.HEM, _LOCKSTITCH, reach=Reach.MOUTH),
    Ingredient("press-under", Action.PRESS_UNDER, _IRON, reach=Reach.AROUND),
    Ingredient(MAIN, Action.STITCH_ON, _LOCKSTITCH),
)

_PLACKET: Recipe = (
    Ingredient("fold", Action.FOLD_BAND, _IRON, reach=Reach.PARTNER),
    Ingredient("slash", Action.SLASH, _TABLE),
    Ingredient(MAIN, Action.SET_ON, _LOCKSTITCH),
    Ingredient("wrap", Action.WRAP, _IRON),
    Ingredient("close", Action.CLOSE_BAND, _LOCKSTITCH),
)

_FIXED: dict[Verb, Recipe] = {
    Verb.PATCH_POCKET: _PATCH,
    Verb.TOWER_PLACKET: _PLACKET,
    Verb.CONTINUOUS_PLACKET: _PLACKET,
    Verb.IN_SEAM_POCKET: (
        Ingredient("finish", Action.FINISH, _OVERLOCKER, reach=Reach.BAG),
        Ingredient(MAIN, Action.SET_ON, _LOCKSTITCH),
        _PRESS,
    ),
    Verb.SHORTEN: (
        Ingredient("stop", Action.SEW_STOP, _HAND),
        Ingredient(MAIN, Action.SHORTEN, _TABLE),
    ),
    Verb.WELT_POCKET: (
        Ingredient("fold", Action.FOLD_BAND, _IRON, reach=Reach.PARTNER),
        Ingredient(MAIN, Action.STITCH_ON, _LOCKSTITCH),
        Ingredient("slash", Action.SLASH, _TABLE),
        Ingredient("turn", Action.TURN, _IRON),
        Ingredient("bag", Action.CLOSE_BAND, _LOCKSTITCH, reach=Reach.BAG),
        Ingredient("ends", Action.CLOSE_ENDS, _LOCKSTITCH),
    ),
}

OWN_PARTS: dict[str, Ingredient] = {
    "sew": _SEW,
    "trim": Ingredient("trim", Action.TRIM, _TABLE),
    "grade": Ingredient("grade", Action.GRADE, _TABLE),
    "clip": Ingredient("clip", Action.CLIP, _TABLE),
    "finish": _FINISH,
    "press": _PRESS,
    "understitch": Ingredient("understitch", Action.UNDERSTITCH, _LOCKSTITCH),
    "topstitch": _TOPSTITCH,
    "turn": Ingredient("turn", Action.TURN, _IRON),
}
"""What a seam of the author's own may be made of."""

_SIMPLE: dict[Verb, Ingredient] = {
    Verb.PRETREAT: Ingredient(MAIN, Action.PRETREAT, _TABLE),
    Verb.CUT: Ingredient(MAIN, Action.CUT, _TABLE),
    Verb.MARK: Ingredient(MAIN, Action.MARK, _TABLE),
    Verb.SLASH: Ingredient(MAIN, Action.SLASH, _TABLE),
    Verb.HOLD: Ingredient(MAIN, Action.HOLD, _LOCKSTITCH),
    Verb.BOX_CORNER: Ingredient(MAIN, Action.BOX, _LOCKSTITCH),
    Verb.GRADE: Ingredient(MAIN, Action.GRADE, _TABLE),
    Verb.FOLD: Ingredient(MAIN, Action.FOLD, _IRON),
    Verb.UNFOLD: Ingredient(MAIN, Action.UNFOLD, _TABLE),
    Verb.NEST: Ingredient(MAIN, Action.NEST, _TABLE),
    Verb.ROLL: Ingredient(MAIN, Action.ROLL, _TABLE),
    Verb.OPEN: Ingredient(MAIN, Action.OPEN, _TABLE),
    Verb.CLOSE: Ingredient(MAIN, Action.CLOSE_GAP, _HAND),
    Verb.WAIT: Ingredient(MAIN, Action.WAIT, _TABLE),
    Verb.SEND_OUT: Ingredient(MAIN, Action.SEND_OUT, _TABLE),
    Verb.FUSE: Ingredient(MAIN, Action.FUSE, _IRON),
    Verb.STAYSTITCH: Ingredient(MAIN, Action.STAYSTITCH, _LOCKSTITCH),
    Verb.BASTE: Ingredient(MAIN, Action.BASTE, _LOCKSTITCH),
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
    recipe = _recipe(entry, garment)
    if entry.topstitch is not None and not any(i.part == "topstitch" for i in recipe):
        return (*recipe, _TOPSTITCH)
    return recipe


def _recipe(entry: Entry, garment: Garment) -> Recipe:
    if entry.verb is Verb.SEW:
        return _seam(entry, garment)
    if entry.verb in _FIXED:
        return _FIXED[entry.verb]
    if entry.verb in _MADE_UP:
        return _MADE_UP[entry.verb](entry, garment)
    if entry.verb in _SHAPED:
        return (Ingredient(MAIN, _SHAPED[entry.verb], _LOCKSTITCH), _PRESS)
    return (_SIMPLE[entry.verb],)


def _seam(entry: Entry, garment: Garment) -> Recipe:
    """A usual seam, or one of the author's own."""
    own = garment.own_seam.get(entry.own_seam or "")
    if own is not None:
        return tuple(OWN_PARTS[part] for part in own.parts)
    if entry.seam is SeamKind.PLAIN and entry.press_to is not None:
        return (_SEW, _PRESS)
    recipe = SEAMS[entry.seam]
    if entry.seam is SeamKind.BOUND and entry.partners:
        strip = entry.partners[0]
        return tuple(i._replace(piece=strip) if i.part == "bind" else i for i in recipe)
    return recipe


def _casing(_entry: Entry, _garment: Garment) -> Recipe:
    return (
        Ingredient("turn-up", Action.TURN_UP, _IRON),
        Ingredient(MAIN, Action.CASE, _LOCKSTITCH),
    )


def _band(entry: Entry, garment: Garment) -> Recipe:
    """Fold, set on, press, close the ends, fold over, fasten the loose edge."""
    is_strip = bool(entry.partners)
    fold = Ingredient("fold", Action.FOLD_BAND, _IRON, reach=Reach.PARTNER)
    join = Ingredient("join", Action.CLOSE_ENDS, _LOCKSTITCH, reach=Reach.ENDS)
    ends = Ingredient("ends", Action.CLOSE_ENDS, _LOCKSTITCH, reach=Reach.ENDS)
    set_on = Ingredient(MAIN, Action.SET_ON, _LOCKSTITCH)
    what = ends_of(garment, entry)
    recipe: list[Ingredient] = [join] if what is Ends.JOINED else []
    recipe += [fold, set_on] if is_strip else [set_on]
    if entry.closing is Closing.IN_ONE_SEAM:
        return (*recipe, _FINISH, _PRESS)
    by_hand = entry.closing is Closing.BY_HAND
    return (
        *recipe,
        _PRESS,
        *([ends] if what is Ends.CLOSED else []),
        Ingredient("wrap", Action.WRAP, _IRON),
        Ingredient("close", Action.CLOSE_BAND, _HAND if by_hand else _LOCKSTITCH),
    )


def _strap(entry: Entry, _garment: Garment) -> Recipe:
    """Sewn and drawn through, or pressed in and stitched."""
    bag = Reach.BAG
    make = Ingredient(MAIN, Action.MAKE_STRAP, _LOCKSTITCH, reach=bag)
    if entry.strap is StrapMethod.FOLDED:
        return (Ingredient("fold", Action.FOLD_BAND, _IRON, reach=Reach.PARTNER), make)
    return (make, Ingredient("turn", Action.TURN, _TABLE, reach=bag), _press_of(bag))


def _press_of(reach: Reach) -> Ingredient:
    return _PRESS._replace(reach=reach)


def _buttonhole(entry: Entry, _garment: Garment) -> Recipe:
    """Buttonholes on several pieces are as many operations: each piece is ready at its own time.

    Bound ones are made in the outer cloth, and the facing is opened behind them at the end.
    """
    pieces = list(dict.fromkeys(place.piece for place in entry.places))
    if entry.is_bound:
        return (
            Ingredient(MAIN, Action.BIND_HOLE, _LOCKSTITCH),
            Ingredient("press", Action.PRESS, _IRON),
            Ingredient("behind", Action.OPEN_BEHIND, _HAND),
        )
    return tuple(
        Ingredient(
            piece if place else MAIN, Action.BUTTONHOLE, _LOCKSTITCH, "buttonhole", piece=piece
        )
        for place, piece in enumerate(pieces)
    ) or (Ingredient(MAIN, Action.BUTTONHOLE, _LOCKSTITCH, "buttonhole"),)


def _attach(entry: Entry, garment: Garment) -> Recipe:
    """A fastening is sewn on by hand, a strap or a label by machine."""
    if entry.pieces:
        return (Ingredient(MAIN, Action.STITCH_ON, _LOCKSTITCH),)
    kind = garment.notion[entry.notion].kind.casefold() if entry.notion else ""
    if any(word in kind for word in CAUGHT_KINDS) and "hook" not in kind:
        return (Ingredient(MAIN, Action.STITCH_ON, _LOCKSTITCH),)
    return (Ingredient(MAIN, Action.ATTACH, _HAND),)


def _hem(entry: Entry, _garment: Garment) -> Recipe:
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
        recipe = ZIPS[entry.method or ZipMethod.CENTRED]
        return _with_fly_pieces(recipe, entry) if entry.method is ZipMethod.FLY else recipe
    thread = Ingredient(MAIN, Action.THREAD, _HAND)
    if entry.notion is None or "elastic" not in garment.notion[entry.notion].kind:
        return (thread,)
    casing = garment.entry[entry.into]
    join = (thread, Ingredient("join", Action.JOIN_ENDS, _LOCKSTITCH))
    if casing.gap is None:
        return join
    return (*join, Ingredient("close", Action.CLOSE_GAP, _LOCKSTITCH))


def _with_fly_pieces(recipe: Recipe, entry: Entry) -> Recipe:
    """The facing of a fly is sewn on by itself, and so is the shield."""
    pieces = dict(zip(("facing", "shield"), entry.partners, strict=False))
    return tuple(item._replace(piece=pieces.get(item.part)) for item in recipe)


CAUGHT_KINDS = ("elastic", "label", "lace", "piping", "ribbon", "tape", "loop", "trimming")
"""Kinds of notion that are sewn onto cloth early, and not fastened on at the end."""

_MADE_UP: dict[Verb, Callable[[Entry, Garment], Recipe]] = {
    Verb.HEM: _hem,
    Verb.CASING: _casing,
    Verb.INSERT: _insert,
    Verb.BAND: _band,
    Verb.BIND: _band,
    Verb.STRAP: _strap,
    Verb.BUTTONHOLE: _buttonhole,
    Verb.ATTACH: _attach,
}
"""Recipes that depend on what the entry says."""
