"""`seqplan handout`: the booklet as a page that prints well."""

from pathlib import Path

import click

from seqplan.cli.options import command, file_argument, pick_option
from seqplan.cli.output import write_file
from seqplan.cli.report import open_for_work
from seqplan.pipeline import booklet_page


@command()
@file_argument
@pick_option
@click.option("-o", "--output", metavar="OUT.html", required=True, help="Where to write the page.")
def handout(file: str, picks: dict[str, str], output: str) -> None:
    r"""Write the booklet as one page of HTML, to print or to send.

    What you need, the cutting list, and the steps unit by unit in plain sentences, with check
    boxes. It needs no network and no other file.

    \b
    Example:
      seqplan handout garments/breakwater-skirt.yaml -o skirt.html
    """
    opened = open_for_work(file, picks)
    write_file(Path(output), booklet_page(opened))
