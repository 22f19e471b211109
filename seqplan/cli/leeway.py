"""`seqplan leeway`: the earliest and the latest place that an operation can have."""

import click

from seqplan.cli.names import require_names
from seqplan.cli.options import command, file_argument, format_option, pick_option
from seqplan.cli.report import open_for_work
from seqplan.plan.leeway import find_leeways
from seqplan.render.leeway import list_leeways, tell_leeway
from seqplan.render.machine.document import to_json
from seqplan.render.machine.leeway import leeways_data


@command()
@file_argument
@pick_option
@click.argument("name", metavar="[A]", required=False)
@click.option("--parts", is_flag=True, help="Look at single operations: side-seams/press.")
@format_option
def leeway(file: str, picks: dict[str, str], name: str | None, parts: bool, form: str) -> None:
    r"""Tell how early and how late an operation can be done.

    A table of all: the place that each has as written, the earliest and the latest that it can
    have in any order that holds, the same by musts alone, and what must not have been begun or it
    is too late. With A: one of them, with the reasons. A single operation such as side-seams/press
    is looked at among single operations.

    By musts alone means without good practice. The places are exact, also where a reason leaves a
    choice, and each is tried with the work in hand, as `seqplan rehearse` does; where that takes
    too long, or comes to nothing, they are marked as bounds.

    \b
    Examples:
      seqplan leeway garments/breakwater-skirt.yaml
      seqplan leeway garments/breakwater-skirt.yaml zip
      seqplan leeway garments/breakwater-skirt.yaml waist/clip
      seqplan leeway garments/breakwater-skirt.yaml --parts
    """
    opened = open_for_work(file, picks)
    c = opened.garment
    if name is not None:
        require_names((*c.garment.entry, *c.ids), [name])
        parts = parts or name not in c.garment.entry
    found = find_leeways(c, opened.binding, parts=parts, only=name)
    if form == "json":
        click.echo(to_json(leeways_data(found)), nl=False)
    elif name is None:
        click.echo(list_leeways(c.garment.name, found, asked_for_parts=parts), nl=False)
    else:
        click.echo(tell_leeway(found), nl=False)
