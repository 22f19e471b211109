"""One function for each thing that people ask for. No printing, no exit codes, no clock.

`open_garment` reads a file as far as it can be read; everything else starts from what it returns.
What only some commands need (the searches, the pictures, the pages) is imported where it is used:
most runs are checks, and half of a check's time is importing.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING, NamedTuple

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import EntryId
from seqplan.base.language import ENGLISH, speaking, spoken
from seqplan.base.strength import Strength
from seqplan.explain.cautions import check_cautions
from seqplan.explain.leftover import check_leftovers
from seqplan.explain.said import check_said
from seqplan.explain.selection import EVERYTHING, Selection
from seqplan.graph.reason import Reason
from seqplan.load.document import Loaded, load_file, place
from seqplan.plan.binding import Binding, bind
from seqplan.plan.waivers import set_aside
from seqplan.recipes.construction import Construction
from seqplan.recipes.expand import construct
from seqplan.rules.derive import derive

if TYPE_CHECKING:
    from pathlib import Path

    from seqplan.explain.chart import Lanes
    from seqplan.explain.waived import SetAside
    from seqplan.explain.why import Explainer
    from seqplan.paper.blocks import Document
    from seqplan.paper.handouts import Asked, Composed
    from seqplan.plan.plan import Planner
    from seqplan.render.handout.paper import Paper


@dataclass(frozen=True)
class Opened:
    """A garment file as far as it can be read.

    Parameters
    ----------
    loaded
        The file.
    construction
        The garment on the cloth, or ``None`` where the file has errors.
    laid_out
        What could not be laid out on the cloth.
    """

    loaded: Loaded
    construction: Construction | None
    laid_out: tuple[Diagnostic, ...] = ()

    @cached_property
    def reasons(self) -> tuple[Reason, ...]:
        """Every reason of the garment; none where it could not be read."""
        return derive(self.construction) if self.construction else ()

    @cached_property
    def binding(self) -> Binding:
        """Which reasons bind."""
        if self.construction is None:
            return bind((), ())
        waived = set_aside(self.construction.garment.waivers, self.reasons)
        return bind(self.construction.ids, self.reasons, waived)

    @property
    def has_order(self) -> bool:
        """Whether there is a garment, and an order for it."""
        return self.construction is not None and not self.binding.conflicts

    @property
    def can_be_sewn(self) -> bool:
        """Whether there is an order that the cloth allows, too."""
        if not self.has_order:
            return False
        from seqplan.plan.plan import NoPlanError

        try:
            self.planner.booklet()
        except NoPlanError:
            return False
        return True

    @cached_property
    def findings(self) -> tuple[Diagnostic, ...]:
        """Everything that the check finds, in the order of the file."""
        return self.choose(EVERYTHING)

    def choose(self, selection: Selection) -> tuple[Diagnostic, ...]:
        """Give the findings that are asked for; what keeps the file from being read is always."""
        reading = (*self.loaded.diagnostics, *self.laid_out)
        blocking = [item for item in reading if item.severity is Severity.ERROR]
        found = [item for item in reading if item.severity is not Severity.ERROR]
        if self.construction is not None:
            found += self._check(self.construction, selection, is_readable=not blocking)
        return place([*blocking, *selection.of(found)], self.loaded.where)

    def _check(
        self, c: Construction, selection: Selection, *, is_readable: bool
    ) -> list[Diagnostic]:
        """What the check finds in a garment that could be laid out, as far as it could."""
        found = [
            *check_leftovers(c, self.loaded.garment),
            *check_cautions(c.garment),
            *self._waiver_findings(c),
        ]
        is_sound = is_readable and all(item.severity is not Severity.ERROR for item in found)
        found += self._order_findings(c, selection)
        if is_sound and not self._is_order_broken:
            found += self._rehearsal_findings(c)
        return found

    @cached_property
    def set_aside(self) -> tuple[SetAside, ...]:
        """The waivers that hold, in the order of the file, with what they keep from the check."""
        if self.construction is None or not self.construction.garment.waivers:
            return ()
        from seqplan.explain.waived import find_set_aside

        return tuple(
            each._replace(findings=place(each.findings, self.loaded.where))
            for each in find_set_aside(self.construction, self.reasons)
        )

    @property
    def has_errors(self) -> bool:
        """Whether one of the findings is an error."""
        return any(item.severity is Severity.ERROR for item in self.findings)

    @property
    def garment(self) -> Construction:
        """The garment on the cloth.

        Raises
        ------
        ValueError
            When the file has errors; ask ``has_order`` first.
        """
        if self.construction is None:
            msg = "the file has errors"
            raise ValueError(msg)
        return self.construction

    @cached_property
    def planner(self) -> Planner:
        """Finds orders.

        Raises
        ------
        NoPlanError
            When no order exists.
        """
        from seqplan.plan.plan import Planner

        return Planner(self.garment, self.binding)

    @property
    def explainer(self) -> Explainer:
        """Answers why."""
        from seqplan.explain.why import Explainer

        return Explainer(self.garment, self.binding.held)

    def _waiver_findings(self, c: Construction) -> Iterable[Diagnostic]:
        if not c.garment.waivers:
            return ()
        from seqplan.explain.waived import check_waivers

        return check_waivers(c, self.reasons)

    def _rehearsal_findings(self, c: Construction) -> Iterable[Diagnostic]:
        """Where the written order gets stuck, if no reason tells already."""
        from seqplan.rehearse.walk import rehearse

        found = rehearse(c, c.ids)
        if found.is_clean and not found.debts:
            return ()
        from seqplan.explain.rehearsed import check_rehearsed

        return check_rehearsed(c, found)

    @cached_property
    def _is_order_broken(self) -> bool:
        """Whether the written order breaks a must, or no order holds them all."""
        binding = self.binding
        if binding.is_written_order_valid or self.construction is None:
            return False
        position = {id_: place for place, id_ in enumerate(self.construction.ids)}
        musts = (reason for reason in binding.held if reason.strength is Strength.MUST)
        return bool(binding.conflicts) or not all(reason.is_held(position) for reason in musts)

    def _order_findings(self, c: Construction, selection: Selection) -> Iterable[Diagnostic]:
        """What the written order breaks; of two entries the worst reason that is asked for."""
        said = () if self.binding.conflicts else check_said(c, self.binding.held)
        if self.binding.is_written_order_valid:
            return said
        from seqplan.explain.written import check_binding, check_written

        found = (*check_binding(self.binding), *said)
        held = tuple(reason for reason in self.binding.held if selection.takes(reason.rule))
        chosen = self.binding._replace(held=held)
        if self.binding.conflicts or not check_written(c, chosen):
            return found
        return (*found, *check_written(c, chosen, self._moved()))

    def _moved(self) -> list[EntryId]:
        """What the smallest repair moves; nothing where no order can be sewn at all."""
        from seqplan.plan.plan import NoPlanError

        try:
            return [EntryId(name) for name in self.planner.repair().moved]
        except NoPlanError:
            return []


def open_garment(
    path: str | Path, picks: Mapping[str, str] | None = None, size: str | None = None
) -> Opened:
    """Read a garment file, make its choices, and lay it out on the cloth.

    Parameters
    ----------
    path
        The file.
    picks
        An option for each choice that the file offers; the first one for those left out.
    size
        The size whose measures are wanted; those of all sizes without.

    Raises
    ------
    UnreadableFileError
        When the file cannot be read at all.
    """
    loaded = load_file(path)
    if loaded.garment is None:
        return Opened(loaded, None)
    garment = loaded.garment
    problems: tuple[Diagnostic, ...] = ()
    if garment.choices or picks:
        from seqplan.model.variant import check_picks, choose

        problems = check_picks(garment, picks or {})
        garment = choose(garment, picks or {})
    if size is not None:
        from seqplan.model.size import check_size, in_size

        problems += check_size(garment, size)
        garment = in_size(garment, size)
    if problems:
        return Opened(loaded, None, problems)
    construction, laid_out = construct(garment)
    return Opened(loaded, construction, laid_out)


@contextmanager
def told_in(opened: Opened, language: str | None = None) -> Iterator[Opened]:
    """Tell everything inside in the language of those who will read it.

    Findings are told to the author, in English. Reasons are told as they are derived, so for
    readers of another language they are derived anew, in the garment that this gives.

    Parameters
    ----------
    opened
        The garment.
    language
        The language, as one of ``LANGUAGES``; that of the file where it is ``None``.
    """
    garment = opened.loaded.garment
    wanted = language or (garment.language if garment else None) or ENGLISH
    is_told_so = wanted == spoken()
    with speaking(wanted):
        yield opened if is_told_so else replace(opened)


def draw_graph(opened: Opened, lanes: Lanes, program: str | None = None) -> str:
    """Draw the dependency graph as SVG.

    Raises
    ------
    MissingToolError
        When the program that lays the graph out is missing or fails.
    """
    from seqplan.explain.chart import make_chart
    from seqplan.render.dot import chart_to_dot
    from seqplan.render.engine import render_svg

    c = opened.garment
    chart = make_chart(c, opened.binding.held, lanes)
    dot = chart_to_dot(chart, c, title=c.garment.name, lanes=lanes)
    return render_svg(dot, program=program)


def write_graph(svg: str, suffix: str, paper: Paper | None = None) -> bytes:
    """Write the dependency graph in a format: ``.svg``, ``.pdf`` or ``.png``.

    On a sheet of paper, or as large as the graph where ``paper`` is ``None``.
    """
    from seqplan.render.chart_file import chart_file

    return chart_file(svg, suffix, paper)


def make_handouts(opened: Opened, kind: str, asked: Asked | None = None) -> Composed:
    """Compose a handout: its documents by what is added to its name.

    Parameters
    ----------
    opened
        The garment; it has an order.
    kind
        One of `seqplan.paper.handouts.HANDOUTS`.
    asked
        What it is asked to be like.

    Raises
    ------
    NoPlanError
        When no order exists.
    NoMachineError
        An operation needs a station that the workroom does not have.
    """
    from seqplan.paper.handouts import compose

    return compose(kind, opened.garment, opened.planner, asked)


def write_handout(document: Document, suffix: str, paper: Paper) -> bytes:
    """Write a handout as a file.

    Parameters
    ----------
    document
        What it says.
    suffix
        One of `seqplan.render.handout.writers.SUFFIXES`, which tells the format.
    paper
        What it is printed on, for formats that have pages.
    """
    from seqplan.render.handout.writers import writer

    return writer(suffix)(document, paper)


class Printed(NamedTuple):
    """A handout as a file, and what of the garment it cannot show.

    ``data`` is ``None`` where there is an error among the findings.
    """

    data: bytes | None
    findings: tuple[Diagnostic, ...] = ()


def print_handout(opened: Opened, document: Document, suffix: str, paper: Paper) -> Printed:
    """Write a handout as ``write_handout`` does, and find what of the garment it cannot show."""
    import warnings

    from seqplan.paper.unprinted import boxed_letters, damaged_images
    from seqplan.render.handout.unprinted import BoxedLettersWarning, UnprintableImagesError

    loaded = opened.loaded
    with warnings.catch_warnings(record=True) as told:
        warnings.simplefilter("always", BoxedLettersWarning)
        try:
            data = write_handout(document, suffix, paper)
        except UnprintableImagesError as error:
            damaged = damaged_images(opened.garment.garment, error.images)
            return Printed(None, place(damaged, loaded.where))
    boxed = (w.message.letters for w in told if isinstance(w.message, BoxedLettersWarning))
    letters = frozenset[str]().union(*boxed)
    return Printed(data, boxed_letters(loaded.text, letters))


def step_pictures(
    opened: Opened, kinds: Iterable[str] = (), *, as_png: bool = False
) -> Mapping[str, str | bytes]:
    """Draw the steps of the booklet, and the key of the pictures.

    Parameters
    ----------
    opened
        The garment.
    kinds
        The values of the kinds of pictures; all of them if there are none.
    as_png
        Whether files are PNG, and not SVG.

    Returns
    -------
    Mapping
        Files by their names, in the order of the steps, the key last.
    """
    from seqplan.draw.key import key_figure
    from seqplan.draw.pictures import EVERY_KIND, Kind, named_pictures
    from seqplan.draw.svg import svg

    wanted = frozenset(map(Kind, kinds)) or EVERY_KIND
    figures = {
        **named_pictures(opened.garment, opened.planner.booklet().order, wanted),
        "key": key_figure(),
    }
    if not as_png:
        return {f"{name}.svg": svg(figure) for name, figure in figures.items()}
    from seqplan.render.png import pngs

    drawn = pngs(tuple(figures.values()))
    return {f"{name}.png": data for name, data in zip(figures, drawn, strict=True)}
