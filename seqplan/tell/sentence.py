"""What one operation is told with."""

from dataclasses import dataclass

from seqplan.base.ids import OpId


@dataclass(frozen=True, slots=True, kw_only=True)
class Sentence:
    """What to do in one operation.

    Parameters
    ----------
    operation
        The operation that is told.
    station, foot
        Where it is done, and the presser foot where it is not the standard one (else empty).
    texts
        What to do, in whole sentences, in the order in which it is done.
    check
        What to look at when it is done, a clause that follows "Check:"; may be empty.
    """

    operation: OpId
    station: str
    foot: str = ""
    texts: tuple[str, ...]
    check: str = ""

    @property
    def text(self) -> str:
        """All that is to be done, in one paragraph."""
        return " ".join(self.texts)


@dataclass(frozen=True, slots=True)
class Told:
    """What a teller gives back: whole sentences, and what to check."""

    texts: tuple[str, ...]
    check: str = ""


@dataclass(frozen=True, slots=True)
class Term:
    """A word of the trade and what it means."""

    name: str
    meaning: str
