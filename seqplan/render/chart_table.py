"""Tables in the graph language, with cells of fixed size, so that no layout program measures text."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil

from seqplan.render.chart_look import LOOK
from seqplan.render.quoting import markup
from seqplan.render.textwidth import text_width


@dataclass(frozen=True, slots=True, kw_only=True)
class Lettering:
    """How a text is set: size in points, and face."""

    size: float = LOOK.text
    bold: bool = False

    def width(self, lines: Sequence[str]) -> int:
        """The room that lines of text take, with slack, in whole points."""
        widest = max((text_width(line, self.size, bold=self.bold) for line in lines), default=0)
        return ceil(widest + LOOK.slack)

    def height(self, lines: Sequence[str]) -> int:
        """The room from the top of the first line to the bottom of the last."""
        return ceil(len(lines) * self.size * LOOK.line) + 3


def text_cell(  # noqa: PLR0913 -- a cell has that many sides
    lines: Sequence[str],
    width: int,
    height: int,
    *,
    lettering: Lettering,
    align: str = "LEFT",
    extra: str = "",
) -> str:
    """A cell of fixed size with lines of text."""
    ended = "".join(f'{markup(line)}<BR ALIGN="{align}"/>' for line in lines)
    if len(lines) == 1:
        ended = markup(lines[0])
    inner = f"<B>{ended}</B>" if lettering.bold else ended
    if not any(lines):
        return gap_cell(width, height, extra=extra)
    return (
        f'<TD FIXEDSIZE="TRUE" WIDTH="{width}" HEIGHT="{height}" ALIGN="{align}"{extra}>'
        f'<FONT POINT-SIZE="{lettering.size:g}">{inner}</FONT></TD>'
    )


def gap_cell(width: int, height: int, *, extra: str = "") -> str:
    """An empty cell of fixed size."""
    return f'<TD FIXEDSIZE="TRUE" WIDTH="{width}" HEIGHT="{height}"{extra}></TD>'


def table_cell(table: str, width: int, height: int, *, extra: str = "") -> str:
    """A cell of fixed size that holds a table."""
    return f'<TD FIXEDSIZE="TRUE" WIDTH="{width}" HEIGHT="{height}"{extra}>{table}</TD>'


def table(rows: Sequence[Sequence[str]], *, extra: str = "") -> str:
    """A table without lines between its cells, from rows of cells."""
    made = "".join(f"<TR>{''.join(cells)}</TR>" for cells in rows)
    return f'<TABLE BORDER="0" CELLBORDER="0" CELLSPACING="0" CELLPADDING="0"{extra}>{made}</TABLE>'
