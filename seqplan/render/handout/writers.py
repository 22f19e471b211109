"""Every format of a handout by the suffix of its file; a writer is imported when asked for."""

from collections.abc import Callable
from typing import Final

from seqplan.paper.blocks import Document
from seqplan.render.handout.paper import Paper

Writer = Callable[[Document, Paper], bytes]

SUFFIXES: Final = (".html", ".pdf", ".md")


def writer(suffix: str) -> Writer:
    """The writer of a format.

    Raises
    ------
    KeyError
        When no format has this suffix.
    """
    return {".html": _html, ".pdf": _pdf, ".md": _markdown}[suffix]


def _html(document: Document, paper: Paper) -> bytes:
    from seqplan.render.handout.html import html

    return html(document, paper).encode("utf-8")


def _pdf(document: Document, paper: Paper) -> bytes:
    from seqplan.render.handout.pdf import pdf

    return pdf(document, paper)


def _markdown(document: Document, paper: Paper) -> bytes:
    from seqplan.render.handout.markdown import markdown

    return markdown(document).encode("utf-8")
