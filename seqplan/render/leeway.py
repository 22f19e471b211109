"""The leeway of operations as plain text: a table of all, or all about one."""

from collections.abc import Iterable, Iterator, Sequence
from textwrap import wrap

from seqplan.base.strength import Strength
from seqplan.base.visible import printable, screen_width, visible
from seqplan.explain.written import state
from seqplan.plan.leeway import Leeway, Leeways, Neighbour, Span
from seqplan.words.say import say

_WIDTH = 92
_LATE = 30
"""How wide the last column is at least."""


def list_leeways(garment: str, found: Leeways, *, asked_for_parts: bool) -> str:
    """Print a table: where each operation stands and can stand, and when it is too late.

    Parameters
    ----------
    garment
        Its name.
    found
        The leeway of its operations.
    asked_for_parts
        Whether single operations were asked for; else it is said why they are shown.
    """
    if not found.rows:
        return printable(say("leeway-no-operations", garment=garment) + "\n")
    kind = "entries" if found.is_of_entries else "parts"
    lines = [say(f"leeway-title-{kind}", garment=garment, places=found.places), ""]
    lines += [*_table(found.rows), ""]
    for text in _about(found, asked_for_parts=asked_for_parts):
        lines += wrap(text, _WIDTH)
    return printable("\n".join(lines) + "\n")


def tell_leeway(found: Leeways) -> str:
    """Print all about one operation: its places, what bounds them, and why."""
    (row,) = found.rows
    fixed = "-fixed" if row.span.slack == 0 else ""
    names = {"name": row.name, "written": row.written, "places": found.places}
    lines = wrap(say(f"leeway-at{fixed}", span=_span(row.span), **names), _WIDTH)
    if row.must != row.span:
        lines += wrap(say("leeway-at-must", span=_span(row.must)), _WIDTH)
    else:
        lines.append(say("leeway-at-all-must"))
    if not (row.span.is_proven and row.must.is_proven):
        lines += wrap(say("leeway-about-bound"), _WIDTH)
    if found.has_choices:
        lines += wrap(say("leeway-about-between"), _WIDTH)
    for side, neighbours in (("after", row.before), ("before", row.after)):
        lines += ["", *_bounds(side, neighbours)]
    if row.choices:
        lines += ["", say("leeway-choices")]
        for reason in row.choices:
            lines += [*_indented(reason.because, 2), *_indented(state(reason), 6)]
    return printable("\n".join(lines) + "\n")


def _table(rows: Sequence[Leeway]) -> Iterator[str]:
    heads = ("name", "written", "span", "slack", "must", "late")
    cells = [[say(f"leeway-head-{head}") for head in heads]]
    cells += [
        [
            visible(row.name),
            str(row.written),
            _span(row.span),
            str(row.span.slack),
            _span(row.must),
            _late(row),
        ]
        for row in rows
    ]
    *widths, _ = (max(map(screen_width, column)) for column in zip(*cells, strict=True))
    used = sum(widths) + 2 * len(widths)
    for row in cells:
        *first, last = row
        padded = (
            _padded(text, width, to_right=place > 0)
            for place, (text, width) in enumerate(zip(first, widths, strict=True))
        )
        lates = wrap(last, max(_LATE, _WIDTH - used), break_on_hyphens=False) or [""]
        yield "  ".join((*padded, lates[0])).rstrip()
        yield from (" " * used + late for late in lates[1:])


def _padded(text: str, width: int, *, to_right: bool) -> str:
    space = " " * (width - screen_width(text))
    return space + text if to_right else text + space


def _span(span: Span) -> str:
    key = "leeway-span" if span.slack else "leeway-fixed"
    text = say(key, earliest=span.earliest, latest=span.latest)
    return text if span.is_proven else say("leeway-bound", span=text)


def _late(row: Leeway) -> str:
    musts = [each.name for each in row.after if each.strength is Strength.MUST]
    shoulds = [each.name for each in row.after if each.strength is not Strength.MUST]
    texts = [", ".join(musts)] if musts else []
    texts += [say("leeway-better", names=", ".join(shoulds))] if shoulds else []
    return visible(" ".join(texts))


def _about(found: Leeways, *, asked_for_parts: bool) -> Iterator[str]:
    yield say("leeway-about-late")
    if found.is_of_entries:
        yield say("leeway-about-entries")
    elif not asked_for_parts:
        yield say("leeway-about-torn")
    yield say("leeway-about-each")
    if found.has_choices:
        yield say("leeway-about-between")
    if not all(row.span.is_proven and row.must.is_proven for row in found.rows):
        yield say("leeway-about-bound")


def _bounds(side: str, neighbours: Iterable[Neighbour]) -> Iterator[str]:
    musts = [each for each in neighbours if each.strength is Strength.MUST]
    shoulds = [each for each in neighbours if each.strength is not Strength.MUST]
    if musts:
        yield say(f"leeway-must-{side}")
        yield from _told(musts)
    else:
        yield say(f"leeway-free-{side}")
    if shoulds:
        yield say(f"leeway-should-{side}")
        yield from _told(shoulds)


def _told(neighbours: Iterable[Neighbour]) -> Iterator[str]:
    for name, _, reasons in neighbours:
        if reasons:
            yield "  " + say("leeway-neighbour", name=name, rule=reasons[0].rule)
            yield from _indented(reasons[0].because, 6)
        else:
            yield "  " + say("leeway-neighbour-choice", name=name)


def _indented(text: str, indent: int) -> list[str]:
    space = " " * indent
    return wrap(text, _WIDTH, initial_indent=space, subsequent_indent=space)
