"""What a garment file is made of before anybody asks what it means: nodes with their places.

Every scalar is kept as the text that was written. Nothing is turned into a number, a date or a yes
by its looks; the key that it stands under decides how it is read.
"""

from typing import NamedTuple, Protocol, TypeAlias

from seqplan.base.path import DocPath, Span

NODE_LIMIT = 100_000
"""A garment of a hundred operations has about a thousand nodes."""

DEPTH_LIMIT = 50
"""Nothing in the language lies deeper than five levels."""


class Placed(Protocol):
    """Anything that a finding can point at."""

    @property
    def span(self) -> Span:
        """Where it stands in the text."""

    @property
    def path(self) -> DocPath:
        """Where it stands in the document."""


class Spot(NamedTuple):
    """A bare place, for what is no node."""

    span: Span
    path: DocPath = ()


class Scalar(NamedTuple):
    """A piece of text; ``is_plain`` tells that it was written without quotes."""

    text: str
    span: Span
    path: DocPath
    is_plain: bool = True

    @property
    def is_empty(self) -> bool:
        """Whether nothing was written: a key with nothing after its colon."""
        return not self.text.strip()


class ListNode(NamedTuple):
    """A list, in brackets or with dashes."""

    items: tuple["Node", ...]
    span: Span
    path: DocPath
    is_bracketed: bool = True


class Pair(NamedTuple):
    """A key and its value; ``span`` is the place of the key."""

    key: str
    span: Span
    value: "Node"

    @property
    def path(self) -> DocPath:
        """The path of the value, which is what the key leads to."""
        return self.value.path

    @property
    def is_stray(self) -> bool:
        """Whether this is a key in braces that has not even a colon after it."""
        value = self.value
        if not isinstance(value, Scalar) or value.text or not value.is_plain:
            return False
        start, end = value.span, self.span
        return (start.line, start.column) == (end.end_line, end.end_column)


class MappingNode(NamedTuple):
    """Keys with values, in the order of the text; a key that stands twice is in here twice."""

    pairs: tuple[Pair, ...]
    span: Span
    path: DocPath

    def get(self, key: str) -> Pair | None:
        """The first pair with this key."""
        return next((pair for pair in self.pairs if pair.key == key), None)


Node: TypeAlias = Scalar | ListNode | MappingNode
