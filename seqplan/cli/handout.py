"""`seqplan handout`: what a garment says, on paper."""

from pathlib import Path
from typing import TypedDict, Unpack

import click

from seqplan.cli.options import command, file_argument, known_format, pick_option, seconds_option
from seqplan.cli.output import write_file
from seqplan.cli.progress import deadline, stages
from seqplan.cli.report import open_for_work, read_room
from seqplan.paper.handouts import HANDOUTS, Wish
from seqplan.pipeline import make_handout, write_handout
from seqplan.render.handout.paper import Paper
from seqplan.render.handout.writers import SUFFIXES
from seqplan.words.say import say


class _Wanted(TypedDict):
    """How the handout is wanted."""

    size: str | None
    paper: str
    large: bool
    sessions: int | None
    learners: int | None
    workroom: str | None
    seconds: float


@command()
@file_argument
@click.option(
    "--for",
    "kind",
    type=click.Choice(list(HANDOUTS)),
    default="booklet",
    show_default=True,
    help="booklet: all that one person needs to sew it. batch: visit by visit, for several at"
    " once. class: a sheet for learners, one for the teacher, and state cards, three files."
    " filming: shots by camera place.",
)
@pick_option
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
    "--sessions",
    type=click.IntRange(min=1),
    help="Of a class: how many sessions; else as many as the work asks for.",
)
@click.option("--learners", type=click.IntRange(min=1), help="Of a class: how many learners.")
@click.option(
    "--workroom",
    metavar="ROOM.yaml",
    help="Your own machines, for a batch or a class (see `seqplan steps --help`).",
)
@seconds_option
@click.option(
    "-o",
    "--output",
    metavar="OUT",
    required=True,
    callback=known_format(SUFFIXES),
    help="Where to write it; the name ends in .html, .pdf or .md, which is the format.",
)
def handout(
    file: str, kind: str, picks: dict[str, str], output: Path, **wanted: Unpack[_Wanted]
) -> None:
    r"""Write a handout, to print or to send.

    The booklet: what you need, the cutting list, and the steps unit by unit in plain sentences,
    with check boxes and pictures. HTML and PDF need no network and no other file.

    \b
    Examples:
      seqplan handout garments/breakwater-skirt.yaml -o skirt.pdf
      seqplan handout garments/gull-skirt.yaml --size M --paper letter -o skirt.html
      seqplan handout garments/gull-skirt.yaml --for class --sessions 3 -o class.pdf
    """
    wish = Wish(
        is_large=wanted["large"],
        sessions=wanted["sessions"],
        learners=wanted["learners"],
        workroom=read_room(wanted["workroom"]),
        limit=deadline(wanted["seconds"]),
    )
    opened = open_for_work(file, picks, wanted["size"])
    show = stages()
    show(say("handout-composing"))
    for name, document in make_handout(opened, kind, wish).items():
        path = output.with_stem(f"{output.stem}-{name}") if name else output
        show(say("handout-writing", name=path.name))
        write_file(path, write_handout(document, path.suffix.lower(), Paper(wanted["paper"])))
        if name:
            click.echo(say("handout-written", name=str(path), kind=document.kind))
