"""`seqplan check`: hold written orders against every reason."""

from itertools import chain

import click

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import RuleSlug
from seqplan.cli.options import command, findings_options, pick_option
from seqplan.cli.report import findings_text, status_of
from seqplan.explain.selection import Selection
from seqplan.pipeline import Opened, open_garment


@command()
@click.argument("files", metavar="FILE...", nargs=-1, required=True)
@pick_option
@findings_options
@click.option(
    "--format",
    "form",
    type=click.Choice(["text", "json", "sarif"]),
    default="text",
    show_default=True,
    help="For people, for programs, or SARIF 2.1.0 for editors and code hosts.",
)
def check(
    files: tuple[str, ...],
    picks: dict[str, str],
    form: str,
    *,
    strict: bool,
    **names: frozenset[RuleSlug],
) -> None:
    r"""Check written orders against all reasons.

    Says what comes too early, why, and the smallest repair; which reasons contradict each other;
    what is left over. All faults in one run. Choosing findings changes what is shown and the exit
    code, never an order; to set a rule aside for good, say so with `waive:` in the file.

    \b
    Examples:
      seqplan check garments/*.yaml
      seqplan check garments/*.yaml --strict --ignore press-before-crossing,raw-edge
      seqplan check garments/*.yaml --format sarif
    """
    selection = Selection(**names)
    opened = [open_garment(file, picks) for file in files]
    found = [each.choose(selection) for each in opened]
    if form == "text":
        click.echo("\n\n".join(map(findings_text, opened, found)))
    elif form == "json":
        click.echo(_as_json(opened, found), nl=False)
    else:
        click.echo(_as_sarif(opened, found, selection), nl=False)
    click.get_current_context().exit(status_of(chain.from_iterable(found), strict=strict))


def _as_json(opened: list[Opened], found: list[tuple[Diagnostic, ...]]) -> str:
    from seqplan.render.machine.document import to_json
    from seqplan.render.machine.finding import diagnostic_data, set_aside_data

    files = [
        {
            "file": each.loaded.name,
            "errors": sum(item.severity is Severity.ERROR for item in findings),
            "operations": len(each.construction.operations) if each.construction else None,
            "reasons": len(each.reasons),
            "waived": [set_aside_data(aside, each.loaded.name) for aside in each.set_aside],
            "findings": [diagnostic_data(item, each.loaded.name) for item in findings],
        }
        for each, findings in zip(opened, found, strict=True)
    ]
    return to_json({"files": files})


def _as_sarif(
    opened: list[Opened], found: list[tuple[Diagnostic, ...]], selection: Selection
) -> str:
    from pathlib import Path

    from seqplan.render.machine.document import to_json
    from seqplan.render.machine.sarif import Checked, file_uri, sarif_log

    here = Path.cwd().as_posix()
    files = [
        Checked(
            file_uri(Path(each.loaded.name).as_posix(), here),
            findings,
            [aside._replace(findings=selection.of(aside.findings)) for aside in each.set_aside],
        )
        for each, findings in zip(opened, found, strict=True)
    ]
    return to_json(sarif_log(files))
