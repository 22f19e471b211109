"""`seqplan pictures`: each picture of a step as a file of its own."""

from pathlib import Path

import click

from seqplan.cli.options import command, file_argument, language_option, pick_option
from seqplan.cli.output import write_folder
from seqplan.cli.report import open_for_work
from seqplan.pipeline import step_pictures, told_in


@command()
@file_argument
@pick_option
@language_option
@click.option("-o", "--output", metavar="FOLDER", required=True, help="Where the pictures go.")
def pictures(file: str, picks: dict[str, str], language: str | None, output: str) -> None:
    r"""Draw the steps of the booklet, each picture as an SVG file of its own.

    A stack shows how layers are laid for an operation that joins them; a section shows how a seam
    or an edge lies afterwards, cut across. Names begin with the place in the order.

    \b
    Example:
      seqplan pictures garments/breakwater-skirt.yaml -o pictures
    """
    with told_in(open_for_work(file, picks), language) as opened:
        write_folder(Path(output), step_pictures(opened))
