"""Where readers put what they find wrong. Reading goes on after a fault, so all of them show."""

from collections.abc import Collection, Iterable
from itertools import islice
from unicodedata import combining, normalize

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import RuleSlug
from seqplan.base.path import Span
from seqplan.load.nodes import ListNode, MappingNode, Node, Placed
from seqplan.words.say import has, say

# A hostile file can hold many thousand wrong names; looking for close matches is slow.
_MOST_COMPARISONS = 40_000
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

    @property
    def found(self) -> tuple[Diagnostic, ...]:
        """What was collected so far, in the order of reading."""
        return tuple(self._found)

    @property
    def has_errors(self) -> bool:
        """Whether anything collected is an error."""
        return any(item.severity is Severity.ERROR for item in self._found)

    def error(self, slug: str, at: Placed, *, words: str | None = None, **values: object) -> None:
        """Report an error. A ``fix`` among the values replaces the usual; ``notes`` are a tuple."""
        self._add(Severity.ERROR, slug, at, words or slug, values)

    def warning(self, slug: str, at: Placed, *, words: str | None = None, **values: object) -> None:
        """Report a warning, in the same way."""
        self._add(Severity.WARNING, slug, at, words or slug, values)

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
        close = self._close(name, list(islice(known, _MOST_CANDIDATES)))
        if len(close) == 2:
            return say("fix-did-you-mean-either", one=quoted(close[0]), two=quoted(close[1]))
        return say("fix-did-you-mean", name=quoted(close[0])) if close else None

    def _close(self, name: str, candidates: list[str]) -> list[str]:
        self._comparisons += len(candidates)
        if self._comparisons > _MOST_COMPARISONS:
            return []
        from difflib import get_close_matches

        same = [item for item in candidates if folded(item) == folded(name)]
        return same[:2] or get_close_matches(name[:_MOST_QUOTED], candidates, n=2)

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


def folded(name: str) -> str:
    """Give a name without case and accents, to tell names that people would mix up.

    >>> folded("Été") == folded("ete")
    True
    """
    letters = normalize("NFKD", name)
    return normalize("NFKC", "".join(mark for mark in letters if not combining(mark)).casefold())


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


def found_instead(node: Node) -> str:
    """Say what stands there, for messages of the form expected, found."""
    if isinstance(node, ListNode):
        return say("found-list")
    if isinstance(node, MappingNode):
        return say("found-mapping")
    return quoted(node.text) if not node.is_empty else say("found-nothing")
