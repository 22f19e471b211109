"""`seqplan handout`: what a garment says, on paper."""

from pathlib import Path
from typing import TypedDict, Unpack

import click

from seqplan.cli.options import (
    command,
    file_argument,
    known_format,
    language_option,
    pick_option,
)
from seqplan.cli.output import write_file
from seqplan.cli.progress import stages
from seqplan.cli.report import open_for_work
from seqplan.paper.handouts import HANDOUTS
from seqplan.pipeline import make_handout, told_in, write_handout
from seqplan.render.handout.paper import Paper
from seqplan.render.handout.writers import SUFFIXES
from seqplan.words.say import say


class _Sheet(TypedDict):
    """What the handout is written on, how large, and in which language."""

    paper: str
    large: bool
    language: str | None


@command()
@file_argument
@click.option(
    "--for",
    "kind",
    type=click.Choice(list(HANDOUTS)),
    default="booklet",
    show_default=True,
    help="booklet: all that one person needs to sew the garment from paper.",
)
@pick_option
@language_option
@click.option("--size", metavar="SIZE", help="Only the measures of this size.")
@click.option(
    "--paper",
    type=click.Choice([paper.value for paper in Paper]),
    default=Paper.A4.value,
    show_default=True,
    help="What it is printed on.",
)
@click.option("--large", is_flag=True, help="Large print: letters of 18 points.")
@click.option(
    "-o",
    "--output",
    metavar="OUT",
    required=True,
    callback=known_format(SUFFIXES),
    help="Where to write it; the name ends in .html, .pdf or .md, which is the format.",
)
def handout(
    file: str,
    kind: str,
    picks: dict[str, str],
    size: str | None,
    output: Path,
    **sheet: Unpack[_Sheet],
) -> None:
    r"""Write a handout, to print or to send.

    What you need, the cutting list, and the steps unit by unit in plain sentences, with check
    boxes and pictures. HTML and PDF need no network and no other file.

    \b
    Examples:
      seqplan handout garments/breakwater-skirt.yaml -o skirt.pdf
      seqplan handout garments/gull-skirt.yaml --size M --paper letter -o skirt.html
    """
    opened = open_for_work(file, picks, size)
    show = stages()
    show(say("handout-composing"))
    with told_in(opened, sheet["language"]) as read:
        document = make_handout(read, kind, is_large=sheet["large"])
        show(say("handout-writing", name=output.name))
        made = write_handout(document, output.suffix.lower(), Paper(sheet["paper"]))
    write_file(output, made)
