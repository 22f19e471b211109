"""Expand the entries of a garment into operations and lay them out on the cloth."""

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import EntryId, NotionId, OpId, PieceId, RuleSlug
from seqplan.base.path import DocPath
from seqplan.model.entry import Entry, SeamKind, Verb
from seqplan.model.garment import Garment
from seqplan.model.operation import Action, Operation, Setup
from seqplan.model.piece import Layer, Segment
from seqplan.model.station import IRON, STANDARD_FOOT, TABLE
from seqplan.recipes.book import recipe_for
from seqplan.recipes.construction import Construction
from seqplan.recipes.layout import Cloth, lay_out
from seqplan.recipes.recipe import MAIN, Ingredient, Reach, Recipe
from seqplan.recipes.shape import Shape
from seqplan.words.say import say


def construct(garment: Garment) -> tuple[Construction, tuple[Diagnostic, ...]]:
    """Expand a garment.

    Returns
    -------
    Construction, tuple of Diagnostic
        What the rules look at, and what could not be laid out (errors with a path). Where there
        are errors the construction is what remains without the seams in question.
    """
    cloth = lay_out(garment)
    expander = _Expander(garment, cloth)
    operations = tuple(op for entry in garment.entries for op in expander.operations(entry))
    expander.check_references(operations)
    construction = Construction(
        garment=garment, rings=cloth.rings, shapes=cloth.shapes, operations=operations
    )
    return construction, (*cloth.problems, *expander.problems)


def operation_id(entry: EntryId, part: str) -> OpId:
    """Name an operation: the entry's own name for the main one, else ``entry/part``."""
    return OpId(f"{entry}/{part}" if part else entry)


class _Expander:
    def __init__(self, garment: Garment, cloth: Cloth) -> None:
        self.problems: list[Diagnostic] = []
        self._garment = garment
        self._cloth = cloth
        self._finished_by_name = {
            segment
            for shape in cloth.shapes.values()
            if shape.entry.verb is Verb.FINISH
            for segment in shape.run
        }

    def operations(self, entry: Entry) -> list[Operation]:
        """Expand one entry."""
        shape = self._cloth.shapes[entry.id]
        recipe = self._recipe(shape.entry)
        return [self._operation(entry, shape, ingredient) for ingredient in recipe]

    def check_references(self, operations: tuple[Operation, ...]) -> None:
        """Report every ``after:`` and waiver that names a part which no recipe has."""
        named = [
            *(
                (ref, (*entry.path, "after"))
                for entry in self._garment.entries
                for ref in entry.after
            ),
            *((ref, (*waiver.path, "at")) for waiver in self._garment.waivers for ref in waiver.at),
        ]
        known = {op.id for op in operations} | self._garment.entry.keys()
        for reference, path in named:
            name, _, part = reference.partition("/")
            if reference not in known:
                self._report("unknown-part", EntryId(name), part, path)

    def _recipe(self, entry: Entry) -> Recipe:
        recipe = recipe_for(entry, self._garment)
        parts = {ingredient.part for ingredient in recipe}
        for part in entry.without:
            if part not in parts or part == MAIN:
                self._report("unknown-part", entry.id, part, (*entry.path, "without"))
        return tuple(
            ingredient
            for ingredient in recipe
            if ingredient.part not in entry.without
            and not (ingredient.part == "finish" and self._needs_no_finish(entry, ingredient))
        )

    def _needs_no_finish(self, entry: Entry, finish: Ingredient) -> bool:
        """Whether a seam pressed open, or a hem turned once, goes without its own edge finish.

        So it is where the edges are finished by an entry of their own, where they lie hidden under
        a facing or lining, and where cloth or selvage does not ravel. Two edges finished together
        are bound by that stitching, so there it stays.
        """
        if entry.seam in {SeamKind.FINISHED_TOGETHER, SeamKind.BOUND, SeamKind.OWN}:
            return False
        edges = self._cloth.shapes[entry.id].reached(finish.reach)
        if entry.verb is Verb.IN_SEAM_POCKET:
            return not edges
        return not any(self._ravels(segment) for segment in edges)

    def _ravels(self, segment: Segment) -> bool:
        piece = self._garment.piece[segment.piece]
        fabric = self._garment.fabric.get(piece.fabric or "")
        return (
            segment not in self._finished_by_name
            and piece.layer is Layer.SHELL
            and self._cloth.rings.name(segment) not in piece.selvage
            and (fabric is None or fabric.frays)
        )

    def _operation(self, entry: Entry, shape: Shape, ingredient: Ingredient) -> Operation:
        segments = shape.reached(ingredient.reach)
        if entry.into:
            segments = self._cloth.shapes[entry.into].run
        elif entry.closes:
            segments = self._cloth.shapes[entry.closes].run
        if ingredient.piece is not None:
            own = set(shape.run)
            held = dict.fromkeys((*segments, *shape.reached(Reach.BAG)))
            segments = tuple(s for s in held if s in own or s.piece == ingredient.piece)
        pieces = self._pieces(entry, segments, ingredient)
        return Operation(
            id=operation_id(entry.id, ingredient.part),
            entry=entry.id,
            part=ingredient.part,
            action=ingredient.action,
            setup=self._setup(entry, ingredient, pieces),
            minutes=entry.minutes if ingredient.part == MAIN else None,
            segments=segments,
            pieces=pieces,
            notions=_notions(entry),
            path=entry.path,
        )

    def _pieces(
        self, entry: Entry, segments: tuple[Segment, ...], ingredient: Ingredient
    ) -> frozenset[PieceId]:
        touched = {segment.piece for segment in segments}
        if ingredient.piece is not None:
            return frozenset(touched | {ingredient.piece})
        if ingredient.reach is Reach.PARTNER:
            is_welt = entry.verb is Verb.WELT_POCKET
            return frozenset(entry.pieces if is_welt or not entry.partners else entry.partners)
        if ingredient.reach is not Reach.RUN:
            return frozenset(touched)
        caught = {item.piece for item in entry.between if item.piece is not None}
        placed = {place.piece for place in entry.places}
        along = set() if entry.verb is Verb.SEW else set(entry.partners)
        return frozenset(entry.pieces) | along | touched | caught | placed

    def _setup(self, entry: Entry, ingredient: Ingredient, pieces: frozenset[PieceId]) -> Setup:
        is_main = ingredient.part == MAIN
        station = (entry.station if is_main else None) or ingredient.station
        is_tender = self._scorches(pieces) or self._is_of_a_tender_notion(entry, ingredient)
        if station == IRON and ingredient.action is not Action.FUSE and is_tender:
            station = TABLE
        foot = (entry.foot if is_main else None) or ingredient.foot
        if not foot and self._garment.station[station].foot_minutes:
            foot = STANDARD_FOOT
        thread, needle = self._own_thread(entry, ingredient)
        place = self._garment.station[station]
        return Setup(
            station,
            foot,
            thread if place.thread_minutes else "",
            needle if place.needle_minutes else "",
        )

    def _own_thread(self, entry: Entry, ingredient: Ingredient) -> tuple[str, str]:
        """The thread and the needle of an entry: for the rows that show, where it has any."""
        if not entry.thread and not entry.needle:
            return "", ""
        showing = {part.action for part in recipe_for(entry, self._garment)} & {Action.TOPSTITCH}
        if showing and ingredient.action not in showing:
            return "", ""
        return entry.thread or "", entry.needle or ""

    def _scorches(self, pieces: frozenset[PieceId]) -> bool:
        """Whether one of the pieces is of cloth that bears no iron."""
        cloths = (self._garment.fabric.get(self._garment.piece[p].fabric or "") for p in pieces)
        return any(cloth is not None and not cloth.is_ironed for cloth in cloths)

    def _is_of_a_tender_notion(self, entry: Entry, ingredient: Ingredient) -> bool:
        """Whether it is done with a notion that bears no iron.

        What is pressed before the notion is there may be pressed; the coils of a zip are bent.
        """
        if entry.verb is Verb.INSERT and ingredient.action is not Action.PRESS_COILS:
            return False
        return any(not self._garment.notion[notion].is_ironed for notion in _notions(entry))

    def _report(self, slug: str, target: EntryId, part: str, path: DocPath) -> None:
        recipe = recipe_for(self._cloth.shapes[target].entry, self._garment)
        parts = ", ".join(f"`{i.part}`" for i in recipe if i.part != MAIN)
        self.problems.append(
            Diagnostic(
                slug=RuleSlug(slug),
                severity=Severity.ERROR,
                message=say(f"shape-{slug}", entry=target, part=part),
                path=path,
                fix=say(f"shape-{slug}-fix", parts=parts) if parts else None,
            )
        )


def _notions(entry: Entry) -> tuple[NotionId, ...]:
    """The notions that an entry uses: its own, and those caught in its seam."""
    caught = (item.notion for item in entry.between)
    return tuple(dict.fromkeys(n for n in (entry.notion, *caught) if n is not None))
