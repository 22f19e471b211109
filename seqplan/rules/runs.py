"""What several rules say about runs that must be continuous."""

from collections.abc import Iterator

from seqplan.base.ids import EntryId
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import FOLDING
from seqplan.rules.rule import Before, Rule, arc, either, names
from seqplan.words.say import say


def continuous_runs(rule: Rule, c: Construction, verbs: frozenset[Verb]) -> Iterator[Reason]:
    """Ask for the seams that each run of these verbs crosses.

    A chain, and a fold that goes all round, asks for every seam. A ring that is joined asks for
    all but one of them, whichever: an either-or. A ring that is hemmed flat asks that one at
    least is still open.
    """
    for id_, demand in c.meetings.demands.items():
        if c.garment.entry[id_].verb not in verbs:
            continue
        run = c.opening(id_)
        for seam in sorted(demand.always):
            is_held = c.garment.entry[seam].verb is Verb.HOLD
            key = "because-held-before-sewn-across" if is_held else ""
            yield arc(rule, c.closing(seam), run, key=key)
        for links in demand.all_but_one:
            bundles = [_others(c, links, place, id_) for place in range(len(links))]
            if all(bundles):
                because = say("because-all-but-one", run=id_, seams=names(_union(links)))
                yield either(rule, bundles, asker=run, because=because)
        for links in demand.one_open:
            last = c.main(id_) if c.garment.entry[id_].verb in FOLDING else run
            bundles = [[(last, c.main(seam)) for seam in sorted(link)] for link in links]
            open_seams = _union(links)
            key = "because-one-open" if len(open_seams) > 1 else "because-this-open"
            because = say(key, run=id_, seams=names(open_seams))
            yield either(rule, bundles, asker=run, because=because)


def _others(
    c: Construction, links: tuple[frozenset[EntryId], ...], open_link: int, run: EntryId
) -> list[Before]:
    """All the seams of a ring but one, each before the run."""
    needed = _union(tuple(link for place, link in enumerate(links) if place != open_link))
    return [(c.closing(seam), c.opening(run)) for seam in needed]


def _union(links: tuple[frozenset[EntryId], ...]) -> list[EntryId]:
    return sorted(frozenset().union(*links))
