"""`seqplan graph`: the picture of what comes before what."""

from pathlib import Path
from typing import TypedDict, Unpack

import click

from seqplan.cli.options import (
    command,
    dot_option,
    file_argument,
    known_format,
    language_option,
    pick_option,
)
from seqplan.cli.output import write_file
from seqplan.cli.report import open_for_work
from seqplan.explain.chart import Lanes
from seqplan.pipeline import draw_graph, told_in, write_graph
from seqplan.render.chart_file import SUFFIXES
from seqplan.render.handout.paper import Paper
from seqplan.words.say import say


class _Chart(TypedDict):
    """How the graph is drawn, on what, and in which language."""

    lanes: str
    program: str | None
    paper: str | None
    language: str | None


@command()
@file_argument
@pick_option
@language_option
@click.option(
    "-o",
    "--output",
    metavar="OUT",
    required=True,
    callback=known_format(SUFFIXES),
    help="Where to write it; the name ends in .svg, .pdf or .png, which is the format.",
)
@click.option(
    "--lanes",
    type=click.Choice([lanes.value for lanes in Lanes]),
    default=Lanes.UNIT.value,
    show_default=True,
    help="Draw together what is done on one unit, or at one station.",
)
@click.option(
    "--paper",
    type=click.Choice([paper.value for paper in Paper]),
    help="Put a PDF or PNG on a sheet of this size; as large as the graph if left out.",
)
@dot_option
def graph(file: str, picks: dict[str, str], output: Path, **chart: Unpack[_Chart]) -> None:
    r"""Draw what comes before what, and why.

    Operations stand in lanes; an arrow says that one comes before the other, its line how binding
    that is. The longest chain is marked.

    \b
    Examples:
      seqplan graph garments/breakwater-skirt.yaml -o skirt.svg
      seqplan graph garments/breakwater-skirt.yaml --paper a4 -o skirt.pdf
    """
    suffix = output.suffix.lower()
    paper = Paper(chart["paper"]) if chart["paper"] else None
    if paper is not None and suffix == ".svg":
        raise click.UsageError(say("chart-paper-of-svg"))
    with told_in(open_for_work(file, picks), chart["language"]) as opened:
        svg = draw_graph(opened, Lanes(chart["lanes"]), chart["program"])
        content = write_graph(svg, suffix, paper)
    write_file(output, content)
