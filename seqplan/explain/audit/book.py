"""The table of all audits, in reading order."""

from collections.abc import Callable, Mapping
from typing import Final

from seqplan.base.diagnostic import Severity
from seqplan.base.ids import RuleSlug
from seqplan.explain.audit import (
    cloth,
    edges,
    fastenings,
    hands,
    lengths,
    looks,
    notches,
    openings,
    parts,
    pieces,
    places,
    seams,
    temporary,
)
from seqplan.explain.audit.audit import Audit, Found
from seqplan.explain.audit.ledger import Ledger

_WARNINGS: Final[tuple[Callable[[Ledger], Found], ...]] = (
    pieces.unused_piece,
    pieces.interfacing_not_fused,
    pieces.unused_notion,
    pieces.unused_fabric,
    pieces.unused_mark,
    pieces.gathers_not_held,
    pieces.strap_not_attached,
    pieces.pocket_copies,
    edges.unused_copy,
    edges.one_copy_only,
    edges.raw_edge,
    edges.open_part,
    edges.slit_not_cut,
    edges.unfinished_seam,
    edges.raw_under_zip,
    seams.not_pressed,
    seams.no_seam_below_zip,
    lengths.lengths_differ,
    notches.notches_apart,
    cloth.too_little_cloth,
    seams.one_layer_boxed,
    parts.loose_part,
    seams.copies_not_mirrored,
    seams.left_sewn_to_right,
    hands.ring_twisted,
    hands.legs_not_two,
    openings.nothing_drawn_through,
    openings.pocket_without_mouth,
    openings.channel_too_narrow,
    openings.elastic_ends_loose,
    places.lies_in_the_fold,
    openings.gap_not_closed,
    openings.never_turned,
    openings.nothing_to_turn,
    temporary.basting_left,
    temporary.roll_left,
    temporary.trimmed_before_fitting,
    looks.trimmed_before_looked_at,
    looks.held_short_of_a_tube,
    fastenings.buttonhole_without_button,
    fastenings.button_without_buttonhole,
    fastenings.fewer_buttons_than_holes,
    fastenings.fewer_holes_than_buttons,
    fastenings.strip_not_fastened,
    pieces.darts_not_sewn,
    pieces.pleats_not_sewn,
)

_ERRORS: Final[tuple[Callable[[Ledger], Found], ...]] = (
    openings.no_way_in,
    openings.sewn_shut,
    openings.zip_not_opened,
    looks.wadding_turned_out,
)

_HINTS: Final[tuple[Callable[[Ledger], Found], ...]] = (temporary.fold_left, cloth.amount_not_said)


def _audit(find: Callable[[Ledger], Found], severity: Severity) -> Audit:
    return Audit(RuleSlug(find.__name__.replace("_", "-")), find, severity)


AUDITS: Final[tuple[Audit, ...]] = (
    *(_audit(find, Severity.WARNING) for find in _WARNINGS),
    *(_audit(find, Severity.ERROR) for find in _ERRORS),
    *(_audit(find, Severity.HINT) for find in _HINTS),
)

AUDIT: Final[Mapping[RuleSlug, Audit]] = {audit.slug: audit for audit in AUDITS}
