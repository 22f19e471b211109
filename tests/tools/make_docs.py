"""Make the parts of the docs that come from the code.

``python -m tests.tools.make_docs`` writes them; with ``--check`` it only compares and ends with 1
where something is out of date. It keeps the translations in step, too.
"""

import inspect
import sys
from collections.abc import Iterator
from pathlib import Path

from seqplan.explain.audit.audit import Audit
from seqplan.explain.audit.book import AUDITS
from seqplan.graph.reason import ReasonKind
from seqplan.load.keys import KEYS, Key, Section
from seqplan.rules.book import RULES
from seqplan.rules.rule import Rule

from . import make_words
from .published_page import published_page
from .trade_table import trade_table

DOCS = Path(__file__).parents[2] / "docs"
_BEGIN = "<!-- made from the table of keys -->"
_END = "<!-- end -->"


def rules_page() -> str:
    """The rule book as a page."""
    lines = [
        "# The rule book",
        "",
        "Made from the code by `python -m tests.tools.make_docs`; `seqplan rules` prints the same.",
        "",
        "*must*: the other way is impossible or ruins cloth, an error. *should*: accepted good",
        "practice, a warning. *prefer*: orders in print go both ways; it is no finding, but where",
        "your own order keeps it, the booklet does, too. A need follows from what operations make;",
        "the other rules are the trade's. The numbers are those of",
        "[what the trade teaches](rule-table.md). A garment file can set aside what is no",
        "must, with `waive:`.",
        "",
        "| rule | strength | kind | trade rule |",
        "|---|---|---|---|",
    ]
    for rule in RULES:
        kind = "need" if rule.kind is ReasonKind.NEEDS else "trade"
        numbers = ", ".join(map(str, rule.numbers))
        row = (f"[{rule.slug}](#{rule.slug})", rule.strength.value, kind, numbers)
        lines.append(f"| {' | '.join(row)} |")
    for rule in RULES:
        lines += ["", *_rule(rule)]
    return "\n".join(lines) + "\n"


def audits_page() -> str:
    """What the check asks for after the last operation, as a page."""
    lines = [
        "# What is still lacking",
        "",
        "Made from the code by `python -m tests.tools.make_docs`.",
        "",
        "The rules order the operations that you wrote. When all of them are done, `seqplan check`",
        "asks what is still lacking. Each finding ends with its name, and its hint, when it is",
        "followed, removes it.",
        "",
        "| finding | how bad | what is wanted |",
        "|---|---|---|",
    ]
    for audit in AUDITS:
        headline = audit.headline.replace("``", "`")
        row = f"[{audit.slug}](#{audit.slug}) | {audit.severity.value} | {headline}"
        lines.append(f"| {row} |")
    for audit in AUDITS:
        lines += ["", f"## {audit.slug}", "", *_text(audit)]
    return "\n".join(lines) + "\n"


def _text(audit: Audit) -> Iterator[str]:
    text = inspect.cleandoc(audit.find.__doc__ or "")
    yield from text.replace("``", "`").splitlines()


def language_page(page: str) -> str:
    """The language page with its tables of keys made anew."""
    before, _, rest = page.partition(_BEGIN)
    _, _, after = rest.partition(_END)
    return f"{before}{_BEGIN}\n\n{key_tables()}\n{_END}{after}"


def key_tables() -> str:
    """All keys, section by section."""
    titles = {
        Section.GARMENT: "At the top of the file",
        Section.FABRIC: "Of a fabric",
        Section.PIECE: "Of a piece",
        Section.NOTION: "Of a notion",
        Section.STATION: "Of a station",
        Section.FULLNESS: "Of darts or pleats",
        Section.SHAPE: "Of a shape",
        Section.SLIT: "Of a slit",
        Section.OPERATION: "Of an operation",
        Section.PLAN: "Of a lay plan",
        Section.WAIVER: "Of a rule that is waived",
    }
    return "\n".join(line for section, title in titles.items() for line in _table(section, title))


def _table(section: Section, title: str) -> Iterator[str]:
    keys = [key for key in KEYS if key.section is section]
    yield f"### {title}"
    yield ""
    yield "| key | what stands after it | what it is for | with |"
    yield "|---|---|---|---|"
    for key in keys:
        verbs = "" if key.is_verb else ", ".join(f"`{verb.value}`" for verb in key.verbs)
        yield f"| `{key.name}` | {_takes(key)} | {key.help} | {verbs} |"
    yield ""


def _takes(key: Key) -> str:
    if key.choices:
        return ", ".join(f"`{choice}`" for choice in key.choices)
    return key.takes.value


def _rule(rule: Rule) -> Iterator[str]:
    yield f"## {rule.slug}"
    yield ""
    lines = rule.text.strip().splitlines()
    for place, line in enumerate(lines):
        underlined = place + 1 < len(lines) and set(lines[place + 1]) == {"-"}
        if underlined:
            yield f"**{line}.**"
        elif not line or set(line) != {"-"}:
            yield line


def main() -> int:
    """Write the pages, or compare them."""
    language = DOCS / "language.md"
    wanted = {
        DOCS / "rules.md": rules_page(),
        DOCS / "audits.md": audits_page(),
        DOCS / "rule-table.md": trade_table(),
        DOCS / "published-orders.md": published_page(),
        language: language_page(language.read_text(encoding="utf-8")),
    }
    if "--check" not in sys.argv:
        for path, text in wanted.items():
            path.write_text(text, encoding="utf-8")
        return make_words.main()
    stale = [p for p, text in wanted.items() if p.read_text(encoding="utf-8") != text]
    for path in stale:
        sys.stderr.write(f"{path.name} is out of date: python -m tests.tools.make_docs\n")
    return make_words.main() or (1 if stale else 0)


if __name__ == "__main__":
    sys.exit(main())
