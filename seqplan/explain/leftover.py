"""What is lacking when everything that is written has been done, and what is told in free words."""

from collections.abc import Iterable, Iterator

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import RuleSlug
from seqplan.explain.audit.book import AUDITS
from seqplan.explain.audit.ledger import Ledger
from seqplan.explain.reading.text import texts_of
from seqplan.model.entry import Verb
from seqplan.model.garment import Garment
from seqplan.recipes.construction import Construction
from seqplan.words.say import say


def check_leftovers(c: Construction, offered: Garment | None = None) -> tuple[Diagnostic, ...]:
    """Hold every audit over the finished garment, and say once how much is told in free words.

    Parameters
    ----------
    c
        The garment on the cloth.
    offered
        The garment with all that its choices offer: what another choice brings is not lacking.
    """
    ledger = Ledger(c, offered)
    lacking = (found for audit in AUDITS for found in audit.find(ledger))
    return (*lacking, *_free_words(c), *_read(c.garment, offered))


def _free_words(c: Construction) -> Iterator[Diagnostic]:
    """Say once how much of the garment is told in free words."""
    free = [e for e in c.garment.entries if e.verb is Verb.DO and not e.run]
    if free:
        yield Diagnostic(
            slug=RuleSlug("free-words"),
            severity=Severity.HINT,
            message=say("check-free-words", count=len(free)),
            path=free[0].path,
            notes=(Note(say("check-free-words-why")),),
        )


def _read(garment: Garment, offered: Garment | None) -> Iterable[Diagnostic]:
    """Read the author's own words; where there are none, nothing is imported for it."""
    texts = texts_of(garment)
    if not texts:
        return ()
    from seqplan.explain.reading.check import check_texts

    return check_texts(garment, texts, offered)
