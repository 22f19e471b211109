"""What an audit is, and how it tells what it found."""

from collections.abc import Callable, Iterable, Iterator
from typing import NamedTuple

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import RuleSlug
from seqplan.base.path import DocPath
from seqplan.explain.audit.ledger import Ledger
from seqplan.words.say import has, say

Found = Iterator[Diagnostic]
"""What an audit finds in a garment."""


class Audit(NamedTuple):
    """One thing that may be lacking when everything that is written has been done.

    Rules order operations that are there. An audit asks for those that are not.

    Parameters
    ----------
    slug
        Its name, which says what is wrong.
    find
        Finds it in a garment. Its docstring is what people read: a sentence that says what is
        wanted, then when the audit stays quiet.
    severity
        Error where the garment cannot be made, hint where orders in print leave it so, too.
    """

    slug: RuleSlug
    find: Callable[[Ledger], Found]
    severity: Severity = Severity.WARNING

    @property
    def headline(self) -> str:
        """What is wanted, as one sentence."""
        return (self.find.__doc__ or "").strip().splitlines()[0]


def told(
    slug: str,
    path: DocPath,
    *,
    severity: Severity = Severity.WARNING,
    words: str = "",
    fix: str = "",
    **names: object,
) -> Diagnostic:
    """Tell a finding in the sentences ``check-<slug>``, ``check-<slug>-fix`` and ``-why``.

    Parameters
    ----------
    slug
        The name of the audit.
    path
        Where in the document.
    severity
        How bad it is.
    words
        The key of another sentence that says what is wrong.
    fix
        The key of another sentence that says what would put it right.
    names
        What goes into the sentences.
    """
    why = f"check-{slug}-why"
    return Diagnostic(
        slug=RuleSlug(slug),
        severity=severity,
        message=say(words or f"check-{slug}", **names),
        path=path,
        notes=(Note(say(why, **names)),) if has(why) else (),
        fix=say(fix or f"check-{slug}-fix", **names),
    )


def quoted(names: Iterable[object]) -> str:
    """List names in backticks for a sentence, each once."""
    return ", ".join(f"`{name}`" for name in dict.fromkeys(map(str, names)))
