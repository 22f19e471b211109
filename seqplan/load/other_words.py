"""Words that people write for the words of the language; they are offered, and never read."""

from typing import Final

OTHER_WORDS: Final[dict[str, tuple[str, ...]]] = {
    # Sections and keys of the garment.
    "name": ("garment", "title"),
    "title": ("garment",),
    "description": ("about", "note"),
    "designer": ("author",),
    "unit": ("units",),
    "seam allowance": ("allowance",),
    "cloth": ("fabrics", "of"),
    "material": ("fabrics", "of"),
    "materials": ("fabrics", "of"),
    "parts": ("pieces",),
    "trims": ("notions",),
    "haberdashery": ("notions",),
    "machines": ("stations",),
    "steps": ("operations",),
    "instructions": ("operations",),
    "options": ("choices",),
    # Keys of a piece.
    "fabric": ("of",),
    "comment": ("note",),
    # Verbs and keys of operations.
    "stitch": ("sew",),
    "join": ("sew",),
    "seam": ("sew",),
    "iron": ("press",),
    "neaten": ("finish",),
    "overlock": ("finish",),
    "serge": ("finish",),
    "zigzag": ("finish",),
    "interface": ("fuse",),
    "interfacing": ("fuse",),
    "snip": ("clip",),
    "type": ("as", "kind"),
    "seam type": ("as",),
    "and": ("to",),
    "onto": ("to",),
    "needs": ("after",),
    "time": ("minutes",),
    "machine": ("station",),
    "why": ("because",),
    "reason": ("because",),
}
