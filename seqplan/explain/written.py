"""The written order against every reason: what breaks, why, and the smallest repair.

Reasons that the same two entries break are told together, the strongest first: a hem that stands
above a seam breaks the rule that the seam is sewn first, that it is pressed first and that its
edges are finished first, and that is one mistake.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import EntryId, OpId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Arc, Reason, ReasonKind
from seqplan.plan.binding import Binding
from seqplan.recipes.construction import Construction
from seqplan.recipes.expand import construct
from seqplan.recipes.shape import FOLDING
from seqplan.rules.derive import derive
from seqplan.words.say import has, say

_MANY = 3

SEVERITY = {
    Strength.MUST: Severity.ERROR,
    Strength.SHOULD: Severity.WARNING,
    Strength.PREFER: Severity.HINT,
}


def check_written(
    c: Construction, binding: Binding, moved: Iterable[EntryId] = ()
) -> tuple[Diagnostic, ...]:
    """Hold the written order against the reasons that bind.

    Parameters
    ----------
    c
        The garment.
    binding
        What binds; what was given up is told apart, by `check_binding`.
    moved
        The entries that the smallest repair moves, for the hint what to do.
    """
    position = {id_: place for place, id_ in enumerate(c.ids)}
    broken: dict[tuple[EntryId, EntryId], list[Reason]] = {}
    for reason in binding.held:
        if not reason.is_held(position):
            broken.setdefault(_culprits(c, reason, position), []).append(reason)
    ranked = {pair: sorted(reasons, key=_strongest_first) for pair, reasons in broken.items()}
    many = _much_too_early(ranked)
    moving = frozenset(moved)
    single = (
        _finding(c, early, late, reasons, moving)
        for (early, late), reasons in ranked.items()
        if (early, reasons[0].rule) not in many
    )
    return (*single, *(_one_for_all(c, early, lates, ranked) for (early, _), lates in many.items()))


def _place(c: Construction, late: EntryId) -> Note:
    """Where the other entry stands."""
    return Note(say("check-other-place", late=late), c.garment.entry[late].path)


def _much_too_early(
    ranked: Mapping[tuple[EntryId, EntryId], Sequence[Reason]],
) -> dict[tuple[EntryId, RuleSlug], list[EntryId]]:
    """Entries that stand before three or more others for one rule, which is one mistake."""
    found: dict[tuple[EntryId, RuleSlug], list[EntryId]] = {}
    for (early, late), reasons in ranked.items():
        found.setdefault((early, reasons[0].rule), []).append(late)
    return {key: lates for key, lates in found.items() if len(lates) >= _MANY}


def _one_for_all(
    c: Construction,
    early: EntryId,
    lates: Sequence[EntryId],
    ranked: Mapping[tuple[EntryId, EntryId], Sequence[Reason]],
) -> Diagnostic:
    place = {entry.id: number for number, entry in enumerate(c.garment.entries)}
    in_order = sorted(lates, key=place.__getitem__)
    last = in_order[-1]
    first = ranked[early, last][0]
    return Diagnostic(
        slug=first.rule,
        severity=SEVERITY[first.strength],
        message=say(
            "check-order-many",
            early=early,
            late=_names(in_order),
        ),
        path=c.garment.entry[early].path,
        notes=(Note(first.because), *(_place(c, late) for late in in_order)),
        fix=say("check-move-down", early=early, late=last),
    )


def check_binding(binding: Binding) -> tuple[Diagnostic, ...]:
    """Tell why no order exists, and what good practice had to be given up.

    Conflicts that one and the same `after:` brings about are one mistake.
    """
    conflicts = {_mistake(conflict.weakest): conflict for conflict in reversed(binding.conflicts)}
    impossible = [
        Diagnostic(
            slug=RuleSlug("no-order"),
            severity=Severity.ERROR,
            message=say("check-no-order", operations=_names(_operations(conflict.reasons))),
            path=conflict.weakest.source,
            notes=tuple(_lines(conflict.reasons)),
            fix=say("check-no-order-fix", line=state(conflict.weakest)),
        )
        for conflict in reversed(conflicts.values())
    ]
    if impossible:
        return tuple(impossible)
    return tuple(
        Diagnostic(
            slug=reason.rule,
            severity=Severity.WARNING,
            message=say("check-given-up", line=state(reason)),
            path=reason.source,
            notes=(Note(reason.because), Note(say("check-given-up-why"))),
        )
        for reason in binding.given_up
    )


def state(reason: Reason) -> str:
    """State a reason in names: ``a` before `b``, or the alternatives of an either-or."""
    return say("or-between-bundles").join(
        say("and-between-arcs").join(
            say("arc-line", before=arc.before, after=arc.after) for arc in bundle
        )
        for bundle in reason.alternatives
    )


def _mistake(weakest: Reason) -> object:
    return weakest.source if weakest.kind is ReasonKind.SAID else weakest


def _lines(reasons: Sequence[Reason]) -> Iterator[Note]:
    for reason in reasons:
        line = say(
            "check-conflict-line", line=state(reason), because=reason.because, rule=reason.rule
        )
        yield Note(line, reason.source)


def _culprits(
    c: Construction, reason: Reason, position: dict[OpId, int]
) -> tuple[EntryId, EntryId]:
    """The two entries that stand the wrong way round, the one that stands too early first.

    Of several alternatives that which takes the fewest and the shortest moves is meant.
    """
    broken = [[arc for arc in arcs if _is_broken(arc, position)] for arcs in reason.alternatives]
    arc = min(broken, key=lambda arcs: (len(arcs), _distance(arcs, position)))[0]
    return c.op[arc.after].entry, c.op[arc.before].entry


def _flat_would_help(c: Construction, early: EntryId, late: EntryId) -> bool:
    """Whether a hem or casing sewn flat may stay where it is: tried, not guessed."""
    flat = tuple(
        entry._replace(is_flat=True) if entry.id == early else entry for entry in c.garment.entries
    )
    tried, problems = construct(replace(c.garment, entries=flat))
    position = {id_: place for place, id_ in enumerate(tried.ids)}
    broken = (r for r in derive(tried) if not r.is_held(position))
    return not problems and all(_culprits(tried, r, position) != (early, late) for r in broken)


def _distance(arcs: Iterable[Arc], position: dict[OpId, int]) -> int:
    return sum(position[arc.before] - position[arc.after] for arc in arcs)


def _is_broken(arc: Arc, position: dict[OpId, int]) -> bool:
    return position[arc.before] >= position[arc.after]


def _finding(
    c: Construction,
    early: EntryId,
    late: EntryId,
    reasons: list[Reason],
    moved: frozenset[EntryId],
) -> Diagnostic:
    first = reasons[0]
    others = dict.fromkeys(reason.rule for reason in reasons[1:] if reason.rule != first.rule)
    notes = [Note(first.because)]
    if others:
        notes.append(Note(say("check-also", rules=_names(others))))
    entry = c.garment.entry[early]
    is_folding = entry.verb in FOLDING
    if has(f"otherwise-{first.rule}") and (not is_folding or _flat_would_help(c, early, late)):
        notes.append(Note(say(f"otherwise-{first.rule}", early=early, late=late)))
    notes.append(_place(c, late))
    move_up = late in moved and early not in moved
    return Diagnostic(
        slug=first.rule,
        severity=SEVERITY[first.strength],
        message=say("check-order", early=early, late=late),
        path=entry.path,
        notes=tuple(notes),
        fix=say("check-move-up" if move_up else "check-move-down", early=early, late=late),
    )


def _strongest_first(reason: Reason) -> tuple[int, int, str]:
    """Plain arcs before either-ors of the same strength, so that the clearest reason is told."""
    return -reason.strength.weight, len(reason.alternatives), reason.rule


def _operations(reasons: Iterable[Reason]) -> list[OpId]:
    """The operations of a conflict in the order in which its lines name them."""
    return list(
        dict.fromkeys(
            op
            for reason in reasons
            for bundle in reason.alternatives
            for arc in bundle
            for op in (arc.before, arc.after)
        )
    )


def _names(ids: Iterable[str]) -> str:
    return ", ".join(f"`{id_}`" for id_ in ids)
