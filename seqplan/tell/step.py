"""Tell a step: every operation of it in plain sentences."""

from collections.abc import Callable, Collection, Iterator, Mapping
from itertools import takewhile
from typing import Final

from seqplan.base.ids import EntryId, OpId
from seqplan.model.entry import Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.station import HAND, IRON, STANDARD_FOOT, TABLE
from seqplan.plan.plan import Step
from seqplan.recipes.book import recipe_for
from seqplan.recipes.construction import Construction
from seqplan.recipes.recipe import MAIN
from seqplan.recipes.shape import JOINS
from seqplan.tell import bands, closures, folds, handling, pockets, seams, shaping, straps, tidying
from seqplan.tell.names import (
    as_clause,
    as_sentence,
    capital,
    listing,
    name_pieces,
    name_seam,
    readable,
)
from seqplan.tell.scene import Scene
from seqplan.tell.sentence import Sentence, Told
from seqplan.tell.setups import foot_name, needle_name, thread_name
from seqplan.words.say import say

Teller = Callable[[Scene], Told]

TELLERS: Final[Mapping[Action, Teller]] = {
    **seams.TELLERS,
    **tidying.TELLERS,
    **folds.TELLERS,
    **closures.TELLERS,
    **pockets.TELLERS,
    **shaping.TELLERS,
    **handling.TELLERS,
}
"""Who tells which action, whatever the verb."""

OF_VERB: Final[Mapping[Verb, Mapping[Action, Teller]]] = {
    **bands.OF_VERB,
    **straps.OF_VERB,
    **pockets.OF_VERB,
    **closures.OF_VERB,
    **handling.OF_VERB,
}
"""Who tells an action where the verb has sentences of its own for it."""


def teller_of(verb: Verb, action: Action) -> Teller:
    """Who tells an action of an entry with this verb.

    Raises
    ------
    KeyError
        When nobody does: a fault of the program.
    """
    own = OF_VERB.get(verb, {})
    return own[action] if action in own else TELLERS[action]


def tell_step(
    c: Construction, step: Step, before: Collection[OpId] | None = None
) -> tuple[Sentence, ...]:
    """Tell the operations of a step, each with one or more whole sentences.

    Parameters
    ----------
    c
        The garment.
    step
        The step.
    before
        The operations that are done before it; what the file lists before it where nobody says.
    """
    ids = [op.id for op in step.operations]
    if before is None:
        before = list(takewhile(lambda id_: id_ not in ids, c.ids))
    done = set(before)
    told = []
    for op in step.operations:
        told.append(tell_operation(c, op, done))
        done.add(op.id)
    return tuple(told)


def tell_operation(c: Construction, op: Operation, before: Collection[OpId]) -> Sentence:
    """Tell one operation.

    The author's ``say:`` stands in place of what the program would say of the operation that the
    entry is named after; the other parts of its recipe are told as usual.
    """
    scene = Scene(c, op, frozenset(before))
    foot = "" if op.setup.foot == STANDARD_FOOT else foot_name(op.setup.foot)
    own = scene.entry.say if op.part == MAIN else None
    if own:
        told = Told((as_sentence(own),))
    else:
        told = teller_of(scene.entry.verb, op.action)(scene)
        kept = _kept_clear(scene)
        texts = (*kept, *told.texts, *_still_open(scene), *_place(scene))
        told = Told(texts, told.check)
    return Sentence(
        operation=op.id,
        station=op.setup.station,
        foot=foot,
        texts=told.texts,
        check=told.check,
    )


def _kept_clear(scene: Scene) -> tuple[str, ...]:
    """What is folded away first, so that the needle does not catch it."""
    layers = (scene.entry.keep_clear or scene.hanging_on) if scene.op.part == MAIN else ()
    if not layers:
        return ()
    return (say("step-keep-clear", pieces=name_pieces(scene.garment, layers)),)


def _still_open(scene: Scene) -> tuple[str, ...]:
    """The seams across a run that goes all round in the end, and that are not sewn by now."""
    if scene.op.part != MAIN or scene.entry.verb not in JOINS:
        return ()
    seams = [name_seam(scene.garment, entry) for entry in scene.left_open]
    if not seams:
        return ()
    named = listing(say("step-the", name=seam) for seam in dict.fromkeys(seams))
    return (say("step-still-open", seams=named),)


def heading(c: Construction, step: Step, *, is_continued: bool = False) -> str:
    """The heading of a step: the title of its entry."""
    title = title_of(c, step.entry)
    return say("step-heading-continued", title=title) if is_continued else title


def title_of(c: Construction, entry: EntryId) -> str:
    """The author's title of an entry, else its name."""
    title = c.garment.entry[entry].title or ""
    return " ".join(title.split()) or capital(readable(entry))


def _thread(scene: Scene) -> Iterator[str]:
    """The thread, the needle and the stitch where they are not the usual ones."""
    setup, entry = scene.op.setup, scene.entry
    is_main = scene.op.part == MAIN
    if entry.thread and (setup.thread or (is_main and setup.station == HAND)):
        yield say("step-thread", thread=thread_name(entry.thread))
    if setup.needle:
        yield say("step-needle", needle=needle_name(setup.needle))
    if entry.setting and is_main:
        yield say("step-stitch-set", stitch=as_clause(entry.setting))


def _place(scene: Scene) -> list[str]:
    """Thread, needle and stitch where they are not usual, the station where it was changed."""
    texts = list(_thread(scene))
    recipe = recipe_for(scene.entry, scene.garment)
    usual = {ingredient.part: ingredient.station for ingredient in recipe}
    station = scene.op.setup.station
    if usual[scene.op.part] == IRON and station == TABLE:
        texts.append(say("step-finger-press"))
    return texts
