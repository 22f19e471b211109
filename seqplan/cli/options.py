"""Options and arguments that several commands share."""

from collections.abc import Callable
from typing import Any, TypeVar

import click

from seqplan.cli.status import EXIT_CODES

F = TypeVar("F", bound=Callable[..., Any])

file_argument = click.argument("file", metavar="FILE")
"""The garment file. Whether it can be read is for the loader to say, with its own exit code."""

format_option = click.option(
    "--format",
    "form",
    type=click.Choice(["text", "json"]),
    default="text",
    show_default=True,
    help="For people, or for programs.",
)


def _read_picks(
    _ctx: click.Context, _param: click.Parameter, values: tuple[str, ...]
) -> dict[str, str]:
    """Read ``CHOICE=OPTION``, each choice at most once."""
    picks: dict[str, str] = {}
    for value in values:
        name, equals, option = (part.strip() for part in value.partition("="))
        if not (equals and name and option):
            msg = f"{value!r} is not of the form CHOICE=OPTION."
            raise click.BadParameter(msg)
        if picks.setdefault(name, option) != option:
            msg = f"{name!r} is picked twice."
            raise click.BadParameter(msg)
    return picks


pick_option = click.option(
    "--pick",
    "picks",
    metavar="CHOICE=OPTION",
    multiple=True,
    callback=_read_picks,
    help="Of a garment that offers choices, the one with this option; the first one without.",
)

seconds_option = click.option(
    "--seconds",
    type=click.FloatRange(min=0.1),
    default=20.0,
    show_default=True,
    help="Give a search this long; then print the best found, and how much better any could be.",
)

dot_option = click.option(
    "--dot",
    "program",
    metavar="PROGRAM",
    help="Lay the graph out with this program instead of the one that comes along"
    " (also SEQPLAN_DOT).",
)


def command(**settings: Any) -> Callable[[Callable[..., Any]], click.Command]:
    """Declare a command whose help is its docstring and ends with the exit codes."""

    def declare(function: Callable[..., Any]) -> click.Command:
        told = as_written(function.__doc__ or "")
        make: Callable[[Callable[..., Any]], click.Command]
        make = click.command(help=told, epilog=EXIT_CODES, **settings)
        return make(function)

    return declare


def as_written(text: str) -> str:
    r"""Keep the lines of paragraphs that begin with ``\b``, which raw docstrings spell out."""
    return text.replace(r"\b", "\b")
