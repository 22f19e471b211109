"""`seqplan why`: what comes before and after an operation, or what binds two."""

import click

from seqplan.cli.names import require_names
from seqplan.cli.options import command, file_argument, format_option, pick_option
from seqplan.cli.report import open_for_work
from seqplan.render.listing import list_between, list_place
from seqplan.render.machine.answer import between_data, place_data
from seqplan.render.machine.document import to_json


@command()
@file_argument
@pick_option
@click.argument("first", metavar="A")
@click.argument("second", metavar="[B]", required=False)
@format_option
def why(file: str, picks: dict[str, str], first: str, second: str | None, form: str) -> None:
    r"""Tell why an operation stands where it stands.

    With A alone: what comes before it and after it, with the reasons. With A and B: the chain of
    reasons from one to the other, or that they are free. A name stands for an entry with all its
    parts (side-seams) or for one operation (side-seams/press).

    \b
    Examples:
      seqplan why garments/breakwater-skirt.yaml zip
      seqplan why garments/breakwater-skirt.yaml zip hem
    """
    explainer = open_for_work(file, picks).explainer
    require_names(explainer.names(), [first] if second is None else [first, second])
    if second is None:
        place = explainer.place(first)
        text, data = list_place(place), place_data(place)
    else:
        between = explainer.between(first, second)
        text, data = list_between(between), between_data(between)
    click.echo(to_json(data) if form == "json" else text, nl=False)
