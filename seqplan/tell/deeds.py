"""What single operations, and what hangs together, are called on lists."""

import re
from collections.abc import Iterable, Sequence
from typing import Final

from seqplan.base.ids import EntryId, OpId
from seqplan.model.operation import Operation
from seqplan.model.piece import Layer
from seqplan.plan.unit import Unit
from seqplan.recipes.construction import Construction
from seqplan.tell.names import capital, in_garment_order, listing, readable
from seqplan.tell.step import title_of
from seqplan.words.say import say

_NAMED: Final = re.compile(r"`([^`]+)`")


def name_deed(c: Construction, op: Operation) -> str:
    """An operation by the title of its entry and what is done: "Side seams: press".

    What an entry consists of alone bears its title alone.
    """
    title = title_of(c, op.entry)
    if len(c.of_entry[op.entry]) == 1:
        return title
    return say("deed-of", title=title, deed=_word("deed", op))


def name_deeds(c: Construction, ops: Iterable[OpId]) -> tuple[str, ...]:
    """Operations, those of one entry together: "Side seams: sew, press"; one whole by its title."""
    return tuple(_together(c, entry, parts) for entry, parts in _by_entry(c, ops).items())


def name_done(c: Construction, ops: Iterable[OpId]) -> tuple[str, ...]:
    """What is done, that of one entry together: "Side seams: sewn, pressed"."""
    return tuple(
        say("done-of", title=title_of(c, entry), done=what_is_done(parts))
        for entry, parts in _by_entry(c, ops).items()
    )


def what_is_done(ops: Iterable[Operation]) -> str:
    """What has been done to something: "sewn, pressed"."""
    return listing(dict.fromkeys(_word("done", op) for op in ops))


def _by_entry(c: Construction, ops: Iterable[OpId]) -> dict[EntryId, list[Operation]]:
    held: dict[EntryId, list[Operation]] = {}
    for id_ in ops:
        held.setdefault(c.op[id_].entry, []).append(c.op[id_])
    return held


def _together(c: Construction, entry: EntryId, parts: Sequence[Operation]) -> str:
    title = title_of(c, entry)
    if set(parts) == set(c.of_entry[entry]):
        return title
    return say(
        "deed-of", title=title, deed=listing(dict.fromkeys(_word("deed", op) for op in parts))
    )


def _word(kind: str, op: Operation) -> str:
    return say(f"{kind}-{op.action.value.replace(' ', '-')}")


def quoted(name: str) -> str:
    """A name in quotation marks, to stand in a sentence."""
    return say("deed-named", name=name)


def in_plain_names(c: Construction, because: str) -> str:
    """A reason with the titles that people read in place of the names of the file."""

    def name(match: re.Match[str]) -> str:
        op = c.op.get(OpId(match[1]))
        return quoted(readable(match[1]) if op is None else name_deed(c, op))

    return _NAMED.sub(name, because)


def name_unit(c: Construction, unit: Unit) -> str:
    """What hangs together: the whole garment, one piece with its copies, or pieces as one."""
    if len(unit) > 1 and unit == set(c.garment.piece):
        return say("sheet-unit-whole")
    pieces = [c.garment.piece[id_] for id_ in in_garment_order(c.garment, unit)]
    if len(pieces) == 1:
        (piece,) = pieces
        title = capital(piece.title)
        key = "deed-unit-copies" if piece.copies > 1 else "deed-unit"
        return say(key, piece=title, count=piece.copies)
    layers = {piece.layer for piece in pieces}
    if layers == {Layer.LINING} and _is_all_of(c, unit, Layer.LINING):
        return say("sheet-unit-lining")
    return say("deed-unit-joined", pieces=capital(listing(piece.title for piece in pieces)))


def _is_all_of(c: Construction, unit: Unit, layer: Layer) -> bool:
    return {piece.id for piece in c.garment.pieces if piece.layer is layer} == unit
