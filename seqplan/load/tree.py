"""Text to a tree of nodes with places, in one pass over the parser's events.

1. Every event is looked at before anything is built from it, so an anchor, an alias or a tag is
   refused on sight and nothing is ever copied or expanded.
2. What is open (a list, a mapping) lies on a stack of our own: depth costs no recursion.
3. Nodes and depth are counted; past the limits reading stops at that place.

Nothing else in the program knows YAML.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any
from unicodedata import normalize

import yaml

from seqplan.base.diagnostic import Note
from seqplan.base.path import DocPath, Span
from seqplan.load.nodes import (
    DEPTH_LIMIT,
    NODE_LIMIT,
    ListNode,
    MappingNode,
    Node,
    Pair,
    Scalar,
    Spot,
)
from seqplan.load.sink import Sink, quoted
from seqplan.load.text import character_code, first_unseen, lines_of
from seqplan.words.say import say

if TYPE_CHECKING:
    from seqplan.load.slip import Complaint, Repair

_LOADER: Any = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
_MERGE = "<<"
_SPACES = dict.fromkeys((0xA0, 0x1680, *range(0x2000, 0x200B), 0x202F, 0x205F, 0x3000), " ")
"""Spaces of other widths, which get into a text by copying, or by a slip on some keyboards."""


class _TooMuchError(Exception):
    """Stops the reading at a limit; the fault is reported already."""


@dataclass(slots=True)
class _Open:
    """A list or mapping whose end has not been seen yet."""

    path: DocPath
    start: Any
    is_mapping: bool
    is_bracketed: bool
    items: list[Node] = field(default_factory=list)
    pairs: list[Pair] = field(default_factory=list)
    key: tuple[str | None, Span] | None = None
    first: dict[str, Span] = field(default_factory=dict)

    @property
    def wants_key(self) -> bool:
        return self.is_mapping and self.key is None

    @property
    def child_path(self) -> DocPath:
        if not self.is_mapping:
            return (*self.path, len(self.items))
        key = self.key[0] if self.key else None
        return self.path if key is None else (*self.path, key)


def read_tree(text: str, sink: Sink) -> Node | None:
    """Read a text; ``None`` where it is empty or cannot be taken apart.

    Where a sign was forgotten, the text is read on as it was meant, so that all else is told, too.
    """
    text = _spaced(text)
    told = sink.count
    try:
        return _build(text, sink)
    except yaml.MarkedYAMLError as error:
        sink.forget(told)
        return _read_mended(lines_of(text), _complaint(error), sink)
    except (yaml.YAMLError, RecursionError) as error:
        spot = Spot(Span(1, 1, 1, 2))
        sink.error("unreadable-text", spot, problem=quoted(str(error)).strip("`"))
        return None


def _build(text: str, sink: Sink, repairs: Sequence[Repair] = ()) -> Node | None:
    """Build the tree of a text, with places as they were before it was repaired."""
    builder = _Builder(sink, repairs)
    try:
        for event in yaml.parse(text, Loader=_LOADER):
            builder.take(event)
    except _TooMuchError:
        return None
    return builder.root


def _read_mended(lines: list[str], complaint: Complaint, sink: Sink) -> Node | None:
    """Put one slip right after the other, report each, and read what comes of it."""
    from seqplan.load.syntax import find_slips, report_complaint, report_repair

    mended, repairs, left = find_slips(lines, complaint, _try)
    for repair in repairs:
        report_repair(repair, lines, sink)
    if left is not None:
        report_complaint(left, mended, sink)
        return None
    return _build("\n".join(mended), sink, repairs)


def _try(lines: list[str]) -> Complaint | None:
    """What the parser complains of, if it does."""
    try:
        for _ in yaml.parse("\n".join(lines), Loader=_LOADER):
            pass
    except yaml.MarkedYAMLError as error:
        return _complaint(error)
    return None


def _spaced(text: str) -> str:
    """Spaces of any width as plain ones, which they look like."""
    return text if text.isascii() else text.translate(_SPACES)


def _complaint(error: yaml.MarkedYAMLError) -> Complaint:
    from seqplan.load.slip import Complaint

    mark, opened = error.problem_mark, error.context_mark
    return Complaint(
        problem=error.problem or "",
        context=error.context or "",
        line=mark.line + 1 if mark else 1,
        column=mark.column + 1 if mark else 1,
        opened=(opened.line + 1, opened.column + 1) if opened else None,
    )


class _Builder:
    """Takes events one by one and keeps what is open."""

    def __init__(self, sink: Sink, repairs: Sequence[Repair] = ()) -> None:
        self.root: Node | None = None
        self._sink = sink
        self._repairs = repairs
        self._open: list[_Open] = []
        self._documents = 0
        self._nodes = 0

    def take(self, event: Any) -> None:
        """Look at one event."""
        span = self._span(event.start_mark, event.end_mark)
        if isinstance(event, yaml.ScalarEvent):
            self._count(span)
            self._refuse(event, span)
            self._scalar(event, span)
        elif isinstance(event, yaml.CollectionStartEvent):
            self._count(span)
            self._refuse(event, span)
            self._start(event, span)
        elif isinstance(event, yaml.CollectionEndEvent):
            self._end(event)
        elif isinstance(event, yaml.AliasEvent):
            self._count(span)
            self._sink.error("alias", Spot(span, self._path), name=quoted(f"*{event.anchor}"))
            self._sink.mute(Spot(span))
            self._place(Scalar("", span, self._path), span)
        elif isinstance(event, yaml.DocumentStartEvent):
            self._document(span)

    def _span(self, start: Any, end: Any) -> Span:
        span = Span(start.line + 1, start.column + 1, end.line + 1, end.column + 1)
        if not self._repairs:
            return span
        first = _column_before(span.line, span.column, self._repairs)
        last = _column_before(span.end_line, span.end_column, self._repairs)
        return Span(span.line, first, span.end_line, last)

    @property
    def _path(self) -> DocPath:
        return self._open[-1].child_path if self._open else ()

    def _document(self, span: Span) -> None:
        self._documents += 1
        if self._documents > 1:
            self._sink.error("second-document", Spot(span))
            raise _TooMuchError

    def _count(self, span: Span) -> None:
        self._nodes += 1
        if self._nodes > NODE_LIMIT:
            self._sink.error("too-many-values", Spot(span, self._path), limit=NODE_LIMIT)
            raise _TooMuchError

    def _refuse(self, event: Any, span: Span) -> None:
        """Report anchors and tags; the value itself is read all the same."""
        if event.anchor is None and event.tag is None:
            return
        at = Spot(Span(span.line, span.column, span.line, span.column + 1), self._path)
        if event.anchor is not None:
            self._sink.error("anchor", at, name=quoted(f"&{event.anchor}"))
        if event.tag is not None:
            self._sink.error("tag", at, name=quoted(str(event.tag)))

    def _scalar(self, event: Any, span: Span) -> None:
        is_plain = not event.style
        text: str = event.value
        unseen = first_unseen(text) if event.style == '"' else None
        if unseen is not None:
            at = Spot(span, self._path)
            self._sink.error("control-character", at, code=character_code(unseen))
            text = text.replace(unseen, " ")
        if self._open and self._open[-1].wants_key:
            self._key(text, span, is_plain)
        else:
            self._place(Scalar(text, span, self._path, is_plain), span)

    def _key(self, text: str, span: Span, is_plain: bool) -> None:
        if is_plain and text == _MERGE:
            self._sink.error("merge-key", Spot(span, self._path))
            self._open[-1].key = (None, span)
        else:
            self._open[-1].key = (normalize("NFC", " ".join(text.split())), span)

    def _start(self, event: Any, span: Span) -> None:
        if len(self._open) >= DEPTH_LIMIT:
            self._sink.error("too-deep", Spot(span, self._path), limit=DEPTH_LIMIT)
            raise _TooMuchError
        is_mapping = isinstance(event, yaml.MappingStartEvent)
        self._open.append(_Open(self._path, event.start_mark, is_mapping, bool(event.flow_style)))

    def _end(self, event: Any) -> None:
        done = self._open.pop()
        span = self._span(done.start, event.end_mark)
        if done.is_mapping:
            self._place(MappingNode(tuple(done.pairs), span, done.path), span)
        else:
            self._place(ListNode(tuple(done.items), span, done.path, done.is_bracketed), span)

    def _place(self, node: Node, span: Span) -> None:
        """Put a finished node where it belongs: into what is open, or at the top."""
        if not self._open:
            self.root = node
            return
        parent = self._open[-1]
        if not parent.is_mapping:
            parent.items.append(node)
        elif parent.key is None:
            self._sink.error("key-not-text", Spot(span, parent.path))
            parent.key = (None, span)
        else:
            key, key_span = parent.key
            parent.key = None
            if key is not None:
                self._pair(parent, Pair(key, key_span, node))

    def _pair(self, parent: _Open, pair: Pair) -> None:
        first = parent.first.get(pair.key)
        if first is None:
            parent.first[pair.key] = pair.span
        else:
            note = Note(say("note-first-here", name=quoted(pair.key)), pair.path, first)
            self._sink.error("duplicate-key", pair, notes=(note,), name=quoted(pair.key))
        parent.pairs.append(pair)


def _column_before(line: int, column: int, repairs: Sequence[Repair]) -> int:
    """Where a column stood before its line was repaired."""
    for repair in reversed(repairs):
        if repair.number == line and column > repair.column:
            column = max(repair.column, column - repair.shift)
    return column
