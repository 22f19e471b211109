"""Tables in the graph language; cells have fixed sizes, so no layout program measures text."""

from collections.abc import Iterable, Sequence

from seqplan.render.chart_look import Lettering
from seqplan.render.quoting import markup


def text_cell(
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


def table(rows: Iterable[Iterable[str]], *, border: int = 0, extra: str = "") -> str:
    """A table without lines between its cells, from rows of cells."""
    made = "".join(f"<TR>{''.join(cells)}</TR>" for cells in rows)
    plain = 'CELLBORDER="0" CELLSPACING="0" CELLPADDING="0"'
    return f'<TABLE BORDER="{border}" {plain}{extra}>{made}</TABLE>'
