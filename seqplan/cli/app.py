"""The command `seqplan`. Each command lives in a module of its own, loaded when it is asked for."""

import gc
import os
import sys
from importlib import import_module
from io import TextIOWrapper
from typing import Any

import click

from seqplan.base.errors import SeqplanError
from seqplan.base.visible import visible
from seqplan.cli.status import EXIT_CODES, Status
from seqplan.version import VERSION

_COMMANDS = (
    "new",
    "make",
    "check",
    "steps",
    "why",
    "leeway",
    "rehearse",
    "rescue",
    "graph",
    "handout",
    "pictures",
    "rules",
    "schema",
)
_DEBUG = "SEQPLAN_DEBUG"
_NEW_OBJECTS = 100_000
"""Garbage is looked for this seldom: a run is short, and looking costs a tenth of it."""


class _Commands(click.Group):
    """A group that imports a command when it is asked for, so that starting stays quick."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        return list(_COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        if cmd_name not in _COMMANDS:
            return None
        command = getattr(import_module(f"seqplan.cli.{cmd_name}"), cmd_name)
        return command if isinstance(command, click.Command) else None

    def invoke(self, ctx: click.Context) -> Any:
        """Run a command; what goes wrong with files and tools becomes one line and a status."""
        try:
            return super().invoke(ctx)
        except SeqplanError as error:
            click.echo(f"seqplan: {visible(str(error))}", err=True)
            ctx.exit(Status.FINDINGS if error.is_finding else Status.UNREADABLE)


@click.group(
    cls=_Commands,
    context_settings={"help_option_names": ["-h", "--help"]},
    epilog=EXIT_CODES,
)
@click.version_option(VERSION, prog_name="seqplan")
def seqplan() -> None:
    """Plan, check and draw the order in which a garment goes together.

    A garment is a YAML file: pieces with edges, and operations that act on them. seqplan works out
    what has to come before what, and why.

    \b
    Start with:
      seqplan new "Quay skirt"
      seqplan make garments/breakwater-skirt.yaml -o out
    """  # noqa: D301 (click wants the character itself)


def main() -> None:
    """Run the command line and leave with its exit code. No fault of ours shows a traceback."""
    gc.set_threshold(_NEW_OBJECTS)
    _never_stumble_over_letters()
    try:
        seqplan()
    except Exception as error:
        if os.environ.get(_DEBUG):
            raise
        name = type(error).__name__
        click.echo(
            f"seqplan: a fault of the program ({name}: {error}). Set {_DEBUG}=1 to see where,"
            " and please report it with the file.",
            err=True,
        )
        sys.exit(Status.UNREADABLE)


def _never_stumble_over_letters() -> None:
    """Write letters that the terminal does not know by their numbers instead of failing."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, TextIOWrapper):
            stream.reconfigure(errors="backslashreplace")
