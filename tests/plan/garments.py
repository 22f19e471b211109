"""Garments for laws: the shipped ones with entries shuffled, left out, and bound at random."""

from dataclasses import replace
from functools import cache

from cli.running import GARMENTS
from hypothesis import strategies as st

from seqplan.base.ids import OpId
from seqplan.load.document import load_file
from seqplan.model.entry import Verb
from seqplan.model.garment import Garment
from seqplan.model.variant import choose


@cache
def shipped() -> tuple[Garment, ...]:
    loaded = (load_file(path).garment for path in GARMENTS)
    return tuple(choose(garment, {}) for garment in loaded if garment is not None)


@st.composite
def garments(draw: st.DrawFn) -> Garment:
    """Draw a garment: entries in any order, some left out, up to three `after:` at random."""
    garment = draw(st.sampled_from(shipped()))
    entries = list(draw(st.permutations(garment.entries)))
    # What others refer to by name stays.
    named = {entry.into for entry in entries} | {entry.to_name for entry in entries}
    keep = [e for e in entries if e.id in named or e.verb is Verb.SEW or draw(st.integers(0, 4))]
    names = [entry.id for entry in keep]
    for _ in range(draw(st.integers(0, 3)) if keep else 0):
        place = draw(st.integers(0, len(keep) - 1))
        others = [name for name in names if name != keep[place].id]
        if others:
            earlier = OpId(draw(st.sampled_from(others)))
            keep[place] = keep[place]._replace(after=(*keep[place].after, earlier))
    return replace(garment, entries=tuple(keep))
