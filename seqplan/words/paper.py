"""What stands on every handout, whatever it tells."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "paper-contents": "Contents",
    "paper-page": "Page {page} of {pages}",
    "paper-check-square": "Printed true to size, each side is as long as the square says.",
    "paper-check-cm": "2 cm",
    "paper-check-inch": "¾ in",
    "paper-picture": "Picture: {words}",
}
