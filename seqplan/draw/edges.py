"""Sections of edges: finished, turned up, cased, banded, bound; of straps, darts and zips."""

from collections.abc import Callable, Mapping
from typing import Final

from seqplan.draw import folds
from seqplan.draw.cloth import End, Ply, Section, Stitch
from seqplan.draw.folds import BAND, NARROW, Side
from seqplan.draw.lay import band_side, is_from_wrong_side, layers
from seqplan.draw.openings import fly, welt
from seqplan.draw.seams import join
from seqplan.draw.subject import RowSpec, Subject
from seqplan.model.entry import Closing, StrapMethod, Verb, ZipMethod
from seqplan.model.operation import Action

_ABOVE: Final = 0.6
_HEM: Final = 16.0
_NARROW_HEM: Final = 8.0
_NARROW_MM: Final = 10
"""A hem of up to so many millimetres is drawn narrow."""


# -- hems and casings ----------------------------------------------------------------------


def hem(s: Subject) -> Section | None:
    """A hem or casing: finished, turned up, stitched, threaded."""
    if not s.here:
        return None
    side = s.side(s.here[0])
    if s.done(Action.FINISH):
        side = side._replace(end=End.FINISHED)
    if not s.done(Action.TURN_UP):
        return Section((folds.flat(side, 0, right_up=True),)) if s.done(Action.FINISH) else None
    twice = s.entry.turned != "once"
    is_narrow = s.entry.depth is not None and s.entry.depth.mm <= _NARROW_MM
    depth = _NARROW_HEM if is_narrow else _HEM
    first = depth - 1.5 if is_narrow else NARROW + 2
    low = -3.0 if twice else -2.0
    row = (1.6 - depth, _ABOVE, 1.6 - depth, low + 1 - _ABOVE)
    stitch = Stitch.HEM
    if s.entry.by_hand:
        stitch = Stitch.HAND
        inner = -1.5 if twice else -1 - _ABOVE
        row = (1.8 - depth, inner, -1.4 - depth if twice else 1.2 - depth, 0.15)
    top = s.done(Action.TOPSTITCH)
    rows = s.rows(
        [(stitch, s.main, row), (Stitch.TOPSTITCHING, top, (-2, _ABOVE, -2, low + 1 - _ABOVE))]
    )
    plies = (folds.turned_up(side, depth, first, twice=twice), *_threaded(s, twice=twice))
    return Section(plies, rows, is_outside_up=True)


def _threaded(s: Subject, *, twice: bool) -> tuple[Ply, ...]:
    """What has been drawn through a casing."""
    found = [
        op
        for op in s.c.acting(Action.THREAD)
        if op.id in s.work.done and s.c.entry(op).into == s.entry.id and op.notions
    ]
    if not found:
        return ()
    level = -1.0 if twice else -0.5
    way = ((-9.0, level), (-2.5, level))
    return (Ply(s.notion(found[0].notions[0]), way, None, (End.RAW, End.RAW)),)


def single(s: Subject) -> Section | None:
    """An edge that is treated by itself: finished, staystitched, trimmed, topstitched."""
    if not s.here:
        return None
    side = s.side(s.here[0])
    if s.done(Action.FINISH):
        side = side._replace(end=End.FINISHED)
    if s.done(Action.TRIM):
        side = side._replace(width=NARROW)
    stitch = _SINGLE.get(s.op.action)
    op = s.op if stitch else None
    x = -1.5 if s.op.action is Action.TOPSTITCH else 1.5
    rows = s.rows([(stitch or Stitch.SEAM, op, (x, _ABOVE, x, -_ABOVE))])
    return Section((folds.flat(side, 0, right_up=True),), rows)


_SINGLE: Final = {
    Action.STAYSTITCH: Stitch.STAYSTITCHING,
    Action.TOPSTITCH: Stitch.TOPSTITCHING,
    Action.UNDERSTITCH: Stitch.UNDERSTITCHING,
}


# -- bands and bindings --------------------------------------------------------------------


def band(s: Subject) -> Section | None:
    """A band or binding: folded, set on, pressed, folded over, closed."""
    laid = layers(s)
    if not laid:
        return None
    ground, strip = laid[0].side, band_side(s)
    double = s.entry.closing is Closing.IN_ONE_SEAM
    if s.main is None:
        if not s.done(Action.FOLD_BAND):
            return None
        return Section((folds.band_alone(strip, double=double),), is_outside_up=True)
    if double:
        return _in_one(s, ground, strip)
    section = _folding(s, ground, strip)
    is_worn = section.is_outside_up
    return section.upside_down() if is_worn and is_from_wrong_side(s) else section


def _folding(s: Subject, ground: Side, strip: Side) -> Section:
    """A band that closes over its seam; from the wrong side, drawn with the inside up."""
    up = not is_from_wrong_side(s)
    inner = Side(s.material(s.entry.under[0])) if s.entry.under else None
    if s.done(Action.WRAP, Action.CLOSE_BAND):
        plies = (
            folds.two_bands_round(ground, strip, inner)
            if inner
            else folds.band_round(ground, strip)
        )
        top = s.done(Action.TOPSTITCH)
        edge = (BAND - 2, 2 + _ABOVE, BAND - 2, -2 - _ABOVE)
        rows = s.rows(
            [
                (Stitch.SEAM, s.main, (1.2, 1.4, 1.2, -0.4)),
                _closing(s),
                (Stitch.TOPSTITCHING, top, edge),
            ]
        )
        return Section(_as_worn(plies, right_up=up), rows, is_outside_up=True)
    if s.done(Action.PRESS, Action.CLOSE_ENDS):
        if inner:
            plies = folds.two_bands_round(ground, strip, inner, is_clear=True)
            row = (1.2, 1.4, 1.2, -0.4)
        else:
            plies = folds.band_up(ground, strip)
            row = (2.5, -0.6, 2.5, -2 - _ABOVE)
        rows = s.rows([(Stitch.SEAM, s.main, row)])
        return Section(_as_worn(plies, right_up=up), rows, is_outside_up=True)
    laid = folds.two_bands_laid(strip, inner, 1) if inner else (folds.band_laid(strip, 1),)
    rows = s.rows([(Stitch.SEAM, s.main, (0, 1 + _ABOVE, 0, -_ABOVE))])
    return Section((folds.flat(ground, 0, right_up=up), *laid), rows)


def _as_worn(plies: tuple[Ply, ...], *, right_up: bool) -> tuple[Ply, ...]:
    """The ground, which comes first, with its right side up or down."""
    if right_up:
        return plies
    return (plies[0]._replace(right_at_left=not plies[0].right_at_left), *plies[1:])


def _closing(s: Subject) -> RowSpec:
    """How the loose edge is fastened."""
    close = s.done(Action.CLOSE_BAND)
    if s.entry.closing is Closing.BY_HAND:
        return (Stitch.HAND, close, (-2.6, -1.5, -5.2, 0.15))
    if s.entry.closing is Closing.IN_THE_DITCH:
        return (Stitch.TOPSTITCHING, close, (-1.2, _ABOVE, -1.2, -2 - _ABOVE))
    if is_from_wrong_side(s):
        return (Stitch.TOPSTITCHING, close, (-1.6, -2 - _ABOVE, -1.6, _ABOVE))
    return (Stitch.TOPSTITCHING, close, (2.6, 2 + _ABOVE, 2.6, -2 - _ABOVE))


def _in_one(s: Subject, ground: Side, strip: Side) -> Section:
    """A band both edges of which lie in the seam."""
    finish, top = s.done(Action.FINISH), s.done(Action.TOPSTITCH)
    if finish:
        ground, strip = (side._replace(end=End.FINISHED) for side in (ground, strip))
    if not s.done(Action.PRESS) and not top:
        up = not s.entry.from_wrong_side
        plies = (folds.flat(ground, 0, right_up=up), folds.band_laid_double(strip, 1))
        rows = s.rows([(Stitch.SEAM, s.main, (0, 2 + _ABOVE, 0, -_ABOVE))])
        return Section(plies, rows)
    rows = s.rows(
        [
            (Stitch.SEAM, s.main, (-2, -0.5, -2, -3 - _ABOVE)),
            (Stitch.TOPSTITCHING, top, (-5, _ABOVE, -5, -3 - _ABOVE)),
        ]
    )
    section = Section(folds.band_in_one(ground, strip), rows, is_outside_up=True)
    if s.entry.from_wrong_side:
        worn = _as_worn(section.plies, right_up=False)
        return section._replace(plies=worn).upside_down()
    return section


# -- pockets, straps, darts, pleats, gathers -----------------------------------------------


def bag(s: Subject) -> Section | None:
    """A pocket bag, finished by itself, on the edge of a seam to come."""
    if s.main is None and s.entry.pieces and s.done(Action.FINISH):
        alone = Side(s.material(s.entry.pieces[0]), end=End.FINISHED)
        return Section((folds.flat(alone, 0, right_up=True),))
    laid = layers(s)
    if not laid or s.main is None:
        return None
    ground, upper = laid[0].side, laid[1].side
    if s.done(Action.PRESS):
        rows = s.rows([(Stitch.SEAM, s.main, (2.5, -0.6, 2.5, -2 - _ABOVE))])
        return Section(folds.to_side(ground, upper), rows, is_outside_up=True)
    rows = s.rows([(Stitch.SEAM, s.main, (0, 1 + _ABOVE, 0, -_ABOVE))])
    return Section(folds.stacked([(x.side, x.is_right_up) for x in laid]), rows)


def patch(s: Subject) -> Section | None:
    """A patch pocket: its mouth hemmed, its other edges pressed under, stitched on."""
    if not s.entry.pieces:
        return None
    pocket = Side(s.material(s.entry.pieces[0]))
    if s.main is not None:
        laid = layers(s)
        if not laid:
            return None
        rows = s.rows([(Stitch.TOPSTITCHING, s.main, (-1.4, 2 + _ABOVE, -1.4, -_ABOVE))])
        return Section(folds.laid_on(pocket, laid[0].side), rows, is_outside_up=True)
    if s.op.action is Action.PRESS_UNDER:
        return Section((folds.folded_under(pocket),), is_outside_up=True)
    plies = (folds.turned_up(pocket, _HEM, NARROW + 2, twice=True),)
    mouth = s.done(Action.HEM)
    rows = s.rows([(Stitch.HEM, mouth, (1.6 - _HEM, _ABOVE, 1.6 - _HEM, -2 - _ABOVE))])
    return Section(plies, rows, is_outside_up=True)


def strap(s: Subject) -> Section | None:
    """A strap: sewn inside out and drawn through, or folded in and stitched."""
    if not s.entry.pieces:
        return None
    side = Side(s.material(s.entry.pieces[0]))
    top = s.done(Action.TOPSTITCH)
    edge = (-BAND - 2, _ABOVE, -BAND - 2, -3 - _ABOVE)
    if s.entry.strap is StrapMethod.FOLDED:
        near = (-2, _ABOVE, -2, -3 - _ABOVE)
        # Both rows of what goes along both edges; beside the first, where that is another one.
        within = (-5, _ABOVE, -5, -3 - _ABOVE)
        found: list[RowSpec] = [(Stitch.TOPSTITCHING, s.main, near)]
        if s.entry.topstitch is None:
            found.append((Stitch.TOPSTITCHING, s.main, edge))
        else:
            found += [(Stitch.TOPSTITCHING, top, edge), (Stitch.TOPSTITCHING, top, within)]
        return Section((folds.strap_closed(side),), s.rows(found))
    if not s.done(Action.TURN):
        rows = s.rows([(Stitch.SEAM, s.main, (0, 1 + _ABOVE, 0, -_ABOVE))])
        return Section((folds.strap_laid(side),), rows)
    seam = (-1.7, -0.5, -1.7, -2.5)
    within = (-4, _ABOVE, -4, -3 - _ABOVE)
    both_edges = [(Stitch.TOPSTITCHING, top, edge), (Stitch.TOPSTITCHING, top, within)]
    rows = s.rows([(Stitch.SEAM, s.main, seam), *both_edges])
    return Section((folds.strap_closed(side),), rows)


def dart(s: Subject) -> Section | None:
    """A dart across its length."""
    if s.main is None or not s.here:
        return None
    side = s.side(s.here[0])
    if s.done(Action.PRESS):
        rows = s.rows([(Stitch.SEAM, s.main, (2.5, -0.5, 2.5, -2 - _ABOVE))])
        return Section((folds.dart_pressed(side),), rows, is_outside_up=True)
    rows = s.rows([(Stitch.SEAM, s.main, (0, 1 + _ABOVE, 0, -_ABOVE))])
    return Section((folds.dart_sewn(side),), rows)


def pleat(s: Subject) -> Section | None:
    """A pleat across its folds, basted along the edge."""
    if s.main is None or not s.here:
        return None
    rows = s.rows([(Stitch.BASTING, s.main, (0, _ABOVE, 0, -2 - _ABOVE))])
    return Section((folds.pleat(s.side(s.here[0])),), rows, is_outside_up=True)


def gather(s: Subject) -> Section | None:
    """An edge drawn up along its threads."""
    if s.main is None or not s.here:
        return None
    rows = s.rows([(Stitch.GATHERING, s.main, (-22, 0.2, 22, 0.2))])
    return Section((folds.gathered(s.side(s.here[0])),), rows, is_outside_up=True)


# -- zips ----------------------------------------------------------------------------------


def zip_(s: Subject) -> Section | None:
    """A zip: its opening basted and pressed, the zip set, the basting taken out."""
    run = s.shape.run
    if s.entry.notion is None or len(run) < 2:
        return None
    left, right = s.over_and_under
    method = s.entry.method or ZipMethod.CENTRED
    if method is ZipMethod.INVISIBLE:
        return _invisible(s, left, right)
    if method is ZipMethod.FLY:
        return fly(s)
    return _basted(s, left, right, is_lapped=method is ZipMethod.LAPPED)


def _basted(s: Subject, left: Side, right: Side, *, is_lapped: bool) -> Section | None:
    basted = None if s.done(Action.REMOVE_BASTING) else s.done(Action.BASTE)
    across: tuple[float, float, float, float] = (-1.6, -0.5, 1.6, -0.5)
    if s.main is None:
        if basted is None:
            return None
        if s.done(Action.PRESS):
            rows = s.rows([(Stitch.BASTING, basted, across)])
            return Section(folds.opened(left, right), rows, is_outside_up=True)
        rows = s.rows([(Stitch.BASTING, basted, (0, 1 + _ABOVE, 0, -_ABOVE))])
        return Section(folds.stacked([(left, True), (right, False)]), rows)
    material = s.notion(s.entry.notion) if s.entry.notion else left.material
    if is_lapped:
        plies = (*folds.zip_lapped(left, right), *folds.tapes(material, -2, 9))
        places = [(2.6, 0.5, 2.6, -2 - _ABOVE), (-6.5, 2 + _ABOVE, -6.5, -2 - _ABOVE)]
    else:
        plies = (*folds.opened(left, right), *folds.tapes(material, -2, 8))
        places = [(x, _ABOVE, x, -2 - _ABOVE) for x in (-5.5, 5.5)]
    rows = s.rows(
        [
            *([] if is_lapped else [(Stitch.BASTING, basted, across)]),
            *((Stitch.TOPSTITCHING, s.main, place) for place in places),
        ]
    )
    return Section(plies, rows, is_outside_up=True)


def _invisible(s: Subject, left: Side, right: Side) -> Section | None:
    if s.main is None or s.entry.notion is None:
        return None
    plies = (*folds.opened(left, right), *folds.tapes(s.notion(s.entry.notion), -2, 8))
    rows = s.rows([(Stitch.SEAM, s.main, (x, -0.5, x, -2 - _ABOVE)) for x in (-2.2, 2.2)])
    return Section(plies, rows, is_outside_up=True)


def basting(s: Subject) -> Section | None:
    """Layers that are basted or held together."""
    laid = layers(s)
    if not laid or s.main is None:
        return None
    top = len(laid) - 1 + _ABOVE
    rows = s.rows([(Stitch.BASTING, s.main, (3, top, 3, -_ABOVE))])
    return Section(folds.stacked([(x.side, x.is_right_up) for x in laid]), rows)


OF_VERB: Final[Mapping[Verb, Callable[[Subject], Section | None]]] = {
    Verb.SEW: join,
    Verb.BASTE: basting,
    Verb.HOLD: basting,
    Verb.HEM: hem,
    Verb.CASING: hem,
    Verb.BAND: band,
    Verb.BIND: band,
    Verb.CONTINUOUS_PLACKET: band,
    Verb.TOWER_PLACKET: band,
    Verb.IN_SEAM_POCKET: bag,
    Verb.PATCH_POCKET: patch,
    Verb.WELT_POCKET: welt,
    Verb.STRAP: strap,
    Verb.DART: dart,
    Verb.PLEAT: pleat,
    Verb.GATHER: gather,
    Verb.INSERT: zip_,
    Verb.FINISH: single,
    Verb.STAYSTITCH: single,
    Verb.TRIM: single,
    Verb.TOPSTITCH: single,
}
"""Who draws what an entry makes."""
