"""`seqplan check`: hold written orders against every reason."""

import click

from seqplan.base.diagnostic import Severity
from seqplan.cli.options import command, format_option, pick_option
from seqplan.cli.report import findings_text
from seqplan.cli.status import Status
from seqplan.pipeline import Opened, open_garment


@command()
@click.argument("files", metavar="FILE...", nargs=-1, required=True)
@pick_option
@format_option
@click.pass_context
def check(ctx: click.Context, files: tuple[str, ...], picks: dict[str, str], form: str) -> None:
    r"""Check written orders against all reasons.

    Says what comes too early, why, and the smallest repair; which reasons contradict each other;
    what is left over. All faults in one run.

    \b
    Example:
      seqplan check garments/*.yaml
    """
    opened = [open_garment(file, picks) for file in files]
    if form == "json":
        click.echo(_as_json(opened), nl=False)
    else:
        click.echo("\n\n".join(findings_text(each) for each in opened))
    if any(each.has_errors for each in opened):
        ctx.exit(Status.FINDINGS)


def _as_json(opened: list[Opened]) -> str:
    from seqplan.render.machine.document import to_json
    from seqplan.render.machine.finding import diagnostic_data

    files = [
        {
            "file": each.loaded.name,
            "errors": sum(item.severity is Severity.ERROR for item in each.findings),
            "operations": len(each.construction.operations) if each.construction else None,
            "reasons": len(each.reasons),
            "waived": _waivers(each),
            "findings": [diagnostic_data(item, each.loaded.name) for item in each.findings],
        }
        for each in opened
    ]
    return to_json({"files": files})


def _waivers(opened: Opened) -> list[dict[str, object]]:
    waivers = opened.construction.garment.waivers if opened.construction else ()
    return [{"rule": w.rule, "at": list(w.at), "because": w.because} for w in waivers]
