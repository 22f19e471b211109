"""What else would help where a rehearsal gets stuck: another way of sewing, in the same order."""

from collections.abc import Iterator
from dataclasses import replace
from typing import NamedTuple

from seqplan.base.ids import EntryId
from seqplan.model.entry import Entry, SeamMethod
from seqplan.recipes.construction import Construction
from seqplan.recipes.expand import construct
from seqplan.recipes.shape import COVERING
from seqplan.rehearse.walk import Rehearsal, rehearse


class Method(NamedTuple):
    """Another way of sewing an entry.

    Parameters
    ----------
    entry
        The entry.
    key, value
        What to say in it; an empty value where the key is to be left out.
    """

    entry: EntryId
    key: str
    value: str = ""


def other_methods(c: Construction, stuck: Rehearsal) -> tuple[Method, ...]:
    """Find entries that could be sewn another way, so that the order stays as it is.

    Each is tried by walking the order with it. Only those are offered with which everything can be
    done, and nothing is left undone.
    """
    blamed = [op for trouble in stuck.troubles for op in (trouble.op, trouble.blame) if op]
    entries = dict.fromkeys(c.op[op].entry for op in blamed)
    return tuple(
        method
        for id_ in entries
        for method, changed in _changes(c.garment.entry[id_])
        if _helps(c, stuck, changed)
    )


def _changes(entry: Entry) -> Iterator[tuple[Method, Entry]]:
    flat, in_the_round = SeamMethod.FLAT, SeamMethod.IN_THE_ROUND
    if entry.how in {flat, in_the_round}:
        other = flat if entry.how is in_the_round else in_the_round
        yield Method(entry.id, "method", other.value), entry._replace(how=other)
        yield Method(entry.id, "method"), entry._replace(how=None)
    if entry.is_flat:
        yield Method(entry.id, "flat"), entry._replace(is_flat=False)
    elif entry.verb in COVERING:
        yield Method(entry.id, "flat", "yes"), entry._replace(is_flat=True)


def _helps(c: Construction, stuck: Rehearsal, changed: Entry) -> bool:
    entries = tuple(changed if entry.id == changed.id else entry for entry in c.garment.entries)
    other, problems = construct(replace(c.garment, entries=entries))
    if problems or set(other.ids) != set(c.ids):
        return False
    again = rehearse(other, stuck.order)
    return again.is_clean and not again.debts
