"""The table of all rules, in reading order: needs first, then the trade's rules by number."""

from collections.abc import Mapping
from typing import Final

from seqplan.base.ids import RuleSlug
from seqplan.rules.needs import (
    basting_before_its_seam,
    joined_before_sewn_across,
    made_before_used,
    seam_before_its_tidying,
    there_before_fastened,
)
from seqplan.rules.rule import Rule
from seqplan.rules.trade import (
    casing_in_order,
    centred_zip_after_seam_below,
    crossing_seams_before_hem,
    dart_pressed_before_crossing,
    enclosed_seam_in_order,
    facing_built_before_attached,
    facing_tacked_last,
    fastenings_last,
    finish_before_covered,
    finish_before_crossing,
    french_seam_in_order,
    fullness_before_crossing_seam,
    fuse_before_first_seam,
    hem_in_order,
    invisible_zip_before_seam_below,
    no_crease_before_fitting,
    press_before_crossing,
    slit_apart_from_french_rows,
    staystitch_before_handling,
    understitch_before_turning,
    zip_before_waist_finish,
)

RULES: Final[tuple[Rule, ...]] = (
    seam_before_its_tidying.RULE,
    joined_before_sewn_across.RULE,
    made_before_used.RULE,
    there_before_fastened.RULE,
    basting_before_its_seam.RULE,
    staystitch_before_handling.RULE,
    fuse_before_first_seam.RULE,
    facing_built_before_attached.RULE,
    fullness_before_crossing_seam.RULE,
    dart_pressed_before_crossing.RULE,
    press_before_crossing.RULE,
    finish_before_crossing.RULE,
    finish_before_covered.RULE,
    no_crease_before_fitting.RULE,
    enclosed_seam_in_order.RULE,
    understitch_before_turning.RULE,
    facing_tacked_last.RULE,
    french_seam_in_order.RULE,
    slit_apart_from_french_rows.RULE,
    centred_zip_after_seam_below.RULE,
    invisible_zip_before_seam_below.RULE,
    zip_before_waist_finish.RULE,
    casing_in_order.RULE,
    hem_in_order.RULE,
    crossing_seams_before_hem.RULE,
    fastenings_last.RULE,
)

RULE: Final[Mapping[RuleSlug, Rule]] = {rule.slug: rule for rule in RULES}
