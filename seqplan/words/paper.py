"""What stands on every handout, whatever it tells."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "paper-contents": "Contents",
    "paper-page": "Page {page} of {pages}",
    "paper-check-square": "Check square: outer marks 5 cm, inner marks 2 in",
    "paper-picture": "Picture: {words}",
}
