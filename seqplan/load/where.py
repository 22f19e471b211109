"""From a path in the document to a place in the text."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import NamedTuple

from seqplan.base.diagnostic import Diagnostic, Note, diagnostic_order
from seqplan.base.path import DocPath, Span
from seqplan.load.nodes import ListNode, MappingNode, Node, Scalar


class Place(NamedTuple):
    """Where something stands: its value, and its key if it has one."""

    value: Span
    key: Span | None = None
    is_text: bool = True


_TOP = Place(Span(1, 1, 1, 1))


@dataclass(frozen=True)
class Where:
    """The places of everything in one file; they are looked up when somebody first asks.

    Parameters
    ----------
    root
        The tree of the file, ``None`` for one that could not be read.
    """

    root: Node | None = None

    @cached_property
    def places(self) -> Mapping[DocPath, Place]:
        """The place of every node; of keys that stand twice, the first counts."""
        places: dict[DocPath, Place] = {}
        if self.root is not None:
            for path, place in _places(self.root):
                places.setdefault(path, place)
        return places

    def span(self, path: DocPath) -> Span:
        """Where to point for a path: at the value where it is a text deep inside, else at the key.

        A path that the file does not have is placed at the nearest thing above it.
        """
        place = self._nearest(path)
        if place.key is None or (place.is_text and len(path) > 2):
            return place.value
        return place.key

    def key(self, path: DocPath) -> Span:
        """The place of the key, or of the value where there is no key."""
        place = self._nearest(path)
        return place.key or place.value

    def value(self, path: DocPath) -> Span:
        """The place of the value."""
        return self._nearest(path).value

    def _nearest(self, path: DocPath) -> Place:
        for length in range(len(path), 0, -1):
            place = self.places.get(path[:length])
            if place is not None:
                return place
        return _TOP


def _places(root: Node) -> Iterator[tuple[DocPath, Place]]:
    waiting: list[tuple[Node, Span | None]] = [(root, None)]
    while waiting:
        node, key = waiting.pop()
        if node.path:
            yield node.path, Place(node.span, key, isinstance(node, Scalar))
        if isinstance(node, MappingNode):
            waiting.extend((pair.value, pair.span) for pair in reversed(node.pairs))
        elif isinstance(node, ListNode):
            waiting.extend((item, None) for item in reversed(node.items))


def place(diagnostics: Iterable[Diagnostic], where: Where) -> tuple[Diagnostic, ...]:
    """Fill in the places of findings that have only a path, and sort them as they are printed."""
    placed = (_placed(item, where) for item in diagnostics)
    return tuple(sorted(placed, key=diagnostic_order))


def _placed(item: Diagnostic, where: Where) -> Diagnostic:
    notes = tuple(_placed_note(note, where) for note in item.notes)
    return item._replace(span=item.span or where.span(item.path), notes=notes)


def _placed_note(note: Note, where: Where) -> Note:
    if note.span is not None or note.path is None:
        return note
    return note._replace(span=where.span(note.path))
