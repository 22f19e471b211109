"""A casing is sewn over finished seams, then threaded, then its gap is closed.

Why
---
The fold runs over the seams, so they are sewn first. Elastic or cord is drawn through once the
channel is stitched; its ends are joined before the gap is closed. Edges at the open ends of a
channel are finished before, or sewing them would shut it.

Fires
-----
`side-seams` before `waist/turn-up`; `waist` before `elastic`, `elastic/join`, `elastic/close`.

Stays quiet
-----------
The casing is sewn flat (`flat: yes`), before the seam closes it.

Sources
-------
Making Casings (clothing handbook); M. Pullen, Tips and tricks for making elastic casings;
Insert elastic in a casing (handbook).
"""

from collections.abc import Iterator

from seqplan.base.ids import EntryId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.closures import entries_ending_at
from seqplan.rules.rule import Rule, arc, chain, either
from seqplan.rules.runs import continuous_runs
from seqplan.words.say import say


def _derive(c: Construction) -> Iterator[Reason]:
    yield from continuous_runs(RULE, c, frozenset({Verb.CASING}))
    for entry in c.garment.entries:
        if entry.verb is Verb.CASING:
            yield from chain(RULE, c.of_entry[entry.id], key="because-folded-before-stitched")
            for id_ in entries_ending_at(c, entry.id):
                if c.garment.entry[id_].verb is Verb.HEM:
                    yield from _hem_at_the_end(c, entry.id, id_)
    for thread in c.acting(Action.THREAD):
        into = c.entry(thread).into
        if into is not None:
            yield arc(RULE, c.main(into), thread, key="because-channel-before-threading")
        yield from chain(RULE, c.of_entry[thread.entry], key="because-threading-in-order")


def _hem_at_the_end(c: Construction, casing: EntryId, hem: EntryId) -> Iterator[Reason]:
    """A cord runs out of the channel, so its end is hemmed before; a hem may shut elastic in."""
    fold = c.opening(casing)
    threads = [t for t in c.acting(Action.THREAD) if c.entry(t).into == casing]
    if not threads or any(runs_out(c, thread) for thread in threads):
        yield arc(RULE, c.main(hem), fold, key="because-channel-stays-open")
        return
    because = say("because-channel-shut-after-threading", hem=hem, casing=casing)
    shut = [(thread, c.opening(hem)) for thread in threads]
    yield either(RULE, ([(c.main(hem), fold)], shut), asker=fold, because=because)


def runs_out(c: Construction, thread: Operation) -> bool:
    """Whether what is drawn through a channel has to come out of its ends: a cord, a ribbon."""
    kinds = (c.garment.notion[notion].kind.casefold() for notion in thread.notions)
    return not all("elastic" in kind or "wire" in kind for kind in kinds)


RULE = Rule(RuleSlug("casing-in-order"), Strength.MUST, _derive, __doc__ or "", numbers=(63,))
