"""Printing what was found, and stopping where a file cannot be worked with."""

from collections.abc import Iterable, Mapping, Sequence

import click

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.visible import visible
from seqplan.cli.status import Status
from seqplan.pipeline import Opened, open_garment
from seqplan.words.say import say


def findings_text(opened: Opened, findings: Sequence[Diagnostic]) -> str:
    """Print findings of a file, and a line that sums them up."""
    name = visible(opened.loaded.name)
    waived = _waived(opened)
    if not findings and opened.construction is not None:
        count = len(opened.construction.operations)
        summary = say(
            "check-summary-clean", name=name, operations=count, reasons=len(opened.reasons)
        )
        return "\n".join([summary, *waived])
    counts = {f"{s.value}s": sum(d.severity is s for d in findings) for s in Severity}
    key = "check-summary-cautions" if counts["cautions"] else "check-summary"
    summary = say(key, name=name, **counts)
    return "\n".join([_excerpts(opened, findings), summary, *waived])


def status_of(findings: Iterable[Diagnostic], *, strict: bool) -> Status:
    """Tell with which exit code findings end a command; ``strict`` lets warnings count."""
    counting = {Severity.ERROR, Severity.WARNING} if strict else {Severity.ERROR}
    is_bad = any(item.severity in counting for item in findings)
    return Status.FINDINGS if is_bad else Status.FINE


def _waived(opened: Opened) -> tuple[str, ...]:
    """The rules that the author sets aside, a line each."""
    if not opened.set_aside:
        return ()
    from seqplan.explain.waived import list_waivers

    return tuple(visible(line) for line in list_waivers(opened.set_aside))


def open_for_work(
    file: str, picks: Mapping[str, str] | None = None, size: str | None = None
) -> Opened:
    """Open a garment for a command that needs an order.

    Errors that keep it from being read, or from having any order, are printed and end the command
    with exit code 1. Of a written order that does not hold, a line on standard error tells.
    """
    opened = open_garment(file, picks, size)
    blocking = (*opened.loaded.diagnostics, *opened.laid_out)
    is_blocked = any(item.severity is Severity.ERROR for item in blocking)
    if is_blocked or not opened.has_order:
        click.echo(_excerpts(opened, opened.findings), err=True)
        click.get_current_context().exit(Status.FINDINGS)
    if opened.has_errors:
        click.echo(say("steps-written-broken", name=visible(file)), err=True)
    return opened


def tell_unprinted(opened: Opened, findings: Iterable[Diagnostic]) -> None:
    """Tell on standard error what of a garment is not shown on paper; errors end the command."""
    found = tuple(findings)
    if found:
        click.echo(_excerpts(opened, found), err=True)
    if any(item.severity is Severity.ERROR for item in found):
        click.get_current_context().exit(Status.FINDINGS)


def _excerpts(opened: Opened, findings: Iterable[Diagnostic]) -> str:
    """Print findings with the lines they speak of."""
    from seqplan.render.excerpt import print_diagnostics

    return print_diagnostics(findings, opened.loaded.name, opened.loaded.text)
