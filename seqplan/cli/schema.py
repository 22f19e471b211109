"""`seqplan schema`: the language for editors that complete and check while typing."""

from pathlib import Path

import click

from seqplan.cli.options import command
from seqplan.cli.output import write_file
from seqplan.render.machine.document import to_json
from seqplan.render.machine.schema import garment_schema


@command()
@click.option("-o", "--output", metavar="FILE", help="Where to write it; printed if left out.")
def schema(output: str | None) -> None:
    r"""Print what editors need to help while you type.

    It is a JSON Schema of garment files. An editor that understands YAML then offers the keys that
    go with each verb, says what they are for, and marks what cannot be. Write it to a file, and
    name that file in the first line of a garment:

    \b
      # yaml-language-server: $schema=garment.schema.json

    \b
    Example:
      seqplan schema -o garment.schema.json
    """
    text = to_json(garment_schema())
    if output is None:
        click.echo(text, nl=False)
    else:
        write_file(Path(output), text)
