"""Where readers put what they find wrong. Reading goes on after a fault, so all of them show."""

from collections.abc import Collection, Iterable, Sequence
from itertools import islice

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import RuleSlug
from seqplan.base.path import Span
from seqplan.load.nearest import folded, nearest
from seqplan.load.nodes import ListNode, MappingNode, Node, Placed
from seqplan.words.say import has, say

# A hostile file can hold many thousand wrong names; looking for close matches is slow.
_MOST_COMPARISONS = 20_000
_MOST_CANDIDATES = 400
_MOST_LISTED = 12
MOST_FOUND = 1000
"""Findings of one file; nobody reads on after so many."""

_MOST_QUOTED = 60


class Sink:
    """Collects diagnostics.

    The sentence of a fault is ``fault-<words>`` in the catalogue, its repair ``fix-<words>`` if
    there is one; ``words`` is the slug unless a fault has more than one wording.
    """

    def __init__(self) -> None:
        self._found: list[Diagnostic] = []
        self._comparisons = 0
        self._muted: set[Span] = set()
        self._cut_short: set[Severity] = set()
        self._told: dict[tuple[str, str], int] = {}
        self._again: dict[int, list[int]] = {}

    @property
    def found(self) -> tuple[Diagnostic, ...]:
        """What was collected so far, in the order of reading."""
        found = list(self._found)
        for place, lines in self._again.items():
            item = found[place]
            others = [line for line in dict.fromkeys(lines) if item.span and line != item.span.line]
            if others:
                words = "note-also-there" if len(others) == 1 else "note-also-there-lines"
                note = Note(say(words, lines=_numbers(others)))
                found[place] = item._replace(notes=(*item.notes, note))
        return tuple(found)

    @property
    def has_errors(self) -> bool:
        """Whether anything collected is an error."""
        return any(item.severity is Severity.ERROR for item in self._found)

    @property
    def count(self) -> int:
        """How much was collected so far."""
        return len(self._found)

    def forget(self, count: int) -> None:
        """Drop all but the first ``count`` findings, because what they are about is read again."""
        del self._found[count:]

    def error(self, slug: str, at: Placed, *, words: str | None = None, **values: object) -> None:
        """Report an error. A ``fix`` among the values replaces the usual; ``notes`` are a tuple."""
        self._add(Severity.ERROR, slug, at, words or slug, values)

    def warning(self, slug: str, at: Placed, *, words: str | None = None, **values: object) -> None:
        """Report a warning, in the same way."""
        self._add(Severity.WARNING, slug, at, words or slug, values)

    def error_once(self, slug: str, name: str, at: Placed, *, fix: str | None) -> None:
        """Report an error about a name; where it was reported already, only add the line."""
        first = self._told.get((slug, name))
        if first is not None:
            self._again.setdefault(first, []).append(at.span.line)
            return
        count = len(self._found)
        self.error(slug, at, name=quoted(name), fix=fix)
        if len(self._found) > count:
            self._told[slug, name] = count

    def mute(self, at: Placed) -> None:
        """Say no more about this place: what stood there was refused and nobody knows it."""
        self._muted.add(at.span)

    def suggest(self, name: str, known: Collection[str], otherwise: str) -> str | None:
        """Make a sentence that offers known names close to ``name``.

        Where none is close, the first of them are listed; where there is none at all,
        ``otherwise`` names the sentence to use.
        """
        if not known:
            return say(otherwise) if otherwise else None
        return self.offer(name, known) or say("fix-known-names", names=listing(known))

    def offer(self, name: str, known: Collection[str]) -> str | None:
        """Make a sentence that offers known names close to ``name``, if there are any."""
        return self.offer_of(self.close(name, known))

    def offer_of(self, close: Sequence[str]) -> str | None:
        """Make a sentence that offers one or two names."""
        if len(close) == 2:
            return say("fix-did-you-mean-either", one=quoted(close[0]), two=quoted(close[1]))
        return say("fix-did-you-mean", name=quoted(close[0])) if close else None

    def meant(self, name: str, known: Collection[str]) -> list[str]:
        """Give the close names, or the word of the language for a word that people use for it."""
        close = self.close(name, known)
        if close:
            return close
        from seqplan.load.other_words import OTHER_WORDS

        return [word for word in OTHER_WORDS.get(folded(name), ()) if word in known][:2]

    def close(self, name: str, known: Collection[str]) -> list[str]:
        """Give the known names that ``name`` is probably meant for, at most two."""
        candidates = list(islice(known, _MOST_CANDIDATES))
        self._comparisons += len(candidates)
        if self._comparisons > _MOST_COMPARISONS or len(name) > _MOST_QUOTED:
            return []
        return nearest(name, candidates)

    def _add(
        self, severity: Severity, slug: str, at: Placed, words: str, values: dict[str, object]
    ) -> None:
        if at.span in self._muted or severity in self._cut_short:
            return
        if len(self._found) >= MOST_FOUND:
            self._cut_short.add(severity)
            slug, words, values = "more-findings", "more-findings", {"limit": MOST_FOUND}
        fix = values.pop("fix", None)
        notes = values.pop("notes", None)
        if fix is None and has(f"fix-{words}"):
            fix = say(f"fix-{words}", **values)
        self._found.append(
            Diagnostic(
                slug=RuleSlug(slug),
                severity=severity,
                message=say(f"fault-{words}", **values),
                path=at.path,
                span=at.span,
                notes=notes if isinstance(notes, tuple) else (),
                fix=fix if isinstance(fix, str) else None,
            )
        )


def quoted(text: str) -> str:
    """Put a text from the file into backticks, shortened if it is long."""
    flat = " ".join(text.split())
    flat = flat if len(flat) <= _MOST_QUOTED else flat[: _MOST_QUOTED - 1] + "…"
    return f"`{flat}`"


def listing(names: Iterable[str]) -> str:
    """List names in backticks, the first dozen of them."""
    first = list(islice(names, _MOST_LISTED + 1))
    shown = ", ".join(quoted(name) for name in first[:_MOST_LISTED])
    return shown + (", …" if len(first) > _MOST_LISTED else "")


def _numbers(lines: list[int]) -> str:
    """List line numbers, the first dozen of them."""
    shown = ", ".join(str(line) for line in lines[:_MOST_LISTED])
    return shown + (", …" if len(lines) > _MOST_LISTED else "")


def found_instead(node: Node) -> str:
    """Say what stands there, for messages of the form expected, found."""
    if isinstance(node, ListNode):
        return say("found-list")
    if isinstance(node, MappingNode):
        return say("found-mapping")
    return quoted(node.text) if not node.is_empty else say("found-nothing")
