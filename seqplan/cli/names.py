"""Names that are asked for on the command line."""

from collections.abc import Iterable
from difflib import get_close_matches

import click

from seqplan.words.say import say


def require_names(known: Iterable[str], asked: Iterable[str]) -> None:
    """Refuse names that the garment does not have, all in one, with the nearest that it has."""
    names = tuple(dict.fromkeys(known))
    texts = []
    for name in dict.fromkeys(asked):
        if name not in names:
            near = ", ".join(f"`{each}`" for each in get_close_matches(name, names))
            hint = say("not-found-near", names=near) if near else ""
            texts.append(f"{say('not-found-name', name=name)}. {hint}".strip())
    if texts:
        raise click.UsageError("\n".join(texts))
