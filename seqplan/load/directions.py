"""What to say where nobody knows which way a seam is to be pressed, or where it is topstitched."""

from collections.abc import Iterable

from seqplan.load.scope import Scope
from seqplan.load.sink import listing, quoted
from seqplan.words.say import say

_TOWARDS = ("to ", "toward ", "towards ", "the ")
_ALONE = frozenset({"open", "up", "down"})


def direction_meant(written: str, usual: Iterable[str], scope: Scope) -> str:
    """A repair: the direction or the piece that comes close, or all that are known."""
    away, where = "", written.casefold()
    for word in _TOWARDS:
        where = where.removeprefix(word)
    if where.startswith("away from "):
        away, where = "away from ", where.removeprefix("away from ").removeprefix("the ")
    piece = where.partition("@")[0].partition(".")[0].strip()
    names = dict.fromkeys([*usual, *scope.pieces.names])
    close = [piece] if piece in names and piece != where else scope.sink.close(where, names)
    if close:
        return scope.sink.offer_of([_directed(name, away) for name in close]) or ""
    pieces = listing(f"to {name}" for name in scope.pieces.names)
    return say("fix-known-directions", pieces=pieces) if pieces else say("fix-usual-directions")


def _directed(name: str, away: str) -> str:
    return name if name in _ALONE else f"{away or 'to '}{name}"


def side_meant(written: str, scope: Scope) -> str:
    """A repair for the side of a seam on which it is topstitched."""
    word = written.casefold()
    if word in {"on", "y", "both"}:
        return say("fix-write", text=quoted("topstitch: yes"))
    close = scope.sink.close(word, dict.fromkeys(["yes", *scope.pieces.names]))
    return scope.sink.offer_of(close) or say("fix-topstitch", pieces=listing(scope.pieces.names))
