"""Options and arguments that several commands share."""

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any, TypeVar

import click

from seqplan.base.ids import RuleSlug
from seqplan.base.language import LANGUAGES
from seqplan.cli.status import EXIT_CODES
from seqplan.words.say import say

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


def names_list(
    _ctx: click.Context, _param: click.Parameter, values: tuple[str, ...]
) -> tuple[str, ...]:
    """Read names that commas part, each once."""
    names = (part.strip() for value in values for part in value.split(","))
    return tuple(dict.fromkeys(name for name in names if name))


pick_option = click.option(
    "--pick",
    "picks",
    metavar="CHOICE=OPTION",
    multiple=True,
    callback=_read_picks,
    help="Of a garment that offers choices, the one with this option; the first one without.",
)


def known_format(
    suffixes: Sequence[str],
) -> Callable[[click.Context, click.Parameter, str], Path]:
    """Take a file whose name ends in the suffix of a format."""

    def read(_ctx: click.Context, _param: click.Parameter, value: str) -> Path:
        path = Path(value)
        if path.suffix.lower() not in suffixes:
            raise click.BadParameter(
                say("unknown-suffix", name=value, suffixes=", ".join(suffixes))
            )
        return path

    return read


def _read_slugs(
    _ctx: click.Context, _param: click.Parameter, values: tuple[str, ...]
) -> frozenset[RuleSlug]:
    """Read names of rules and findings, several in one value parted by commas."""
    slugs = [slug.strip() for value in values for slug in value.split(",") if slug.strip()]
    if not slugs:
        return frozenset()
    # Few name any, so only those wait for the rule book.
    from seqplan.explain.selection import NAMES

    unknown = [slug for slug in dict.fromkeys(slugs) if slug not in NAMES]
    if unknown:
        raise click.BadParameter(" ".join(_not_found(slug, NAMES) for slug in unknown))
    return frozenset(map(RuleSlug, slugs))


def _not_found(slug: str, names: Sequence[str]) -> str:
    from difflib import get_close_matches

    near = ", ".join(f"`{each}`" for each in get_close_matches(slug, names))
    hint = say("not-found-near", names=near) if near else say("check-unknown-rule-fix")
    return f"{say('not-found-finding', name=slug)}. {hint}"


def findings_options(command: F) -> F:
    """Add the options that choose what the check shows and what counts for its exit code.

    They come to the command as ``only``, ``without`` and ``strict``.
    """
    for option in (
        click.option(
            "--strict", is_flag=True, help="Warnings count for the exit code as errors do."
        ),
        click.option(
            "--ignore",
            "without",
            metavar="SLUG",
            multiple=True,
            callback=_read_slugs,
            help="Leave these findings out; they do not count for the exit code either.",
        ),
        click.option(
            "--select",
            "only",
            metavar="SLUG",
            multiple=True,
            callback=_read_slugs,
            help="Of rules and findings show only these: names parted by commas, or several times."
            " What keeps a file from being read is always shown.",
        ),
    ):
        command = option(command)
    return command


seconds_option = click.option(
    "--seconds",
    type=click.FloatRange(min=0.1),
    default=20.0,
    show_default=True,
    help="Give a search this long; then print the best found, and how much better any could be.",
)

language_option = click.option(
    "--language",
    type=click.Choice(list(LANGUAGES)),
    help="The language of what readers read, whatever the file says.",
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
