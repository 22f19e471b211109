"""`seqplan pictures`: each picture of a step as a file of its own."""

from pathlib import Path

import click

from seqplan.cli.options import command, file_argument, pick_option
from seqplan.cli.output import write_folder
from seqplan.cli.report import open_for_work
from seqplan.pipeline import step_pictures


@command()
@file_argument
@pick_option
@click.option("-o", "--output", metavar="FOLDER", required=True, help="Where the pictures go.")
def pictures(file: str, picks: dict[str, str], output: str) -> None:
    r"""Draw the steps of the booklet, each picture as an SVG file of its own.

    A stack shows how layers are laid for an operation that joins them; a section shows how a seam
    or an edge lies afterwards, cut across. Names begin with the place in the order.

    \b
    Example:
      seqplan pictures garments/breakwater-skirt.yaml -o pictures
    """
    opened = open_for_work(file, picks)
    write_folder(Path(output), step_pictures(opened))
