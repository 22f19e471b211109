"""What the rules about pressing and finishing share: a seam is tidied before it is crossed."""

from collections.abc import Container, Iterator

from seqplan.base.ids import EntryId
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind, Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Before, Rule, arc, either
from seqplan.words.say import say

_TIDYING_VERBS = frozenset(
    {
        Verb.PRESS,
        Verb.FINISH,
        Verb.TRIM,
        Verb.GRADE,
        Verb.CLIP,
        Verb.UNDERSTITCH,
        Verb.TOPSTITCH,
    }
)


def tidying(c: Construction, seam: EntryId, action: Action) -> tuple[Operation, ...]:
    """Operations that do this to a seam or hem: those of its recipe, else entries of their own.

    A seam whose recipe presses it may be pressed again at any time: after turning, or at the end.
    """
    own = c.doing(seam, action)
    if own:
        return own
    others = (
        op
        for segment in c.shapes[seam].run
        for op in c.on_segment[segment]
        if op.action is action and c.entry(op).verb in _TIDYING_VERBS
    )
    return tuple(dict.fromkeys(others))


def in_own_order(c: Construction, one: Operation, other: Operation) -> bool:
    """Whether both are parts of a seam of the author's own, whose list is their order."""
    return one.entry == other.entry and c.entry(one).seam is SeamKind.OWN


def turned_by_hand(c: Construction, seam: EntryId) -> tuple[Operation, ...]:
    """Entries that turn a piece which this seam encloses or faces."""
    if c.garment.entry[seam].seam not in {SeamKind.FACED, SeamKind.ENCLOSED}:
        return ()
    turns = c.on_pieces(c.main(seam).pieces, Action.TURN)
    return tuple(op for op in turns if c.entry(op).verb is Verb.TURN)


def tidied_before_crossed(
    rule: Rule,
    c: Construction,
    action: Action,
    *,
    but: Container[EntryId] = (),
    later: Container[tuple[EntryId, EntryId]] = (),
) -> Iterator[Reason]:
    """Ask that a seam is pressed, or finished, before another entry crosses it.

    Where one entry has to be sewn across the other, that is an arc, and says all there is to say
    about the two. Where either may come first, it is an either-or: the second waits until the
    first is tidied. Seams in ``but`` may be tidied later, and the first of each pair in ``later``
    after the second.
    """

    def tidy(seam: EntryId, other: EntryId) -> tuple[Operation, ...]:
        return () if seam in but or (seam, other) in later else tidying(c, seam, action)

    yield from _before_boxing(rule, c, action)
    demands = c.meetings.demands
    for crossing in c.meetings.crossings:
        over, under = crossing.over, crossing.under
        tidy_under = tidy(under, over)
        if crossing.runs_across and under in demands[over].always:
            yield from (arc(rule, op, c.opening(over)) for op in tidy_under)
            continue
        if under in demands and over in demands[under].always:
            continue
        tidy_over = tidy(over, under)
        if tidy_over or tidy_under:
            bundles = (
                _first_then(c, over, tidy_over, under),
                _first_then(c, under, tidy_under, over),
            )
            because = say(f"because-{rule.slug}-either", one=over, other=under)
            yield either(rule, bundles, asker=c.opening(over), because=because)


def _before_boxing(rule: Rule, c: Construction, action: Action) -> Iterator[Reason]:
    """A boxed corner crosses both of its seams."""
    for box in c.acting(Action.BOX):
        for seam in c.seams_at(box.segments):
            yield from (arc(rule, op, box) for op in tidying(c, seam, action))


def _first_then(
    c: Construction, first: EntryId, tidied: tuple[Operation, ...], second: EntryId
) -> list[Before]:
    then = c.opening(second)
    return [(c.closing(first), then), *((op, then) for op in tidied)]
