"""The page of published orders, made from the data of their tests."""

from collections.abc import Iterator

from .printed import Departure, Printed, Rejected, findings, printed_orders, rejected_orders

_INTRO = """\
# Published orders

Made from the data of the tests by `python -m tests.tools.make_docs`.

A rule that a published, working order breaks is not a must. So orders in print are kept as
garments under `tests/rules/published/`, step by step as they were printed, and have to check
without an error, and without a warning but for the departures that are listed here. The words are
ours; facts and order are the sources'. Below stand orders that have to be rejected."""

_UNKNOWN = "not named"


def published_page() -> str:
    """All printed orders and all orders that are rejected."""
    orders = printed_orders()
    second = [case for case in rejected_orders() if case.is_accepted]
    lines = [
        _INTRO,
        "",
        "| order | garment | source | verdict |",
        "|---|---|---|---|",
        *(_order_row(printed) for printed in orders),
        "",
        "## What was added, and where a source departs",
        "",
        *(line for printed in orders for line in _order_notes(printed, second)),
        "## Orders that must be rejected",
        "",
        "Each changes one of the garments above, or one that is shipped.",
        "",
        "| case | what is wrong | garment | verdict | named by |",
        "|---|---|---|---|---|",
        *(_rejected_row(case) for case in rejected_orders() if not case.is_accepted),
    ]
    return "\n".join(lines) + "\n"


def _order_row(printed: Printed) -> str:
    link = f"[{printed.order}](../tests/rules/published/{printed.path.name})"
    where = f"{printed.source.strip()}; {_imprint(printed)}"
    return f"| {link} | {printed.garment} | {where} | {_verdict(printed)} |"


def _imprint(printed: Printed) -> str:
    """Who published it, and when."""
    if _UNKNOWN in {printed.publisher, printed.year}:
        known = printed.publisher if printed.publisher != _UNKNOWN else ""
        return f"{known}, year not named" if known else "publisher and year not named"
    return f"{printed.publisher}, {printed.year}"


def _verdict(printed: Printed) -> str:
    found = [finding.severity.value for finding in findings(printed.path)]
    if "error" in found:
        return "rejected"
    return f"accepted, {_count(len(found))}" if found else "accepted"


def _count(warnings: int) -> str:
    return "one warning" if warnings == 1 else f"{warnings} warnings"


def _order_notes(printed: Printed, second: list[Rejected]) -> Iterator[str]:
    yield f"**{printed.order}.** As printed: {printed.extent}. Added: {printed.added.strip()}."
    yield ""
    for departure in printed.departs:
        yield _departure(departure)
        yield ""
    for case in second:
        if case.garment == printed.path.stem:
            yield f"- Accepted as well: {case.name}."
            yield ""


def _departure(departure: Departure) -> str:
    return (
        f"- Departs from `{departure.rule}`: `{departure.early}` comes before `{departure.late}`,"
        f" since {departure.why.strip()}."
    )


def _rejected_row(case: Rejected) -> str:
    named = f"`{case.by}`" if case.by else case.why.strip()
    garment = f"`{case.path.name}`"
    return f"| {case.case} | {case.name} | {garment} | {case.verdict} | {named} |"
