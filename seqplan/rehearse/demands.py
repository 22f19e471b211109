"""What each operation finds, and what it needs to find.

Nothing here knows an order, or a reason. Each demand looks at the work as it lies on the table, and
says what stands in the way of the next operation.
"""

from collections.abc import Callable, Iterator
from typing import Final

from seqplan.model.operation import Operation
from seqplan.rehearse import clear, cloth, passage, reach, runs, stitching
from seqplan.rehearse.trouble import Trouble
from seqplan.rehearse.work import Work

DEMANDS: Final[tuple[Callable[[Work, Operation], Iterator[Trouble]], ...]] = (
    cloth.cut_out,
    cloth.whole_cloth,
    stitching.there,
    stitching.not_spoilt,
    reach.not_inside,
    reach.not_lying_on_a_face,
    reach.free_to_be_made,
    reach.not_lying_on_it,
    reach.lying_as_they_will,
    reach.nothing_else_under_the_needle,
    reach.not_under_a_fly,
    reach.wrong_side_in_reach,
    clear.kept_clear,
    runs.continuous,
    runs.single,
    runs.before_the_band_closes,
    runs.ends_before_wrapping,
    runs.beside_a_channel,
    passage.what_it_is_fastened_to,
    passage.slider_in_reach,
    passage.way_into_casing,
    passage.hole_of_a_cord,
    passage.all_in_before_closing,
    passage.room_for_the_roll,
    passage.can_be_turned,
)
"""All demands, the plainest first."""


def troubles(work: Work, op: Operation) -> Iterator[Trouble]:
    """Find what stands in the way of an operation, the plainest first."""
    for demand in DEMANDS:
        yield from demand(work, op)
    for state in work.states:
        yield from state.hinders(op)
