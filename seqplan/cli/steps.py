"""`seqplan steps`: an order for a booklet or a batch, or the written one repaired."""

import click

from seqplan.cli.options import command, file_argument, format_option, pick_option, seconds_option
from seqplan.cli.progress import SearchProgress, deadline
from seqplan.cli.report import open_for_work
from seqplan.render.listing import list_steps
from seqplan.render.machine.document import to_json
from seqplan.render.machine.plan import plan_data


@command()
@file_argument
@pick_option
@click.option(
    "--for",
    "purpose",
    type=click.Choice(["booklet", "batch"]),
    default="booklet",
    show_default=True,
    help="booklet: unit by unit, near the written order. batch: the fewest changes of set-up.",
)
@click.option(
    "--repair",
    is_flag=True,
    help="Keep the written order and move as few entries as possible (then --for does not count).",
)
@seconds_option
@format_option
def steps(
    file: str, picks: dict[str, str], purpose: str, repair: bool, seconds: float, form: str
) -> None:
    r"""List the operations in an order that holds.

    \b
    Examples:
      seqplan steps garments/breakwater-skirt.yaml
      seqplan steps garments/breakwater-skirt.yaml --for batch
      seqplan steps garments/breakwater-skirt.yaml --repair
    """
    opened = open_for_work(file, picks)
    planner = opened.planner
    if repair:
        plan = planner.repair(deadline(seconds))
    elif purpose == "batch":
        plan = planner.batch(deadline(seconds), SearchProgress())
    else:
        plan = planner.booklet()
    if form == "json":
        click.echo(to_json(plan_data(plan)), nl=False)
    else:
        click.echo(list_steps(opened.garment, plan), nl=False)
