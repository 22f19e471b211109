"""Printing what was found, and stopping where a file cannot be worked with."""

from collections.abc import Mapping

import click

from seqplan.base.diagnostic import Severity
from seqplan.cli.status import Status
from seqplan.pipeline import Opened, open_garment
from seqplan.render.visible import visible
from seqplan.words.say import say


def findings_text(opened: Opened) -> str:
    """Print every finding of a file and a line that sums them up."""
    loaded = opened.loaded
    waived = _waived(opened)
    if not opened.findings and opened.construction is not None:
        count = len(opened.construction.operations)
        summary = say(
            "check-summary-clean",
            name=visible(loaded.name),
            operations=count,
            reasons=len(opened.reasons),
        )
        return "\n".join([summary, *waived])
    counts = {s: sum(d.severity is s for d in opened.findings) for s in Severity}
    summary = say(
        "check-summary",
        name=visible(loaded.name),
        errors=counts[Severity.ERROR],
        warnings=counts[Severity.WARNING],
        hints=counts[Severity.HINT],
    )
    return "\n".join([_excerpts(opened), summary, *waived])


def _waived(opened: Opened) -> tuple[str, ...]:
    """The rules that the author sets aside, a line each."""
    garment = opened.construction.garment if opened.construction else None
    if garment is None or not garment.waivers:
        return ()
    from seqplan.explain.waived import list_waivers

    return list_waivers(garment)


def open_for_work(file: str, picks: Mapping[str, str] | None = None) -> Opened:
    """Open a garment for a command that needs an order.

    Errors that keep it from being read, or from having any order, are printed and end the command
    with exit code 1. Of a written order that does not hold, a line on standard error tells.
    """
    opened = open_garment(file, picks)
    blocking = (*opened.loaded.diagnostics, *opened.laid_out)
    is_blocked = any(item.severity is Severity.ERROR for item in blocking)
    if is_blocked or not opened.has_order:
        click.echo(_excerpts(opened), err=True)
        click.get_current_context().exit(Status.FINDINGS)
    if opened.has_errors:
        click.echo(say("steps-written-broken", name=visible(file)), err=True)
    return opened


def _excerpts(opened: Opened) -> str:
    """Print findings with the lines they speak of."""
    from seqplan.render.excerpt import print_diagnostics

    return print_diagnostics(opened.findings, opened.loaded.name, opened.loaded.text)
