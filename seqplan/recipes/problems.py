"""What cannot be laid out on the cloth, each thing told once."""

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import RuleSlug
from seqplan.model.entry import Entry
from seqplan.words.say import say


class Problems:
    """Collects findings about entries; the sentence of one is ``shape-<slug>``."""

    def __init__(self) -> None:
        self._found: dict[Diagnostic, None] = {}

    @property
    def found(self) -> tuple[Diagnostic, ...]:
        """What was collected so far."""
        return tuple(self._found)

    def report(
        self,
        slug: str,
        entry: Entry,
        *,
        severity: Severity = Severity.ERROR,
        **names: object,
    ) -> None:
        """Report a fault of an entry, unless it is reported already."""
        found = Diagnostic(
            slug=RuleSlug(slug),
            severity=severity,
            message=say(f"shape-{slug}", entry=entry.id, **names),
            path=entry.path,
            fix=say(f"shape-{slug}-fix", entry=entry.id, **names),
        )
        self._found.setdefault(found)
