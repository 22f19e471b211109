"""Buttons with their holes, and strips that are set on, folded over and fastened."""

from seqplan.base.diagnostic import Severity
from seqplan.explain.audit.audit import Found, told
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.entry import Closing, Verb
from seqplan.model.garment import Notion
from seqplan.model.operation import Action

_FOR_HOLES = ("button", "stud", "link", "toggle", "cord", "drawstring", "lace", "ribbon", "elastic")
"""Kinds of notion that go through a buttonhole."""

_NO_HOLE = ("buttonhole", "snap", "press", "magnet", "cover", "decor", "shank loop")
"""Kinds of button that want no hole, or are none."""

_HOLDING = (
    Action.CLOSE_BAND,
    Action.CLOSE_ENDS,
    Action.MAKE_STRAP,
    Action.STITCH_ON,
    Action.TOPSTITCH,
    Action.TACK,
    Action.HOLD,
    Action.DO,
)
"""What fastens a strip, or makes it up by itself."""


def buttonhole_without_button(ledger: Ledger) -> Found:
    """A buttonhole has its button, or something is drawn through it.

    Stays quiet where free words speak of what goes through, and where a choice may bring it. Merely
    hints where the file lists no notions at all.
    """
    c = ledger.c
    holes = c.acting(Action.BUTTONHOLE, Action.BIND_HOLE)
    if not holes or ledger.tells(*_FOR_HOLES) or ledger.is_brought(Verb.ATTACH):
        return
    used = {n for op in c.operations for n in op.notions}
    if not any(_is_of(n, *_FOR_HOLES) for n in c.garment.notions if n.id in used):
        yield told(
            "buttonhole-without-button",
            holes[0].path,
            severity=Severity.WARNING if c.garment.notions else Severity.HINT,
            entry=holes[0].entry,
        )


def button_without_buttonhole(ledger: Ledger) -> Found:
    """A button has a hole or a loop that it goes through.

    Stays quiet where free words speak of holes or loops, where a piece or notion is a loop, and of
    snaps and covered or decorative buttons.
    """
    c = ledger.c
    if c.acting(Action.BUTTONHOLE, Action.BIND_HOLE) or ledger.is_brought(Verb.BUTTONHOLE):
        return
    if ledger.tells("buttonhole", "loop", "hole", "decor") or any(
        _is_of(notion, "loop", "frog") or "loop" in notion.id for notion in c.garment.notions
    ):
        return
    for op in c.acting(Action.ATTACH):
        buttons = [b for b in (c.garment.notion[n] for n in op.notions) if _is_button(b)]
        # Belt loops are more than there are buttons.
        loops = {piece.copies for piece in c.garment.pieces if "loop" in piece.id}
        if any(button.count not in loops for button in buttons):
            yield told("button-without-buttonhole", op.path, entry=op.entry)


def fewer_buttons_than_holes(ledger: Ledger) -> Found:
    """There are as many buttons as buttonholes, or some to spare.

    Stays quiet where a number is not said.
    """
    c = ledger.c
    holes = [entry for entry in c.garment.entries if entry.verb is Verb.BUTTONHOLE]
    ids = dict.fromkeys(n for op in c.acting(Action.ATTACH) for n in op.notions)
    buttons = [c.garment.notion[id_] for id_ in ids if _is_button(c.garment.notion[id_])]
    if not holes or not buttons or any(entry.number is None for entry in holes):
        return
    through = any(
        _is_of(notion, *_FOR_HOLES[1:]) for notion in c.garment.notions if notion not in buttons
    )
    wanted = sum(entry.number or 0 for entry in holes)
    count = sum(button.count for button in buttons)
    if count < wanted and not through:
        yield told(
            "fewer-buttons-than-holes",
            buttons[0].path,
            name=buttons[0].id,
            count=count,
            holes=wanted,
        )


def fewer_holes_than_buttons(ledger: Ledger) -> Found:
    """Every button that is sewn on has a buttonhole, where both are counted.

    Stays quiet where a number is not said, where free words, a piece or a notion speak of loops,
    and of snaps and covered or decorative buttons.
    """
    c = ledger.c
    holes = [entry for entry in c.garment.entries if entry.verb is Verb.BUTTONHOLE]
    named = [e for e in c.garment.entries if e.verb is Verb.ATTACH and e.notion is not None]
    sewn = [e for e in named if e.notion and _is_button(c.garment.notion[e.notion])]
    if not holes or not sewn or any(entry.number is None for entry in (*holes, *sewn)):
        return
    names = (*(piece.id for piece in c.garment.pieces), *(n.kind for n in c.garment.notions))
    if ledger.tells("loop", "decor") or any("loop" in name.casefold() for name in names):
        return
    worked, count = (sum(entry.number or 0 for entry in each) for each in (holes, sewn))
    if worked < count:
        yield told(
            "fewer-holes-than-buttons",
            sewn[0].path,
            entry=sewn[0].id,
            count=count,
            holes=worked,
        )


def _is_button(notion: Notion) -> bool:
    return _is_of(notion, "button") and not _is_of(notion, *_NO_HOLE)


def _is_of(notion: Notion, *words: str) -> bool:
    kind = notion.kind.casefold()
    return any(word in kind for word in words)


def strip_not_fastened(ledger: Ledger) -> Found:
    """A strip that is sewn to an edge is folded over, and its other long edge is fastened.

    Stays quiet where both edges are caught in one seam, and where stitching or free words follow.
    """
    c = ledger.c
    for piece in c.garment.pieces:
        if not piece.is_strip or piece.id not in ledger.used:
            continue
        ops = c.on_pieces(frozenset({piece.id}), *_HOLDING, Action.SET_ON)
        sewn = [op for op in c.on_pieces(frozenset({piece.id}), Action.SEW) if not op.part]
        set_on = [c.entry(op) for op in ops if op.action is Action.SET_ON]
        is_fastened = any(op.action in _HOLDING for op in ops) or any(
            entry.closing is Closing.IN_ONE_SEAM for entry in set_on
        )
        if is_fastened:
            continue
        by = set_on or [c.entry(op) for op in sewn]
        if by:
            key = "check-strip-not-fastened-fix" if set_on else "check-strip-sewn-plainly-fix"
            path = by[0].path
            yield told("strip-not-fastened", path, fix=key, name=piece.id, entry=by[0].id)
