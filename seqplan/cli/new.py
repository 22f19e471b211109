"""`seqplan new`: a garment file to start from."""

import shlex
from pathlib import Path

import click

from seqplan.base.errors import UnwritableOutputError
from seqplan.cli.options import command
from seqplan.cli.output import write_file
from seqplan.load.starter import MEASURES, file_stem, garment_name, starter
from seqplan.load.text import character_code, first_unseen
from seqplan.words.say import say


@command()
@click.argument("words", metavar="NAME", nargs=-1)
@click.option(
    "-o",
    "--output",
    metavar="FILE",
    help="Where to write it; NAME.yaml in this folder if left out.",
)
@click.option(
    "--units",
    type=click.Choice(list(MEASURES)),
    default="cm",
    show_default=True,
    help="The unit of lengths that name none.",
)
@click.option("--force", is_flag=True, help="Write over a file that is there already.")
def new(words: tuple[str, ...], output: str | None, units: str, force: bool) -> None:
    r"""Write a small garment file to start from.

    A skirt of two pieces that explains itself line by line, to be changed into your own garment.
    It checks clean from the start, so whatever the check says is about your change.

    \b
    Example:
      seqplan new "Quay skirt"
      seqplan check quay-skirt.yaml
    """
    name = _good_name(" ".join(words))
    path = Path(output if output is not None else f"{file_stem(name)}.yaml")
    # A link that leads nowhere does not exist, and would be lost all the same.
    if not force and (path.exists() or path.is_symlink()):
        raise UnwritableOutputError(str(path), say("starter-exists"))
    write_file(path, starter(name, units))
    shown = click.format_filename(path)
    click.echo(say("starter-written", path=shown, shown=shlex.quote(shown)))


def _good_name(written: str) -> str:
    name = garment_name(written)
    if not name:
        raise click.UsageError(say("starter-no-name"))
    letter = first_unseen(name)
    if letter is not None:
        raise click.UsageError(say("starter-unseen", code=character_code(letter)))
    return name
