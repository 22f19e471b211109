"""`seqplan check`: hold written orders against every reason."""

import click

from seqplan.base.diagnostic import Severity
from seqplan.cli.options import command, format_option
from seqplan.cli.report import findings_text
from seqplan.cli.status import Status
from seqplan.pipeline import Opened, open_garment
from seqplan.render.machine.document import Data, to_json
from seqplan.render.machine.finding import diagnostic_data


@command()
@click.argument("files", metavar="FILE...", nargs=-1, required=True)
@format_option
@click.pass_context
def check(ctx: click.Context, files: tuple[str, ...], form: str) -> None:
    r"""Check written orders against all reasons.

    Says what comes too early, why, and the smallest repair; which reasons contradict each other;
    what is left over. All faults in one run.

    \b
    Example:
      seqplan check garments/*.yaml
    """
    opened = [open_garment(file) for file in files]
    if form == "json":
        click.echo(to_json({"files": [_data(each) for each in opened]}), nl=False)
    else:
        click.echo("\n\n".join(findings_text(each) for each in opened))
    if any(each.has_errors for each in opened):
        ctx.exit(Status.FINDINGS)


def _data(opened: Opened) -> Data:
    name = opened.loaded.name
    return {
        "file": name,
        "errors": sum(item.severity is Severity.ERROR for item in opened.findings),
        "operations": len(opened.construction.operations) if opened.construction else None,
        "reasons": len(opened.reasons),
        "findings": [diagnostic_data(item, name) for item in opened.findings],
    }
