"""Steps, reasons and rules as plain text for a terminal. Pure: data in, text out."""

from collections.abc import Iterable, Iterator
from textwrap import dedent, wrap

from seqplan.base.ids import PieceId, RuleSlug
from seqplan.base.visible import printable
from seqplan.explain.audit.book import AUDIT
from seqplan.explain.selection import FINDINGS, headline
from seqplan.explain.why import Between, Grounds, Place
from seqplan.explain.written import state
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.model.operation import Operation
from seqplan.order.result import Proof
from seqplan.plan.plan import Group, Plan, Purpose, Step
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule
from seqplan.tell.names import station_title
from seqplan.tell.setups import name_setup
from seqplan.words.say import say, translated

_WIDTH = 92


def list_steps(c: Construction, plan: Plan) -> str:
    """Print an order: numbered steps under the unit or the set-up they belong to."""
    lines = [say(f"steps-title-{plan.purpose.value}", garment=c.garment.name), *_about(plan), ""]
    for group in plan.groups:
        lines.append(_heading(c, group))
        lines += [f"  {step.number:>3}  {_step(c, step, plan.purpose)}" for step in group.steps]
        lines.append("")
    lines.append(_key(c))
    return printable("\n".join(lines) + "\n")


def list_place(place: Place) -> str:
    """Print what comes before and after an operation, with reasons."""
    lines = []
    for side, grounds, far in (
        ("before", place.before, place.long_before),
        ("after", place.after, place.long_after),
    ):
        if grounds:
            lines.append(say(f"why-{side}", name=place.name))
            lines += _grounds(grounds, side)
        else:
            lines.append(say(f"why-nothing-{side}", name=place.name))
        if far:
            lines += _indented(say(f"why-long-{side}", names=_quoted(far)), 2)
        lines.append("")
    lines += _choices(place.choices)
    return printable("\n".join(lines).rstrip() + "\n")


def list_between(between: Between) -> str:
    """Print the chain of reasons between two operations, or that they are free."""
    names = {"first": between.first, "second": between.second}
    if between.is_free:
        lines = [say("why-free", **names), "", *_choices(between.choices)]
        return printable("\n".join(lines).rstrip() + "\n")
    lines = [say("why-chain", **names)]
    for ground in between.chain:
        reason = ground.reasons[0]
        lines.append(
            "  "
            + say(
                "why-chain-line",
                before=ground.arc.before,
                after=ground.arc.after,
                rule=reason.rule,
                strength=reason.strength.value,
            )
        )
        lines += _indented(reason.because, 6)
    return printable("\n".join(lines) + "\n")


def list_rules(rules: Iterable[Rule]) -> str:
    """Print the rule book as a table: slug, strength, the rule in one sentence."""
    everything = tuple(rules)
    lines = [say("rules-title", count=len(everything)), ""]
    for key, kind in (("rules-needs", ReasonKind.NEEDS), ("rules-trade", ReasonKind.RULE)):
        lines.append(say(key))
        for rule in everything:
            if rule.kind is kind:
                lines.append(f"  {rule.slug:<34}{rule.strength.value}")
                lines += _indented(rule.headline, 6)
        lines.append("")
    return "\n".join(lines)


def list_findings(slugs: Iterable[RuleSlug]) -> str:
    """Print what else a check finds: name, how bad it is, what it is about."""
    lines = [say("rules-findings")]
    for slug in slugs:
        lines.append(f"  {slug:<34}{FINDINGS[slug].value}")
        lines += _indented(headline(slug), 6)
    return "\n".join(lines) + "\n"


def show_finding(slug: RuleSlug) -> str:
    """Print everything about one thing that a check finds."""
    audit = AUDIT.get(slug)
    text = dedent((audit.find.__doc__ or "") if audit else headline(slug)).strip()
    first, _, rest = text.partition("\n")
    # Docstrings are indented by four after their first line.
    more = dedent(rest).strip()
    severity = say("rules-severity", severity=FINDINGS[slug].value)
    return "\n".join([f"{slug}\n", first, severity, *([f"\n{more}"] if more else [])]) + "\n"


def show_rule(rule: Rule) -> str:
    """Print everything about one rule."""
    about = [say("rules-strength", strength=rule.strength.value)]
    if rule.kind is ReasonKind.NEEDS:
        about.append(say("rules-need"))
    if rule.numbers:
        key = "rules-number" if len(rule.numbers) == 1 else "rules-numbers"
        about.append(say(key, numbers=", ".join(map(str, rule.numbers))))
    headline, _, rest = rule.text.strip().partition("\n")
    return f"{rule.slug}\n\n{headline}\n{' '.join(about)}\n{rest.rstrip()}\n"


def unit_name(c: Construction, unit: frozenset[PieceId]) -> str:
    """Name the part in hand: its pieces, or the whole garment."""
    if not unit:
        return say("no-piece")
    if unit == frozenset(c.garment.piece) and len(unit) > 1:
        return say("whole-garment")
    titles = [piece.title for piece in c.garment.pieces if piece.id in unit]
    if len(titles) == 1:
        return titles[0]
    return say("list-and", first=say("list-comma").join(titles[:-1]), last=titles[-1])


def _about(plan: Plan) -> Iterator[str]:
    if plan.purpose is Purpose.REPAIR:
        key = "steps-about-repair-moved" if plan.moved else "steps-about-repair-none"
        yield from _indented(say(key, moved=_quoted(plan.moved)), 0)
        if plan.proof is not Proof.OPTIMAL:
            yield say("steps-repair-gap")
    else:
        yield say(f"steps-about-{plan.purpose.value}")
    yield say(
        "steps-count",
        count=sum(len(group.steps) for group in plan.groups),
        changes=plan.changes,
        minutes=plan.change_minutes,
        units=plan.unit_changes,
    )
    if plan.purpose is Purpose.BATCH:
        key = "steps-proven" if plan.proof is Proof.OPTIMAL else "steps-gap"
        if plan.price is not None:
            yield say("steps-price", minutes=plan.price)
            key += "-minutes"
        yield say(key, bound=plan.lower_bound)
    for reason in plan.given_up:
        yield from _indented(say("steps-given-up", line=state(reason), rule=reason.rule), 0)


def _heading(c: Construction, group: Group) -> str:
    name = name_setup(c.garment, group.setup) if group.setup else unit_name(c, group.unit)
    return name[:1].upper() + name[1:]


def _step(c: Construction, step: Step, purpose: Purpose) -> str:
    if purpose is Purpose.BATCH:
        return ", ".join(op.id for op in step.operations)
    parts = (
        say("steps-part", part=_part(op), mark=c.garment.station[op.setup.station].mark)
        for op in step.operations
    )
    return f"{step.entry}: {', '.join(parts)}"


def _part(op: Operation) -> str:
    if op.part:
        return translated("part", op.part.replace("-", " "))
    return translated("action", op.action.value)


def _key(c: Construction) -> str:
    used = {op.setup.station for op in c.operations}
    marks = (
        say("steps-station", mark=station.mark, title=station_title(station))
        for station in c.garment.stations
        if station.id in used
    )
    return say("steps-key", stations=", ".join(marks))


def _grounds(grounds: Iterable[Grounds], side: str) -> Iterator[str]:
    for ground in grounds:
        name = ground.arc.before if side == "before" else ground.arc.after
        for place, reason in enumerate(ground.reasons):
            if place == 0:
                strength = reason.strength.value
                yield "  " + say("why-line", name=name, rule=reason.rule, strength=strength)
            yield from _indented(reason.because, 6)


def _choices(choices: Iterable[Reason]) -> Iterator[str]:
    stated = list(choices)
    if stated:
        yield say("why-choices")
    for reason in stated:
        yield from _indented(reason.because, 2)
        yield from _indented(state(reason), 6)


def _quoted(names: Iterable[str]) -> str:
    return ", ".join(f"`{name}`" for name in names)


def _indented(text: str, indent: int) -> list[str]:
    space = " " * indent
    return wrap(text, _WIDTH, initial_indent=space, subsequent_indent=space)
