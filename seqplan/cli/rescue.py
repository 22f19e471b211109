"""`seqplan rescue`: what to undo when something was forgotten, and how to go on."""

from dataclasses import dataclass
from typing import Any

import click

from seqplan.base.ids import EntryId, OpId
from seqplan.cli.names import require_names
from seqplan.cli.options import (
    command,
    file_argument,
    format_option,
    names_list,
    pick_option,
    seconds_option,
)
from seqplan.cli.progress import SearchProgress, deadline
from seqplan.cli.report import open_for_work
from seqplan.cli.status import Status
from seqplan.pipeline import Opened
from seqplan.plan.rescue import Standing, find_rescue
from seqplan.recipes.construction import Construction
from seqplan.render.machine.document import to_json
from seqplan.render.machine.rescue import rescue_data
from seqplan.render.rescue import list_rescue
from seqplan.words.say import say


@command()
@file_argument
@pick_option
@click.option(
    "--missed",
    metavar="X,...",
    multiple=True,
    callback=names_list,
    help="What was forgotten: an operation with all its parts (zip), or one part (waist/clip).",
)
@click.option(
    "--wrong",
    metavar="X,...",
    multiple=True,
    callback=names_list,
    help="What is done and came out wrong, as a sleeve that is inside out.",
)
@click.option(
    "--done",
    metavar="A,B,...",
    multiple=True,
    callback=names_list,
    help="What is done. What must come before it is taken as done, too, but for what was"
    " forgotten.",
)
@click.option(
    "--up-to",
    "next_up",
    metavar="B",
    help="What is done: all that stands before B in the order, but for what was forgotten.",
)
@click.option(
    "--order",
    "which",
    type=click.Choice(["written", "booklet", "batch"]),
    default="written",
    show_default=True,
    help="The order that the work followed: of the file, or one that `steps` finds.",
)
@click.option(
    "--by-the-book",
    is_flag=True,
    help="Undo as much as good practice (should) asks for, too, not only what must be.",
)
@seconds_option
@format_option
def rescue(file: str, picks: dict[str, str], **settings: Any) -> None:
    r"""Tell what to undo when something was forgotten or came out wrong, and how to go on.

    Finds the least that has to be undone so that it can still be done, or done anew: first the
    fewest operations that cannot be undone (cutting, trimming, clipping, fusing), then the fewest
    operations at all. Names what is lost, and lists the order from there to the end, which is
    walked through with the work in hand. What is merely good practice is no reason to unpick
    anything; what goes against it is named, and --by-the-book keeps to it.

    \b
    Examples:
      seqplan rescue garments/breakwater-skirt.yaml --missed zip --up-to hem
      seqplan rescue garments/breakwater-skirt.yaml --missed waist/clip --done waist,hem
      seqplan rescue garments/net-loft-shirt.yaml --wrong armholes --up-to hem
      seqplan rescue garments/ferry-waistcoat.yaml --missed darts --up-to sides --by-the-book
    """
    opened = open_for_work(file, picks)
    status = _Request(**settings).answer(opened)
    click.get_current_context().exit(status)


@dataclass(frozen=True, slots=True)
class _Request:
    """What was asked for."""

    missed: tuple[str, ...]
    wrong: tuple[str, ...]
    done: tuple[str, ...]
    next_up: str | None
    which: str
    by_the_book: bool
    seconds: float
    form: str

    def answer(self, opened: Opened) -> Status:
        c = opened.garment
        at = self._standing(opened)
        limit = deadline(self.seconds)
        least, by_the_book = (
            find_rescue(c, opened.binding, at, by_the_book=strict, limit=limit)
            for strict in (self.by_the_book, True)
        )
        if self.form == "json":
            click.echo(to_json(rescue_data(least)), nl=False)
        else:
            click.echo(list_rescue(c, least, by_the_book), nl=False)
        return Status.FINE if least.rehearsal.is_clean else Status.FINDINGS

    def _standing(self, opened: Opened) -> Standing:
        c = opened.garment
        next_up = [] if self.next_up is None else [self.next_up]
        named = (*self.missed, *self.wrong, *self.done, *next_up)
        require_names((*c.garment.entry, *c.ids), named)
        if not self.missed and not self.wrong:
            raise click.UsageError(say("rescue-say-what"))
        if not self.done and not next_up:
            raise click.UsageError(say("rescue-say-done"))
        missed = {id_ for name in self.missed for id_ in _ops(c, name)}
        both = [name for name in self.done if _ops(c, name) <= missed]
        if both:
            names = ", ".join(f"`{name}`" for name in both)
            raise click.UsageError(say("rescue-both", names=names))
        order = self._order(opened)
        done = {id_ for name in self.done for id_ in _ops(c, name)}
        for name in next_up:
            done |= set(order[: min(order.index(id_) for id_ in _ops(c, name))])
        wrong = {id_ for name in self.wrong for id_ in _ops(c, name)} - missed
        return Standing(order, done, missed, wrong & done if done & wrong else wrong)

    def _order(self, opened: Opened) -> tuple[OpId, ...]:
        """The order that the work followed; the nearest that holds where the written does not."""
        if self.which == "booklet":
            return opened.planner.booklet().order
        if self.which == "batch":
            return opened.planner.batch(deadline(self.seconds), SearchProgress()).order
        if opened.binding.is_written_order_valid:
            return opened.garment.ids
        return opened.planner.repair(deadline(self.seconds)).order


def _ops(c: Construction, name: str) -> frozenset[OpId]:
    """The operations of an entry, or a single one."""
    entry = EntryId(name)
    return (
        frozenset(op.id for op in c.of_entry[entry])
        if entry in c.of_entry
        else frozenset({OpId(name)})
    )
