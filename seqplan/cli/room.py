"""The workroom that a command is told to plan for."""

import click

from seqplan.cli.status import Status
from seqplan.model.workroom import Workroom

workroom_option = click.option(
    "--workroom",
    metavar="ROOM.yaml",
    help="Your own machines and their minutes; a batch then takes the fewest of these minutes.",
)


def read_room(path: str | None) -> Workroom | None:
    """Read the workroom; what is wrong with it is printed and ends the command."""
    if path is None:
        return None
    from seqplan.load.workroom import load_workroom
    from seqplan.render.excerpt import print_diagnostics

    loaded = load_workroom(path)
    if loaded.workroom is None:
        click.echo(print_diagnostics(loaded.diagnostics, loaded.name, loaded.text), err=True)
        click.get_current_context().exit(Status.FINDINGS)
    return loaded.workroom
