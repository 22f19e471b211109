"""Findings in SARIF 2.1.0, which editors, build servers and code hosts read.

Sections in comments are those of the OASIS standard "Static Analysis Results Interchange Format
(SARIF) Version 2.1.0", 27 March 2020. Every rule of the rule book is described, whether or not it
has a result, and what is waived is there as a suppressed result with the author's reason. No
``fixes`` are given: the repairs say what to move, and no text edit of ours would be exact.
"""

from collections.abc import Iterable, Iterator, Sequence
from posixpath import normpath
from typing import Final, NamedTuple
from urllib.parse import quote

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import RuleSlug
from seqplan.base.path import Span, format_path
from seqplan.explain.selection import FINDINGS, headline
from seqplan.explain.waived import SetAside
from seqplan.explain.written import SEVERITY
from seqplan.render.machine.document import Data
from seqplan.rules.book import RULES
from seqplan.rules.rule import Rule
from seqplan.version import VERSION

SCHEMA: Final = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json"

_LEVEL: Final = {
    Severity.ERROR: "error",
    Severity.WARNING: "warning",
    Severity.CAUTION: "note",
    Severity.HINT: "note",
}
"""Levels, section 3.27.10; a caution is no fault of the file, so it is a note."""


class Checked(NamedTuple):
    """One file that was checked.

    Parameters
    ----------
    uri
        Where it is, as `file_uri` gives it.
    findings
        What was found.
    set_aside
        The waivers of the file that hold, with what they keep from the check.
    """

    uri: str
    findings: Sequence[Diagnostic]
    set_aside: Sequence[SetAside] = ()


def file_uri(path: str, here: str) -> str:
    """Give the place of a file: relative to the folder where one works, if it lies in it.

    >>> file_uri("/hall/garments/quay skirt.yaml", "/hall")
    'garments/quay%20skirt.yaml'
    >>> file_uri("./garments/../a.yaml", "/hall")
    'a.yaml'
    >>> file_uri("/elsewhere/a.yaml", "/hall")
    'file:///elsewhere/a.yaml'
    """
    whole = path if _is_absolute(path) else f"{here}/{path}"
    clean, root = normpath(whole), normpath(here).rstrip("/") + "/"
    if clean.startswith(root):
        return quote(clean.removeprefix(root))
    return "file:///" + quote(clean.lstrip("/"), safe="/:")


def sarif_log(files: Iterable[Checked]) -> Data:
    """Give the log of one run over all files (3.13, 3.14)."""
    checked = tuple(files)
    artifact = {uri: place for place, uri in enumerate(dict.fromkeys(f.uri for f in checked))}
    shown = [item for file in checked for item in file.findings]
    described = _describe(shown)
    index = {rule["id"]: place for place, rule in enumerate(described)}
    return {
        "$schema": SCHEMA,
        "version": "2.1.0",
        "runs": [
            {
                "tool": {"driver": _driver(described)},
                # Our columns count characters and not the units of an encoding (3.14.17).
                "columnKind": "unicodeCodePoints",
                # A file that is named twice is one artifact (3.14.15).
                "artifacts": [{"location": {"uri": uri}} for uri in artifact],
                "results": [
                    _result(item, file.uri, artifact[file.uri], index[item.slug])
                    | {"suppressions": suppressed}
                    for file in checked
                    for item, suppressed in _with_suppressions(file)
                ],
            }
        ],
    }


def _is_absolute(path: str) -> bool:
    return path.startswith("/") or path[1:3] == ":/"


def _driver(described: list[Data]) -> Data:
    """The program (3.19)."""
    return {"name": "seqplan", "version": VERSION, "rules": described}


def _describe(findings: Iterable[Diagnostic]) -> list[Data]:
    """Describe every rule, every other finding, and the faults of reading that occur (3.49)."""
    named = [_of_rule(rule) for rule in RULES]
    named += [_descriptor(slug, severity) for slug, severity in FINDINGS.items()]
    known = {each["id"] for each in named}
    faults = {item.slug: item.severity for item in findings if item.slug not in known}
    named += [
        {"id": slug, "defaultConfiguration": {"level": _LEVEL[severity]}}
        for slug, severity in sorted(faults.items())
    ]
    return named


def _descriptor(slug: RuleSlug, severity: Severity) -> Data:
    return {
        "id": slug,
        "shortDescription": {"text": headline(slug)},
        "defaultConfiguration": {"level": _LEVEL[severity]},
    }


def _of_rule(rule: Rule) -> Data:
    severity = SEVERITY[rule.strength]
    text = rule.text.strip()
    return _descriptor(rule.slug, severity) | {
        "fullDescription": {"text": _why(text)},
        "help": {"text": text},
        "properties": {"strength": rule.strength.value, "kind": rule.kind.value},
    }


def _why(text: str) -> str:
    """The paragraph of a rule that gives its reason, in one line."""
    _, _, rest = text.partition("Why\n---\n")
    return " ".join(rest.partition("\n\n")[0].split())


def _with_suppressions(file: Checked) -> Iterator[tuple[Diagnostic, list[Data]]]:
    """The findings, none of them suppressed, and those that a waiver suppresses (3.27.23).

    Where one result of a run tells whether it is suppressed, all do; an empty list says no.
    """
    for item in file.findings:
        yield item, []
    for waiver, findings in file.set_aside:
        # The waiver stands in the garment file, and nobody has to review it (3.35).
        suppressed = {"kind": "inSource", "status": "accepted", "justification": waiver.because}
        for item in findings:
            yield item, [suppressed]


def _result(item: Diagnostic, uri: str, artifact: int, rule: int) -> Data:
    """One result (3.27)."""
    # No place is related twice in the same words (3.27.22).
    placed = dict.fromkeys((note.span, note.message) for note in item.notes if note.span)
    related = [
        _location(uri, artifact, span) | {"message": {"text": _message(message)}}
        for span, message in placed
    ]
    result: Data = {
        "ruleId": item.slug,
        "ruleIndex": rule,
        "level": _LEVEL[item.severity],
        "message": {"text": _message(_text(item))},
        "locations": [_location(uri, artifact, item.span) | _logical(item)],
    }
    return result | ({"relatedLocations": related} if related else {})


def _text(item: Diagnostic) -> str:
    """The message as one sentence with its period, the reason, and the repair (3.11.3)."""
    told = [f"{item.message[:1].upper()}{item.message[1:]}."]
    told += [note.message for note in item.notes if note.span is None]
    return " ".join([*told, item.fix or ""]).strip()


def _message(text: str) -> str:
    """Write braces twice, for single ones would be places to be filled (3.11.5)."""
    return text.replace("{", "{{").replace("}", "}}")


def _location(uri: str, artifact: int, span: Span | None) -> Data:
    """A place in a file (3.28, 3.29); without a region it is the file."""
    place: Data = {"artifactLocation": {"uri": uri, "index": artifact}}
    if span is not None:
        place["region"] = _region(span)
    return {"physicalLocation": place}


def _region(span: Span) -> Data:
    """Lines and columns from 1, the end column exclusive (3.30); an empty one marks a point."""
    return {
        "startLine": span.line,
        "startColumn": span.column,
        "endLine": span.end_line,
        "endColumn": span.end_column,
    }


def _logical(item: Diagnostic) -> Data:
    """The path in the document (3.33), where there is one."""
    if not item.path:
        return {}
    return {"logicalLocations": [{"fullyQualifiedName": format_path(item.path)}]}
