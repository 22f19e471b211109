"""What an operation meets when it cannot be done."""

from typing import NamedTuple

from seqplan.base.ids import OpId
from seqplan.words.say import has, say


class Trouble(NamedTuple):
    """Why an operation cannot be done now.

    Parameters
    ----------
    op
        The operation that cannot be done.
    why
        Which sentence says why.
    blame
        An earlier operation that has made it impossible, if one did.
    missing
        A later operation that has to come first, if one has.
    instead
        Others that could come first in place of the one that is missing: one of all is enough.
    names
        Further names for the sentence.
    """

    op: OpId
    why: str
    blame: OpId | None = None
    missing: OpId | None = None
    instead: tuple[OpId, ...] = ()
    names: tuple[tuple[str, str], ...] = ()

    @property
    def wanted(self) -> tuple[OpId, ...]:
        """What could come first so that one thing less stands in the way."""
        return () if self.missing is None else (self.missing, *self.instead)


def tell_trouble(trouble: Trouble) -> str:
    """Say in one sentence why an operation cannot be done."""
    key = f"rehearse-{trouble.why}"
    if not has(key):
        key = "rehearse-too-late"
    names = dict(trouble.names)
    return say(key, op=trouble.op, blame=trouble.blame, missing=trouble.missing, **names)
