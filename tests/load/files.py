"""Small garment files of a harbour town's makers' hall, to be spoilt in one place each."""

MARK = "¶"
"""Stands in a text before the place at which a fault is expected."""

_TOP = "garment: Pier apron\n"
_FABRICS = "fabrics:\n  canvas: woven\n  fusible: interfacing\n"
_PIECES = """\
pieces:
  front: {of: canvas, cut: fold, edges: [waist, side, hem], worn: front}
  back: {of: canvas, cut: pair, edges: [waist, side, hem, centre | opening], worn: back}
  lining: {like: back, layer: lining}
  strap: {cut: 2, edges: [long, end, other, end]}
  pocket: {edges: [mouth, side, foot, side]}
  patch: {note: cut from what is left}
  sleeve:
    {cut: pair, edges: [cap, under, in | out, upper], slits: {vent: {at: in | out}}}
  cuff:
    {cut: pair, worn: front, strip: [attach, end, fold, end], spots: [tab, dot@left], lines: crease}
"""
_NOTIONS = "notions:\n  zip: invisible zip\n  tape: {kind: elastic, width: 2}\n"
_STATIONS = "stations:\n  iron: {minutes: 4}\n"
_OPERATIONS = """\
operations:
  look: {do: Look the cloth over}
  channel: {casing: lining.waist, depth: 2.5}
  bag: {sew: front.waist, to: strap.long, gap: 10}
"""


def file_with(
    *,
    top: str = "",
    fabric: str = "",
    piece: str = "",
    notion: str = "",
    station: str = "",
    operation: str = "",
) -> str:
    """A sound file with one more line in one section, without its indentation."""
    return "".join(
        (
            _TOP,
            top + "\n" if top else "",
            _section(_FABRICS, fabric),
            _section(_PIECES, piece),
            _section(_NOTIONS, notion),
            _section(_STATIONS, station),
            _section(_OPERATIONS, operation),
        )
    )  # fmt: skip


def _section(section: str, line: str) -> str:
    return section + (f"  {line}\n" if line else "")


def split_mark(text: str) -> tuple[str, int, int]:
    """Take the mark out of a text and say at which line and column it stood."""
    before, _, after = text.partition(MARK)
    line = before.count("\n") + 1
    return before + after, line, len(before) - before.rfind("\n")
