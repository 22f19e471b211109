"""`seqplan graph`: the picture of what comes before what."""

from pathlib import Path

import click

from seqplan.cli.options import command, dot_option, file_argument, pick_option
from seqplan.cli.output import write_file
from seqplan.cli.report import open_for_work
from seqplan.explain.chart import Lanes
from seqplan.pipeline import draw_graph


@command()
@file_argument
@pick_option
@click.option("-o", "--output", metavar="OUT.svg", required=True, help="Where to write the SVG.")
@click.option(
    "--lanes",
    type=click.Choice([lanes.value for lanes in Lanes]),
    default=Lanes.UNIT.value,
    show_default=True,
    help="Draw together what is done on one unit, or at one station.",
)
@dot_option
def graph(file: str, picks: dict[str, str], output: str, lanes: str, program: str | None) -> None:
    r"""Draw what comes before what, and why.

    Operations stand in lanes; an arrow says that one comes before the other, its line how binding
    that is. The longest chain is marked.

    \b
    Example:
      seqplan graph garments/breakwater-skirt.yaml -o skirt.svg
    """
    opened = open_for_work(file, picks)
    write_file(Path(output), draw_graph(opened, Lanes(lanes), program))
