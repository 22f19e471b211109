"""`seqplan steps`: an order for a booklet or a batch, or the written one repaired."""

from typing import TypedDict, Unpack

import click

from seqplan.cli.options import (
    command,
    file_argument,
    format_option,
    language_option,
    pick_option,
    seconds_option,
)
from seqplan.cli.progress import SearchProgress, deadline
from seqplan.cli.report import open_for_work
from seqplan.cli.room import read_room, workroom_option
from seqplan.pipeline import told_in
from seqplan.render.listing import list_steps
from seqplan.render.machine.document import to_json
from seqplan.render.machine.plan import plan_data


class _Search(TypedDict):
    """How to look for a batch, and how the order is told."""

    seconds: float
    workroom: str | None
    language: str | None


@command()
@file_argument
@pick_option
@click.option(
    "--for",
    "purpose",
    type=click.Choice(["booklet", "batch"]),
    default="booklet",
    show_default=True,
    help="booklet: unit by unit, near the written order. batch: the fewest changes of set-up.",
)
@click.option(
    "--repair",
    is_flag=True,
    help="Keep the written order and move as few entries as possible (then --for does not count).",
)
@workroom_option
@seconds_option
@format_option
@language_option
def steps(
    file: str,
    picks: dict[str, str],
    purpose: str,
    form: str,
    *,
    repair: bool,
    **search: Unpack[_Search],
) -> None:
    r"""List the operations in an order that holds.

    \b
    Examples:
      seqplan steps garments/breakwater-skirt.yaml
      seqplan steps garments/breakwater-skirt.yaml --for batch
      seqplan steps garments/breakwater-skirt.yaml --repair
      seqplan steps garments/breakwater-skirt.yaml --for batch --workroom room.yaml

    \b
    A workroom file:
      workroom: Harbour hall
      machines:
        old machine: {station: lockstitch, setup: 2, foot: 3, stitch: 1}
        board:       {station: iron, setup: 3}
      ways:
        old machine: {board: 1}
    """
    room = read_room(search["workroom"])
    limit = deadline(search["seconds"])
    with told_in(open_for_work(file, picks), search["language"]) as opened:
        planner = opened.planner
        if repair:
            plan = planner.repair(limit)
        elif purpose == "batch":
            plan = planner.batch(limit, SearchProgress(), room)
        else:
            plan = planner.booklet()
        if form == "json":
            click.echo(to_json(plan_data(plan)), nl=False)
        else:
            click.echo(list_steps(opened.garment, plan), nl=False)
