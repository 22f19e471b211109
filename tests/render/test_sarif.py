"""SARIF 2.1.0, held against what the OASIS standard asks of a log; sections in the names."""

import json
import re
from urllib.parse import unquote, urlsplit

import jsonschema
import pytest
from cli.running import GARMENTS, ROOT, broken_skirt, impossible, run
from hypothesis import given, settings
from hypothesis import strategies as st

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import RuleSlug
from seqplan.base.path import Span
from seqplan.explain.selection import FINDINGS
from seqplan.render.machine.document import to_json
from seqplan.render.machine.sarif import Checked, file_uri, sarif_log
from seqplan.rules.book import RULES

WAIVED = """garment: Quay skirt
units: cm
wearer: child
fabrics: {shell: {kind: woven}}
notions: {snap: {kind: snap}}
pieces:
  front: {of: shell, cut: fold, edges: [waist, side, hem]}
  back: {of: shell, cut: fold, edges: [waist, side, hem]}
waive: [{rule: finish-before-crossing, at: hem, because: "flat {and} seen"}]
operations:
  sides: {sew: front.side, to: back.side}
  hem: {hem: [front.hem, back.hem], depth: 2}
  neaten: {finish: [front.side, back.side]}
  press-sides: {press: front.side}
  waist: {finish: [front.waist, back.waist]}
  snap: {attach: snap, at: back.waist}
"""

TEXT = {"type": "object", "required": ["text"], "properties": {"text": {"type": "string"}}}
POSITIVE = {"type": "integer", "minimum": 1}
LEVEL = {"enum": ["none", "note", "warning", "error"]}


def closed(required, **properties):
    """An object that has no other keys: the schema of SARIF closes every object but the bag."""
    return {
        "type": "object",
        "required": required,
        "properties": properties,
        "additionalProperties": False,
    }


ARTIFACT_LOCATION = closed(  # 3.4
    ["uri"],
    uri={"type": "string", "minLength": 1},
    index={"type": "integer", "minimum": 0},
)
REGION = closed(  # 3.30
    ["startLine"],
    startLine=POSITIVE,
    startColumn=POSITIVE,
    endLine=POSITIVE,
    endColumn=POSITIVE,
)
LOCATION = closed(  # 3.28, 3.29, 3.33
    ["physicalLocation"],
    physicalLocation=closed(
        ["artifactLocation"], artifactLocation=ARTIFACT_LOCATION, region=REGION
    ),
    logicalLocations={
        "type": "array",
        "minItems": 1,
        "items": closed(["fullyQualifiedName"], fullyQualifiedName={"type": "string"}),
    },
    message=TEXT,
)
DESCRIPTOR = closed(  # 3.49
    ["id"],
    id={"type": "string", "pattern": "^[a-z][a-z-]*$"},
    shortDescription=TEXT,
    fullDescription=TEXT,
    help=TEXT,
    defaultConfiguration=closed(["level"], level=LEVEL),  # 3.50
    properties={"type": "object"},
)
SUPPRESSION = closed(  # 3.35
    ["kind"],
    kind={"enum": ["inSource", "external"]},
    status={"enum": ["accepted", "underReview", "rejected"]},
    justification={"type": "string"},
)
RESULT = closed(  # 3.27
    ["ruleId", "ruleIndex", "level", "message", "locations", "suppressions"],
    ruleId={"type": "string"},
    ruleIndex={"type": "integer", "minimum": 0},
    level=LEVEL,
    message=TEXT,
    locations={"type": "array", "minItems": 1, "items": LOCATION},
    relatedLocations={"type": "array", "minItems": 1, "uniqueItems": True, "items": LOCATION},
    suppressions={"type": "array", "uniqueItems": True, "items": SUPPRESSION},
)
RUN = closed(  # 3.14
    ["tool", "results"],
    tool=closed(  # 3.18, 3.19
        ["driver"],
        driver=closed(
            ["name"],
            name={"type": "string", "minLength": 1},
            version={"type": "string", "minLength": 1},
            rules={"type": "array", "uniqueItems": True, "items": DESCRIPTOR},
        ),
    ),
    columnKind={"enum": ["utf16CodeUnits", "unicodeCodePoints"]},  # 3.14.17
    artifacts={  # 3.24
        "type": "array",
        "uniqueItems": True,
        "items": closed(["location"], location=ARTIFACT_LOCATION),
    },
    results={"type": "array", "items": RESULT},
)
LOG = closed(  # 3.13
    ["version", "runs"],
    **{"$schema": {"type": "string", "format": "uri"}},
    version={"const": "2.1.0"},
    runs={"type": "array", "minItems": 1, "items": RUN},
)

FORM = jsonschema.Draft202012Validator(LOG)


@pytest.fixture
def logs(tmp_path, monkeypatch):
    """What the command prints for files with findings of every kind, run beside them."""
    monkeypatch.chdir(tmp_path)
    broken_skirt(tmp_path)
    impossible(tmp_path)
    (tmp_path / "waived ä.yaml").write_text(WAIVED, encoding="utf-8")
    (tmp_path / "bad.yaml").write_text("garment: Bad\noperations: {a: {do: x, zzz: '{0}'}}\n")
    (tmp_path / "empty.yaml").write_text("")
    names = ("broken.yaml", "impossible.yaml", "waived ä.yaml", "bad.yaml", "empty.yaml")

    def log(*chosen, status=1):
        result = run("check", *(chosen or names), "--format", "sarif")
        assert result.exit_code == status, result.output
        return json.loads(result.output)

    return log


def the_run(log):
    (run_,) = log["runs"]
    return run_


def check(log):
    FORM.validate(log)
    assert urlsplit(log["$schema"]).scheme == "https"
    run_ = the_run(log)
    rules = run_["tool"]["driver"]["rules"]
    ids = [rule["id"] for rule in rules]
    assert len(set(ids)) == len(ids)
    for result in run_["results"]:
        # 3.27.6: the index is that of the rule with this id.
        assert rules[result["ruleIndex"]]["id"] == result["ruleId"]
        for place in (*result["locations"], *result.get("relatedLocations", ())):
            file = place["physicalLocation"]["artifactLocation"]
            # 3.4.5: the index is that of the artifact with this location.
            assert run_["artifacts"][file["index"]]["location"]["uri"] == file["uri"]
            region = place["physicalLocation"].get("region")
            if region:
                # 3.30.7, 3.30.8: the end does not lie before the start.
                start = (region["startLine"], region["startColumn"])
                assert start <= (region["endLine"], region["endColumn"])
        for message in (result["message"], *_messages(result)):
            # 3.11.5: single braces would be placeholders.
            assert re.sub(r"\{\{|\}\}", "", message["text"]).count("{") == 0


def _messages(result):
    return [place["message"] for place in result.get("relatedLocations", ())]


def test_3_13_a_log_has_the_form_of_the_standard(logs):
    check(logs())


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_shipped_garments_make_good_logs(path):
    log = json.loads(run("check", path, "--format", "sarif").output)
    check(log)
    assert all(result["level"] == "note" for result in the_run(log)["results"])


def test_3_19_23_every_rule_of_the_book_is_described(logs):
    rules = {rule["id"]: rule for rule in the_run(logs())["tool"]["driver"]["rules"]}
    for rule in RULES:
        told = rules[rule.slug]
        assert told["shortDescription"]["text"] == rule.headline
        assert told["help"]["text"] == rule.text.strip()
        why = told["fullDescription"]["text"]
        assert why
        assert why in " ".join(rule.text.split())
        level = {"must": "error", "should": "warning", "prefer": "note"}[rule.strength.value]
        assert told["defaultConfiguration"]["level"] == level
    assert set(FINDINGS) <= set(rules)
    # The faults of reading that occur are there, too.
    assert {"unknown-key", "empty-file"} <= set(rules)


def test_3_27_12_results_have_their_place_and_the_other_operation_is_related(logs):
    results = the_run(logs("broken.yaml"))["results"]
    (result,) = [r for r in results if r["ruleId"] == "crossing-seams-before-hem"]
    lines = (ROOT / "garments" / "breakwater-skirt.yaml").read_text().splitlines()
    centre = next(i for i, line in enumerate(lines, 1) if line.startswith("  centre-back:"))
    (place,) = result["locations"]
    assert place["physicalLocation"] == {
        "artifactLocation": {"uri": "broken.yaml", "index": 0},
        "region": {"startLine": centre, "startColumn": 3, "endLine": centre, "endColumn": 6},
    }
    assert place["logicalLocations"] == [{"fullyQualifiedName": "operations.hem"}]
    (other,) = result["relatedLocations"]
    assert other["message"]["text"] == "`centre-back` stands here."
    assert other["physicalLocation"]["region"]["startLine"] == centre + 1
    assert result["level"] == "error"
    assert result["message"]["text"].startswith("`hem` comes before `centre-back`. ")
    assert result["message"]["text"].endswith("Move `hem` below `centre-back`.")


def test_3_27_23_what_is_waived_is_suppressed_with_the_authors_reason(logs):
    results = the_run(logs("waived ä.yaml", status=0))["results"]
    by_rule = {result["ruleId"]: result for result in results}
    assert by_rule["finish-before-crossing"]["suppressions"] == [
        {"kind": "inSource", "status": "accepted", "justification": "flat {and} seen"}
    ]
    # Where one result tells whether it is suppressed, all do.
    assert by_rule["press-before-crossing"]["suppressions"] == []
    assert by_rule["small-part"]["suppressions"] == []
    assert by_rule["small-part"]["level"] == "note"


def test_what_is_not_asked_for_is_not_there_suppressed_either(tmp_path):
    path = tmp_path / "waived.yaml"
    path.write_text(WAIVED)
    words = ("--format", "sarif", "--ignore", "finish-before-crossing,small-part")
    results = the_run(json.loads(run("check", path, *words).output))["results"]
    assert [result["ruleId"] for result in results] == ["press-before-crossing"]


def test_3_30_columns_count_characters_and_the_end_is_past_the_last(logs, tmp_path):
    (tmp_path / "wide.yaml").write_text(
        "garment: Q\noperations: {\U00020000: {do: x, zzz: b}}\n", encoding="utf-8"
    )
    log = logs("wide.yaml")
    assert the_run(log)["columnKind"] == "unicodeCodePoints"
    (result,) = the_run(log)["results"]
    region = result["locations"][0]["physicalLocation"]["region"]
    assert region == {"startLine": 2, "startColumn": 25, "endLine": 2, "endColumn": 28}


def test_3_55_no_repair_is_given_as_an_edit_that_is_not_exact(logs):
    assert all("fixes" not in result for result in the_run(logs())["results"])


def test_3_14_15_a_file_that_is_named_twice_is_one_artifact(logs):
    log = logs("broken.yaml", "./broken.yaml", "bad.yaml")
    check(log)
    uris = [artifact["location"]["uri"] for artifact in the_run(log)["artifacts"]]
    assert uris == ["broken.yaml", "bad.yaml"]


def test_equal_input_gives_equal_bytes(tmp_path):
    path = broken_skirt(tmp_path)
    words = ("check", path, "--format", "sarif")
    first, second = run(*words).output, run(*words).output
    assert first == second
    assert first.endswith("}\n")


@pytest.mark.parametrize(
    ("path", "here", "uri"),
    [
        ("a.yaml", "/hall", "a.yaml"),
        ("./b/../a.yaml", "/hall", "a.yaml"),
        ("/hall/b/a.yaml", "/hall", "b/a.yaml"),
        ("a:b #1?.yaml", "/hall", "a%3Ab%20%231%3F.yaml"),
        ("ä.yaml", "/hall", "%C3%A4.yaml"),
        ("../a.yaml", "/hall/b", "file:///hall/a.yaml"),
        ("/hallshop/a.yaml", "/hall", "file:///hallshop/a.yaml"),
        ("C:/hall/a.yaml", "C:/hall", "a.yaml"),
        ("D:/a.yaml", "C:/hall", "file:///D:/a.yaml"),
        ("/a.yaml", "/", "a.yaml"),
    ],
)
def test_3_4_3_places_of_files_are_relative_where_they_can_be(path, here, uri):
    assert file_uri(path, here) == uri


@given(st.text(st.characters(exclude_characters="\0", exclude_categories=["Cs"]), min_size=1))
def test_3_4_3_every_name_of_a_file_is_a_uri_that_leads_back_to_it(name):
    name = name.replace("/", "_")
    if name in {".", ".."} or name[1:3] == ":/":
        return
    uri = file_uri(name, "/hall")
    assert re.fullmatch(r"[A-Za-z0-9._~%-]+", uri)
    assert unquote(uri) == name


@given(
    st.lists(
        st.builds(
            Diagnostic,
            st.sampled_from([RuleSlug("raw-edge"), RuleSlug("hem-in-order"), RuleSlug("odd")]),
            st.sampled_from(Severity),
            st.text(min_size=1),
            st.just(("operations", "a")),
            st.none() | st.just(Span(1, 2, 1, 2)),
            notes=st.lists(
                st.builds(Note, st.text(), span=st.none() | st.just(Span(3, 1, 4, 1))), max_size=2
            ).map(tuple),
            fix=st.none() | st.text(),
        ),
        max_size=4,
    )
)
@settings(max_examples=25)
def test_whatever_is_found_makes_a_good_log(findings):
    check(json.loads(to_json(sarif_log([Checked("a.yaml", findings)]))))
