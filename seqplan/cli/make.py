"""`seqplan make`: check, both orders, the graph and the booklet, all in one folder."""

import sys
import time
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

import click

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.errors import SeqplanError
from seqplan.base.ids import RuleSlug
from seqplan.cli.options import (
    command,
    dot_option,
    file_argument,
    findings_options,
    format_option,
    language_option,
    pick_option,
    seconds_option,
)
from seqplan.cli.output import write_folder
from seqplan.cli.progress import SearchProgress, deadline
from seqplan.cli.report import findings_text, status_of, tell_unprinted
from seqplan.cli.status import Status
from seqplan.explain.chart import Lanes
from seqplan.explain.selection import Selection
from seqplan.pipeline import Opened, draw_graph, make_handouts, open_garment, print_handout, told_in
from seqplan.render.handout.paper import Paper
from seqplan.render.listing import list_steps
from seqplan.render.machine.document import to_json
from seqplan.render.machine.finding import diagnostic_data
from seqplan.words.say import say

_POLL_SECONDS = 0.3


@command()
@file_argument
@click.option(
    "-o",
    "--output",
    metavar="FOLDER",
    default="out",
    show_default=True,
    help="Where everything goes; made if it is not there.",
)
@click.option("--watch", is_flag=True, help="Do it again each time the file is saved.")
@pick_option
@language_option
@findings_options
@seconds_option
@dot_option
@format_option
def make(
    file: str,
    watch: bool,
    only: frozenset[RuleSlug],
    without: frozenset[RuleSlug],
    **settings: Any,
) -> None:
    r"""Check a garment and make everything from it.

    Into one folder go: what the check found, the order for a booklet, the order with the fewest
    changes of set-up, the graph, and the booklet. Where the written order does not hold, the
    others are made from the nearest order that does.

    \b
    Example:
      seqplan make garments/breakwater-skirt.yaml -o out
    """
    job = _Job(file, Selection(only, without), **settings)
    status = job.run()
    if watch:
        _watch(job)
    click.get_current_context().exit(status)


@dataclass(frozen=True, slots=True)
class _Job:
    """What is made from which file, and where it goes."""

    file: str
    selection: Selection
    picks: dict[str, str]
    language: str | None
    strict: bool
    output: str
    seconds: float
    program: str | None
    form: str

    def run(self) -> Status:
        opened = open_garment(self.file, self.picks)
        found = opened.choose(self.selection)
        told = findings_text(opened, found) + "\n"
        with told_in(opened, self.language) as read:
            made, unprinted = _contents(read, self.seconds, self.program)
        files = {"check.txt": told, **made}
        write_folder(Path(self.output), files)
        if self.form == "json":
            name = opened.loaded.name
            findings = [diagnostic_data(item, name) for item in found]
            data = {"folder": self.output, "files": list(files), "findings": findings}
            click.echo(to_json(data), nl=False)
        else:
            self._tell(told, tuple(files))
        tell_unprinted(opened, unprinted)
        return status_of(found, strict=self.strict)

    def _tell(self, told: str, files: tuple[str, ...]) -> None:
        click.echo(told)
        click.echo(say("made-folder", folder=self.output))
        for made in files:
            click.echo("  " + say(_LABELS[made]))
        if len(files) == 1:
            click.echo(say("made-nothing"))


_LABELS = {
    "check.txt": "made-check",
    "booklet-steps.txt": "made-booklet-steps",
    "batch-steps.txt": "made-batch-steps",
    "graph.svg": "made-graph",
    "booklet.html": "made-booklet",
    "booklet.pdf": "made-booklet-pdf",
}


def _contents(
    opened: Opened, seconds: float, program: str | None
) -> tuple[dict[str, str | bytes], list[Diagnostic]]:
    """Make what stands in every file but the check's; none where there is nothing to plan.

    What of the garment the booklet cannot show is told besides.
    """
    makers: dict[str, Callable[[], str | bytes | None]] = {}
    unprinted: list[Diagnostic] = []

    def booklet(suffix: str) -> bytes | None:
        printed = print_handout(opened, page(), suffix, Paper.A4)
        unprinted.extend(printed.findings)
        return printed.data

    page = cache(lambda: make_handouts(opened, "booklet")[""])
    blocking = (*opened.loaded.diagnostics, *opened.laid_out)
    if opened.can_be_sewn and all(item.severity is not Severity.ERROR for item in blocking):
        c, planner = opened.garment, opened.planner
        makers = {
            "booklet-steps.txt": lambda: list_steps(c, planner.booklet()),
            "batch-steps.txt": lambda: list_steps(
                c, planner.batch(deadline(seconds), SearchProgress())
            ),
            "graph.svg": lambda: draw_graph(opened, Lanes.UNIT, program),
            "booklet.html": lambda: booklet(".html"),
            "booklet.pdf": lambda: booklet(".pdf"),
        }
    with click.progressbar(makers.items(), file=sys.stderr, item_show_func=_shown) as bar:
        made = [(name, maker()) for name, maker in bar]
    return {name: content for name, content in made if content is not None}, unprinted


def _shown(item: tuple[str, Callable[[], str | bytes | None]] | None) -> str | None:
    return item[0] if item else None


def _watch(job: _Job) -> None:
    """Run again whenever the file has changed, until interrupted. A fault is told, not fatal."""
    click.echo(say("watching", name=job.file), err=True)
    seen = _stamp(job.file)
    while True:
        time.sleep(_POLL_SECONDS)
        if (stamp := _stamp(job.file)) not in {seen, None}:
            seen = stamp
            try:
                job.run()
            except SeqplanError as error:
                click.echo(f"seqplan: {error}", err=True)


def _stamp(file: str) -> tuple[int, int] | None:
    """When the file was last changed, and its size; ``None`` while an editor is replacing it."""
    try:
        stat = Path(file).stat()
    except OSError:
        return None
    return stat.st_mtime_ns, stat.st_size
