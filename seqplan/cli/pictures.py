"""`seqplan pictures`: each picture of a step as a file of its own."""

from pathlib import Path
from typing import Final

import click

from seqplan.cli.options import command, file_argument, language_option, pick_option
from seqplan.cli.output import write_folder
from seqplan.cli.report import open_for_work
from seqplan.pipeline import step_pictures, told_in

KINDS: Final = ("stack", "piece", "section", "unit", "map")
"""The kinds of pictures, as the command line calls them."""


@command()
@file_argument
@pick_option
@language_option
@click.option("-o", "--output", metavar="FOLDER", required=True, help="Where the pictures go.")
@click.option(
    "--format",
    "form",
    type=click.Choice(["svg", "png"]),
    default="svg",
    show_default=True,
    help="What sort of files.",
)
@click.option(
    "--kind",
    "kinds",
    type=click.Choice(KINDS),
    multiple=True,
    help="A kind of pictures, several times for several; without it all of them.",
)
def pictures(
    file: str,
    picks: dict[str, str],
    language: str | None,
    output: str,
    form: str,
    kinds: tuple[str, ...],
) -> None:
    r"""Draw the steps of the booklet, each picture as a file of its own, and their key.

    A stack shows how layers are laid for an operation that joins them, a section how a seam or an
    edge lies afterwards, cut across. A piece shows what is put on its face, a unit what is in hand
    in outline, and a map all pieces with the state of every edge. Names begin with the place in
    the order.

    \b
    Example:
      seqplan pictures garments/breakwater-skirt.yaml -o pictures
      seqplan pictures garments/breakwater-skirt.yaml -o pictures --kind map --format png
    """
    with told_in(open_for_work(file, picks), language) as opened:
        write_folder(Path(output), step_pictures(opened, kinds, as_png=form == "png"))
