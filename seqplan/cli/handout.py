"""`seqplan handout`: what a garment says, on paper."""

from pathlib import Path
from typing import TypedDict, Unpack

import click

from seqplan.base.diagnostic import Diagnostic
from seqplan.cli.options import (
    command,
    file_argument,
    known_format,
    language_option,
    pick_option,
    seconds_option,
)
from seqplan.cli.output import write_file
from seqplan.cli.progress import Stages, deadline
from seqplan.cli.report import open_for_work, tell_unprinted
from seqplan.cli.room import read_room, workroom_option
from seqplan.paper.handouts import HANDOUTS, Asked
from seqplan.pipeline import make_handouts, print_handout, told_in
from seqplan.render.handout.paper import Paper
from seqplan.render.handout.writers import SUFFIXES
from seqplan.words.say import say


class _Sheet(TypedDict):
    """What the handout is written on, how large, in which language, and what it is made for."""

    paper: str
    large: bool
    language: str | None
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
    help="booklet: all that one person needs to sew the garment from paper. batch: several garments"
    " at once, visit by visit with the fewest changes of set-up. class: a sheet for learners, one"
    " for the teacher, and cards with the state of the work at every safe stop. filming: shots by"
    " camera place, and the chapters for the cut.",
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
    "--sessions",
    type=click.IntRange(1, 99),
    help="Of a class: how many sessions; they end at safe stops, as even as those allow.",
)
@click.option(
    "--learners",
    type=click.IntRange(1, 999),
    help="Of a class: how many learners share the machines of the workroom.",
)
@workroom_option
@seconds_option
@click.option(
    "-o",
    "--output",
    metavar="OUT",
    required=True,
    callback=known_format(SUFFIXES),
    help="Where to write it; the name ends in .html, .pdf or .md, which is the format. A class has"
    " several sheets: OUT.pdf becomes OUT-learner.pdf, OUT-teacher.pdf and OUT-cards.pdf.",
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

    Plain sentences with check boxes and pictures, for one who sews a garment from paper, for a
    batch of several, for a class, or for a film. HTML and PDF need no network and no other file.

    \b
    Examples:
      seqplan handout garments/breakwater-skirt.yaml -o skirt.pdf
      seqplan handout garments/gull-skirt.yaml --size M --paper letter -o skirt.html
      seqplan handout garments/galley-apron.yaml --for batch --workroom room.yaml -o batch.pdf
      seqplan handout garments/galley-apron.yaml --for class --sessions 3 -o apron.pdf
      seqplan handout garments/galley-apron.yaml --for filming -o shots.pdf
    """
    room = read_room(sheet["workroom"])
    asked = Asked(
        is_large=sheet["large"],
        sessions=sheet["sessions"],
        learners=sheet["learners"],
        workroom=room,
        limit=deadline(sheet["seconds"]),
    )
    opened = open_for_work(file, picks, size)
    with told_in(opened, sheet["language"]) as read, Stages() as stages:
        stages.reach(say("handout-composing"), 0)
        made = make_handouts(read, kind, asked)
        told: list[str] = []
        findings: dict[Diagnostic, None] = {}
        for number, (name, document) in enumerate(made.items()):
            path = output.with_stem(f"{output.stem}-{name}") if name else output
            stages.reach(say("handout-writing", name=path.name), (1 + number / len(made)) / 2)
            paper = Paper(sheet["paper"])
            printed = print_handout(read, document, path.suffix.lower(), paper)
            findings |= dict.fromkeys(printed.findings)
            if printed.data is None:
                continue
            write_file(path, printed.data)
            if name:
                told.append(say("handout-written", name=str(path), kind=document.kind))
    for line in told:
        click.echo(line)
    tell_unprinted(opened, findings)
