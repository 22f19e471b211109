"""How much cloth is left beside the stitching line, and what the knife and the shears have taken.

Known are the allowance of the seam, or that of the garment, and what is cut off: by a trim to a
width that its author names or that is usual, and by a knife of which the author says what it takes
(``cuts: 6 mm``). What is not known is asked for by nobody.
"""

from collections.abc import Iterator
from fractions import Fraction
from typing import Final, NamedTuple

from seqplan.base.ids import OpId
from seqplan.base.measure import Length, both, format_written
from seqplan.model.entry import Entry, SeamKind, Verb, ZipMethod
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Layer, Segment
from seqplan.recipes import widths
from seqplan.recipes.construction import Construction
from seqplan.rehearse.trouble import Trouble

_HELD_BY_A_ROW: Final = 2
"""How much cloth, in mm, a row of stitches needs beyond it: common practice."""

_ZIP_ROWS: Final = {
    ZipMethod.CENTRED: widths.CENTRED_ZIP,
    ZipMethod.LAPPED: widths.LAPPED_ZIP - _HELD_BY_A_ROW,
}
"""How far from the fold, in mm, the row of a zip holds the allowance; of a lapped one, the first
row runs close to the fold, and the second holds what is left of the allowance."""


class _Cut(NamedTuple):
    """What is left of an allowance, in mm, and what has cut it last."""

    left: Fraction
    by: OpId


class Allowance:
    """What is left of every allowance.

    Parameters
    ----------
    c
        The garment.
    """

    def __init__(self, c: Construction) -> None:
        self.cut: dict[Segment, _Cut] = {}
        """The edges of which something has been cut off."""
        self._c = c

    def left(self, segment: Segment) -> Fraction | None:
        """What is left beside the stitching line, in mm; ``None`` where nobody has said."""
        return self.cut[segment].left if segment in self.cut else self._first(segment)

    def hinders(self, op: Operation) -> Iterator[Trouble]:
        """What has been cut off cannot be sewn, folded, felled or let out any more."""
        if not self.cut:
            return
        entry = self._c.entry(op)
        for segment in op.segments:
            if segment not in self.cut:
                continue
            left, by = self.cut[segment]
            needed = self._needed(op, entry, segment)
            if needed is not None and left < needed and self._c.op[by].id != op.id:
                names = {
                    "needed": both(self._length(needed)),
                    "left": both(self._length(left)),
                    "plain": format_written(self._length(left)),
                    "edge": self._c.edge_name(segment),
                }
                why = f"used-up-{_WHY[op.action]}"
                yield Trouble(op.id, why, blame=by, names=tuple(names.items()))
                return

    def do(self, op: Operation) -> None:
        """Cut something off, or nothing."""
        entry = self._c.entry(op)
        if op.action in {Action.TRIM, Action.GRADE}:
            self._trim(op, entry)
        elif entry.cuts is not None and _has_knife(op, entry):
            for segment in op.segments:
                left = self.left(segment)
                if left is not None:
                    self.cut[segment] = _Cut(max(left - entry.cuts.mm, Fraction(0)), op.id)

    def _trim(self, op: Operation, entry: Entry) -> None:
        under = self._under(entry) if entry.seam is SeamKind.FLAT_FELLED else None
        for segment in op.segments:
            if under is not None and segment not in under:
                continue
            now, to = self.left(segment), self._trimmed_to(entry, segment)
            if now is None or now > to:
                self.cut[segment] = _Cut(to, op.id)

    def _trimmed_to(self, entry: Entry, segment: Segment) -> Fraction:
        if entry.left is not None:
            return entry.left.mm
        if entry.seam is SeamKind.FRENCH:
            return Fraction(widths.FRENCH_TRIMMED)
        if entry.seam is SeamKind.FLAT_FELLED:
            return Fraction(widths.FELL_TRIMMED)
        is_graded = entry.seam in {SeamKind.FACED, SeamKind.ENCLOSED}
        if is_graded and self._c.garment.piece[segment.piece].layer is not Layer.SHELL:
            return Fraction(widths.GRADED_NARROW)
        return Fraction(widths.TRIMMED)

    def _under(self, entry: Entry) -> set[Segment]:
        """The edges whose allowances lie underneath in a felled seam: those pressed to.

        Where the author says not which way, one side is taken for it.
        """
        glues = self._c.shapes[entry.id].glues
        to = (entry.press_to or "").casefold()
        first = any(glue.first.piece.casefold() == to for glue in glues)
        return {glue.first if first else glue.second for glue in glues}

    def _first(self, segment: Segment) -> Fraction | None:
        """The allowance before anything is cut off: the widest that a seam asks for there."""
        ops = self._c.on_segment.get(segment, ())
        if not any(op.action in _ON_THE_LINE for op in ops):
            return None
        said = [self._c.entry(op).allowance for op in ops]
        found = [length.mm for length in (*said, self._c.garment.allowance) if length is not None]
        return max(found, default=None)

    def _needed(self, op: Operation, entry: Entry, segment: Segment) -> Fraction | None:
        """How much an operation needs beside the stitching line, in mm."""
        if op.action in _ALWAYS:
            return _ALWAYS[op.action]
        if op.action in _ON_THE_LINE:
            return self._for_stitching(op, entry, segment)
        if op.action is Action.TURN_UP:
            return entry.depth.mm if entry.depth else None
        if op.action is Action.ENCLOSE:
            return self._for_felling(entry, segment)
        return self._for_the_knife(op, entry, segment)

    def _for_stitching(self, op: Operation, entry: Entry, segment: Segment) -> Fraction | None:
        if op.action is Action.SET_ZIP:
            row = _ZIP_ROWS.get(entry.method) if entry.method else None
            return None if row is None else Fraction(row + _HELD_BY_A_ROW)
        is_own = segment in self._c.shapes[entry.id].run and not op.part
        if not is_own or entry.verb not in {Verb.SEW, Verb.BAND}:
            return None
        allowance = entry.allowance or self._c.garment.allowance
        return allowance.mm if allowance else None

    def _for_felling(self, entry: Entry, segment: Segment) -> Fraction | None:
        """The upper allowance goes round the under one, and under it once more."""
        under = self._under(entry)
        if entry.seam is not SeamKind.FLAT_FELLED or segment in under:
            return None
        left = [self.left(other) for other in under]
        known = [mm for mm in left if mm is not None]
        return 2 * max(known) if known else None

    def _for_the_knife(self, op: Operation, entry: Entry, segment: Segment) -> Fraction | None:
        """The knife must not reach the stitching."""
        is_cut = entry.cuts is not None and _has_knife(op, entry)
        is_sewn = self._c.finished.glue_at(segment) is not None
        return entry.cuts.mm + _HELD_BY_A_ROW if entry.cuts and is_cut and is_sewn else None

    def _length(self, mm: Fraction) -> Length:
        return Length(mm, "in" if self._c.garment.units == "in" else "mm")


_ON_THE_LINE: Final = frozenset({Action.SEW, Action.SET_ON, Action.SET_ZIP})
"""What is stitched on the seam line, so that the allowance guides it."""

_ALWAYS: Final = {
    Action.UNDERSTITCH: Fraction(widths.UNDERSTITCH),
    Action.FIT: Fraction(widths.TRIMMED + _HELD_BY_A_ROW),
}
"""What needs the same width everywhere; an edge that is fitted can be let out by a little."""

_WHY: Final = {
    Action.SEW: "sew",
    Action.SET_ON: "band",
    Action.SET_ZIP: "zip",
    Action.TURN_UP: "fold",
    Action.UNDERSTITCH: "row",
    Action.ENCLOSE: "fell",
    Action.FIT: "fit",
    Action.FINISH: "knife",
}


def _has_knife(op: Operation, entry: Entry) -> bool:
    """Whether the knife runs along: while edges are finished, or sewn and finished in one pass."""
    return op.action is Action.FINISH or (
        op.action is Action.SEW and entry.seam is SeamKind.OVERLOCKED
    )
