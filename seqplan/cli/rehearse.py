"""`seqplan rehearse`: walk through an order with the garment in hand."""

import click

from seqplan.cli.options import command, file_argument, format_option, pick_option, seconds_option
from seqplan.cli.progress import SearchProgress, deadline
from seqplan.cli.report import open_for_work
from seqplan.cli.status import Status
from seqplan.rehearse.lying import watch_steps
from seqplan.render.machine.document import to_json
from seqplan.render.machine.walk import walk_data
from seqplan.render.walk import list_walk


@command()
@file_argument
@pick_option
@click.option(
    "--order",
    "which",
    type=click.Choice(["written", "booklet", "batch"]),
    default="written",
    show_default=True,
    help="The order of the file, or one that `steps` finds.",
)
@seconds_option
@format_option
@click.pass_context
def rehearse(
    ctx: click.Context, file: str, picks: dict[str, str], which: str, seconds: float, form: str
) -> None:
    r"""Walk through an order and see how the work lies after each step.

    Tells what hangs together, what is open, what is still to be turned and which edges are raw; and
    where an operation cannot be done, which earlier one is to blame and what would help.

    \b
    Examples:
      seqplan rehearse garments/ferry-waistcoat.yaml
      seqplan rehearse garments/ferry-waistcoat.yaml --order batch
    """
    opened = open_for_work(file, picks)
    c = opened.garment
    order = c.ids
    if which == "booklet":
        order = opened.planner.booklet().order
    elif which == "batch":
        order = opened.planner.batch(deadline(seconds), SearchProgress()).order
    steps, found = watch_steps(c, order)
    if form == "json":
        click.echo(to_json(walk_data(c, steps, found)), nl=False)
    else:
        click.echo(list_walk(c, steps, found, which), nl=False)
    if not found.is_clean:
        ctx.exit(Status.FINDINGS)
